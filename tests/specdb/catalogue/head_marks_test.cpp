// SPDX-License-Identifier: GPL-3.0-or-later
//
// The table of marks against the tables of classes.
#include <algorithm>
#include <array>
#include <set>

#include <gtest/gtest.h>

#include "specdb/catalogue/head_marks.hpp"
#include "specdb/catalogue/nuts.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/threads.hpp"

namespace clampwright::specdb {
namespace {

// Is there a thread for which `clamp --class` takes it?
bool clamp_reads(const Catalogue& catalogue, const std::string& class_name) {
  constexpr std::array k_threads{"M4", "M10", "M18", "#10-32", "3/8-24", "1 1/8-7"};
  return std::ranges::any_of(k_threads, [&](const char* thread) {
    return find_strength(catalogue, class_name, find_thread(catalogue, thread)->thread).has_value();
  });
}

TEST(HeadMarks, NameBoltClassesThatClampReadsOrSayThatItDoesNot) {
  const Catalogue catalogue;
  for (const HeadMark& row : head_marks(catalogue))
    if (row.class_name && row.part != "nut") {
      EXPECT_EQ(clamp_reads(catalogue, *row.class_name), row.in_tables) << row.mark << ", " << *row.class_name;
    }
}

TEST(HeadMarks, NameNutClassesThatHaveTheirPairingOrSayThatTheyHaveNone) {
  const Catalogue catalogue;
  for (const HeadMark& row : head_marks(catalogue))
    if (row.class_name && row.part == "nut") {
      EXPECT_EQ(find_nut_pairing(catalogue, *row.class_name).has_value(), row.in_tables)
          << row.mark << ", " << *row.class_name;
    }
}

// ISO 898-1 and ISO 3506-1 mark by the class itself; an aircraft bolt bears no class, its marks name the kind of steel.
TEST(HeadMarks, HoldEveryMetricClass) {
  const Catalogue catalogue;
  std::set<std::string> marks;
  for (const HeadMark& row : head_marks(catalogue))
    marks.insert(row.mark);
  for (const std::string& name : class_names(catalogue))
    if (!name.starts_with("SAE") && !name.starts_with("ASTM") && !name.ends_with("ksi")) {
      EXPECT_TRUE(marks.contains(name)) << name;
    }
}

TEST(HeadMarks, StandOnAPartThatIsNamed) {
  for (const HeadMark& row : head_marks(Catalogue()))
    EXPECT_TRUE(row.is_on("bolt") || row.is_on("screw") || row.is_on("stud") || row.is_on("nut")) << row.mark;
}

TEST(HeadMark, IsOnEveryPartOfItsRow) {
  HeadMark mark{};
  mark.part = "bolt screw";
  EXPECT_TRUE(mark.is_on("bolt"));
  EXPECT_TRUE(mark.is_on("screw"));
  EXPECT_FALSE(mark.is_on("nut"));
  EXPECT_FALSE(mark.is_on("crew"));
}

TEST(MarkKey, IsTheSameHoweverAMarkIsWritten) {
  EXPECT_EQ(mark_key("A2 70"), mark_key("a2-70"));
  EXPECT_EQ(mark_key("bar at 8 o'clock"), mark_key("Bar at 8 oclock"));
  EXPECT_NE(mark_key("8.8"), mark_key("88"));
}

} // namespace
} // namespace clampwright::specdb
