// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/source/source.hpp"
#include "core/thread/gauge.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/text_field.hpp"

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

// Without --internal, which is said or not said.
inline constexpr std::array k_gauge_fields{
    TextField<GaugeQuestion>{"--diameter", &GaugeQuestion::diameter},
    TextField<GaugeQuestion>{"--pitch", &GaugeQuestion::pitch},
    TextField<GaugeQuestion>{"--tpi", &GaugeQuestion::tpi},
    TextField<GaugeQuestion>{"--diameter-uncertainty", &GaugeQuestion::diameter_doubt},
    TextField<GaugeQuestion>{"--pitch-uncertainty", &GaugeQuestion::pitch_doubt},
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

[[nodiscard]] report::Document gauge_document(const GaugeAnswer& answer, const quantity::DisplayUnits& units);

// Threads in one inch, 2 to 150. Fails with not-understood.
[[nodiscard]] Result<double> read_tpi(std::string_view text);

} // namespace clampwright::specdb
