// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/text_writer.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::report {
namespace {

using testing::AllOf;
using testing::HasSubstr;

std::string written(std::string value, int width) {
  Document document;
  document.sections.push_back({"", {{"x", std::move(value)}}});
  return write_text(document, width);
}

// Some of these widths would break between number and unit.
TEST(TextWriter, KeepsANumberAndItsUnitOnOneLine) {
  for (const char* both : {"38 %", "11.1 kN:", "149 °C.", "16.2 lbf·ft,", "220 MPa)", "5 N·m"})
    for (int width = 40; width < 70; ++width)
      EXPECT_THAT(
          written(std::string("this is a sentence of some length and it speaks of ") + both + " and so on", width),
          HasSubstr(both))
          << width;
}

TEST(TextWriter, BreaksBetweenOtherWords) {
  const std::string text = "this is a sentence of some length and it speaks of 38 bolts and so on";
  EXPECT_THAT(written(text, 56), AllOf(HasSubstr("speaks of\n"), HasSubstr(" 38 bolts")));
  EXPECT_THAT(written(text, 58), HasSubstr("of 38\n"));
}

} // namespace
} // namespace clampwright::report
