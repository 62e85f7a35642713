// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/search.hpp"

#include <set>
#include <tuple>

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/sql/query.hpp"
#include "tests/specdb/demo_file.hpp"
#include "tests/specdb/small_workshop.hpp"

namespace clampwright::specdb {
namespace {

using testing::AllOf;
using testing::Each;
using testing::ElementsAre;
using testing::ElementsAreArray;
using testing::SizeIs;
using testing::StartsWith;
using testing::UnorderedElementsAreArray;
using Slugs = std::vector<std::string>;

Slugs slugs(const Workshop& workshop, std::string_view words) {
  Slugs out;
  for (const Hit& hit : search(workshop, words).hits)
    out.push_back(hit.joint);
  return out;
}

struct Row {
  const char* words;
  Slugs slugs;
};

// Words that begin with c and with h: clutch hub, cylinder head (nuts and spark plug), crankcase halves, clevis and
// hook, chain cover with button heads.
const Slugs k_c_and_h{"pump/clutch-hub", "pump/head-nuts", "pump/spark-plug",
                      "pump/crankcase",  "winch/clevis",   "winch/chain-cover"};

// By the words of the demo's records (specdb/demo), looked through by hand.
// clang-format off
const Row k_rows[] = {
    {"clutch",            {"pump/clutch-hub"}},
    {"CLUTCH",            {"pump/clutch-hub"}},
    {"clutch hub",        {"pump/clutch-hub"}},
    {"hub clutch",        {"pump/clutch-hub"}},
    {"pump/clutch-hub",   {"pump/clutch-hub"}},
    {"clu",               {"pump/clutch-hub"}}, // beginnings of words
    {"clu hu",            {"pump/clutch-hub"}},
    {"c h",               k_c_and_h},
    {"ostrel",            {"boat/propeller-hub", "boat/cage-clamps", "boat/steering-arm"}}, // a machine by its name
    {"sheave",            {"winch/pulley-bolt"}}, // another word for it
    {"M10x1.25",          {"winch/pulley-bolt"}},
    {"m10X1.25",          {"winch/pulley-bolt"}},
    {"M10",               {"pump/mounts", "winch/pulley-bolt", "winch/drum-cap", "winch/gearbox-foot",
                           "winch/motor-plate", "boat/steering-arm"}}, // the pulley bolt's M10x1.25 begins like it
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
    {"turbine",           {}},
    {"clutch propeller",  {}}, // each is there, on another machine
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
    {"_______",           {}},
    {"clu%",              {"pump/clutch-hub"}}, // no wildcard: the sign says nothing
    {"c%h",               k_c_and_h}, // as "c h"
    {"clutch_hub",        {"pump/clutch-hub"}},
    {"M10 x 1.25",        {"winch/pulley-bolt"}},
    {"M10x 1.25",         {"winch/pulley-bolt"}},
    {"M10 x1,25",         {"winch/pulley-bolt"}},
    {"M10\u00D71.25",     {"winch/pulley-bolt"}},
    {"3/8-24UNF",         {"winch/frame-bolts"}}, // a number is parted from the word behind it
    {"M8pivot",           {"winch/brake-pivot"}},
    {"\"3/8\"-24",        {"winch/frame-bolts"}},
    {"nuts-head",         {"pump/head-nuts"}},
    {"cl\u0301utch",      {"pump/clutch-hub"}}, // an accent of its own behind its letter
    {"\u202Eclutch\u202C", {"pump/clutch-hub"}}, // marks that turn the writing direction round
    {"\U0001F527 clutch", {"pump/clutch-hub"}}, // a picture says nothing
    {"\U0001F527",        {}},
    {"مسمار",             {}},
    {"clutch\n hub\r\n",  {"pump/clutch-hub"}},
    {"clutch\xFF hub\xC3", {"pump/clutch-hub"}}, // bytes that are not UTF-8
    {"\xFF\xFE",          {}},
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

// The pump has 17 joints, the winch 16 (DEMO.md).
TEST(Search, FindsEveryJointOfAMachine) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  EXPECT_THAT(slugs(workshop, "marrow"), AllOf(SizeIs(17), Each(StartsWith("pump/"))));
  EXPECT_THAT(slugs(workshop, "tallisk"), AllOf(SizeIs(16), Each(StartsWith("winch/"))));
}

TEST(Search, PassesOverWordsWithoutLetterOrDigit) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const Row& row : k_signs)
    EXPECT_THAT(slugs(workshop, row.words), ElementsAreArray(row.slugs)) << row.words;
}

