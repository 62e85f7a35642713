// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "specdb/question/joint_answer.hpp"

namespace clampwright::specdb {

// What stands above anything of the demo workshop that someone could tighten by.
inline constexpr const char* k_invented = "INVENTED, to try the program with: never tighten a real machine by it.";

// A joint at a glance: the torque as printed and in the wanted unit, which way to turn and seen from where, lock,
// sequence, recheck and source first; what it clamps after that. `invented` marks a demo workshop.
[[nodiscard]] report::Document joint_report(const JointAnswer& answer, const quantity::DisplayUnits& units,
                                            bool invented);

} // namespace clampwright::specdb
