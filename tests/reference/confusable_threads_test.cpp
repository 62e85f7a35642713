// SPDX-License-Identifier: GPL-3.0-or-later
//
// Threads that a fitter takes one for the other. Measured a little under its nominal size, with its own pitch, each
// must be named beside the other.
#include "core/thread/gauge.hpp"
#include "tests/reference/tables.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::test {
namespace {

using testing::Contains;
using testing::IsEmpty;
using thread::Candidate;
using thread::KnownThread;
using thread::Measurement;

struct Pair {
  const char* one;
  const char* other;
};

constexpr std::array k_pairs = std::to_array<Pair>({
#include "tests/reference/confusable_threads.inc"
});

const std::vector<KnownThread>& known_threads() {
  static const std::vector<KnownThread> list = [] {
    std::vector<KnownThread> out;
    for (const specdb::ThreadEntry& entry : specdb::all_threads(catalogue()))
      out.push_back({entry.thread, entry.limits, entry.choice});
    return out;
  }();
  return list;
}

// The thread, 0.08 mm under its nominal size.
std::vector<std::string> look_alikes(const char* designation) {
  const thread::Thread thread = thread_named(designation).thread;
  const Measurement measured{thread.diameter - quantity::millimetres(0.08), thread.pitch};
  const auto candidates = thread::gauge(known_threads(), measured).value();
  const auto found =
      std::ranges::find_if(candidates, [&](const Candidate& c) { return c.known.thread.designation == designation; });
  std::vector<std::string> names;
  if (found == candidates.end()) return names;
  for (const thread::LookAlike& other : found->look_alikes)
    names.push_back(other.other.thread.designation);
  return names;
}

} // namespace

TEST(ConfusableThreads, AreNamedBesideEachOther) {
  EXPECT_EQ(k_pairs.size(), 73U);
  for (const Pair& pair : k_pairs) {
    EXPECT_THAT(look_alikes(pair.one), Contains(pair.other)) << pair.one;
    EXPECT_THAT(look_alikes(pair.other), Contains(pair.one)) << pair.other;
  }
}

TEST(ConfusableThreads, TakeInOneSizeWithAPitchThatIsMistakenOverFewTurns) {
  // 12.50 mm against 14.11 mm over ten turns: beyond the 7 % of the list above, and confused all the same.
  EXPECT_THAT(look_alikes("M8"), Contains("5/16-18 UNC"));
}

TEST(ConfusableThreads, LeaveOutWhatTheFirstTurnTellsApart) { EXPECT_THAT(look_alikes("M48"), IsEmpty()); }

} // namespace clampwright::test
