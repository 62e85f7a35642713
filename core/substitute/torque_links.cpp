// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/substitute/links.hpp"

namespace clampwright::substitute {

namespace {

std::string surfaces_of(const Fastener& fastener) {
  if (!fastener.as.friction_stated) return "not-stated";
  return fastener.as.surfaces.empty() ? "friction as given" : fastener.as.surfaces;
}

void add_friction(Checks& checks, const Question& q, const Answer& answer) {
  Check check{Link::friction, Outcome::note, Reason::finish_not_told};
  check.original = {surfaces_of(q.original)};
  check.offered = {surfaces_of(q.offered)};
  check.facts = {surfaces_of(q.original), surfaces_of(q.offered)};
  if (!q.place.finish_forbidden.empty()) {
    check.outcome = Outcome::no, check.reason = Reason::finish_forbidden, check.facts = {q.place.finish_forbidden};
    checks.push_back(std::move(check));
    return;
  }
  if (q.original.as.friction_stated && q.offered.as.friction_stated && answer.factor) {
    check.facts.emplace_back(*answer.factor);
    if (std::abs(*answer.factor - 1.0) <= k_same_torque)
      check.outcome = Outcome::ok, check.reason = Reason::same_finish;
    else if (*answer.factor > 1.0 && !q.offered.as.soft_part.empty())
      check.outcome = Outcome::not_known, check.reason = Reason::finish_wants_more_on_soft,
      check.facts = {q.offered.as.soft_part, surfaces_of(q.offered)};
    else
      check.reason = Reason::other_finish;
  }
  checks.push_back(std::move(check));
}

// A higher class keeps the torque of the original: thread, seat and part are still the same.
bool is_stronger(const Question& q) {
  const auto& was = q.original.as.strength.tensile;
  const auto& comes = q.offered.as.strength.tensile;
  return was && comes && double(*comes / *was) > 1.0 / k_as_much;
}

void add_load_facts(Check& check, const tightening::ClampAnswer& clamp) {
  if (const auto load = tightening::leading_preload(clamp)) {
    check.facts.emplace_back(load->low);
    check.facts.emplace_back(load->likely);
    check.facts.emplace_back(load->high);
  }
}

void add_what_to_set(Checks& checks, const Question& q, const Answer& answer) {
  Check check{Link::torque, Outcome::note, Reason::torque_not_told};
  if (!q.place.no_torque_because.empty()) {
    check.outcome = Outcome::not_known, check.reason = Reason::torque_unusable;
    check.facts = {q.place.no_torque_because};
    checks.push_back(std::move(check));
    return;
  }
  if (!q.place.torque) {
    if (is_stronger(q)) check.reason = Reason::keep_torque_of_lower_class;
    check.facts = {q.original.as.strength.class_name, q.offered.as.strength.class_name};
    checks.push_back(std::move(check));
    return;
  }
  check.original = {*q.place.torque};
  const tightening::ClampAnswer* used = answer.offered ? &*answer.offered : nullptr;
  if (answer.other_torque) {
    check.offered = {answer.other_torque->set};
    check.reason = Reason::other_torque;
    check.facts = {*q.place.torque};
    if (answer.offered) add_load_facts(check, *answer.offered);
    check.facts.resize(4, std::string("not known"));
    const OtherTorque& other = *answer.other_torque;
    check.facts.emplace_back(other.set);
    if (other.by_nut_factor && other.by_thread_friction) check.facts.emplace_back(other.by_thread_friction->likely);
    used = answer.offered_at_other_torque ? &*answer.offered_at_other_torque : nullptr;
  } else {
    check.offered = {*q.place.torque};
    check.reason = is_stronger(q) ? Reason::keep_torque_of_lower_class : Reason::keep_torque;
    check.facts = {q.original.as.strength.class_name, q.offered.as.strength.class_name};
    if (answer.offered) add_load_facts(check, *answer.offered);
  }
  if (used != nullptr && used->verdict == tightening::Verdict::over_limit) {
    check.outcome = Outcome::no;
    check.reason = Reason::torque_too_high;
    check.facts = {used->torque};
  }
  checks.push_back(std::move(check));
}

} // namespace

void add_torque(Checks& checks, const Question& q, const Answer& answer) {
  add_friction(checks, q, answer);
  add_what_to_set(checks, q, answer);
}

} // namespace clampwright::substitute
