// SPDX-License-Identifier: GPL-3.0-or-later
//
// The English of the findings and verdicts. What the findings mean is decided elsewhere; how it is said, and on what it
// rests, stands here.
#pragma once

#include <string>
#include <string_view>

#include "core/finding/finding.hpp"
#include "core/quantity/write.hpp"
#include "core/source/source.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::report {

// A fact of a finding in the wanted units: text as it is, a share as per cent.
[[nodiscard]] std::string fact_text(const finding::Fact& fact, const quantity::DisplayUnits& units);

// The finding's first sentence, for lists; of a slip of the unit also the units that would fit.
[[nodiscard]] std::string finding_brief(const finding::Finding& finding, const quantity::DisplayUnits& units);

// The finding as one or two sentences, its facts in the wanted units.
[[nodiscard]] std::string finding_text(const finding::Finding& finding, const quantity::DisplayUnits& units);

// What the finding rests on: a source, a definition, or common practice.
[[nodiscard]] std::string_view finding_basis(finding::Code code);

// "Stop", "Mind", "Note".
[[nodiscard]] std::string_view severity_word(finding::Severity severity);

// "within yield, likely 62 %": the verdict in words, always with what governs.
[[nodiscard]] std::string verdict_text(const tightening::ClampAnswer& answer);

// "ISO 898-1, Title (2013), Table 4 [second-hand]"
[[nodiscard]] std::string full_source(const Source& source);

// The line that stands under every answer by which someone could tighten.
[[nodiscard]] std::string_view foot_line();

} // namespace clampwright::report
