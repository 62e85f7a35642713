// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/joint_answer.hpp"

#include <algorithm>

#include "core/quantity/unit.hpp"
#include "core/tightening/clamp.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/case_question.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using finding::Findings;
using finding::Severity;

CaseQuestion question_of(const JointRecord& joint) {
  CaseQuestion q;
  q.thread = joint.thread;
  q.strength_class = joint.strength_class;
  q.surfaces = joint.figure.surfaces;
  q.kind = joint.kind;
  q.head = joint.head;
  q.face_outer = joint.face_outer;
  q.face_inner = joint.face_inner;
  q.lock = joint.lock;
  if (joint.turned == "nut" && !joint.face_outer) q.turned = "nut";
  return q;
}

std::optional<quantity::Torque> torque_of(const std::optional<double>& value, const FigureRecord& figure) {
  if (!value || !figure.unit) return std::nullopt;
  return quantity::newton_metres(quantity::to_si(*value, quantity::unit_named(*figure.unit)));
}

bool has(const Findings& findings, Code code) {
  return std::ranges::any_of(findings, [&](const auto& f) { return f.code == code; });
}

// What follows from the place of the joint rather than from its clamp load.
void add_place(Findings& findings, const JointAnswer& answer) {
  const JointRecord& joint = answer.joint;
  if (!answer.torque) findings.push_back({Code::no_maker_value, Severity::mind, {joint.figure.printed}});
  if (answer.thread.thread.hand == thread::Hand::left && !has(findings, Code::left_hand))
    findings.push_back({Code::left_hand, Severity::mind, {}});
  if (!joint.on_crank) return;
  finding::Finding reaction{Code::crank_reaction, Severity::mind, {}};
  if (joint.crank && answer.torque) {
    reaction.facts.emplace_back(k_stop_angle);
    reaction.facts.emplace_back(crank::stop_force(*joint.crank, k_stop_angle, *answer.torque));
  }
  findings.push_back(std::move(reaction));
  if (!joint.holding) findings.push_back({Code::holding_unknown, Severity::mind, {}});
}

} // namespace

Result<JointAnswer> answer_for(const Catalogue& catalogue, const JointRecord& joint) {
  const auto resolved = resolve(catalogue, question_of(joint));
  if (!resolved) return Refusal(resolved.error());
  JointAnswer answer;
  answer.joint = joint;
  answer.thread = resolved->thread;
  answer.torque = torque_of(joint.figure.value, joint.figure);
  answer.low = torque_of(joint.figure.low, joint.figure);
  answer.high = torque_of(joint.figure.high, joint.figure);
  answer.tighten = thread::turn_to_tighten(resolved->asked.thread.hand);
  answer.undo = thread::turn_to_undo(resolved->asked.thread.hand);
  const auto surfaces = find_surfaces(catalogue, joint.figure.surfaces);
  if (surfaces) answer.surfaces_description = surfaces->description;
  if (resolved->asked.lock) answer.lock_description = resolved->asked.lock->description;
  if (answer.torque) {
    auto clamp = tightening::clamp(resolved->asked, *answer.torque, resolved->accuracy);
    if (!clamp) return Refusal(clamp.error());
    answer.findings = clamp->findings;
    answer.clamp = std::move(*clamp);
  } else {
    answer.findings.push_back({Code::maker_first, Severity::note, {}});
  }
  add_place(answer.findings, answer);
  finding::put_in_order(answer.findings);
  return answer;
}

} // namespace clampwright::specdb
