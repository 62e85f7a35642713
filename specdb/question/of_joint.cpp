// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/of_joint.hpp"

#include <fmt/format.h>

#include "core/report/hand_report.hpp"
#include "core/report/hold_report.hpp"
#include "core/report/sequence_report.hpp"
#include "core/report/substitute_report.hpp"
#include "core/report/tightening_report.hpp"
#include "core/report/workup_report.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/case_fields.hpp"
#include "specdb/question/hold_joint.hpp"
#include "specdb/question/joint_report.hpp"
#include "specdb/workshop/joints.hpp"

namespace clampwright::specdb {

namespace {

constexpr const char* k_joint = "--joint";

Result<JointRecord> joint_named(const Workshop& workshop, const std::string& words) {
  auto record = find_joint(workshop, words);
  if (!record) return in_field(record.error(), k_joint);
  return record;
}

Result<JointAnswer> joint_told(const Catalogue& catalogue, const Workshop& workshop, const std::string& words) {
  const auto record = joint_named(workshop, words);
  if (!record) return Refusal(record.error());
  return answer_for(catalogue, *record);
}

void mark_joint(report::Document& document, const std::string& slug) { document.title += " [" + slug + "]"; }

void mark_invented(report::Document& document, bool invented) {
  if (invented) document.banner = k_invented;
}

} // namespace

Result<HoldTold> tell_hold(const Catalogue& catalogue, const Workshop* workshop, const MaybeText& joint,
                           HoldQuestion typed) {
  HoldTold told;
  if (joint) {
    auto answer = joint_told(catalogue, *workshop, *joint);
    if (!answer) return Refusal(answer.error());
    told.joint = std::move(*answer);
    told.invented = workshop->is_invented();
    auto filled = hold_for_joint(*told.joint, std::move(typed));
    if (!filled) return Refusal(filled.error());
    typed = std::move(*filled);
  }
  auto reply = answer_hold(catalogue, typed);
  if (!reply) return Refusal(reply.error());
  told.reply = std::move(*reply);
  return told;
}

report::Document hold_document(const HoldTold& told, const quantity::DisplayUnits& units) {
  report::Document document = report::hold_report(told.reply.answer, units);
  document.sources = told.reply.sources;
  if (told.joint) mark_joint(document, told.joint->joint.slug);
  mark_invented(document, told.invented);
  return document;
}

Result<HandTold> tell_hand(const Catalogue& catalogue, const Workshop* workshop, const MaybeText& joint,
                           HandQuestion typed) {
  HandTold told;
  if (joint) {
    auto record = joint_named(*workshop, *joint);
    if (!record) return Refusal(record.error());
    const auto thread = find_thread(catalogue, record->thread);
    if (!thread) return Refusal(thread.error());
    typed = hand_for_joint(*record, thread->thread.hand, std::move(typed));
    told.joint = std::move(*record);
    told.invented = workshop->is_invented();
  }
  auto reply = answer_hand(typed);
  if (!reply) return Refusal(reply.error());
  told.reply = std::move(*reply);
  return told;
}

report::Document hand_document(const HandTold& told) {
  report::Document document = report::hand_report(told.reply.answer);
  document.sources = told.reply.sources;
  if (told.joint) mark_joint(document, told.joint->slug);
  mark_invented(document, told.invented);
  return document;
}

Result<SequenceTold> tell_sequence(const Catalogue& catalogue, const Workshop* workshop, const MaybeText& joint,
                                   const SequenceQuestion& question) {
  SequenceTold told;
  if (joint) {
    auto answer = joint_told(catalogue, *workshop, *joint);
    if (!answer) return Refusal(answer.error());
    told.joint = std::move(*answer);
    told.invented = workshop->is_invented();
  }
  auto reply = answer_sequence(question, told.joint ? &*told.joint : nullptr);
  if (!reply) return Refusal(reply.error());
  told.reply = std::move(*reply);
  return told;
}

report::Document sequence_document(const SequenceTold& told, const quantity::DisplayUnits& units) {
  const SequenceReply& reply = told.reply;
  report::Document document =
      report::sequence_report(reply.sequence, reply.heading, reply.seen_from, reply.page_words, units);
  mark_invented(document, told.invented);
  if (finding::has_stop(reply.findings)) document.title = "STOP, see below. " + document.title;
  document.remarks = report::remarks_of(reply.findings, units);
  if (told.joint) document.sources.insert(document.sources.begin(), told.joint->joint.figure.source);
  return document;
}

Result<SubstituteTold> tell_substitute(const Catalogue& catalogue, const Workshop* workshop, const MaybeText& joint,
                                       SubstituteQuestion question) {
  SubstituteTold told;
  if (joint) {
    if (describes_fastener(question.how))
      return refuse(Trouble::usage, "surplus", "the joint knows how it is tightened, and options say it again", {},
                    "leave them out, or write the original out and leave --joint out", k_joint);
    auto record = joint_named(*workshop, *joint);
    if (!record) return Refusal(record.error());
    question.joint = std::move(*record);
    told.invented = workshop->is_invented();
  }
  auto answer = answer_for(catalogue, question);
  if (!answer) return Refusal(answer.error());
  told.answer = std::move(*answer);
  return told;
}

report::Document substitute_document(const SubstituteTold& told, const quantity::DisplayUnits& units) {
  const SubstituteAnswer& answer = told.answer;
  report::Document document = report::substitute_report(answer.question, answer.answer, answer.published, units);
  mark_invented(document, told.invented.value_or(false));
  return document;
}

Result<WorkupTold> tell_workup(const Catalogue& catalogue, const Workshop* workshop, const MaybeText& joint,
                               WorkupQuestion question) {
  WorkupTold told;
  if (joint) {
    // The joint is a word of its own here, so no option is named where it is not found.
    auto record = find_joint(*workshop, *joint);
    if (!record) return Refusal(record.error());
    question.joint = *record;
    told.joint = std::move(*record);
    told.invented = workshop->is_invented();
  }
  auto reply = answer_workup(catalogue, question);
  if (!reply) return Refusal(reply.error());
  told.reply = std::move(*reply);
  return told;
}

Refusal joint_and_thread() {
  return refuse(Trouble::usage, "surplus", "both a joint and --thread are there", {},
                fmt::format("write {}", k_workup_like));
}

report::Document workup_document(const WorkupTold& told, const quantity::DisplayUnits& units) {
  const WorkupReply& reply = told.reply;
  report::WorkupPlace place;
  if (told.joint) place.joint = fmt::format("{}, {}", told.joint->slug, told.joint->name);
  place.part = reply.part;
  place.must_clamp_because = reply.must_clamp_because;
  place.loss_told = reply.loss_told;
  place.makers_figure = reply.makers_figure;
  place.figure_words = reply.figure_words;
  report::Document document = report::workup_report(reply.answer, place, units);
  mark_invented(document, told.invented);
  document.sources = reply.sources;
  document.working = reply.answer.working;
  return document;
}

} // namespace clampwright::specdb
