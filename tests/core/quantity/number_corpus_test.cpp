// SPDX-License-Identifier: GPL-3.0-or-later
//
// The table of number texts under six locales: what a text means does not hang on where the program runs. Each test
// shows first that its locale is in force, else it would prove nothing.
#include "tests/core/quantity/number_corpus.hpp"

#include <algorithm>
#include <cmath>
#include <cwctype>
#include <ostream>
#include <set>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "tests/core/forced_locale.hpp"

namespace clampwright::quantity {
namespace {

using test::ForcedLocale;
using test::is_value;
using test::number_corpus;
using test::number_kinds;
using test::NumberRow;
using test::value_of;

struct Place {
  const char* locale;
  const char* decimal_point;
  const char* group_separator;
  wint_t small_of_capital_i;
};

// Else the names of the tests would hold addresses.
void PrintTo(const Place& place, std::ostream* out) { *out << place.locale; }

// As the locales of the C library define them. Switzerland writes 1’234.5; the capital of the Turkish ı is I.
// clang-format off
constexpr Place k_places[] = {
    {"C",           ".", "",             L'i'},
    {"en_US.UTF-8", ".", ",",            L'i'},
    {"de_DE.UTF-8", ",", ".",            L'i'},
    {"fr_FR.UTF-8", ",", "\u202F",       L'i'},
    {"de_CH.UTF-8", ".", "\u2019",       L'i'},
    {"tr_TR.UTF-8", ",", ".",            L'\u0131'},
};
// clang-format on

class NumberCorpus : public testing::TestWithParam<Place> {
 protected:
  void SetUp() override {
    ASSERT_STREQ(std::localeconv()->decimal_point, GetParam().decimal_point);
    ASSERT_STREQ(std::localeconv()->thousands_sep, GetParam().group_separator);
    ASSERT_EQ(std::towlower(L'I'), GetParam().small_of_capital_i);
    ASSERT_EQ(std::use_facet<std::numpunct<char>>(std::locale()).decimal_point(), GetParam().decimal_point[0]);
  }

