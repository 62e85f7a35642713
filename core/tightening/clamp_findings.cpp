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

void add_over(Findings& findings, Code code, const Band<double>& use, const char* model) {
  if (use.likely > 1.0)
    findings.push_back({code, Severity::stop, {use.likely, use.high, std::string(model)}});
  else if (use.high > 1.0)
    findings.push_back({code, Severity::mind, {use.likely, use.high, std::string(model)}});
}

constexpr const char* k_by_friction = "thread friction";
constexpr const char* k_by_nut_factor = "nut factor";

// Of two models the graver one speaks: the one that is likely past the load, else the one that reckons with more.
bool graver(const Band<double>& one, const Band<double>& other) {
  const bool one_is_past = one.likely > 1.0;
  const bool other_is_past = other.likely > 1.0;
  return one_is_past != other_is_past ? one_is_past : one.high > other.high;
}

void add_over_proof(Findings& findings, const ClampAnswer& answer) {
  const auto& by_mu = answer.thread_friction ? answer.thread_friction->use_of_proof : std::optional<Band<double>>();
  const auto& by_k = answer.nut_factor ? answer.nut_factor->use_of_proof : std::optional<Band<double>>();
  if (by_k && (!by_mu || graver(*by_k, *by_mu)))
    add_over(findings, Code::over_proof, *by_k, k_by_nut_factor);
  else if (by_mu)
    add_over(findings, Code::over_proof, *by_mu, k_by_friction);
}

void add_limits(Findings& findings, const ClampAnswer& answer) {
  add_over_proof(findings, answer);
  if (answer.thread_friction && answer.thread_friction->use_of_yield)
    add_over(findings, Code::over_yield, *answer.thread_friction->use_of_yield, k_by_friction);
  if (answer.verdict == Verdict::near_limit) {
    const auto& use =
        answer.governed_by == Governs::yield ? answer.thread_friction->use_of_yield : answer.nut_factor->use_of_proof;
    findings.push_back({Code::near_limit, Severity::mind, {use->likely}});
  }
}

// By thread friction where it is known, as the verdict is.
void add_low_preload(Findings& findings, const ClampAnswer& answer) {
  if (answer.asked.kind != JointKind::bolt || answer.asked.angle_follows || !answer.asked.soft_part.empty()) return;
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

// Plugs and unions are made to no strength class, so there is none to miss.
bool could_have_a_class(JointKind kind) { return kind != JointKind::plug && kind != JointKind::union_nut; }

void add_not_stated(Findings& findings, const Case& asked) {
  if (asked.strength.class_name == "unknown" && could_have_a_class(asked.kind))
    findings.push_back({Code::class_unknown, Severity::mind, {}});
  else if (asked.strength.class_name != "unknown" && asked.strength.from_memory)
    findings.push_back({Code::value_from_memory, Severity::mind, {asked.strength.class_name}});
  if (!asked.friction_stated) {
    finding::Finding missing{Code::surfaces_not_stated, Severity::mind, {}};
    if (asked.strength.stainless) missing.facts.emplace_back(asked.strength.class_name);
    findings.push_back(std::move(missing));
  }
  if (!asked.face && asked.mu_thread) {
    finding::Finding missing{Code::face_not_stated, Severity::mind, {}};
    if (!asked.no_face_because.empty()) missing.facts.emplace_back(asked.no_face_because);
    findings.push_back(std::move(missing));
  }
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

bool is_compound(const friction::Lock& lock) { return lock.family == friction::LockFamily::compound; }

// A compound goes alone: it bonds nothing on a nut that is braked already, and it keeps lock washers and plates from
// their grip.
const friction::Lock* lock_beside_compound(const Case& asked) {
  using friction::LockFamily;
  const auto other = std::ranges::find_if(asked.locks, [](const friction::Lock& lock) {
    return lock.family == LockFamily::running_torque || lock.family == LockFamily::positive ||
           lock.family == LockFamily::washer;
  });
  const bool compound = asked.wet_compound || std::ranges::any_of(asked.locks, is_compound);
  return compound && other != asked.locks.end() ? &*other : nullptr;
}

void add_lock(Findings& findings, const Case& asked) {
  if (asked.wet_compound || std::ranges::any_of(asked.locks, is_compound))
    findings.push_back({Code::locking_compound, Severity::mind, {}});
  if (const friction::Lock* other = lock_beside_compound(asked))
    findings.push_back({Code::lock_conflict, Severity::mind, {other->description}});
  const auto braked = std::ranges::find(asked.locks, friction::LockFamily::running_torque, &friction::Lock::family);
  if (asked.running_torque)
    findings.push_back({Code::running_torque_added, Severity::note, {*asked.running_torque}});
  else if (braked != asked.locks.end())
    findings.push_back({Code::running_torque_missing, Severity::mind, {braked->description}});
}

// What the class and its finish bring with them.
void add_material(Findings& findings, const Case& asked) {
  const strength::Strength& strength = asked.strength;
  if (strength.loadability < 1.0)
    findings.push_back({Code::reduced_head, Severity::note, {strength.class_name, strength.loadability}});
  if (strength.approved_data)
    findings.push_back({Code::approved_data, Severity::stop, {strength.class_name}});
  else if (asked.weak_head && strength.class_name != "unknown")
    findings.push_back({Code::reduced_head, Severity::mind, {strength.class_name}});
  if (asked.electroplated && strength.hardest_HV && *strength.hardest_HV > k_brittle_from_HV)
    findings.push_back({Code::embrittlement, Severity::stop, {strength.class_name}});
  if (strength.stainless && asked.mates_with_stainless.value_or(true))
    findings.push_back(
        {Code::galling, asked.mates_with_stainless ? Severity::mind : Severity::note, {strength.class_name}});
}

void add_final(Findings& findings, const Case& asked) {
  if (asked.angle_follows) findings.push_back({Code::angle_final, Severity::mind, {}});
  if (!asked.soft_part.empty()) findings.push_back({Code::soft_part, Severity::mind, {asked.soft_part}});
}

} // namespace

Findings findings_of(const ClampAnswer& answer) {
  Findings findings;
  if (answer.asked.thread.hand == thread::Hand::left) findings.push_back({Code::left_hand, Severity::mind, {}});
  if (const thread::Thread& thread = answer.asked.thread; !thread.listed)
    findings.push_back({Code::thread_not_listed,
                        Severity::mind,
                        {thread.designation, std::string(thread::form_standard(thread.form))}});
  add_limits(findings, answer);
  add_disagreement(findings, answer);
  add_not_stated(findings, answer.asked);
  add_kind(findings, answer.asked.kind);
  add_material(findings, answer.asked);
  add_lock(findings, answer.asked);
  add_final(findings, answer.asked);
  add_low_preload(findings, answer);
  if (answer.asked.mass_as_force) findings.push_back({Code::mass_as_force, Severity::note, {}});
  findings.push_back({Code::maker_first, Severity::note, {}});
  finding::put_in_order(findings);
  return findings;
}

} // namespace clampwright::tightening
