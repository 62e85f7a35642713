// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "core/report/document.hpp"

namespace clampwright::report {

enum class Charset { utf8, ascii };

// The document as plain text, no line longer than `width` characters unless a single word is. With ascii every sign
// has a stand-in ("N·m" becomes "N.m").
[[nodiscard]] std::string write_text(const Document& document, int width = 80, Charset charset = Charset::utf8);

// The same in another language, every text of it and of ours put by `say`; titles of sources and formulas stay.
using Say = std::function<std::string(std::string_view)>;
[[nodiscard]] std::string write_text_in(const Document& document, const Say& say, int width = 80);

// UTF-8 text of ours in ASCII; characters without a stand-in become '?'.
[[nodiscard]] std::string to_ascii(std::string_view text);

// Characters, not bytes; combining marks do not occur in our texts.
[[nodiscard]] std::size_t text_width(std::string_view text);

} // namespace clampwright::report
