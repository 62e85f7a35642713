// SPDX-License-Identifier: GPL-3.0-or-later
//
// The English of what a crank is held by, and of the findings about it.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/crank/holding.hpp"
#include "core/finding/finding.hpp"
#include "core/quantity/write.hpp"

namespace clampwright::report {

// One way to hold a crank, in words.
struct WayWords {
  std::string_view title;
  std::string_view load_path; // what the torque passes through
  std::string_view reason;    // why it stands where it stands
};
[[nodiscard]] WayWords way_words(crank::Way way);

// The text of a finding about a crank or the hand of a thread on it; nothing for another. `facts` are its facts in the
// wanted units.
[[nodiscard]] std::optional<std::string> crank_finding_text(const finding::Finding& finding,
                                                            const std::vector<std::string>& facts,
                                                            const quantity::DisplayUnits& units);

// On what it rests; empty for another.
[[nodiscard]] std::string_view crank_finding_basis(finding::Code code);

} // namespace clampwright::report
