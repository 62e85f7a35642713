// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/text/wording.hpp"

#include <memory>

#include <QCoreApplication>
#include <QFile>
#include <QLibraryInfo>
#include <QTranslator>

#include "gui/look/utf8.hpp"
#include "gui/text/sentence_table.hpp"

// Outside of any namespace, as the macro wants it.
static void take_in_tables() { Q_INIT_RESOURCE(languages); } // a static library: nobody else does

namespace clampwright::desk {

namespace {

// One language is spoken at a time, by the whole program, as Qt has it too.
struct Spoken {
  QString language = QStringLiteral("en");
  std::shared_ptr<const SentenceTable> table;
  std::unique_ptr<QTranslator> translator;
  std::unique_ptr<QTranslator> of_qt; // buttons of Qt's own windows, where the system has them
};

// tr() by the table. A string means the same wherever it stands, so its context is not asked for.
class TableTranslator : public QTranslator {
 public:
  explicit TableTranslator(std::shared_ptr<const SentenceTable> table) : table_(std::move(table)) {}
  [[nodiscard]] bool isEmpty() const override { return false; }
  [[nodiscard]] QString translate(const char*, const char* english, const char*, int count) const override {
    return table_->line(QString::fromUtf8(english), count);
  }

 private:
  std::shared_ptr<const SentenceTable> table_;
};

Spoken& now() {
  static Spoken spoken;
  return spoken;
}

QString text_of(const QString& resource) {
  take_in_tables();
  QFile file(resource);
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

} // namespace

QString table_text(const QString& language) { return text_of(QStringLiteral(":/i18n/%1.tsv").arg(language)); }

QStringList languages() { return {QStringLiteral("en"), QStringLiteral("de")}; }

void speak(const QString& language) {
  Spoken& spoken = now();
  for (const auto* translator : {&spoken.translator, &spoken.of_qt})
    if (*translator) QCoreApplication::removeTranslator(translator->get());
  spoken = {};
  if (!languages().contains(language) || language == QStringLiteral("en")) return;
  spoken.language = language;
  spoken.table = std::make_shared<const SentenceTable>(table_text(language));
  spoken.of_qt = std::make_unique<QTranslator>();
  if (spoken.of_qt->load(QStringLiteral("qtbase_") + language, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
    QCoreApplication::installTranslator(spoken.of_qt.get());
  spoken.translator = std::make_unique<TableTranslator>(spoken.table);
  QCoreApplication::installTranslator(spoken.translator.get());
}

QString spoken() { return now().language; }

QString worded(std::string_view english) {
  const QString text = from_utf8(english);
  return now().table ? now().table->translated(text) : text;
}

QStringList left_in_english() {
  if (!now().table) return {};
  const auto& left = now().table->not_found();
  return {left.begin(), left.end()};
}

} // namespace clampwright::desk
