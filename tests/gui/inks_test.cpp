// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "gui/look/inks.hpp"

namespace clampwright::desk {

namespace {

// WCAG 2.2, success criteria 1.4.6 (7:1 for text) and 1.4.11 (3:1 for lines), numbers from memory.
TEST(Inks, AreFarEnoughApart) {
  for (const Theme theme : {Theme::light, Theme::dark, Theme::paper})
    for (const Demand& demand : demands(inks(theme)))
      EXPECT_GE(contrast(demand.pair), demand.least) << demand.name << " in theme " << static_cast<int>(theme);
}

// White on black is 21:1, a colour on itself 1:1; #767676 on white is the lightest grey that has 4.5:1 (WCAG 2.2,
// "contrast ratio", from memory).
TEST(Contrast, IsThatOfTheGuideline) {
  EXPECT_NEAR(contrast({QColor(0, 0, 0), QColor(255, 255, 255)}), 21, 1e-9);
  EXPECT_NEAR(contrast({QColor(10, 20, 30), QColor(10, 20, 30)}), 1, 1e-9);
  EXPECT_GE(contrast({QColor(0x76, 0x76, 0x76), QColor(255, 255, 255)}), 4.5);
  EXPECT_LT(contrast({QColor(0x77, 0x77, 0x77), QColor(255, 255, 255)}), 4.5);
}

} // namespace

} // namespace clampwright::desk
