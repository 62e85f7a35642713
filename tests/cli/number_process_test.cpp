// SPDX-License-Identifier: GPL-3.0-or-later
//
// Rows of the table of number texts put to the real program, where the environment asks for a decimal comma and for the
// Turkish ı: standard output and exit status are as the table decides.
#include <algorithm>

#include <gtest/gtest.h>

#include "tests/cli/run_cli.hpp"
#include "tests/cli/shell.hpp"
#include "tests/core/quantity/number_corpus.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;

constexpr const char* k_locales[] = {"de_DE.UTF-8", "tr_TR.UTF-8"};

std::string in_locale(const std::string& locale) {
  return "export LOCPATH='" CLAMPWRIGHT_BUILD_DIR "/tests/locales' LC_ALL=" + locale + "; ";
}

std::string quoted(const std::string& text) {
  std::string out = "'";
  for (const char c : text)
    out += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return out + "'";
}

std::vector<test::NumberRow> rows() {
  std::vector<test::NumberRow> out;
  std::ranges::copy_if(test::number_corpus(), std::back_inserter(out), &test::NumberRow::in_a_process);
  return out;
}

} // namespace

TEST(NumbersInAProcess, AreAtLeastTwenty) { EXPECT_GE(rows().size(), 20U); }

TEST(NumbersInAProcess, MeetADecimalComma) {
  for (const char* locale : k_locales)
    EXPECT_EQ(shell(in_locale(locale) + "locale decimal_point").out, ",\n") << locale;
}

TEST(NumbersInAProcess, AreUnderstoodAsDecided) {
  for (const char* locale : k_locales)
    for (const test::NumberRow& row : rows()) {
      const std::string& decision = row.with_unit.at(0); // a torque
      const Ended ended = shell(in_locale(locale) + "\"$clampwright\" convert --json -- " + quoted(row.text + "N.m") +
                                " N.m 2>/dev/null");
      const auto answer = nlohmann::json::parse(ended.out, nullptr, false);
      ASSERT_FALSE(answer.is_discarded()) << row.name << ": " << ended.out;
      if (test::is_value(decision)) {
        EXPECT_EQ(ended.status, 0) << row.name;
        EXPECT_EQ(answer.at("result").at("values").at("N.m").get<double>(), test::value_of(decision)) << row.name;
      } else {
        EXPECT_EQ(ended.status, 65) << row.name;
        EXPECT_EQ(answer.at("error").at("code"), decision) << row.name;
      }
    }
}

} // namespace clampwright::cli
