// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/search.hpp"

#include <iostream>
#include <random>

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/sql/query.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

using testing::ElementsAre;
using testing::ElementsAreArray;
using testing::UnorderedElementsAreArray;
using Slugs = std::vector<std::string>;

Slugs slugs(const Workshop& workshop, std::string_view words) {
  Slugs out;
  for (const Hit& hit : search(workshop, words))
    out.push_back(hit.joint);
  return out;
}

struct Row {
  const char* words;
  Slugs slugs;
};

const Slugs k_pump{"pump/clutch-hub", "pump/head-nuts", "pump/mounts"};
const Slugs k_winch{"winch/pulley-bolt", "winch/frame-bolts", "winch/brake-pivot"};

// clang-format off
const Row k_rows[] = {
    {"clutch",            {"pump/clutch-hub"}},
    {"CLUTCH",            {"pump/clutch-hub"}},
    {"clutch hub",        {"pump/clutch-hub"}},
    {"hub clutch",        {"pump/clutch-hub"}},
    {"pump/clutch-hub",   {"pump/clutch-hub"}},
    {"clu",               {"pump/clutch-hub"}}, // beginnings of words
    {"clu hu",            {"pump/clutch-hub"}},
    {"c h",               {"pump/clutch-hub", "pump/head-nuts"}}, // c(lutch) h(ub); c(ylinder) h(ead)
    {"marrow",            k_pump},
    {"tallisk",           k_winch},
    {"sheave",            {"winch/pulley-bolt"}}, // another word for it
    {"M10x1.25",          {"winch/pulley-bolt"}},
    {"m10X1.25",          {"winch/pulley-bolt"}},
    {"M10",               {"pump/mounts", "winch/pulley-bolt"}},
    {"3/8-24",            {"winch/frame-bolts"}},
    {"3/8-24 UNF",        {"winch/frame-bolts"}},
    {"M14x1.5-LH",        {"pump/clutch-hub"}},
    {"M8 pivot",          {"winch/brake-pivot"}},
    {"left-hand",         {"pump/clutch-hub"}},
    {"two-stroke clutch", {"pump/clutch-hub"}},
    {"  clutch \t hub ",  {"pump/clutch-hub"}},
    {"clutch\u00A0hub",   {"pump/clutch-hub"}}, // no-break space
    {"clütch",            {"pump/clutch-hub"}}, // accents do not matter
    {"Pümp hüb",          {"pump/clutch-hub"}},
    {"\"clutch\"",        {"pump/clutch-hub"}}, // quotes and operators are signs like others
    {"clutch\"",          {"pump/clutch-hub"}},
    {"clutch *",          {"pump/clutch-hub"}},
    {"clutch - hub",      {"pump/clutch-hub"}},
    {"(clutch)",          {"pump/clutch-hub"}},
    {"clutch*",           {"pump/clutch-hub"}},
    {"^clutch",           {"pump/clutch-hub"}},
    {"+clutch",           {"pump/clutch-hub"}},
    {"{clutch}",          {"pump/clutch-hub"}},
    {"name:clutch",       {}}, // no column is meant
    {"clutch AND hub",    {}}, // "and" is a word, and no joint has it
    {"clutch OR winch",   {}},
    {"clutch NOT hub",    {}},
    {"NEAR(clutch hub)",  {}},
    {"lutch",             {}}, // not the beginning
    {"propeller",         {}},
    {"clutch propeller",  {}},
    {"Schraube",          {}},
    {"écrou",             {}},
    {"螺栓",              {}},
    {"",                  {}},
    {" ",                 {}},
    {"\"",                {}},
    {"\"\"\"",            {}},
    {"*",                 {}},
    {"-",                 {}},
    {"' OR 1=1 --",       {}},
    {"%",                 {}},
};

const Row k_signs[] = { // a word without letter or digit says nothing
    {"clutch – hub",      {"pump/clutch-hub"}},
    {"clutch … hub",      {"pump/clutch-hub"}},
    {"clutch · hub",      {"pump/clutch-hub"}},
    {"„clutch“ → hub",    {"pump/clutch-hub"}},
    {"clutch € hub",      {"pump/clutch-hub"}},
};
// clang-format on

TEST(Search, FindsEveryJointThatHasAllTheWords) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const Row& row : k_rows)
    EXPECT_THAT(slugs(workshop, row.words), UnorderedElementsAreArray(row.slugs)) << row.words;
}

TEST(Search, PassesOverWordsWithoutLetterOrDigit) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const Row& row : k_signs)
    EXPECT_THAT(slugs(workshop, row.words), ElementsAreArray(row.slugs)) << row.words;
}

