// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/materials.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::HasSubstr;
using testing::StartsWith;

struct Row {
  const char* name;
  double shear_MPa; // 0 where no figure was read
  double pressure_MPa;
  bool soft;
};

// clang-format off
// Shear: VDI 2230 (2003) S235 200, EN 1561 GJL-150 170 (all from memory); 0.6 x 700 of C45 and 0.6 x 500 of austenitic
// steel, 0.7 x 185 of A380, 0.7 x 140 of AZ91D (computed); EN 1563 GJS-350-22 315, 6261-T5 170 (second-hand).
// Pressure: the lower of VDI 2230 of 1986 (St 37, X5CrNiMo18-10, GG 15, GGG 35, GD MgAl9) and of 2003 (Cq45,
// GK-AlSi9Cu3, GD-AlSi9Cu3, AlMgSi1 F28), second-hand.
constexpr Row k_materials[] = {
    {"steel",              200, 260, false},
    {"steel-hardened",     420, 630, false},
    {"stainless-steel",    300, 210, false},
    {"grey-iron",          170, 600, false},
    {"ductile-iron",       315, 480, false},
    {"cast-aluminium",     130, 220, false},
    {"cast-aluminium-die", 130, 290, false},
    {"wrought-aluminium",  170, 230, false},
    {"magnesium-die",       98, 220, false},
    {"wood",                 0,   0, true},
    {"plastic",              0,   0, true},
    {"gasket",               0,   0, true},
    // Single grades. Shear: VDI 2230 (2003) E295, S355, GK-AlSi9Cu3; EN 1561; A356-T6, 6082-T6 and 0.7 x typical 2024
    // and 7075 of ASM; 0.6 x tensile of titanium (all from memory). 0.6 x 1000, 0.6 x 1200 and 0.6 x 500 of steels,
    // 0.7 x 193 and 0.7 x 172 of die castings, 0.7 x 120 of AZ91D-T4, 6061-T6 (computed). EN 1563, C50, 356.0-T5
    // (second-hand). Pressure as above; GJS-400 and GJS-500 of 2015, Al99 and GK MgAl9 of 1986 are from memory.
    {"steel-s235",                 200,  260, false},
    {"steel-e295",                 280,  420, false},
    {"steel-s355",                 290,  760, false},
    {"steel-c50",                  400,    0, false},
    {"steel-42crmo4",              600,  850, false},
    {"steel-30crnimo8",            720,  750, false},
    {"stainless-x5crni18-12",      300,  630, false},
    {"stainless-x5crnimo17-12-2",  300,  210, false},
    {"grey-iron-gjl-150",          170,  600, false},
    {"grey-iron-gjl-200",          230,    0, false},
    {"grey-iron-gjl-250",          290,  800, false},
    {"grey-iron-gjl-300",          345,    0, false},
    {"grey-iron-gjl-350",          400,  900, false},
    {"ductile-iron-gjs-350-22",    315,  480, false},
    {"ductile-iron-gjs-400-18",    360,  600, false},
    {"ductile-iron-gjs-450-10",    405,    0, false},
    {"ductile-iron-gjs-500-7",     450,  750, false},
    {"ductile-iron-gjs-600-3",     540, 1000, false},
    {"ductile-iron-gjs-700-2",     630,    0, false},
    {"ductile-iron-gjs-800-2",     720,    0, false},
    {"cast-aluminium-alsi9cu3-mould", 110, 220, false},
    {"cast-aluminium-alsi10mg-die", 135,   0, false},
    {"cast-aluminium-alsi12-die",  120,    0, false},
    {"cast-aluminium-alsi7mg-t5",  140,    0, false},
    {"cast-aluminium-alsi7mg-t6",  160,  380, false},
    {"wrought-aluminium-6061-t6",  186,    0, false},
    {"wrought-aluminium-6082-t6",  210,  260, false},
    {"wrought-aluminium-2024-t351", 198,   0, false},
    {"wrought-aluminium-7075-t6",  232,  410, false},
    {"pure-aluminium",               0,  140, false},
    {"magnesium-cast",              84,  140, false},
    {"brass",                        0,    0, false},
    {"bronze",                       0,    0, false},
    {"titanium",                   234,  300, false},
    {"titanium-ti6al4v",           534,  890, false},
};
// clang-format on

double megapascals(const std::optional<quantity::Stress>& stress) {
  return stress ? quantity::in_megapascals(*stress) : 0.0;
}

TEST(PartMaterials, AreKnownByTheirNames) {
  std::vector<std::string> names;
  for (const Row& row : k_materials)
    names.emplace_back(row.name);
  EXPECT_EQ(material_names(Catalogue()), names);
}

TEST(PartMaterials, HaveTheLowerOfThePublishedFigures) {
  const Catalogue catalogue;
  for (const Row& row : k_materials) {
    const auto found = find_material(catalogue, row.name);
    ASSERT_TRUE(found.has_value()) << row.name;
    EXPECT_NEAR(megapascals(found->shear_strength), row.shear_MPa, 1e-9) << row.name;
    EXPECT_NEAR(megapascals(found->seat_pressure), row.pressure_MPa, 1e-9) << row.name;
    EXPECT_EQ(found->soft, row.soft) << row.name;
  }
}

TEST(PartMaterials, NameASourceForEachFigure) {
  const Catalogue catalogue;
  for (const Row& row : k_materials)
    EXPECT_EQ(find_material(catalogue, row.name)->sources.size(),
              (row.shear_MPa > 0 ? 1U : 0U) + (row.pressure_MPa > 0 ? 1U : 0U))
        << row.name;
  const auto steel = find_material(catalogue, "steel");
  EXPECT_EQ(steel->sources[0].known, Known::memory);
  EXPECT_EQ(steel->sources[1].where, "St 37");
}

TEST(PartMaterials, AreFoundInAnyCaseAndWithSpaces) {
  const Catalogue catalogue;
  for (const char* text : {"Cast Aluminium", "CAST-ALUMINIUM", "cast_aluminium", " cast-aluminium "})
    EXPECT_EQ(find_material(catalogue, text)->name, "cast-aluminium") << text;
}

TEST(PartMaterials, SuggestTheNearNameIfMisspelt) {
  EXPECT_THAT(problem_of(find_material(Catalogue(), "cast-aluminum")).hint,
              StartsWith("did you mean cast-aluminium? "));
}

TEST(PartMaterials, AreRefusedWithTheWholeList) {
  const Problem problem = problem_of(find_material(Catalogue(), "cheese"));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  for (const Row& row : k_materials)
    EXPECT_THAT(problem.hint, HasSubstr(row.name));
}

} // namespace
} // namespace clampwright::specdb
