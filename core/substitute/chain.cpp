// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/substitute/chain.hpp"

#include <algorithm>
#include <cmath>

#include "core/substitute/links.hpp"
#include "core/tightening/clamp.hpp"
#include "core/tightening/wanted.hpp"

namespace clampwright::substitute {

namespace {

using finding::Code;
using finding::Finding;
using finding::Findings;
using quantity::Torque;
using tightening::ClampAnswer;

// The likely torque for a clamp load, to compare two fasteners by; any load does.
std::optional<Torque> likely_torque(const tightening::Case& asked) {
  const auto answer = tightening::torque_for(asked, {tightening::Aim::preload, quantity::newtons(1000.0), 0.0});
  if (!answer || !answer->clamp.thread_friction || !answer->clamp.thread_friction->torque) return std::nullopt;
  return answer->clamp.thread_friction->torque->likely;
}

// By what the torque for one clamp load differs. By nut factor where both have one, as for a joint on other surfaces.
std::optional<double> factor_of(const Question& q) {
  const tightening::Case& was = q.original.as;
  const tightening::Case& comes = q.offered.as;
  if (!was.friction_stated || !comes.friction_stated) return std::nullopt;
  if (was.nut_factor && comes.nut_factor) return comes.nut_factor->likely.value() / was.nut_factor->likely.value();
  const auto before = likely_torque(was);
  const auto now = likely_torque(comes);
  if (!before || !now) return std::nullopt;
  return double(*now / *before);
}

// The fasteners go by one and the same torque only where one can take the place of the other.
bool same_thread(const Question& q) {
  const thread::Thread& was = q.original.as.thread;
  const thread::Thread& comes = q.offered.as.thread;
  return was.designation == comes.designation && was.hand == comes.hand;
}

std::optional<quantity::Band<Torque>> band_for(const Question& q, quantity::Force load, bool by_nut_factor) {
  const auto answer = tightening::torque_for(q.offered.as, {tightening::Aim::preload, load, 0.0}, q.place.accuracy);
  if (!answer) return std::nullopt;
  const ClampAnswer& clamp = answer->clamp;
  if (by_nut_factor) return clamp.nut_factor ? clamp.nut_factor->torque : std::nullopt;
  return clamp.thread_friction ? clamp.thread_friction->torque : std::nullopt;
}

std::optional<OtherTorque> other_torque(const Question& q, const ClampAnswer& original) {
  OtherTorque out{};
  if (original.nut_factor) out.by_nut_factor = band_for(q, original.nut_factor->preload.likely, true);
  if (original.thread_friction) out.by_thread_friction = band_for(q, original.thread_friction->preload.likely, false);
  if (!out.by_nut_factor && !out.by_thread_friction) return std::nullopt;
  out.set = out.by_nut_factor ? out.by_nut_factor->likely : out.by_thread_friction->likely;
  return out;
}

Result<void> add_clamp_loads(const Question& q, Answer& answer) {
  if (!q.place.torque || !same_thread(q)) return {};
  auto original = tightening::clamp(q.original.as, *q.place.torque, q.place.accuracy);
  if (!original) return Refusal(original.error());
  auto offered = tightening::clamp(q.offered.as, *q.place.torque, q.place.accuracy);
  if (!offered) return Refusal(offered.error());
  answer.original = std::move(*original);
  answer.offered = std::move(*offered);
  if (!answer.factor || std::abs(*answer.factor - 1.0) <= k_same_torque) return {};
  if (!q.place.finish_forbidden.empty()) return {};
  if (*answer.factor > 1.0 && !q.offered.as.soft_part.empty()) return {};
  answer.other_torque = other_torque(q, *answer.original);
  if (!answer.other_torque) return {};
  auto kept = tightening::clamp(q.offered.as, answer.other_torque->set, q.place.accuracy);
  if (!kept) return Refusal(kept.error());
  answer.offered_at_other_torque = std::move(*kept);
  return {};
}

const Check* first(const Answer& answer, Outcome outcome) {
  const auto found = std::ranges::find(answer.checks, outcome, &Check::outcome);
  return found == answer.checks.end() ? nullptr : &*found;
}

void judge(Answer& answer) {
  if (const Check* no = first(answer, Outcome::no)) {
    answer.verdict = Verdict::not_adequate, answer.governed_by = no->link;
  } else if (const Check* unknown = first(answer, Outcome::not_known)) {
    answer.verdict = Verdict::not_known, answer.governed_by = unknown->link;
  } else if (answer.factor && std::abs(*answer.factor - 1.0) > k_same_torque) {
    answer.verdict = Verdict::adequate_at_other_torque, answer.governed_by = Link::friction;
  } else {
    answer.verdict = Verdict::adequate;
  }
}

// What the fastener offered brings with it; where there is a torque, at the one that would be used.
void add_findings(const Question& q, Answer& answer) {
  const ClampAnswer* used = answer.offered_at_other_torque ? &*answer.offered_at_other_torque
                            : answer.offered               ? &*answer.offered
                                                           : nullptr;
  Findings& findings = answer.findings;
  if (used != nullptr) findings = used->findings;
  const auto add = [&](Finding finding) {
    if (std::ranges::find(findings, finding.code, &Finding::code) == findings.end())
      findings.push_back(std::move(finding));
  };
  for (Finding& finding : joint::findings_around(q.place.around, q.offered.as, used))
    add(std::move(finding));
  const strength::Strength& comes = q.offered.as.strength;
  const auto strip = std::ranges::find(answer.checks, Link::part_thread, &Check::link);
  if (strip != answer.checks.end() && (strip->reason == Reason::part_gives || strip->reason == Reason::part_may_give ||
                                       strip->reason == Reason::part_may_give_as_before))
    add({Code::strip_governs, strip->outcome == Outcome::no ? finding::Severity::stop : finding::Severity::mind,
         strip->facts});
  if (comes.approved_data) add({Code::approved_data, finding::Severity::stop, {comes.class_name}});
  if (!q.offered.as.soft_part.empty()) add({Code::soft_part, finding::Severity::mind, {q.offered.as.soft_part}});
  if (q.offered.as.thread.hand == thread::Hand::left) add({Code::left_hand, finding::Severity::mind, {}});
  if (!class_known(q.offered)) add({Code::class_unknown, finding::Severity::mind, {}});
  if (comes.loadability < 1.0)
    add({Code::reduced_head, finding::Severity::note, {comes.class_name, comes.loadability}});
  const auto brittle = std::ranges::find(answer.checks, Link::brittleness, &Check::link);
  if (brittle != answer.checks.end() && brittle->outcome == Outcome::no)
    add({Code::embrittlement, finding::Severity::stop, {comes.class_name}});
  add({Code::maker_first, finding::Severity::note, {}});
  finding::put_in_order(findings);
}

} // namespace

std::string_view link_name(Link link) {
  switch (link) {
  case Link::identity:
    return "identity";
  case Link::form:
    return "form";
  case Link::diameter:
    return "diameter";
  case Link::pitch:
    return "pitch";
  case Link::hand:
    return "hand";
  case Link::length:
    return "length";
  case Link::proof:
    return "proof";
  case Link::yield:
    return "yield";
  case Link::tensile:
    return "tensile";
  case Link::nut:
    return "nut";
  case Link::part_thread:
    return "part-thread";
  case Link::seat:
    return "seat";
  case Link::head:
    return "head";
  case Link::brittleness:
    return "brittleness";
  case Link::temperature:
    return "temperature";
  case Link::friction:
    return "friction";
  case Link::torque:
    return "torque";
  case Link::corrosion:
    return "corrosion";
  case Link::galling:
    return "galling";
  case Link::fatigue:
    return "fatigue";
  case Link::reuse:
    return "reuse";
  case Link::approval:
    return "approval";
  }
  return "";
}

std::string_view outcome_name(Outcome outcome) {
  switch (outcome) {
  case Outcome::ok:
    return "ok";
  case Outcome::no:
    return "no";
  case Outcome::not_known:
    return "not-known";
  case Outcome::note:
    return "note";
  }
  return "";
}

std::vector<Link> links_not_told(const Answer& answer) {
  std::vector<Link> links;
  for (const Check& check : answer.checks)
    switch (check.reason) {
    case Reason::length_not_told:
    case Reason::nut_not_told:
    case Reason::part_length_not_told:
    case Reason::seat_not_told:
    case Reason::head_not_told:
      links.push_back(check.link);
      break;
    default:
      break;
    }
  return links;
}

std::string_view verdict_name(Verdict verdict) {
  switch (verdict) {
  case Verdict::adequate:
    return "adequate";
  case Verdict::adequate_at_other_torque:
    return "adequate-at-other-torque";
  case Verdict::not_adequate:
    return "not-adequate";
  case Verdict::not_known:
    return "not-known";
  }
  return "";
}

Result<Answer> may_replace(const Question& q) {
  Answer answer;
  answer.factor = factor_of(q);
  if (auto loads = add_clamp_loads(q, answer); !loads) return Refusal(loads.error());
  add_fit(answer.checks, q);
  add_strength(answer.checks, q);
  add_holding(answer.checks, q, answer);
  add_condition(answer.checks, q);
  add_torque(answer.checks, q, answer);
  add_metal(answer.checks, q);
  add_paper(answer.checks, q);
  judge(answer);
  add_findings(q, answer);
  return answer;
}

} // namespace clampwright::substitute
