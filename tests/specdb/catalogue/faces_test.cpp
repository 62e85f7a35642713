// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/faces.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/catalogue/threads.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;

Result<std::optional<StandardDiameter>> face(std::string_view name, Part part, std::string_view thread) {
  const Catalogue catalogue;
  return find_face(catalogue, name, part, find_thread(catalogue, thread)->thread);
}

std::optional<StandardDiameter> hole(std::string_view thread) {
  const Catalogue catalogue;
  return find_hole(catalogue, find_thread(catalogue, thread)->thread);
}

struct FaceRow {
  const char* name;
  Part part;
  const char* thread;
  double millimetres;
  const char* words;
};

struct HoleRow {
  const char* thread;
  double millimetres;
  const char* words;
};

struct NoneRow {
  const char* name;
  Part part;
  const char* thread;
};

// clang-format off
// Least outer diameters of the face. Metric: ISO 4014:2011, ISO 4032:2012, ISO 4762:2004 Table 1, EN 1665:1997, ISO 4161,
// DIN 931, DIN 934, dimension tables (seen second-hand; M14 and M20 nut by the rule of ISO 4759-1, computed). Inch: ASME B18.2.1-2012
// washer face, width across flats less 10 % (computed by a rule from memory); ASME B18.2.2, 0.95 of the least width
// (computed by a rule from memory); IFI-111 (seen second-hand).
constexpr FaceRow k_faces[] = {
    {"hex",     Part::head, "M8",       11.63,        "ISO 4014 head face, grade A"},
    {"hex",     Part::head, "M10",      14.63,        "ISO 4014 head face, grade A"},
    {"hex",     Part::head, "M10x1.25", 14.63,        "ISO 4014 head face, grade A"},
    {"hex",     Part::head, "M10-LH",   14.63,        "ISO 4014 head face, grade A"},
    {"HEX",     Part::head, "M10",      14.63,        "ISO 4014 head face, grade A"},
    {"hex",     Part::head, "M14",      19.37,        "ISO 4014 head face, grade A"}, // the contract names it
    {"hex",     Part::head, "M24",      33.61,        "ISO 4014 head face, grade A"},
    {"hex",     Part::head, "M30",      42.75,        "ISO 4014 head face, grade B"},
    {"hex",     Part::nut,  "M8",       11.63,        "ISO 4032 nut face, grade A"},
    {"hex",     Part::nut,  "M10",      14.63,        "ISO 4032 nut face, grade A"},
    {"hex",     Part::nut,  "M14",      19.64,        "ISO 4032 nut face, grade A"},
    {"hex",     Part::nut,  "M20",      27.70,        "ISO 4032 nut face, grade B"},
    {"hex-old", Part::head, "M10",      15.6,         "DIN 931 head face, grade A"},
    {"hex-old", Part::nut,  "M10",      15.3,         "DIN 934 nut face"},
    {"socket",  Part::head, "M8",       12.33,        "ISO 4762 head face"},
    {"socket",  Part::head, "M10",      15.33,        "ISO 4762 head face"},
    {"flange",  Part::head, "M10",      19.6,         "EN 1665 head face"},
    {"flange",  Part::nut,  "M8",       15.8,         "ISO 4161 nut face"},
    // JIS B 1180 small hexagon: 14 wide at the least 13.73 (h13), less 1.1 (IT16 of 10 to 18 mm); the rule of ISO 4759-1.
    {"hex-jis-small",     Part::head, "M10", 12.63,   "JIS B 1180 head face, grade A"},
    // DIN 7984, DIN 6912, EN 1662, ISO 4162, JIS B 1189 (seen second-hand); DIN 6921 (memory).
    {"socket-low",        Part::head, "M10", 15.03,   "DIN 7984 head face"},
    {"socket-low-pilot",  Part::head, "M10", 15.03,   "DIN 6912 head face"},
    {"flange-en-1662",    Part::head, "M10", 18.7,    "EN 1662 head face"},
    {"flange-iso-4162",   Part::head, "M10", 18.7,    "ISO 4162 head face"},
    {"flange-jis-b-1189", Part::head, "M10", 18.7,    "JIS B 1189 head face"},
    {"flange-din-6921",   Part::head, "M10", 19.6,    "DIN 6921 head face"},
    // BS 1083:1965, least washer face (seen second-hand).
    {"hex-bs-1083",       Part::head, "1/2 BSW", 0.790 * 25.4, "BS 1083 head face"},
    {"hex",     Part::head, "3/8-24",   0.506 * 25.4, "ASME B18.2.1 head face"},
    {"hex",     Part::head, "3/8-16",   0.506 * 25.4, "ASME B18.2.1 head face"},
    {"hex",     Part::head, "1/4-20",   0.394 * 25.4, "ASME B18.2.1 head face"},
    {"hex",     Part::nut,  "3/8-24",   0.524 * 25.4, "ASME B18.2.2 nut face"},
    {"flange",  Part::head, "1/4-20",   0.48 * 25.4,  "IFI-111 head face"},
};

