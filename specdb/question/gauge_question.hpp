// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "core/thread/gauge.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// What was measured, as text. What is empty was not said.
struct GaugeQuestion {
  std::optional<std::string> diameter;
  std::optional<std::string> pitch;
  std::optional<std::string> tpi;
  std::optional<std::string> diameter_doubt;
  std::optional<std::string> pitch_doubt;
  bool internal = false;
};

struct GaugeAnswer {
  thread::Measurement measured;
  std::optional<double> tpi;
  std::vector<thread::Candidate> candidates; // at least one
  finding::Findings findings;
  std::vector<Source> sources;
};

// The listed threads that fit what was measured. A problem names its entry like the option of the command line. Fails
// with usage where the diameter is missing or the pitch given twice, with not-understood for texts and ranges, with
// no-such outside the range of the tables.
[[nodiscard]] Result<GaugeAnswer> which_thread(const Catalogue& catalogue, const GaugeQuestion& question);

} // namespace clampwright::specdb
