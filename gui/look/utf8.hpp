// SPDX-License-Identifier: GPL-3.0-or-later
//
// core and specdb speak UTF-8, Qt its own strings.
#pragma once

#include <string>
#include <string_view>

#include <QString>

namespace clampwright::desk {

[[nodiscard]] inline QString from_utf8(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

[[nodiscard]] inline std::string to_utf8(const QString& text) { return text.toStdString(); }

} // namespace clampwright::desk
