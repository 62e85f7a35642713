// SPDX-License-Identifier: GPL-3.0-or-later
//
// The entries of a case by the names of the command line's options: what a program shows of a question, and by which
// name a person fills it in, is the same everywhere.
#pragma once

#include <array>

#include "specdb/question/case_question.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::specdb {

using CaseField = TextField<CaseQuestion>;

// Without thread, locks and any_pitch, which are no single text.
inline constexpr std::array k_case_fields{
    CaseField{"--class", &CaseQuestion::strength_class},
    CaseField{"--surfaces", &CaseQuestion::surfaces},
    CaseField{"--mu", &CaseQuestion::mu},
    CaseField{"--mu-thread", &CaseQuestion::mu_thread},
    CaseField{"--mu-head", &CaseQuestion::mu_head},
    CaseField{"--nut-factor", &CaseQuestion::nut_factor},
    CaseField{"--head", &CaseQuestion::head},
    CaseField{"--turned", &CaseQuestion::turned},
    CaseField{"--washer", &CaseQuestion::washer},
    CaseField{"--face-outer", &CaseQuestion::face_outer},
    CaseField{"--face-inner", &CaseQuestion::face_inner},
    CaseField{"--kind", &CaseQuestion::kind},
    CaseField{"--wrench-accuracy", &CaseQuestion::wrench_accuracy},
    CaseField{"--running-torque", &CaseQuestion::running_torque},
    CaseField{"--shank", &CaseQuestion::shank},
    CaseField{"--bore", &CaseQuestion::bore},
};

// Is anything said of the fastener but its thread and the wrench: surfaces, friction, head, kind, lock …?
[[nodiscard]] inline bool describes_fastener(const CaseQuestion& question) {
  for (const CaseField& field : k_case_fields)
    if (field.option != "--wrench-accuracy" && question.*field.text) return true;
  return question.any_pitch || !question.locks.empty();
}

} // namespace clampwright::specdb