// ISO 273:1979, medium (seen second-hand; the slips 16 and 18 of another page are not followed). ASME B18.2.8-1999,
// normal: drills 9/32, 13/32, 1 11/32 (seen second-hand).
constexpr HoleRow k_holes[] = {
    {"M8",       9.0,           "ISO 273 medium hole"},
    {"M10",      11.0,          "ISO 273 medium hole"},
    {"M10x1.25", 11.0,          "ISO 273 medium hole"},
    {"M12",      13.5,          "ISO 273 medium hole"},
    {"M14",      15.5,          "ISO 273 medium hole"},
    {"M16",      17.5,          "ISO 273 medium hole"},
    {"1/4-28",   0.2812 * 25.4, "ASME B18.2.8 normal hole"},
    {"3/8-24",   0.4062 * 25.4, "ASME B18.2.8 normal hole"},
    {"1 1/4-7",  1.3438 * 25.4, "ASME B18.2.8 normal hole"},
};

constexpr NoneRow k_none[] = {
    {"hex",    Part::head, "M9"},
    {"hex",    Part::nut,  "M9"},
    {"hex",    Part::head, "#10-32"},
    {"hex",    Part::head, "5/16 BSW"},
    {"hex",    Part::head, "2 BA"},
    {"socket", Part::head, "3/8-24"},
    {"flange", Part::head, "3/8-24"},
    {"flange", Part::nut,  "M9"},
    {"button", Part::head, "M8"},
    {"button-flange", Part::head, "M8"},
    {"countersunk", Part::head, "M8"},
    {"countersunk", Part::head, "1/4-20"},
};
// clang-format on

TEST(HeadFace, IsTheLeastOfItsStandard) {
  for (const FaceRow& row : k_faces) {
    const auto found = face(row.name, row.part, row.thread);
    ASSERT_TRUE(found.has_value() && found->has_value()) << row.name << ' ' << row.thread;
    EXPECT_NEAR(quantity::in_millimetres((*found)->diameter), row.millimetres, 1e-9) << row.name << ' ' << row.thread;
  }
}

TEST(HeadFace, SaysItsStandardInWords) {
  for (const FaceRow& row : k_faces) {
    const auto found = face(row.name, row.part, row.thread);
    ASSERT_TRUE(found.has_value() && found->has_value()) << row.name << ' ' << row.thread;
    EXPECT_EQ((*found)->words, row.words) << row.name << ' ' << row.thread;
  }
}

TEST(HeadFace, IsNoneForASizeThatItsTableDoesNotList) {
  for (const NoneRow& row : k_none) {
    const auto found = face(row.name, row.part, row.thread);
    ASSERT_TRUE(found.has_value()) << row.name << ' ' << row.thread;
    EXPECT_FALSE(found->has_value()) << row.name << ' ' << row.thread;
  }
}

TEST(HeadWithoutFace, SaysWhy) {
  const Catalogue catalogue;
  EXPECT_THAT(why_no_face(catalogue, "Button", Part::head), HasSubstr("the edge under it is rounded"));
  EXPECT_THAT(why_no_face(catalogue, "countersunk", Part::head), HasSubstr("on a cone"));
  EXPECT_EQ(why_no_face(catalogue, "hex", Part::head), "");
}

TEST(HeadFace, NamesItsSource) {
  const auto found = face("hex", Part::head, "M10");
  ASSERT_TRUE(found.has_value() && found->has_value());
  EXPECT_THAT((*found)->source.title, StartsWith("ISO 4014"));
  EXPECT_EQ((*found)->source.known, Known::second_hand);
}

TEST(HeadFace, IsRefusedByANameThatNoTableHas) {
  const Problem problem = problem_of(face("hexx", Part::head, "M10"));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_EQ(problem.code, "no-such-name");
  EXPECT_EQ(problem.message, "that names no head");
  EXPECT_THAT(problem.hint, StartsWith("did you mean hex? "));
}

TEST(HeadFace, OfANutIsRefusedByTheNameOfAHead) {
  const Problem problem = problem_of(face("socket", Part::nut, "M10"));
  EXPECT_EQ(problem.message, "that names no nut");
  EXPECT_THAT(problem.hint, HasSubstr("known are flange, hex, hex-old"));
}

TEST(HeadFace, IsRefusedByAnUnknownNameEvenForASizeWithoutFace) {
  EXPECT_EQ(problem_of(face("wing", Part::head, "M9")).code, "no-such-name");
}

TEST(HeadFace, HasTheNamesOfTheTables) {
  const Catalogue catalogue;
  EXPECT_THAT(face_names(catalogue, Part::head),
              ElementsAre("button", "button-flange", "countersunk", "flange", "flange-din-6921", "flange-en-1662",
                          "flange-iso-4162", "flange-jis-b-1189", "hex", "hex-bs-1083", "hex-jis", "hex-jis-small",
                          "hex-old", "socket", "socket-low", "socket-low-pilot"));
  EXPECT_THAT(face_names(catalogue, Part::nut), ElementsAre("flange", "hex", "hex-old"));
}

TEST(Hole, IsTheUsualOneOfItsStandard) {
  for (const HoleRow& row : k_holes) {
    const auto found = hole(row.thread);
    ASSERT_TRUE(found.has_value()) << row.thread;
    EXPECT_NEAR(quantity::in_millimetres(found->diameter), row.millimetres, 1e-9) << row.thread;
  }
}

TEST(Hole, SaysItsStandardInWords) {
  for (const HoleRow& row : k_holes)
    EXPECT_EQ(hole(row.thread)->words, row.words) << row.thread;
}

TEST(Hole, IsNoneForASizeThatNoTableLists) {
  for (const char* thread : {"M9", "5/16 BSW", "2 BA", "1/4 BSC"})
    EXPECT_FALSE(hole(thread).has_value()) << thread;
}

} // namespace
} // namespace clampwright::specdb
