// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/thread/gauge.hpp"

namespace clampwright::report {

// The second measurement that tells a thread from its look-alike, in words with numbers: "pitch over 10 turns: 12.50 mm
// against 14.11 mm". The candidate's figure comes first.
[[nodiscard]] std::string tell_apart_text(const thread::Candidate& candidate, const thread::LookAlike& look_alike,
                                          bool internal, const quantity::DisplayUnits& units);

// Which threads fit, the best in a sentence, then all, then how to tell the best from what looks like it.
// Precondition: at least one candidate.
[[nodiscard]] Document gauge_report(const thread::Measurement& measured,
                                    const std::vector<thread::Candidate>& candidates, const finding::Findings& findings,
                                    const std::vector<Source>& sources, const quantity::DisplayUnits& units);

} // namespace clampwright::report
