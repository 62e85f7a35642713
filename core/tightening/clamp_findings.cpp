// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/clamp_findings.hpp"

#include <algorithm>
#include <optional>

namespace clampwright::tightening {

namespace {

using finding::Code;
using finding::Findings;
using finding::Severity;
using quantity::Band;

// The highest use of a limit that any model reckons with, and the likely one beside it.
struct Use {
  double likely;
  double high;
};

std::optional<Use> highest_use_of_proof(const ClampAnswer& answer) {
  std::optional<Use> use;
  const auto consider = [&](const std::optional<Band<double>>& band) {
    if (!band) return;
    if (!use) use = Use{band->likely, band->high};
    use = Use{std::max(use->likely, band->likely), std::max(use->high, band->high)};
  };
  if (answer.nut_factor) consider(answer.nut_factor->use_of_proof);
  if (answer.thread_friction) consider(answer.thread_friction->use_of_proof);
  return use;
}

void add_over(Findings& findings, Code code, const Use& use) {
  if (use.likely > 1.0)
    findings.push_back({code, Severity::stop, {use.likely, use.high}});
  else if (use.high > 1.0)
    findings.push_back({code, Severity::mind, {use.likely, use.high}});
}

void add_limits(Findings& findings, const ClampAnswer& answer) {
  if (const auto use = highest_use_of_proof(answer)) add_over(findings, Code::over_proof, *use);
  if (answer.thread_friction && answer.thread_friction->use_of_yield)
    add_over(findings, Code::over_yield,
             {answer.thread_friction->use_of_yield->likely, answer.thread_friction->use_of_yield->high});
  if (answer.verdict == Verdict::near_limit) {
    const auto& use =
        answer.governed_by == Governs::yield ? answer.thread_friction->use_of_yield : answer.nut_factor->use_of_proof;
    findings.push_back({Code::near_limit, Severity::mind, {use->likely}});
  }
}

// By thread friction where it is known, as the verdict is.
void add_low_preload(Findings& findings, const ClampAnswer& answer) {
  if (answer.asked.kind != JointKind::bolt) return;
  const auto& use = answer.thread_friction ? answer.thread_friction->use_of_proof
                    : answer.nut_factor    ? answer.nut_factor->use_of_proof
                                           : std::optional<Band<double>>();
  if (use && use->likely < k_low_preload) findings.push_back({Code::low_preload, Severity::note, {use->likely}});
}

void add_disagreement(Findings& findings, const ClampAnswer& answer) {
  if (!answer.nut_factor || !answer.thread_friction) return;
  const auto& by_k = answer.nut_factor->preload;
  const auto& by_mu = answer.thread_friction->preload;
  if (quantity::apart(by_k, by_mu) || !quantity::contains(by_k, by_mu.likely) ||
      !quantity::contains(by_mu, by_k.likely))
    findings.push_back({Code::models_disagree, Severity::mind, {by_k.likely, by_mu.likely}});
}

void add_not_stated(Findings& findings, const Case& asked) {
  if (asked.strength.class_name == "unknown")
    findings.push_back({Code::class_unknown, Severity::mind, {}});
  else if (asked.strength.from_memory)
    findings.push_back({Code::value_from_memory, Severity::mind, {asked.strength.class_name}});
  if (!asked.friction_stated) findings.push_back({Code::surfaces_not_stated, Severity::mind, {}});
  if (!asked.face && asked.mu_thread) findings.push_back({Code::face_not_stated, Severity::mind, {}});
}

void add_kind(Findings& findings, JointKind kind) {
  switch (kind) {
  case JointKind::bolt:
    return;
  case JointKind::stud_set:
    findings.push_back({Code::seating_torque, Severity::note, {}});
    return;
  case JointKind::hub:
  case JointKind::plug:
  case JointKind::union_nut:
    findings.push_back({Code::not_a_bolt, Severity::note, {std::string(joint_kind_name(kind))}});
    return;
  }
}

void add_lock(Findings& findings, const Case& asked) {
  const bool compound = asked.wet_compound || (asked.lock && asked.lock->family == friction::LockFamily::compound);
  if (compound) findings.push_back({Code::locking_compound, Severity::mind, {}});
  if (asked.running_torque)
    findings.push_back({Code::running_torque_added, Severity::note, {*asked.running_torque}});
  else if (asked.lock && asked.lock->family == friction::LockFamily::running_torque)
    findings.push_back({Code::running_torque_missing, Severity::mind, {asked.lock->name}});
}

} // namespace

Findings findings_of(const ClampAnswer& answer) {
  Findings findings;
  if (answer.asked.thread.hand == thread::Hand::left) findings.push_back({Code::left_hand, Severity::mind, {}});
  add_limits(findings, answer);
  add_disagreement(findings, answer);
  add_not_stated(findings, answer.asked);
  add_kind(findings, answer.asked.kind);
  add_lock(findings, answer.asked);
  add_low_preload(findings, answer);
  if (answer.asked.mass_as_force) findings.push_back({Code::mass_as_force, Severity::note, {}});
  findings.push_back({Code::maker_first, Severity::note, {}});
  finding::put_in_order(findings);
  return findings;
}

} // namespace clampwright::tightening
