// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which threads a measured diameter and pitch can belong to. A crest is never at its nominal size: new it lies between
// the limits of its class, worn it reads small (in a nut: large). So what was measured is held against the limits, with
// some wear beyond them and the doubt of the measurement itself, and every thread that it could be is named.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/quantity/quantity.hpp"
#include "core/thread/limits.hpp"
#include "core/thread/thread.hpp"
#include "core/working/step.hpp"

namespace clampwright::thread {

struct KnownThread {
  Thread thread;
  std::optional<Limits> limits;
  std::optional<int> choice; // of ISO 261: 1 to 3; metric only
};

// A calliper across crests that were wiped, and a pitch over several turns. Common practice.
inline constexpr quantity::Length k_calliper_doubt = quantity::millimetres(0.05);
inline constexpr double k_pitch_doubt = 0.02;

struct Measurement {
  quantity::Length diameter; // over the crests: outside diameter of a bolt, minor diameter of a nut
  std::optional<quantity::Length> pitch;
  bool internal = false;
  quantity::Length diameter_doubt = k_calliper_doubt; // the reading may be off by so much either way
  double pitch_doubt = k_pitch_doubt;                 // as a share of the pitch
};

enum class GaugeVerdict { fits, worn_or_near, unlikely };

// "fits", "worn-or-near", "unlikely".
[[nodiscard]] std::string_view gauge_verdict_name(GaugeVerdict verdict);

// Where the crests of a new thread lie. `by_class` is the class of its limits ("6g"); empty where the tables have none
// (Whitworth, BA, cycle): then the range is as wide as that of an ISO thread of the same pitch, from the basic size on.
struct CrestRange {
  quantity::Length low, high;
  std::string by_class;
};
[[nodiscard]] CrestRange crest_range(const KnownThread& known, bool internal);

// How far a crest may be worn beyond its limits before it is called unlikely: a tenth of the pitch. Our own figure; a
// bolt of tolerance grade 8 reaches about as far beyond grade 6 (ISO 965-1: 1.6 times the tolerance).
[[nodiscard]] quantity::Length allowed_wear(const Thread& thread);

// What tells a thread from one that looks like it. Empty members: that measurement shows no difference.
struct TellApart {
  struct Turns {
    int count;                    // 10 or 20: the fewest over which a calliper shows it
    quantity::Length own, others; // length of so many pitches
  };
  struct Crests {
    CrestRange own, others;
    bool finer = false; // than what was used here: the ranges are apart by less than the doubt
  };
  struct Roots {
    quantity::Length own, others; // root of the bolt thread, basic
  };
  struct Nut {
    bool starts = true;
    int turns = 0; // by then at the latest it binds, however loose a pair it is
  };
  std::optional<Turns> turns;
  std::optional<Crests> crests;
  bool flanks = false; // angle and form of the crests differ
  std::optional<Roots> roots;
  std::optional<Nut> nut; // of the look-alike on a bolt of the candidate; nothing where it would run on
};

struct LookAlike {
  KnownThread other;
  bool by_measurement = false; // what was measured fits it as well; otherwise the two only start on each other
  TellApart tell;
};

struct Candidate {
  KnownThread known;
  CrestRange crests;
  quantity::Length deviation;      // outside the crest range, negative below; 0 inside
  std::optional<double> pitch_off; // measured over listed pitch, less one
  GaugeVerdict verdict = GaugeVerdict::unlikely;
  std::vector<LookAlike> look_alikes; // those that fit the measurement first
};

// How the candidate was held against the measurement, in millimetres.
[[nodiscard]] Working gauge_working(const Candidate& candidate, const Measurement& measured);

// Every thread of the list that fits or may be worn or near, best first; then up to three that have the diameter and
// another pitch, or the three nearest where nothing fits.
//
// Best is what lies least outside, in units of the doubt: diameter beyond d_min and nominal size (a plated or an h bolt
// reaches its nominal size; a nut: beyond its limits), and pitch. What is equal within 0.01 mm and 1 % of pitch is put
// metric first, then by how common it is. Fails with no-such outside the range of the list. Precondition: diameter,
// pitch and doubts are positive, the pitch smaller than the diameter.
[[nodiscard]] Result<std::vector<Candidate>> gauge(const std::vector<KnownThread>& list, const Measurement& measured);

} // namespace clampwright::thread
