// SPDX-License-Identifier: GPL-3.0-or-later
//
// .ci/run runs the whole suite a second time where the decimal mark is a comma, and says so in
// CLAMPWRIGHT_DECIMAL_POINT. A locale that cannot be loaded is passed over in silence; this test is the one that
// notices.
#include <clocale>
#include <cstdlib>
#include <locale>
#include <string>

#include <gtest/gtest.h>

namespace {

std::string expected_mark() {
  const char* const mark = std::getenv("CLAMPWRIGHT_DECIMAL_POINT");
  return mark == nullptr ? std::localeconv()->decimal_point : mark;
}

TEST(Suite, RunsUnderTheDecimalMarkThatItWasGiven) {
  EXPECT_EQ(std::localeconv()->decimal_point, expected_mark()) << std::setlocale(LC_ALL, nullptr);
}

TEST(Suite, HasTheSameDecimalMarkInCAndInCxx) {
  EXPECT_EQ(std::string(1, std::use_facet<std::numpunct<char>>(std::locale()).decimal_point()), expected_mark());
}

} // namespace