TEST(Search, ShowsAJointAtAGlance) {
  const test::DemoFile demo;
  const auto hits = search(demo.open(), "mount").hits;
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
  const auto hits = search(demo.open(), "pivot").hits;
  ASSERT_EQ(hits.size(), 1U);
  EXPECT_FALSE(hits[0].torque_printed.has_value());
}

TEST(Search, PutsAJointOfThatNameBeforeTheRest) {
  const test::DemoFile demo;
  // "engine" is in the name of the mounts, and in assembly or machine of every joint of the winch, which has sixteen.
  const Slugs found = slugs(demo.open(), "engine");
  ASSERT_EQ(found.size(), 17U);
  EXPECT_EQ(found[0], "pump/mounts");
}

struct Place {
  const char *slug, *machine, *assembly, *name;
};

// Two machines. The anvil crane's joints come first in the file, the saw's anvil bolt last.
void fill(SQLite::Database& database) {
  add_machine(database, {.slug = "crane", .name = "Anvil crane", .kind = "crane"});
  add_machine(database, {.slug = "saw", .name = "Saw", .kind = "saw"});
  for (const Place& place :
       {Place{"crane/a", "crane", "hook", "hook bolt"}, Place{"crane/b", "crane", "hook", "hook nut"},
        Place{"crane/c", "crane", "anvil", "hook pin"}, Place{"saw/d", "saw", "blade", "anvil bolt"},
        Place{"saw/e", "saw", "blade", "blade bolt"}}) {
    JointRecord joint = test::small_joint(place.slug, place.machine);
    joint.assembly = place.assembly;
    joint.name = place.name;
    add_joint(database, joint);
  }
}

TEST(Search, PutsNameBeforeAssemblyBeforeMachine) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", fill);
  EXPECT_THAT(slugs(*Workshop::open(scratch / "w"), "anvil"), ElementsAre("saw/d", "crane/c", "crane/a", "crane/b"));
}

TEST(Search, GivesNoMoreThanIsAskedForAndSaysSo) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", fill);
  const Workshop workshop = std::move(*Workshop::open(scratch / "w"));
  for (const auto& [most, given, more] : {std::tuple{0U, 0U, true}, std::tuple{1U, 1U, true}, std::tuple{3U, 3U, true},
                                          std::tuple{4U, 4U, false}, std::tuple{50U, 4U, false}}) {
    const Found found = search(workshop, "anvil", most); // four joints have it
    EXPECT_EQ(found.hits.size(), given) << most;
    EXPECT_EQ(found.more, more) << most;
  }
  EXPECT_EQ(search(workshop, "anvil", 1).hits.at(0).joint, "saw/d");
  EXPECT_FALSE(search(workshop, "turbine", 1).more);
}

TEST(Search, GivesNoMoreThanIsAskedForOfWhatWasMeant) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", fill);
  const Found found = search(*Workshop::open(scratch / "w"), "anvli", 2);
  EXPECT_EQ(found.read_as, "anvil");
  EXPECT_EQ(found.hits.size(), 2U);
  EXPECT_TRUE(found.more);
}