 private:
  ForcedLocale locale_{GetParam().locale};
};

std::string written(double value) {
  return std::signbit(value) && !(value < 0) ? "minus zero" : fmt::format("{}", value);
}

// What a refusal lacks that its reader needs.
std::string lack(const Problem& problem) {
  if (problem.trouble != Trouble::not_understood) return " (not as text that is not understood)";
  if (problem.message.empty()) return " (without a message)";
  if (problem.hint.empty()) return " (without a hint)";
  if (problem.input.size() > 60 * 4 + 3) return " (quoted at length)";
  if (!text::is_printable(problem.input + problem.message + problem.hint)) return " (not printable)";
  return "";
}

std::string answer(const Result<double>& read) {
  return read ? written(*read) : read.error().code + lack(read.error());
}

std::string answer(const Result<Reading>& read, std::string_view unit) {
  if (!read) return read.error().code + lack(read.error());
  return written(read->value) + (read->unit->name == unit ? "" : fmt::format(" {}", read->unit->name));
}

// The decision in the same words as an answer.
std::string wanted(const std::string& decision) { return is_value(decision) ? written(value_of(decision)) : decision; }

std::string shortened(const std::string& name) { return name.size() > 80 ? name.substr(0, 80) : name; }

} // namespace

TEST_P(NumberCorpus, IsReadWithAUnitOfEveryKindAsDecided) {
  for (const NumberRow& row : number_corpus())
    for (std::size_t i = 0; i < number_kinds().size(); ++i) {
      const auto& [kind, kind_name, unit] = number_kinds()[i];
      const std::string expected = wanted(row.with_unit[i]);
      const std::string joined = fmt::format("{}{}", row.text, unit);
      const std::string spaced = fmt::format("{} {}", row.text, unit);
      EXPECT_EQ(answer(read_quantity(joined, kind), unit), expected) << row.name << unit;
      EXPECT_EQ(answer(read_quantity(spaced, kind), unit), expected) << row.name << ' ' << unit;
      EXPECT_EQ(answer(read_quantity(joined), unit), expected) << row.name << unit << ", of any kind";
    }
}

TEST_P(NumberCorpus, IsRefusedWithoutAUnit) {
  for (const NumberRow& row : number_corpus())
    for (const auto& [kind, kind_name, unit] : number_kinds()) {
      const auto read = read_quantity(row.text, kind);
      ASSERT_FALSE(read) << row.name;
      EXPECT_EQ(lack(read.error()), "") << row.name;
      if (is_value(row.as_number) && is_value(row.with_unit[0])) {
        EXPECT_EQ(read.error().code, "bare-number") << row.name;
      }
    }
}

TEST_P(NumberCorpus, IsReadAsAPlainNumberAsDecided) {
  for (const NumberRow& row : number_corpus())
    EXPECT_EQ(answer(read_number(row.text)), wanted(row.as_number)) << row.name;
}

TEST_P(NumberCorpus, IsReadAsAShareAsDecided) {
  for (const NumberRow& row : number_corpus())
    EXPECT_EQ(answer(read_share(row.text)), wanted(row.as_share)) << row.name;
}

struct UnitRow {
  const char* text;
  double value;
  const char* unit;
};

// The letter I in every place: tolower makes a dotless ı of it in Turkish.
// clang-format off
constexpr UnitRow k_capitals[] = {
    {"24 NM",      24.0,  "N.m"},    {"1 IN",        1.0,  "in"},     {"1 INCH",      1.0,  "in"},
    {"1 INCHES",   1.0,   "in"},     {"30 MIN",      30.0, "min"},    {"30 MINUTES",  30.0, "min"},
    {"12 IN-LB",   12.0,  "lbf.in"}, {"12 LBF.IN",   12.0, "lbf.in"}, {"12 IN-LBS",   12.0, "lbf.in"},
    {"12 OZ-IN",   12.0,  "ozf.in"}, {"120 KSI",     120.0, "ksi"},   {"120 PSI",     120.0, "psi"},
    {"25 MILLIMETRES", 25.0, "mm"},  {"2 KILOPOND M", 2.0, "kgf.m"},  {"3000 REV/MIN", 3000.0, "rpm"},
    {"1/2 INCH",   0.5,   "in"},     {"1.5 in",      1.5,  "in"},     {"60 min",      60.0, "min"},
};
// clang-format on

TEST_P(NumberCorpus, HasUnitsInCapitalsReadAlike) {
  for (const UnitRow& row : k_capitals)
    EXPECT_EQ(answer(read_quantity(row.text), row.unit), written(row.value)) << row.text;
}

TEST_P(NumberCorpus, HasNoTurkishLetterInAUnit) {
  for (const char* text : {"1 \u0130N", "1 \u0131n", "30 M\u0130N", "12 \u0131n-lb"})
    EXPECT_EQ(answer(read_quantity(text), ""), "unknown-unit") << text;
}

INSTANTIATE_TEST_SUITE_P(Under, NumberCorpus, testing::ValuesIn(k_places), [](const auto& place) {
  return std::string(place.param.locale).substr(0, std::string_view(place.param.locale).find('.'));
});

TEST(NumberTable, HasTwoHundredDifferentTexts) {
  std::set<std::string> texts;
  for (const NumberRow& row : number_corpus())
    EXPECT_TRUE(texts.insert(row.text).second) << shortened(row.name) << " stands there twice";
  EXPECT_GE(texts.size(), 200U);
}

TEST(NumberTable, SpellsItsTextsOut) {
  const auto has = [](const std::string& text) {
    return std::ranges::find(number_corpus(), text, &NumberRow::text) != number_corpus().end();
  };
  EXPECT_TRUE(has(std::string(1000000, '9')));
  EXPECT_TRUE(has(std::string("12\0", 3)));
  EXPECT_TRUE(has("\xEF\xBB\xBF"
                  "12"));
  EXPECT_TRUE(has("5 \xC2\xBC"));
  EXPECT_TRUE(has("12\\13"));
  EXPECT_TRUE(has("1\xC2\xA0"
                  "234"));
}

} // namespace clampwright::quantity
