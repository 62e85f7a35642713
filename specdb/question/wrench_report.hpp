// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "specdb/question/wrench_question.hpp"

namespace clampwright::specdb {

// Where to set the wrench, first; then the levers, the scale, and how far the clamp load may be off. `joint` may be
// null; `invented` marks a demo workshop.
[[nodiscard]] report::Document wrench_set_report(const WrenchSetReply& reply, const JointAnswer* joint,
                                                 const quantity::DisplayUnits& units, bool invented);

// "22.5 N·m": a mark as it stands on the scale, or a setting between marks.
[[nodiscard]] std::string setting_words(const tightening::Wrench& wrench, double setting);

// "out of range", "overdue", …: why a wrench is not offered, in the words of its findings; empty where it is.
[[nodiscard]] std::string why_not_words(const tightening::WrenchSetting& setting, const quantity::DisplayUnits& units);

// The wrenches of the register for a joint: those that suit, with their setting, and why each other does not.
// Precondition: answer.wrenches.
[[nodiscard]] report::Section wrenches_section(const JointAnswer& answer, const quantity::DisplayUnits& units);

} // namespace clampwright::specdb
