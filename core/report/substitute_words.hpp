// SPDX-License-Identifier: GPL-3.0-or-later
//
// The English of a substitution: what each link of the chain says, and on what it rests.
#pragma once

#include <string>
#include <string_view>

#include "core/quantity/write.hpp"
#include "core/substitute/chain.hpp"

namespace clampwright::report {

// "thread form", "bolt, proof load", …: the link for people.
[[nodiscard]] std::string_view link_words(substitute::Link link);

// What stands on one side: "48.1 kN (830 MPa)"; "" where nothing is known of it.
[[nodiscard]] std::string side_text(const std::vector<finding::Fact>& facts, const quantity::DisplayUnits& units);

// The link in one or two sentences.
[[nodiscard]] std::string check_text(const substitute::Check& check, const quantity::DisplayUnits& units);

// The rule or source that the link follows.
[[nodiscard]] std::string_view check_basis(substitute::Reason reason);

// "no: the nut does not go with it": the verdict in words, with the link that made it.
[[nodiscard]] std::string verdict_text(const substitute::Answer& answer);

} // namespace clampwright::report
