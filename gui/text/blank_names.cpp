// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/text/blank_names.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QRegularExpression>

#include "gui/look/utf8.hpp"
#include "gui/text/wording.hpp"

namespace clampwright::desk {

QString by_blanks(const QString& text, const BlankNames& names, const std::string& own) {
  if (!text.contains(QStringLiteral("--"))) return text;
  static const QRegularExpression k_option(QStringLiteral("--[a-z]+(?:-[a-z]+)*"));
  QString out;
  qsizetype done = 0;
  auto found = k_option.globalMatch(text);
  while (found.hasNext()) {
    const QRegularExpressionMatch match = found.next();
    const std::string option = to_utf8(match.captured());
    const auto name = std::ranges::find(names, option, &BlankName::option);
    qsizetype end = match.capturedEnd();
    out += text.mid(done, match.capturedStart() - done);
    if (option == own && end < text.size() && text[end] == QLatin1Char(' '))
      ++end; // the example that follows is what to write here
    else
      out += name == names.end() ? match.captured() : QCoreApplication::translate("PageText", "“%1”").arg(name->label);
    done = end;
  }
  return out + text.mid(done);
}

QString refusal_words(const Problem& problem, const BlankNames& names, const std::string& own) {
  QString text = worded(problem.message);
  if (!problem.hint.empty()) text += QStringLiteral("; ") + worded(problem.hint);
  return by_blanks(text, names, own);
}

} // namespace clampwright::desk
