// SPDX-License-Identifier: GPL-3.0-or-later
//
// Text work that does not ask the locale.
#pragma once

#include <string>
#include <string_view>

namespace clampwright::text {

// ASCII letters only; every other byte is left as it is.
[[nodiscard]] std::string to_lower(std::string_view text);
[[nodiscard]] bool equal_fold(std::string_view one, std::string_view other);

// The letters (code points) of UTF-8 text; a byte that is not UTF-8 becomes U+FFFD.
[[nodiscard]] std::u32string letters(std::string_view text);

// A name of a table in a sentence: "cast-aluminium" is "cast aluminium".
[[nodiscard]] std::string without_hyphens(std::string_view name);

[[nodiscard]] constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Every kind of space to one ' ' (no-break, thin, narrow and figure spaces come with text copied from a page), and none
// at the ends.
[[nodiscard]] std::string plain_spaces(std::string_view text);

// The text as it may stand in a message: control characters and bytes that are not UTF-8 replaced by '?', shortened
// with "…" after 60 characters.
[[nodiscard]] std::string quotable(std::string_view text);

// The text with control characters and bytes that are not UTF-8 replaced by '?', at full length.
[[nodiscard]] std::string printable(std::string_view text);

// True for well-formed UTF-8 without control characters.
[[nodiscard]] bool is_printable(std::string_view text);

} // namespace clampwright::text
