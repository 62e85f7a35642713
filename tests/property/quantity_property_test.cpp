// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "tests/core/ulps.hpp"
#include "tests/property/random_case.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <array>
#include <charconv>

namespace clampwright::quantity {
namespace {

using test::between;
using test::ulps_apart;

// Any size that is accepted, evenly in its order of magnitude, with all its binary digits.
double random_value() { return std::pow(10.0, between(-11.0, 11.0)); }

std::string shortest(double value) {
  std::array<char, 40> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
  return {buffer.data(), end};
}

const Unit& random_unit() { return all_units()[*rc::gen::inRange<std::size_t>(0, all_units().size())]; }

const Unit& random_unit_of(Kind kind) {
  const Unit* unit = &random_unit();
  while (unit->kind != kind)
    unit = &random_unit();
  return *unit;
}

} // namespace

TEST(TextOfAQuantity, ReadsBackAsTheSameValueAndUnit) {
  EXPECT_TRUE(rc::check([] {
    const double value = random_value();
    for (const Unit& unit : all_units()) {
      for (const std::string& text :
           {shortest(value) + std::string(unit.name), shortest(value) + " " + std::string(unit.symbol)}) {
        const auto reading = read_quantity(text);
        RC_ASSERT(reading.has_value());
        RC_ASSERT(reading->unit == &unit);
        RC_ASSERT(ulps_apart(reading->value, value) == 0U);
      }
    }
  }));
}

TEST(TextOfAQuantity, WrittenToSeventeenDigitsReadsBackAsTheSame) {
  EXPECT_TRUE(rc::check([] {
    const double value = random_value();
    const Unit& unit = random_unit();
    const auto reading = read_quantity(write_value(value, unit, 17));
    RC_ASSERT(reading.has_value());
    RC_ASSERT(reading->unit == &unit);
    RC_ASSERT(ulps_apart(reading->value, value) == 0U);
  }));
}

TEST(TextOfAQuantity, WrittenToThreeDigitsReadsBackWithinHalfOfTheThird) {
  EXPECT_TRUE(rc::check([] {
    const double value = random_value();
    const Unit& unit = random_unit();
    const auto reading = read_quantity(write_value(value, unit, 3));
    RC_ASSERT(reading.has_value());
    RC_ASSERT(test::relative(reading->value, value) <= 0.005 + 1e-12);
  }));
}

TEST(TextOfAQuantity, ReadsAlikeWithAnySpaceInFrontOfItsUnit) {
  EXPECT_TRUE(rc::check([] {
    const double value = random_value();
    const Unit& unit = random_unit();
    for (const char* space : {"", " ", "  ", "\u00A0", "\u202F", "\t"}) {
      const auto reading = read_quantity(shortest(value) + space + std::string(unit.name));
      RC_ASSERT(reading.has_value());
      RC_ASSERT(ulps_apart(reading->value, value) == 0U);
    }
  }));
}

TEST(Conversion, ThereAndBackIsWithinFourUlp) {
  EXPECT_TRUE(rc::check([] {
    const Unit& from = random_unit();
    if (from.kind == Kind::temperature) return; // loses digits to its offset: unit_test.cpp
    const Unit& to = random_unit_of(from.kind);
    const double value = random_value();
    RC_ASSERT(ulps_apart(convert(convert(value, from, to), to, from), value) <= 4U);
  }));
}

TEST(Conversion, ByWayOfAThirdUnitIsTheSameWithinFourUlp) {
  EXPECT_TRUE(rc::check([] {
    const Unit& from = random_unit();
    if (from.kind == Kind::temperature) return;
    const Unit& by = random_unit_of(from.kind);
    const Unit& to = random_unit_of(from.kind);
    const double value = random_value();
    RC_ASSERT(ulps_apart(convert(convert(value, from, by), by, to), convert(value, from, to)) <= 4U);
  }));
}

TEST(Conversion, KeepsTheOrder) {
  EXPECT_TRUE(rc::check([] {
    const Unit& from = random_unit();
    const Unit& to = random_unit_of(from.kind);
    const double small = random_value();
    const double large = small * between(1.000001, 10.0);
    RC_ASSERT(convert(small, from, to) <= convert(large, from, to));
  }));
}

} // namespace clampwright::quantity
