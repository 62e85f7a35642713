// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/substitute/links.hpp"
#include "core/tightening/clamp_findings.hpp"

namespace clampwright::substitute {

namespace {

using finding::Fact;
using quantity::Force;
using quantity::Stress;
using MaybeForce = std::optional<Force>;
using MaybeStress = std::optional<Stress>;

std::vector<Fact> side(const MaybeForce& load, const MaybeStress& stress) {
  std::vector<Fact> facts;
  if (load) facts.emplace_back(*load);
  if (stress) facts.emplace_back(*stress);
  return facts;
}

// Metric classes and inch grades are held against each other by what the bolt bears, never by name; only where a load
// is missing on one side (no stress area) by stress, which is the same question for one and the same thread.
void add_property(Checks& checks, Link link, const MaybeForce& was_load, const MaybeStress& was_stress,
                  const MaybeForce& comes_load, const MaybeStress& comes_stress) {
  Check check{link, Outcome::not_known, Reason::strength_not_known};
  check.original = side(was_load, was_stress);
  check.offered = side(comes_load, comes_stress);
  double share = 0;
  if (was_load && comes_load)
    share = double(*comes_load / *was_load);
  else if (was_stress && comes_stress)
    share = double(*comes_stress / *was_stress);
  else {
    checks.push_back(std::move(check));
    return;
  }
  const bool enough = share >= k_as_much;
  check.outcome = enough ? Outcome::ok : Outcome::no;
  check.reason = enough ? Reason::bears_as_much : Reason::bears_less;
  check.facts = {share};
  checks.push_back(std::move(check));
}

} // namespace

// Two different systems of hardness meet here: where the tables have no greatest hardness, the tensile strength speaks.
// 1200 MPa is where Brahimi, Yue and Sriraman (2017) see the susceptibility rise.
bool is_hard(const strength::Strength& strength) {
  if (strength.hardest_HV) return *strength.hardest_HV > tightening::k_brittle_from_HV;
  constexpr double k_hard_MPa = 1200.0;
  return strength.tensile && !strength.stainless && quantity::in_megapascals(*strength.tensile) > k_hard_MPa;
}

void add_strength(Checks& checks, const Question& q) {
  using tightening::JointKind;
  const JointKind kind = q.original.as.kind;
  if (kind != JointKind::bolt && kind != JointKind::stud_set) {
    for (const Link link : {Link::proof, Link::yield, Link::tensile})
      checks.push_back({link,
                        Outcome::not_known,
                        Reason::not_judged_as_bolt,
                        {},
                        {},
                        {std::string(tightening::joint_kind_name(kind))}});
    return;
  }
  const strength::Strength& was = q.original.as.strength;
  const strength::Strength& comes = q.offered.as.strength;
  if (class_known(q.original) && class_known(q.offered) && (was.stainless || comes.stainless))
    // ISO 3506 knows no stress under proof load; Rp0.2 against Rp0.2 decides.
    checks.push_back({Link::proof,
                      Outcome::note,
                      Reason::no_proof_stress,
                      side(was.proof_load, was.proof_stress),
                      side(comes.proof_load, comes.proof_stress),
                      {was.stainless ? was.class_name : comes.class_name}});
  else
    add_property(checks, Link::proof, was.proof_load, was.proof_stress, comes.proof_load, comes.proof_stress);
  add_property(checks, Link::yield, was.yield_load, was.yield, comes.yield_load, comes.yield);
  add_property(checks, Link::tensile, was.tensile_load, was.tensile, comes.tensile_load, comes.tensile);
}

} // namespace clampwright::substitute
