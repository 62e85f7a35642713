// SPDX-License-Identifier: GPL-3.0-or-later
//
// For chain.cpp: the links by what they look at. Each function adds its links in order.
#pragma once

#include "core/substitute/chain.hpp"

namespace clampwright::substitute {

using Checks = std::vector<Check>;

// The length of thread that a fastener engages; nothing where it cannot be told.
[[nodiscard]] std::optional<quantity::Length> engaged(const Fastener& fastener, const Place& place);

// Is the class of this fastener known, so that its strength can be compared?
[[nodiscard]] bool class_known(const Fastener& fastener);

// The fastener is harder than a bath may meet: above the limit for electroplating, or of a strength that goes with it.
[[nodiscard]] bool is_hard(const strength::Strength& strength);

// identity, form, diameter, pitch, hand, length
void add_fit(Checks& checks, const Question& question);
// proof, yield, tensile
void add_strength(Checks& checks, const Question& question);
// nut, part-thread, seat, head: what holds it, at the torque that would be used
void add_holding(Checks& checks, const Question& question, const Answer& answer);
// brittleness, temperature
void add_condition(Checks& checks, const Question& question);
// friction, torque
void add_torque(Checks& checks, const Question& question, const Answer& answer);
// corrosion, galling, fatigue
void add_metal(Checks& checks, const Question& question);
// reuse, approval
void add_paper(Checks& checks, const Question& question);

} // namespace clampwright::substitute