TEST(Search, ShowsAJointAtAGlance) {
  const test::DemoFile demo;
  const auto hits = search(demo.open(), "mount");
  ASSERT_EQ(hits.size(), 1U);
  EXPECT_EQ(hits[0].joint, "pump/mounts");
  EXPECT_EQ(hits[0].machine, "Pump Marrowfen P3");
  EXPECT_EQ(hits[0].assembly, "frame");
  EXPECT_EQ(hits[0].name, "engine mount bolts");
  EXPECT_EQ(hits[0].thread, "M10");
  EXPECT_EQ(hits[0].torque_printed, "3,4 mkg");
}

TEST(Search, ShowsNoTorqueWhereThePageGivesNone) {
  const test::DemoFile demo;
  const auto hits = search(demo.open(), "pivot");
  ASSERT_EQ(hits.size(), 1U);
  EXPECT_FALSE(hits[0].torque_printed.has_value());
}

TEST(Search, PutsAJointOfThatNameBeforeTheRest) {
  const test::DemoFile demo;
  // "engine" is in the name of the mounts, and in assembly or machine of every joint of the winch.
  const Slugs found = slugs(demo.open(), "engine");
  ASSERT_EQ(found.size(), 4U);
  EXPECT_EQ(found[0], "pump/mounts");
}

// Two machines. The anvil crane's joints come first in the file, the saw's anvil bolt last.
void fill(SQLite::Database& database) {
  run(database, "INSERT INTO machine VALUES (1,'crane','Anvil crane','crane',NULL,NULL,NULL,NULL),"
                "(2,'saw','Saw','saw',NULL,NULL,NULL,NULL)");
  run(database, "INSERT INTO assembly VALUES (1,1,'hook'),(2,1,'anvil'),(3,2,'blade')");
  run(database, "INSERT INTO joint VALUES "
                "(1,'crane/a',1,'hook bolt','bolt',1,'M8','8.8','head',NULL,NULL,NULL,NULL,'none',0,'x',NULL,''),"
                "(2,'crane/b',1,'hook nut','bolt',1,'M8','8.8','head',NULL,NULL,NULL,NULL,'none',0,'x',NULL,''),"
                "(3,'crane/c',2,'hook pin','bolt',1,'M8','8.8','head',NULL,NULL,NULL,NULL,'none',0,'x',NULL,''),"
                "(4,'saw/d',3,'anvil bolt','bolt',1,'M8','8.8','head',NULL,NULL,NULL,NULL,'none',0,'x',NULL,''),"
                "(5,'saw/e',3,'blade bolt','bolt',1,'M8','8.8','head',NULL,NULL,NULL,NULL,'none',0,'x',NULL,'')");
  run(database, "INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) SELECT j.id, j.name, a.name, "
                "m.name, j.thread, j.slug FROM joint j JOIN assembly a ON a.id = j.assembly_id JOIN machine m ON m.id "
                "= a.machine_id");
}

TEST(Search, PutsNameBeforeAssemblyBeforeMachine) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", fill).has_value());
  EXPECT_THAT(slugs(*Workshop::open(scratch / "w"), "anvil"), ElementsAre("saw/d", "crane/c", "crane/a", "crane/b"));
}

TEST(Search, ShowsAJointThatHasNoFigureYet) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", fill).has_value());
  const auto hits = search(*Workshop::open(scratch / "w"), "blade bolt");
  ASSERT_EQ(hits.size(), 2U); // the anvil bolt is in the assembly blade
  EXPECT_EQ(hits[0].joint, "saw/e");
  EXPECT_FALSE(hits[0].torque_printed.has_value());
}

TEST(Search, TakesThousandsOfWords) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  std::string words;
  for (int i = 0; i < 3000; ++i)
    words += "c ";
  EXPECT_NO_THROW((void)search(workshop, words));
  EXPECT_NO_THROW((void)search(workshop, std::string(100000, 'c')));
  EXPECT_NO_THROW((void)search(workshop, std::string(100000, '"')));
}

TEST(Search, ThrowsForNoBytesAtAll) {
  constexpr std::uint32_t k_seed = 19480611;
  std::cout << "seed " << k_seed << '\n';
  std::mt19937 random(k_seed);
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  // Any byte, and the signs that mean something to the index more often than chance would have it.
  constexpr std::string_view k_signs_of_fts = "\"\"**()^:-+{}' ANDORNEAR,.\\clutch";
  std::uniform_int_distribution<int> any_byte(0, 255);
  std::uniform_int_distribution<std::size_t> any_sign(0, k_signs_of_fts.size() - 1);
  std::uniform_int_distribution<std::size_t> any_length(0, 40);
  for (int trial = 0; trial < 3000; ++trial) {
    std::string words;
    const std::size_t length = any_length(random);
    for (std::size_t i = 0; i < length; ++i)
      words += any_byte(random) % 2 == 0 ? k_signs_of_fts[any_sign(random)] : static_cast<char>(any_byte(random));
    EXPECT_NO_THROW((void)search(workshop, words)) << "trial " << trial;
  }
}

} // namespace
} // namespace clampwright::specdb
