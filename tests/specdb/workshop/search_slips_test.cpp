// SPDX-License-Identifier: GPL-3.0-or-later
//
// What `find` forgives, on a small workshop whose words are those of an engine.
#include "specdb/workshop/search.hpp"

#include <array>

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/sql/query.hpp"
#include "tests/specdb/scratch.hpp"
#include "tests/specdb/small_workshop.hpp"

namespace clampwright::specdb {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;
using Slugs = std::vector<std::string>;

struct Joint {
  const char *slug, *name, *assembly, *machine, *thread, *words;
};

// clang-format off
constexpr std::array k_joints{
    Joint{"pump/flywheel",  "flywheel nut",        "ignition", "pump",  "M10x1.25",   "magneto rotor"},
    Joint{"pump/exhaust",   "exhaust flange nuts", "exhaust",  "pump",  "M8",         "silencer manifold"},
    Joint{"pump/head",      "cylinder head nuts",  "cylinder", "pump",  "M8",         "studs gasket"},
    Joint{"winch/pulley",   "drive pulley bolt",   "engine",   "winch", "M10",        "belt sheave"},
    Joint{"winch/cover",    "cover screws",        "gearbox",  "winch", "10-32 UNF",  "lid"},
    Joint{"winch/clamp",    "clamp screws",        "gearbox",  "winch", "10-24 UNC",  "lug"},
    Joint{"winch/crank",    "pipe écrou",          "boîtier",  "winch", "M14x1.5-LH", "löschkupplung"},
};
// clang-format on

void fill(SQLite::Database& database) {
  for (const char* machine : {"pump", "winch"})
    add_machine(database, {.slug = machine, .name = machine, .kind = machine});
  for (const Joint& row : k_joints) {
    JointRecord joint = test::small_joint(row.slug, row.machine);
    joint.name = row.name;
    joint.assembly = row.assembly;
    joint.thread = row.thread;
    joint.words = row.words;
    add_joint(database, joint);
  }
}

class Slips : public testing::Test {
 protected:
  void SetUp() override { test::make_small_workshop(scratch_ / "w", fill); }
  [[nodiscard]] Found find(std::string_view words) const { return search(*Workshop::open(scratch_ / "w"), words); }
  [[nodiscard]] Slugs slugs(std::string_view words) const {
    Slugs out;
    for (const Hit& hit : find(words).hits)
      out.push_back(hit.joint);
    return out;
  }
  test::Scratch scratch_;
};

struct Row {
  const char* words;
  const char* first;
  const char* read_as;
};

// clang-format off
constexpr Row k_rows[] = {
    {"drive plly",          "winch/pulley",  "drive pulley"},
    {"drvie pulley",        "winch/pulley",  "drive pulley"},
    {"flywheal",            "pump/flywheel", "flywheel"},
    {"flywhea",             "pump/flywheel", "flywheel"},       // a beginning with a slip
    {"exhuast nu",          "pump/exhaust",  "exhaust nu"},     // the second word was a beginning already
    {"EXHUAST NUTS",        "pump/exhaust",  "exhaust nuts"},
    {"silenser",            "pump/exhaust",  "silencer"},
    {"sillencer",           "pump/exhaust",  "silencer"},
    {"gaskett",             "pump/head",     "gasket"},
    {"headnuts",            "pump/head",     "head nuts"},      // a space missing
    {"headnut",             "pump/head",     "head nut"},
    {"fly wheel",           "pump/flywheel", "flywheel"},       // one too many
    {"nut fly wheel",       "pump/flywheel", "nut flywheel"},
    {"ex haust nuts",       "pump/exhaust",  "exhaust nuts"},
    {"M 10 pulley",         "winch/pulley",  "m10 pulley"},
    {"flywheal M10x1.25",   "pump/flywheel", "flywheel m10x1 25"},
    {"exhuast-flnge",       "pump/exhaust",  "exhaust flange"}, // signs part words
    {"(exhuast) * \"nuts\"", "pump/exhaust", "exhaust nuts"},
    {"ékhaust",             "pump/exhaust",  "exhaust"},
    {"ecru",                "winch/crank",   "ecrou"},          // stored with an accent
    {"loschkuplung",        "winch/crank",   "loschkupplung"},
};
// clang-format on

TEST_F(Slips, AreForgivenAndSaid) {
  for (const Row& row : k_rows) {
    const Found found = find(row.words);
    ASSERT_FALSE(found.hits.empty()) << row.words;
    EXPECT_EQ(found.hits.front().joint, row.first) << row.words;
    EXPECT_EQ(found.read_as, row.read_as) << row.words;
  }
}

TEST_F(Slips, AreNotLookedForWhereTheIndexFinds) {
  for (const char* words : {"flywheel", "fly", "exhaust nu", "M10x1.25", "10-32", "screw"}) {
    EXPECT_FALSE(find(words).hits.empty()) << words;
    EXPECT_EQ(find(words).read_as, "") << words;
  }
}

TEST_F(Slips, NameTheWordsThatBeginNothing) {
  EXPECT_THAT(find("drive plly").unknown, ElementsAre("plly"));
  EXPECT_THAT(find("drvie plly").unknown, ElementsAre("drvie", "plly"));
  EXPECT_THAT(find("drive pulley").unknown, IsEmpty());
}

TEST_F(Slips, AreNeverSeenInANumber) {
  // M14 and M10 are there; M12, M6, M15x1.5, 10-28 and 12-24 are not, and must find nothing.
  for (const char* words : {"M12", "M6", "M15x1.5", "M10x1.5", "10-28", "12-24", "10-23", "M7 exhaust", "M12 flywheal"})
    EXPECT_THAT(slugs(words), IsEmpty()) << words;
  EXPECT_THAT(slugs("10-32"), ElementsAre("winch/cover"));
  EXPECT_THAT(slugs("10-24 scrwes"), ElementsAre("winch/clamp"));
}

TEST_F(Slips, FindNothingWhereOneWordIsNearToNothing) {
  for (const char* words : {"zeppelin", "drive zeppelin", "zeppelin plly", "螺栓 plly", "kettle"})
    EXPECT_THAT(slugs(words), IsEmpty()) << words;
  EXPECT_EQ(find("drive zeppelin").read_as, "");
}

TEST_F(Slips, FindNothingWhereNoJointHasAllThatWasMeant) {
  EXPECT_THAT(slugs("flywheal plly"), IsEmpty()); // each is there, on another joint
}

TEST_F(Slips, TakeEveryWordThatIsEquallyNear) {
  // "lic" is one letter from "lid" of the cover; "lud" one from "lid" and one from "lug".
  EXPECT_THAT(slugs("lic"), ElementsAre("winch/cover"));
  EXPECT_THAT(slugs("lud"), UnorderedElementsAre("winch/cover", "winch/clamp"));
  EXPECT_EQ(find("lud").read_as, "lid/lug");
}

TEST_F(Slips, LeaveOutNearWordsThatDoNotGoWithTheOthers) {
  EXPECT_THAT(slugs("cover lud"), ElementsAre("winch/cover"));
  EXPECT_EQ(find("cover lud").read_as, "cover lid");
}

TEST_F(Slips, AreLookedForFurtherAwayWhereTheNearestDoNotGoWithTheOthers) {
  // "pulle" begins "pulley"; "pullp" is one slip from that. "bult" is one slip from "belt" and "bolt", which that joint
  // has both. Nothing nearer than two slips from "eggine" is "engine": one change; with "M8" no joint has it.
  EXPECT_THAT(slugs("pullp bult"), ElementsAre("winch/pulley"));
  EXPECT_THAT(slugs("eggine M8"), IsEmpty());
}

TEST_F(Slips, AreForgivenInAPlaceThatCannotBeWritten) {
  const Workshop workshop = [&] {
    std::filesystem::permissions(scratch_ / "w", std::filesystem::perms::owner_read);
    return std::move(*Workshop::open(scratch_ / "w"));
  }();
  EXPECT_EQ(search(workshop, "plly").hits.size(), 1U);
  EXPECT_EQ(search(workshop, "plly").hits.size(), 1U); // and again
}

TEST_F(Slips, LeaveTheReaderForbiddenToWrite) {
  const auto workshop = Workshop::open(scratch_ / "w");
  EXPECT_EQ(search(*workshop, "plly").hits.size(), 1U);
  EXPECT_THROW(run(workshop->connection(), "DELETE FROM joint"), SQLite::Exception);
}

} // namespace
} // namespace clampwright::specdb
