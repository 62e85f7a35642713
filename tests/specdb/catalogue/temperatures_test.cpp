// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/temperatures.hpp"

#include <gtest/gtest.h>

namespace clampwright::specdb {
namespace {

struct Row {
  const char* name;
  std::optional<double> low;
  std::optional<double> high;
};

// ISO 898-1 is used from -50 to 150 degC, as a supplier says; NASA RP-1228, page 1: carbon and alloy steel turns
// brittle below -65 degF = -53.9 degC; NAS4002 and MIL-B-8831B: 450 degF = 232.2 degC. All second-hand.
// clang-format off
constexpr Row k_rows[] = {
    {"8.8",       -50,          150},
    {"class 12.9", -50,         150},
    {"08.8",      -50,          150},
    {"grade 5",   -54,          std::nullopt},
    {"A325",      -54,          std::nullopt},
    {"125 ksi",   -54,          std::nullopt},
    {"160 ksi",   std::nullopt, 232},
    {"180ksi",    std::nullopt, 232},
};
// clang-format on

std::optional<double> degrees(const std::optional<quantity::Temperature>& temperature) {
  if (!temperature) return std::nullopt;
  return quantity::in_degrees_celsius(*temperature);
}

TEST(ClassTemperature, IsThatOfTheStandardOrOfTheClass) {
  const Catalogue catalogue;
  for (const Row& row : k_rows) {
    const auto found = class_temperature(catalogue, row.name);
    ASSERT_TRUE(found.has_value()) << row.name;
    EXPECT_EQ(degrees(found->low), row.low) << row.name;
    EXPECT_EQ(degrees(found->high), row.high) << row.name;
    EXPECT_EQ(found->source.known, Known::second_hand) << row.name;
  }
}

TEST(ClassTemperature, IsNotInvented) {
  const Catalogue catalogue;
  for (const char* name : {"A2-70", "unknown", "7.3", ""})
    EXPECT_FALSE(class_temperature(catalogue, name).has_value()) << name;
}

} // namespace
} // namespace clampwright::specdb
