// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workup/workup.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/joint/surroundings.hpp"
#include "core/tightening/clamp.hpp"
#include "core/workup/workup_working.hpp"

namespace clampwright::workup {

namespace {

using finding::Code;
using finding::Severity;
using quantity::Force;
using quantity::Torque;
using tightening::ClampAnswer;

// Far beyond any torque that a hand-held wrench gives.
constexpr double k_most_N_m = 1e5;

std::optional<ClampAnswer> clamp_at(const Case& asked, Torque torque) {
  auto answer = tightening::clamp(asked.fastener, torque, asked.accuracy);
  if (!answer) return std::nullopt; // it does not exceed the running torque, so nothing is clamped
  return std::move(*answer);
}

// The greatest torque for which `holds` is true, to one part in 2^50; it is true of no torque at all. Nothing where it
// holds however high the torque.
template<class Condition>
std::optional<Torque> highest_torque(Condition holds) {
  double good = 0;
  double bad = k_most_N_m;
  if (holds(quantity::newton_metres(bad))) return std::nullopt;
  for (int halving = 0; halving < 70; ++halving) {
    const double middle = (good + bad) / 2;
    (holds(quantity::newton_metres(middle)) ? good : bad) = middle;
  }
  return quantity::newton_metres(good);
}

std::optional<Torque> torque_where_load_reaches(const Case& asked, Force load) {
  return highest_torque([&](Torque torque) {
    const auto clamp = clamp_at(asked, torque);
    const auto band = clamp ? joint::graver_load(*clamp) : std::nullopt;
    return !band || band->high <= load;
  });
}

std::optional<Torque> torque_where_yield_reaches(const Case& asked, double share) {
  return highest_torque([&](Torque torque) {
    const auto clamp = clamp_at(asked, torque);
    const auto& by_friction = clamp ? clamp->thread_friction : std::nullopt;
    return !by_friction || !by_friction->use_of_yield || by_friction->use_of_yield->high <= share;
  });
}

// The least clamp load by the model that reckons with less.
std::optional<Force> least_load(const ClampAnswer& clamp) {
  std::optional<Force> least;
  if (clamp.nut_factor) least = clamp.nut_factor->preload.low;
  if (clamp.thread_friction)
    least = least ? std::min(*least, clamp.thread_friction->preload.low) : clamp.thread_friction->preload.low;
  return least;
}

std::optional<Torque> torque_that_keeps(const Case& asked, Force load) {
  const auto below = highest_torque([&](Torque torque) {
    const auto clamp = clamp_at(asked, torque);
    const auto least = clamp ? least_load(*clamp) : std::nullopt;
    return !least || *least < load;
  });
  // The next torque on the other side of the last halving.
  return below ? std::optional(*below * (1.0 + 1e-12)) : std::nullopt;
}

AllowedLoad of_load(const Case& asked, Limit limit, std::optional<Force> bears, double share) {
  AllowedLoad out{limit, bears, share, std::nullopt, std::nullopt};
  if (!bears) return out;
  out.allowed = share * *bears;
  out.torque = torque_where_load_reaches(asked, *out.allowed);
  return out;
}

void add_bolt(const Case& asked, std::vector<AllowedLoad>& limits) {
  const auto& strength = asked.fastener.strength;
  // Stainless classes have no proof stress; their yield stands alone then.
  if (strength.proof_load || !strength.yield_load)
    limits.push_back(of_load(asked, Limit::bolt_proof, strength.proof_load, asked.shares.proof));
  if (!strength.yield_load) return;
  AllowedLoad yield{Limit::bolt_yield, strength.yield_load, asked.shares.yield, std::nullopt, std::nullopt};
  const auto probe = clamp_at(asked, quantity::newton_metres(k_most_N_m));
  if (probe && probe->thread_friction && probe->thread_friction->use_of_yield) {
    yield.torque = torque_where_yield_reaches(asked, asked.shares.yield);
    const auto there = yield.torque ? clamp_at(asked, *yield.torque) : std::nullopt;
    if (there) yield.allowed = there->thread_friction->preload.high;
  } else {
    // Without a face the torsion is not known: tension alone, by the nut factor.
    yield.allowed = asked.shares.yield * *strength.yield_load;
    yield.torque = torque_where_load_reaches(asked, *yield.allowed);
  }
  limits.push_back(std::move(yield));
}

void add_threads(const Case& asked, const std::optional<joint::StripAnswer>& strip, std::vector<AllowedLoad>& limits) {
  if (!asked.in_part) return;
  const auto bolt_thread = strip ? strip->loads.bolt_thread : std::nullopt;
  const auto part_thread = strip ? strip->loads.part_thread : std::nullopt;
  if (bolt_thread) limits.push_back(of_load(asked, Limit::bolt_thread, bolt_thread, asked.shares.thread));
  limits.push_back(of_load(asked, Limit::part_thread, part_thread, asked.shares.thread));
}

std::optional<Force> ring_load(const tightening::Case& fastener, const std::optional<quantity::Stress>& bears) {
  if (!fastener.face || !bears) return std::nullopt;
  const tightening::Face& face = *fastener.face;
  return *bears * (std::numbers::pi / 4.0 * (face.outer * face.outer - face.inner * face.inner));
}

std::vector<AllowedLoad> limits_of(const Case& asked, const std::optional<joint::StripAnswer>& strip) {
  std::vector<AllowedLoad> limits;
  add_bolt(asked, limits);
  add_threads(asked, strip, limits);
  if (asked.nut) limits.push_back(of_load(asked, Limit::nut, asked.nut->proof_load, asked.shares.nut));
  if (asked.seat)
    limits.push_back(of_load(asked, Limit::seat, ring_load(asked.fastener, asked.seat->seat_pressure), 1.0));
  if (asked.soft) limits.push_back(of_load(asked, Limit::soft_part, ring_load(asked.fastener, asked.soft->bears), 1.0));
  return limits;
}

// Rounded down to something that a wrench can be set to: steps of 0.1, 0.5, 1, 5 N·m and so on, a twentieth at the
// most.
Torque rounded_down(Torque torque) {
  const double value = quantity::in_newton_metres(torque);
  double step = 1e-6;
  for (double decade = 0.01; decade < value; decade *= 10)
    for (const double one : {1.0, 5.0})
      if (one * decade <= value / 20) step = one * decade;
  return quantity::newton_metres(std::floor(value / step + 1e-9) * step);
}

void add_helps(Answer& out) {
  const auto help = [&](Help one) {
    if (std::ranges::find(out.helps, one) == out.helps.end()) out.helps.push_back(one);
  };
  if (out.verdict != Verdict::none) return;
  if (out.asked.weak_nut_for) {
    help(Help::stronger_nut);
    return;
  }
  if (out.scatter_alone) help(Help::less_scatter);
  switch (*out.governed_by) {
  case Limit::bolt_proof:
  case Limit::bolt_yield:
  case Limit::bolt_thread:
    help(Help::stronger_bolt);
    break;
  case Limit::part_thread:
    help(Help::longer_engagement);
    break;
  case Limit::nut:
    help(Help::stronger_nut);
    break;
  case Limit::seat:
  case Limit::soft_part:
    help(Help::larger_face);
    break;
  }
  if (!out.scatter_alone) help(Help::less_scatter);
  help(Help::more_bolts);
  const auto by_friction = [](const Need& need) {
    return need.kind == NeedKind::friction_torque || need.kind == NeedKind::friction_force;
  };
  if (std::ranges::any_of(out.needed.needs, by_friction)) help(Help::carry_otherwise);
}

// What nobody told of the place, in words for the finding.
std::string not_looked_at(const Case& asked) {
  std::string out;
  if (!asked.nut && !asked.in_part) out = "the thread that it screws into";
  if (!asked.seat && !asked.soft) out += out.empty() ? "the seat under the face" : ", the seat under the face";
  return out;
}

void judge(Answer& out) {
  if (out.asked.weak_nut_for) {
    out.governed_by = Limit::nut;
    out.verdict = Verdict::none;
    return;
  }
  const bool all_known = std::ranges::all_of(out.limits, [](const AllowedLoad& l) { return l.torque.has_value(); });
  const AllowedLoad* first = nullptr;
  for (const AllowedLoad& limit : out.limits) {
    if (limit.torque && (first == nullptr || *limit.torque < *first->torque)) first = &limit;
    if (limit.allowed && (!out.allowed || *limit.allowed < *out.allowed)) out.allowed = limit.allowed;
  }
  if (first != nullptr) out.governed_by = first->limit;
  if (!out.needed.needs.empty()) out.lowest = torque_that_keeps(out.asked, out.needed.tightened);
  // More than the least limit known is out of the question, whatever the others are.
  if (first != nullptr && out.lowest && *out.lowest > *first->torque) {
    out.highest = first->torque;
    out.verdict = Verdict::none;
    out.scatter_alone = out.needed.tightened <= *out.allowed;
    return;
  }
  if (first == nullptr || !all_known) return; // not known
  out.highest = first->torque;
  const Torque round = rounded_down(*out.highest);
  out.set = out.lowest && round < *out.lowest ? *out.highest : round;
  // An upper end that leaves parts out is none to promise that anything is carried by.
  out.verdict = out.lowest && not_looked_at(out.asked).empty() ? Verdict::torque : Verdict::at_most;
}

void add_findings(Answer& out) {
  if (out.set) {
    out.clamp = clamp_at(out.asked, *out.set);
    if (out.clamp) out.findings = out.clamp->findings;
    // What the clamp load alone would raise is what was worked up against.
    std::erase_if(out.findings, [](const finding::Finding& one) { return one.code == Code::maker_first; });
  } else {
    if (out.asked.fastener.strength.class_name == "unknown")
      out.findings.push_back({Code::class_unknown, Severity::mind, {}});
    if (!out.asked.fastener.friction_stated) out.findings.push_back({Code::surfaces_not_stated, Severity::mind, {}});
  }
  if (out.asked.weak_nut_for)
    out.findings.push_back(
        {Code::nut_too_weak,
         Severity::stop,
         {out.asked.nut->nut_class, *out.asked.weak_nut_for, out.asked.fastener.strength.class_name}});
  const std::string untold = not_looked_at(out.asked);
  if (out.asked.fastener.kind == tightening::JointKind::bolt && !untold.empty())
    out.findings.push_back({Code::not_looked_at, Severity::mind, {untold}});
  out.findings.push_back({Code::derived_torque, Severity::mind, {}});
  out.findings.push_back({Code::maker_first, Severity::note, {}});
  finding::put_in_order(out.findings);
}

} // namespace

std::string_view limit_name(Limit limit) {
  switch (limit) {
  case Limit::bolt_proof:
    return "bolt-proof";
  case Limit::bolt_yield:
    return "bolt-yield";
  case Limit::bolt_thread:
    return "bolt-thread";
  case Limit::part_thread:
    return "part-thread";
  case Limit::nut:
    return "nut";
  case Limit::seat:
    return "seat";
  case Limit::soft_part:
    return "soft-part";
  }
  return "";
}

std::string_view verdict_name(Verdict verdict) {
  switch (verdict) {
  case Verdict::torque:
    return "torque";
  case Verdict::at_most:
    return "at-most";
  case Verdict::none:
    return "none";
  case Verdict::not_known:
    return "not-known";
  }
  return "";
}

std::string_view help_name(Help help) {
  switch (help) {
  case Help::larger_face:
    return "larger-face";
  case Help::longer_engagement:
    return "longer-engagement";
  case Help::stronger_nut:
    return "stronger-nut";
  case Help::stronger_bolt:
    return "stronger-bolt";
  case Help::less_scatter:
    return "less-scatter";
  case Help::more_bolts:
    return "more-bolts";
  case Help::carry_otherwise:
    return "carry-otherwise";
  }
  return "";
}

Answer work_up(const Case& asked) {
  Answer out;
  out.asked = asked;
  out.needed = needed_load(asked.demand);
  // A plug or union seals and a stud is only set: no clamp load is wanted of them. Aircraft hardware has its data.
  const auto kind = asked.fastener.kind;
  if (asked.threads) out.strip = joint::strip(*asked.threads);
  if (kind == tightening::JointKind::bolt && !asked.fastener.strength.approved_data)
    out.limits = limits_of(asked, out.strip);
  if (kind == tightening::JointKind::bolt || kind == tightening::JointKind::hub) judge(out);
  add_helps(out);
  add_findings(out);
  out.working = working_of(out);
  return out;
}

} // namespace clampwright::workup
