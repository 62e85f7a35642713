// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the answers of several sentences say in the same way.
#pragma once

#include <QString>

#include "core/finding/finding.hpp"
#include "core/quantity/write.hpp"
#include "core/tightening/answer.hpp"
#include "core/tightening/sequence.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/sentence.hpp"

namespace clampwright::desk {

// A quantity in the units of the place: "18.5 kN".
template<class Quantity>
QString shown(const Quantity& quantity, const Place& place) {
  return from_utf8(quantity::write(quantity, place.units));
}

// A computed length to three digits: "14.2 mm".
[[nodiscard]] QString shown_length(quantity::Length length, const Place& place);

// What must not be overlooked, large: every finding that stops, and a left-hand thread.
void add_flags(PageContent& page, const finding::Findings& findings, const Place& place);

// From the least to the most of what several ways make of one torque: "27.5 to 37.8 N·m"; one number where they agree.
[[nodiscard]] QString torque_range(const std::vector<quantity::Torque>& torques, const Place& place);

// The likely clamp load with its ends, or that it is not known.
[[nodiscard]] Figure clamp_figure(const std::optional<quantity::Band<quantity::Force>>& load, const Place& place);

// The order of the bolts as a drawing, its words in the language of the desk; `seen_from` as core says it.
[[nodiscard]] Drawing order_picture(const tightening::Sequence& sequence, const std::string& seen_from);

// The refusal, beside that blank where it names none.
[[nodiscard]] Refusal beside(Problem problem, const char* option);

} // namespace clampwright::desk
