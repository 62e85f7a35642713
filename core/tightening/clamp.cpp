// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/clamp.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/tightening/clamp_findings.hpp"
#include "core/tightening/clamp_working.hpp"
#include "core/tightening/lever.hpp"
#include "core/tightening/stress.hpp"

namespace clampwright::tightening {

namespace {

using friction::FrictionCoefficient;
using quantity::Band;
using quantity::Force;
using quantity::Torque;
using quantity::TorquePerForce;

Torque running_torque(const Case& asked) { return asked.running_torque.value_or(Torque{}); }

// The torque that is left for clamping, on that lever; none where the nut runs heavier than the wrench pulls.
Force preload_on(const Case& asked, Torque torque, TorquePerForce lever) {
  return std::max(Force{}, (torque - running_torque(asked)) / lever);
}

TorquePerForce whole_lever(const Case& asked, FrictionCoefficient mu_thread, FrictionCoefficient mu_head) {
  return thread_lever(asked.thread, mu_thread) + head_lever(asked.face->mean_diameter(), mu_head);
}

// What the wrench may give for a set torque.
Band<Torque> wrench_band(Torque torque, const WrenchAccuracy& accuracy) {
  return {torque * (1.0 - accuracy.share), torque, torque * (1.0 + accuracy.share)};
}

std::optional<Band<double>> over(const Band<Force>& preload, const std::optional<Force>& load) {
  if (!load) return std::nullopt;
  return quantity::map(preload, [&](Force force) { return double(force / *load); });
}

// Little friction is much load, so the ends change places. Friction so lopsided that torsion outweighs tension can turn
// the stress round; the band then still runs from the least to the most.
Band<double> rising(double at_high_friction, double likely, double at_low_friction) {
  return {std::min({at_high_friction, likely, at_low_friction}), likely,
          std::max({at_high_friction, likely, at_low_friction})};
}

bool is_judged(const Case& asked) { return asked.kind == JointKind::bolt; }

bool yield_is_known(const Case& asked) {
  return is_judged(asked) && asked.strength.yield.has_value() && bearing_section(asked).has_value();
}

// The equal friction in thread and head at which the set torque brings the bolt to yield; none where no friction from 0
// to 1 does. More friction means less stress, so halving the interval finds it.
std::optional<double> friction_at_yield(const Case& asked, Torque torque) {
  const auto use = [&](double mu) {
    const auto both = *FrictionCoefficient::try_make(mu);
    return use_of_yield(asked, torque, both, both);
  };
  double low = 0.0;
  double high = 1.0;
  if (use(low) < 1.0 || use(high) > 1.0) return std::nullopt;
  for (int halving = 0; halving < 60; ++halving) {
    const double middle = (low + high) / 2.0;
    (use(middle) > 1.0 ? low : high) = middle;
  }
  return (low + high) / 2.0;
}

NutFactorPart by_nut_factor(const Case& asked, const Band<Torque>& torque) {
  const auto& k = *asked.nut_factor;
  const auto preload = [&](Torque t, friction::NutFactor factor) {
    return preload_on(asked, t, nut_factor_lever(asked.thread, factor));
  };
  NutFactorPart part{k,
                     {preload(torque.low, k.high), preload(torque.likely, k.likely), preload(torque.high, k.low)},
                     std::nullopt,
                     std::nullopt};
  if (is_judged(asked)) part.use_of_proof = over(part.preload, asked.strength.proof_load);
  return part;
}

ThreadFrictionPart by_thread_friction(const Case& asked, const Band<Torque>& torque) {
  const auto& thread = *asked.mu_thread;
  const auto& head = *asked.mu_head;
  const auto preload = [&](Torque t, FrictionCoefficient mu_thread, FrictionCoefficient mu_head) {
    return preload_on(asked, t, whole_lever(asked, mu_thread, mu_head));
  };
  const TorquePerForce whole = whole_lever(asked, thread.likely, head.likely);
  const double lift = lift_lever(asked.thread) / whole;
  const double in_thread = thread_lever(asked.thread, thread.likely) / whole;
  ThreadFrictionPart part{thread,
                          head,
                          asked.face->mean_diameter(),
                          {preload(torque.low, thread.high, head.high),
                           preload(torque.likely, thread.likely, head.likely),
                           preload(torque.high, thread.low, head.low)},
                          std::nullopt,
                          std::nullopt,
                          std::nullopt,
                          {lift, in_thread - lift, 1.0 - in_thread},
                          std::nullopt};
  if (is_judged(asked)) part.use_of_proof = over(part.preload, asked.strength.proof_load);
  if (yield_is_known(asked)) {
    part.use_of_yield = rising(use_of_yield(asked, torque.low, thread.high, head.high),
                               use_of_yield(asked, torque.likely, thread.likely, head.likely),
                               use_of_yield(asked, torque.high, thread.low, head.low));
    part.mu_at_yield = friction_at_yield(asked, torque.likely);
  }
  return part;
}

struct Judgement {
  Verdict verdict;
  Governs governs;
};

Judgement judge(const ClampAnswer& answer) {
  // What the angle adds depends on what is clamped: the torque alone decides nothing.
  if (answer.asked.angle_follows) return {Verdict::not_known, Governs::nothing};
  std::optional<Band<double>> use;
  Governs governs = Governs::nothing;
  if (answer.thread_friction) {
    use = answer.thread_friction->use_of_yield;
    governs = Governs::yield;
  } else if (answer.nut_factor) {
    use = answer.nut_factor->use_of_proof;
    governs = Governs::proof;
  }
  if (!use) return {Verdict::not_known, Governs::nothing};
  if (use->likely > 1.0) return {Verdict::over_limit, governs};
  if (use->high > 1.0) return {answer.asked.friction_stated ? Verdict::may_exceed : Verdict::not_known, governs};
  if (use->likely > k_near_limit) return {Verdict::near_limit, governs};
  return {Verdict::within, governs};
}

} // namespace

std::string_view verdict_name(Verdict verdict) {
  switch (verdict) {
  case Verdict::within:
    return "within";
  case Verdict::near_limit:
    return "near-limit";
  case Verdict::may_exceed:
    return "may-exceed";
  case Verdict::over_limit:
    return "over-limit";
  case Verdict::not_known:
    return "not-known";
  }
  return "";
}

std::string_view governs_name(Governs governs) {
  switch (governs) {
  case Governs::yield:
    return "yield";
  case Governs::proof:
    return "proof";
  case Governs::nothing:
    return "";
  }
  return "";
}

double use_of_yield_at(const Case& asked, Force preload, FrictionCoefficient mu_thread) {
  const quantity::Area section = *bearing_section(asked);
  const Torque in_thread = preload * thread_lever(asked.thread, mu_thread) + running_torque(asked);
  return equivalent(tension(preload, section), plastic_torsion(in_thread, section)) /
         (asked.strength.loadability * *asked.strength.yield);
}

double use_of_yield(const Case& asked, Torque torque, FrictionCoefficient mu_thread, FrictionCoefficient mu_head) {
  return use_of_yield_at(asked, preload_on(asked, torque, whole_lever(asked, mu_thread, mu_head)), mu_thread);
}

Result<ClampAnswer> clamp(const Case& given, Torque torque, std::optional<WrenchAccuracy> accuracy) {
  if (const auto section = check_section(given); !section) return Refusal(section.error());
  if (torque <= running_torque(given))
    return refuse(Trouble::not_understood, "out-of-range",
                  given.running_torque
                      ? fmt::format("a torque of {:g} N·m does not exceed the running torque of {:g} N·m",
                                    quantity::in_newton_metres(torque),
                                    quantity::in_newton_metres(running_torque(given)))
                      : "a torque of nothing clamps nothing",
                  {}, "give the whole torque as set on the wrench, running torque included, like 24N.m", "--torque");
  Case asked = with_true_loads(given);
  ClampAnswer answer{torque,
                     accuracy.value_or(standard_accuracy(torque)),
                     std::move(asked),
                     std::nullopt,
                     std::nullopt,
                     Verdict::not_known,
                     Governs::nothing,
                     {},
                     {}};
  const Band<Torque> reached = wrench_band(torque, answer.accuracy);
  if (answer.asked.nut_factor) answer.nut_factor = by_nut_factor(answer.asked, reached);
  if (answer.asked.mu_thread && answer.asked.mu_head && answer.asked.face)
    answer.thread_friction = by_thread_friction(answer.asked, reached);
  const Judgement judgement = judge(answer);
  answer.verdict = judgement.verdict;
  answer.governed_by = judgement.governs;
  answer.findings = findings_of(answer);
  answer.working = working_of(answer);
  return answer;
}

} // namespace clampwright::tightening
