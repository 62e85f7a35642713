// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every listed thread, made anywhere within its limits or worn beyond them, measured with an error of up to 0.05 mm and
// 2 % of the pitch. The true one must always be named; how often it is first is counted by series and printed.
#include "core/thread/gauge.hpp"
#include "specdb/catalogue/threads.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <random>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace clampwright::thread {
namespace {

using quantity::in_millimetres;
using quantity::millimetres;

constexpr unsigned k_seed = 2230;
constexpr int k_samples = 5;
constexpr double k_error_mm = 0.05;
constexpr double k_pitch_error = 0.02;

const std::vector<KnownThread>& list() {
  static const std::vector<KnownThread> known = [] {
    const specdb::Catalogue catalogue;
    std::vector<KnownThread> out;
    for (const specdb::ThreadEntry& entry : specdb::all_threads(catalogue))
      out.push_back({entry.thread, entry.limits, entry.choice});
    return out;
  }();
  return known;
}

struct Made {
  bool internal;
  bool worn;
};

// Where the crest of such a thread can lie, in millimetres.
std::pair<double, double> can_be(const KnownThread& known, Made made) {
  const CrestRange crests = crest_range(known, made.internal);
  const double low = in_millimetres(crests.low);
  const double high = in_millimetres(crests.high);
  const double wear = 0.1 * in_millimetres(known.thread.pitch);
  if (!made.worn) return {low, high};
  return made.internal ? std::pair(high, high + wear) : std::pair(low - wear, low);
}

// Could that thread, new or worn, have given this reading?
bool gives(const KnownThread& known, bool internal, double diameter, double pitch) {
  const auto fresh = can_be(known, {internal, false});
  const auto old = can_be(known, {internal, true});
  return diameter >= std::min(fresh.first, old.first) - k_error_mm &&
         diameter <= std::max({fresh.second, old.second, internal ? 0.0 : in_millimetres(known.thread.diameter)}) +
                         k_error_mm &&
         std::abs(pitch / in_millimetres(known.thread.pitch) - 1) <= k_pitch_error + 1e-9;
}

struct Count {
  int all = 0, named = 0, first = 0, behind_an_equal = 0;
};

std::map<std::string, Count> counted(Made made, bool with_pitch = true) {
  std::mt19937 random(k_seed);
  const auto between = [&](double low, double high) {
    return low + (high - low) * (static_cast<double>(random()) / static_cast<double>(std::mt19937::max()));
  };
  std::map<std::string, Count> counts;
  for (const KnownThread& known : list()) {
    const auto [low, high] = can_be(known, made);
    for (int i = 0; i < k_samples; ++i) {
      const double diameter = between(low, high) + between(-k_error_mm, k_error_mm);
      const double pitch = in_millimetres(known.thread.pitch) * (1 + between(-k_pitch_error, k_pitch_error));
      Measurement measured{millimetres(diameter), std::nullopt, made.internal};
      if (with_pitch) measured.pitch = millimetres(pitch);
      const auto candidates = gauge(list(), measured).value();
      Count& count = counts[known.thread.series];
      ++count.all;
      const auto is_it = [&](const Candidate& c) {
        return c.known.thread.designation == known.thread.designation && c.verdict != GaugeVerdict::unlikely;
      };
      if (std::ranges::any_of(candidates, is_it))
        ++count.named;
      else
        ADD_FAILURE() << known.thread.designation << " " << diameter << " " << pitch;
      if (is_it(candidates.front()))
        ++count.first;
      else if (gives(candidates.front().known, made.internal, diameter, pitch))
        ++count.behind_an_equal;
    }
  }
  return counts;
}

double share(int part, int all) { return static_cast<double>(part) / static_cast<double>(all); }

void print(const char* what, const std::map<std::string, Count>& counts) {
  for (const auto& [series, count] : counts)
    fmt::print("{} {}: first {:.1f} %, behind an equal {:.1f} %\n", what, series, 100 * share(count.first, count.all),
               100 * share(count.behind_an_equal, count.all));
}

struct Way {
  const char* name;
  Made made;
};
constexpr Way k_ways[]{{"bolt, new,", {false, false}},
                       {"bolt, worn,", {false, true}},
                       {"nut, new,", {true, false}},
                       {"nut, worn,", {true, true}}};

} // namespace

// What stands before the true one could have given the same reading itself: there no measurement of this kind decides.
TEST(Gauge, NamesTheTrueThreadAndPutsItFirstOrBehindOneThatReadsTheSame) {
  for (const Way& way : k_ways) {
    const auto counts = counted(way.made);
    print(way.name, counts);
    for (const auto& [series, count] : counts) {
      EXPECT_EQ(count.named, count.all) << way.name << series;
      EXPECT_GE(share(count.first + count.behind_an_equal, count.all), 0.95) << way.name << series;
    }
  }
}

// Metric threads are first by custom, so for them the whole count holds.
TEST(Gauge, PutsANewMetricThreadFirst) {
  for (const bool internal : {false, true}) {
    const auto counts = counted({internal, false});
    for (const char* series : {"coarse", "fine"})
      EXPECT_GE(share(counts.at(series).first, counts.at(series).all), 0.95) << series << internal;
  }
}

TEST(Gauge, NamesTheTrueThreadByTheDiameterAlone) {
  for (const Way& way : k_ways)
    for (const auto& [series, count] : counted(way.made, false))
      EXPECT_EQ(count.named, count.all) << way.name << series;
}

TEST(Gauge, HasAnAnswerForEveryDiameterOfTheTables) {
  for (int hundredths = 79; hundredths <= 6800; hundredths += 7) {
    const auto candidates = gauge(list(), {millimetres(hundredths / 100.0), std::nullopt});
    ASSERT_TRUE(candidates) << hundredths;
    EXPECT_FALSE(candidates->empty());
  }
}

} // namespace clampwright::thread
