// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "tests/cli/demo_workshop.hpp"
#include "tests/cli/refused.hpp"

namespace clampwright::cli {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using namespace testing_support;

struct Row {
  const char* rotation;
  const char* side;
  const char* driver;
  const char* hand;
};

// HAND-01, 02 and 04 of the reference collection, and each again as seen from the other side.
// clang-format off
constexpr Row k_rows[] = {
    {"clockwise",     "free-end",    "shaft", "left"},  {"anticlockwise", "engine-side", "shaft", "left"},
    {"cw",            "free-end",    "part",  "right"}, {"ccw",           "engine-side", "part",  "right"},
    {"acw",           "free-end",    "part",  "left"},  {"CW",            "engine-side", "part",  "left"},
    {"anticlockwise", "free-end",    "shaft", "right"}, {"clockwise",     "engine-side", "shaft", "right"},
};

const Refused k_refused[] = {
    {"hand",                                                            64, "missing",        "--rotation, --seen-from, --driver are missing"},
    {"hand --rotation clockwise --driver shaft",                        64, "missing",        "--seen-from is missing; understood: rotation clockwise, driver shaft"},
    {"hand --rotation clockwise --driver shaft",                        64, "missing",        "a rotation says nothing without the side"},
    {"hand --rotation clockwise --seen-from free-end",                  64, "missing",        "--driver"},
    {"hand --rotation left --seen-from free-end --driver shaft",        65, "not-understood", "clockwise or anticlockwise"},
    {"hand --rotation cw --seen-from above --driver shaft",             65, "not-understood", "free-end or engine-side"},
    {"hand --rotation cw --seen-from free-end --driver belt",           65, "not-understood", "shaft or part"},
    {"hand --rotation cw --seen-from free-end --driver shaft --bore 20mm", 64, "missing",     "--shaft is missing"},
    {"hand --rotation cw --seen-from free-end --driver shaft --bore 19mm --shaft 20mm", 65, "out-of-range", "a bore of 19 mm on a shaft of 20 mm"},
};
// clang-format on

nlohmann::json hand_of(const Row& row) {
  return answer_of({"hand", "--rotation", row.rotation, "--seen-from", row.side, "--driver", row.driver});
}

} // namespace

TEST(HandCommand, HasTheHandFromEitherSide) {
  for (const Row& row : k_rows)
    EXPECT_EQ(hand_of(row)["result"]["hand"], row.hand) << row.rotation << row.side << row.driver;
}

TEST(HandCommand, NeverAnswersWithoutALookAtTheThread) {
  for (const Row& row : k_rows) {
    EXPECT_THAT(codes_of(hand_of(row)), Contains("look-at-thread"));
    const Printed text = run_cli({"hand", "--rotation", row.rotation, "--seen-from", row.side, "--driver", row.driver});
    EXPECT_THAT(text.out, HasSubstr("look at the thread itself"));
  }
}

TEST(HandCommand, RefusesWhatItCannotAnswerAndSaysWhatToWrite) {
  for (const Refused& refused : k_refused)
    expect_refused(refused);
}

TEST(HandCommand, SaysWhatReversesTheRule) {
  std::vector<std::string> names;
  const auto answer = hand_of(k_rows[0]);
  for (const auto& reversal : answer["result"]["reversed_by"])
    names.push_back(reversal["name"]);
  EXPECT_THAT(names, AllOf(Contains("braking"), Contains("kick-back"), Contains("single-cylinder")));
}

// Belt pull on a part that drives the shaft: precession works against the hand of the drive.
TEST(HandCommand, SaysWhetherPrecessionWorksWithTheDrive) {
  EXPECT_EQ(hand_of(k_rows[0])["result"]["precession"]["hub"]["with_the_drive"], true);
  EXPECT_EQ(hand_of(k_rows[2])["result"]["precession"]["hub"]["with_the_drive"], false);
  const auto bound = answer_of(words_of(
      "hand --rotation cw --seen-from free-end --driver shaft --bore 20.02mm --shaft 20mm"))["result"]["precession"];
  EXPECT_NEAR(bound["pin"]["most_turns_per_turn"].get<double>(), 0.001, 1e-9);
  EXPECT_NEAR(bound["hub"]["most_turns_per_turn"].get<double>(), 0.02 / 20.02, 1e-9);
}

using HandOfAJoint = DemoWorkshop;

TEST_F(HandOfAJoint, TakesTheDriveFromTheRecord) {
  const auto hub = json_here({"hand", "--joint", "pump/clutch-hub"});
  EXPECT_EQ(hub["result"]["hand"], "left");
  EXPECT_EQ(hub["result"]["agrees"], true);
  const auto drum = json_here({"hand", "--joint", "winch/drum-nut"});
  EXPECT_EQ(drum["result"]["hand_on_record"], "right");
  EXPECT_EQ(drum["result"]["agrees"], false);
  EXPECT_TRUE(has_code(drum, "hand-doubt"));
}

TEST_F(HandOfAJoint, AsksByNameForWhatTheRecordLacks) {
  const Printed printed = run_here({"hand", "--joint", "pump/coil"});
  EXPECT_EQ(printed.exit, ExitCode::usage);
  EXPECT_THAT(printed.err, AllOf(HasSubstr("--rotation, --seen-from, --driver"), HasSubstr("pump/coil")));
}

// A side that was typed does not turn a rotation that was not.
TEST_F(HandOfAJoint, DoesNotTurnTheRecordsRotation) {
  const Printed printed = run_here({"hand", "--joint", "pump/clutch-hub", "--seen-from", "engine-side"});
  EXPECT_EQ(printed.exit, ExitCode::usage);
  EXPECT_THAT(printed.err, HasSubstr("--rotation"));
}

} // namespace clampwright::cli
