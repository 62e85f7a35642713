// SPDX-License-Identifier: GPL-3.0-or-later
//
// A demo workshop cut short at many places and with bits turned over: never a crash, never "our fault". A bit turned
// over inside a value is not noticed before records are chained; the test records how often that happens.
#include <random>
#include <set>

#include <gmock/gmock.h>

#include "tests/cli/workshop_files.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;

// With the workshop damaged nothing else may come out: answered, check failed, damaged, no such joint, not ours.
bool is_right_exit(ExitCode exit) {
  return exit == ExitCode::answered || exit == ExitCode::check_failed || exit == ExitCode::data_error ||
         exit == ExitCode::no_such || exit == ExitCode::wrong_file;
}

const Arguments k_readers[] = {{"show", "pump/clutch-hub", "--json"},
                               {"show", "pump/head-nuts", "--wrench", "A", "--json"},
                               {"find", "clucth", "nut", "--json"},
                               {"vet", "--json"}};

struct Seen {
  std::vector<ExitCode> exits;
  std::vector<nlohmann::json> torques; // of the joints that were shown; null for a refusal
};

Seen read_all(const fs::path& file) {
  Seen seen;
  for (Arguments reader : k_readers) {
    reader.insert(reader.begin(), {"--workshop", file.string()});
    const Printed printed = run_in("/nowhere", reader);
    seen.exits.push_back(printed.exit);
    const auto document = json_of(printed);
    seen.torques.push_back(printed.exit == ExitCode::answered && document["result"].contains("torque")
                               ? document["result"]["torque"]
                               : nlohmann::json(nullptr));
  }
  return seen;
}

TEST(CutWorkshop, IsNeverShownNorOurFault) {
  const std::string& whole = demo_bytes();
  std::set<std::size_t> lengths;
  for (std::size_t length = 512; length < whole.size(); length += 512)
    if (length % 4096 == 0 || length % 2560 == 0) lengths.insert(length);
  for (const std::size_t length : {1, 15, 16, 17, 59, 64, 71, 72, 99, 100, 101, 511, 513, 1023, 4095, 4097, 8191, 8193})
    lengths.insert(length);
  lengths.insert(whole.size() - 1);
  ASSERT_GE(lengths.size(), 40U);
  const test::Scratch scratch;
  for (const std::size_t length : lengths) {
    test::write_bytes(scratch / "w", std::string_view(whole).substr(0, length));
    for (const ExitCode exit : read_all(scratch / "w").exits)
      EXPECT_TRUE(exit == ExitCode::data_error || exit == ExitCode::wrong_file)
          << length << ": " << static_cast<int>(exit);
    EXPECT_EQ(test::bytes_of(scratch / "w").size(), length);
    EXPECT_EQ(scratch.names().size(), 1U) << length;
  }
}

// In parts, each from a seed of its own, so that a machine with several cores shares them out.
class WorkshopWithABitTurnedOver : public testing::TestWithParam<unsigned> {};

TEST_P(WorkshopWithABitTurnedOver, IsNeverOurFault) {
  const std::string& whole = demo_bytes();
  const test::Scratch scratch;
  test::write_bytes(scratch / "w", whole);
  const Seen right = read_all(scratch / "w");
  std::mt19937 random(GetParam());
  int refused = 0;
  int changed = 0;
  constexpr int k_turns = 25;
  for (int turn = 0; turn < k_turns; ++turn) {
    std::string bytes = whole;
    // One in three among the first pages, where the marks and the description of the tables are.
    const std::size_t at = random() % (turn % 3 == 0 ? 20480 : whole.size());
    const auto bit = static_cast<char>(1U << random() % 8);
    bytes[at] = static_cast<char>(bytes[at] ^ bit);
    test::write_bytes(scratch / "w", bytes);
    const Seen seen = read_all(scratch / "w");
    bool is_refused = false;
    for (std::size_t i = 0; i < seen.exits.size(); ++i) {
      EXPECT_TRUE(is_right_exit(seen.exits[i]))
          << "byte " << at << " reader " << i << ": " << static_cast<int>(seen.exits[i]);
      is_refused |= seen.exits[i] != right.exits[i];
      if (!seen.torques[i].is_null() && seen.torques[i] != right.torques[i]) ++changed;
    }
    refused += is_refused ? 1 : 0;
    EXPECT_TRUE(test::bytes_of(scratch / "w") == bytes) << at;
    EXPECT_EQ(scratch.names().size(), 1U) << at;
  }
  RecordProperty("noticed", refused);
  RecordProperty("torques_changed", changed);
}

INSTANTIATE_TEST_SUITE_P(Parts, WorkshopWithABitTurnedOver, testing::Range(20260101U, 20260109U));

} // namespace
} // namespace clampwright::cli
