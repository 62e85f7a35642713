// SPDX-License-Identifier: GPL-3.0-or-later
//
// Questions that may name a joint of the workshop, whose record then says what was not typed. `workshop` may be null
// only where none is named.
#pragma once

#include <optional>
#include <string>

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "specdb/question/hand_question.hpp"
#include "specdb/question/hold_question.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/question/sequence_question.hpp"
#include "specdb/question/substitute_question.hpp"
#include "specdb/question/workup_question.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

struct HoldTold {
  HoldReply reply;
  std::optional<JointAnswer> joint = {};
  bool invented = false;
};
// Fails like find_joint, hold_for_joint and answer_hold.
[[nodiscard]] Result<HoldTold> tell_hold(const Catalogue& catalogue, const Workshop* workshop, const MaybeText& joint,
                                         HoldQuestion typed);
[[nodiscard]] report::Document hold_document(const HoldTold& told, const quantity::DisplayUnits& units);

struct HandTold {
  HandReply reply;
  std::optional<JointRecord> joint = {};
  bool invented = false;
};
// Fails like find_joint and answer_hand.
[[nodiscard]] Result<HandTold> tell_hand(const Catalogue& catalogue, const Workshop* workshop, const MaybeText& joint,
                                         HandQuestion typed);
[[nodiscard]] report::Document hand_document(const HandTold& told);

struct SequenceTold {
  SequenceReply reply;
  std::optional<JointAnswer> joint = {};
  bool invented = false;
};
// Fails like find_joint and answer_sequence.
[[nodiscard]] Result<SequenceTold> tell_sequence(const Catalogue& catalogue, const Workshop* workshop,
                                                 const MaybeText& joint, const SequenceQuestion& question);
[[nodiscard]] report::Document sequence_document(const SequenceTold& told, const quantity::DisplayUnits& units);

struct SubstituteTold {
  SubstituteAnswer answer;
  std::optional<bool> invented = {}; // empty without a joint
};
// Fails like find_joint and answer_for, and with usage where the fastener is described beside the joint that knows it.
[[nodiscard]] Result<SubstituteTold> tell_substitute(const Catalogue& catalogue, const Workshop* workshop,
                                                     const MaybeText& joint, SubstituteQuestion question);
[[nodiscard]] report::Document substitute_document(const SubstituteTold& told, const quantity::DisplayUnits& units);

struct WorkupTold {
  WorkupReply reply;
  std::optional<JointRecord> joint = {};
  bool invented = false;
};
// Fails like find_joint and answer_workup.
[[nodiscard]] Result<WorkupTold> tell_workup(const Catalogue& catalogue, const Workshop* workshop,
                                             const MaybeText& joint, WorkupQuestion question);
// The refusal where a joint is named and a thread as well.
[[nodiscard]] Refusal joint_and_thread();
inline constexpr const char* k_workup_like =
    "workup winch/brake-pivot, or workup --thread M8 --class 8.8 --surfaces oiled --must-clamp 5kN";
[[nodiscard]] report::Document workup_document(const WorkupTold& told, const quantity::DisplayUnits& units);

} // namespace clampwright::specdb
