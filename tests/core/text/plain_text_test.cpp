// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/text/plain_text.hpp"

#include <gtest/gtest.h>

namespace clampwright::text {

TEST(ToLower, TouchesLettersOfAsciiOnly) { EXPECT_EQ(to_lower("AzÄ°Z9"), "azÄ°z9"); }

TEST(EqualFold, IgnoresCase) {
  EXPECT_TRUE(equal_fold("LBF.ft", "lbf.FT"));
  EXPECT_FALSE(equal_fold("lbf", "lbf."));
  EXPECT_TRUE(equal_fold("", ""));
}

TEST(PlainSpaces, AreOneAtATimeAndNoneAtTheEnds) {
  EXPECT_EQ(plain_spaces("  24   Nm "), "24 Nm");
  EXPECT_EQ(plain_spaces("24\tNm"), "24 Nm");
  EXPECT_EQ(plain_spaces("   "), "");
}

// The tab, and the separators of class Zs that a page may hold (Unicode; memory).
TEST(PlainSpaces, ComeOfEveryKindOfSpace) {
  for (const char* space : {"\t", "\u00A0", "\u2000", "\u2001", "\u2002", "\u2003", "\u2004", "\u2005", "\u2006",
                            "\u2007", "\u2008", "\u2009", "\u200A", "\u202F", "\u205F", "\u3000"})
    EXPECT_EQ(plain_spaces(std::string(space) + "24" + space + space + "Nm" + space), "24 Nm");
}

TEST(Quotable, KeepsPlainText) { EXPECT_EQ(quotable("24 N·m, ½ €"), "24 N·m, ½ €"); }

TEST(Quotable, ReplacesControlCharactersAndBrokenBytes) {
  EXPECT_EQ(quotable("a\x1B[31mb"), "a?[31mb");
  EXPECT_EQ(quotable("a\nb"), "a?b");
  EXPECT_EQ(quotable("a\xFF"
                     "b"),
            "a?b");
  EXPECT_EQ(quotable("a\u202Eb"), "a?b");
}

TEST(Quotable, EndsAfterSixtyCharacters) {
  EXPECT_EQ(quotable(std::string(60, 'x')), std::string(60, 'x'));
  EXPECT_EQ(quotable(std::string(61, 'x')), std::string(60, 'x').append("…"));
}

TEST(Printable, IsWellFormedUtf8WithoutControlCharacters) {
  // clang-format off
  struct Row { std::string_view text; bool printable; };
  const Row rows[] = {
      {"24 N·m",            true},  {"",                  true},  {"€ 𝄞",               true},
      {"a b",               true},  {"\x7F",              false}, {"\xC2\x85",          false},
      {"\xC0\xAF",          false}, {"\xED\xA0\x80",      false}, {"\xF4\x90\x80\x80",  false},
      {"\xE2\x82",          false}, {"\x80",              false}, {"\xEF\xBB\xBF" "a",  false},
      {"\u200B",            false}, {"\u202A",            false}, {"\u2060",            false},
      {"\xF5\x80\x80\x80",  false}, {"\xE0\x80\x80",      false}, {"\xF0\x80\x80\x80",  false},
  };
  // clang-format on
  for (const Row& row : rows)
    EXPECT_EQ(is_printable(row.text), row.printable) << quotable(row.text);
}

TEST(Printable, IsNoTextWithANulInside) { EXPECT_FALSE(is_printable(std::string_view("a\0b", 3))); }

} // namespace clampwright::text