// More joints fit than are weighed one by one: a thousand of the machine "anvil crane", then one of that assembly, one
// with the word among its others, and the last of all by its name.
TEST(Search, PutsNamesFirstWhereVeryManyFit) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", [](SQLite::Database& database) {
    add_machine(database, {.slug = "crane", .name = "Anvil crane", .kind = "crane"});
    add_machine(database, {.slug = "saw", .name = "Saw", .kind = "saw"});
    for (int i = 0; i < 1000; ++i)
      add_joint(database, test::small_joint(fmt::format("crane/{}", i), "crane"));
    JointRecord assembly = test::small_joint("saw/assembly", "saw");
    assembly.assembly = "anvil";
    JointRecord words = test::small_joint("saw/words", "saw");
    words.words = "anvil";
    JointRecord name = test::small_joint("saw/name", "saw");
    name.name = "anvil bolt";
    for (const JointRecord& joint : {assembly, words, name})
      add_joint(database, joint);
  });
  const Workshop workshop = std::move(*Workshop::open(scratch / "w"));
  const Found found = search(workshop, "anv", 4);
  ASSERT_EQ(found.hits.size(), 4U);
  EXPECT_TRUE(found.more);
  EXPECT_EQ(found.hits[0].joint, "saw/name");
  EXPECT_EQ(found.hits[1].joint, "saw/words");
  EXPECT_EQ(found.hits[2].joint, "crane/0");
  EXPECT_EQ(found.hits[3].joint, "crane/1");
  const Found all = search(workshop, "anvil", 2000);
  EXPECT_EQ(all.hits.size(), 1003U); // each once
  EXPECT_FALSE(all.more);
  std::set<std::string> different;
  for (const Hit& hit : all.hits)
    different.insert(hit.joint);
  EXPECT_EQ(different.size(), 1003U);
}

TEST(Search, ForgetsAWordThatNoJointHasAnyMore) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", [](SQLite::Database& database) {
    add_machine(database, {.slug = "m", .name = "Saw", .kind = "saw"});
    JointRecord joint = test::small_joint("m/j", "m");
    joint.name = "cluthc hub";
    add_joint(database, joint);
    joint.name = "clutch hub";
    revise_joint(database, joint);
  });
  const Found found = search(*Workshop::open(scratch / "w"), "cluthc");
  EXPECT_EQ(found.read_as, "clutch"); // the slip that was mended does not stand in the way
  EXPECT_EQ(found.hits.size(), 1U);
}

TEST(Search, KeepsAWordThatAnotherJointHas) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", [](SQLite::Database& database) {
    add_machine(database, {.slug = "m", .name = "Saw", .kind = "saw"});
    for (const char* slug : {"m/a", "m/b"}) {
      JointRecord joint = test::small_joint(slug, "m");
      joint.name = "flywheel nut";
      add_joint(database, joint);
    }
    JointRecord joint = test::small_joint("m/a", "m");
    joint.name = "rotor nut";
    revise_joint(database, joint);
  });
  const Workshop workshop = std::move(*Workshop::open(scratch / "w"));
  EXPECT_EQ(search(workshop, "flywehel").hits.size(), 1U);
  EXPECT_EQ(search(workshop, "rotro").hits.size(), 1U);
}

TEST(Search, ShowsAJointThatHasNoFigureYet) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", [](SQLite::Database& database) {
    fill(database);
    run(database, "DELETE FROM figure");
  });
  const auto hits = search(*Workshop::open(scratch / "w"), "blade bolt").hits;
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

TEST(Search, TakesAMegabyte) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  std::string words;
  while (words.size() < 1'000'000)
    words += "clutch hub plly M10x1.25 \U0001F527 ";
  EXPECT_NO_THROW((void)search(workshop, words));
}

TEST(Search, PassesOverZeroBytes) {
  const test::DemoFile demo;
  EXPECT_THAT(slugs(demo.open(), std::string_view("clu\0tch\0 hub", 12)), ElementsAre("pump/clutch-hub"));
}

TEST(Search, SaysThatNothingWasTakenForAnythingElse) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const Row& row : k_rows)
    EXPECT_EQ(search(workshop, row.words).read_as, "") << row.words;
}

} // namespace
} // namespace clampwright::specdb
