// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/wanted.hpp"

#include <utility>

#include <fmt/format.h>

#include "core/tightening/clamp.hpp"
#include "core/tightening/clamp_working.hpp"
#include "core/tightening/lever.hpp"

namespace clampwright::tightening {

namespace {

using friction::FrictionCoefficient;
using quantity::Band;
using quantity::Force;
using quantity::Torque;

Refusal missing(std::string code, std::string message, std::string hint) {
  return refuse(Trouble::usage, std::move(code), std::move(message), {}, std::move(hint));
}

Refusal out_of_range(std::string message, std::string hint) {
  return refuse(Trouble::not_understood, "out-of-range", std::move(message), {}, std::move(hint));
}

bool friction_model_known(const Case& asked) { return asked.mu_thread && asked.mu_head && asked.face; }

Torque torque_by_friction(const Case& asked, Force preload, FrictionCoefficient mu_thread,
                          FrictionCoefficient mu_head) {
  return asked.running_torque.value_or(Torque{}) +
         preload * (thread_lever(asked.thread, mu_thread) + head_lever(asked.face->mean_diameter(), mu_head));
}

Torque torque_by_k(const Case& asked, Force preload, friction::NutFactor k) {
  return asked.running_torque.value_or(Torque{}) + preload * nut_factor_lever(asked.thread, k);
}

// The clamp load at which the least friction brings the bolt to that share of its yield. The share grows with the load,
// so halving the interval finds it; the running torque alone may already exceed it.
Result<Force> preload_at_yield_share(const Case& asked, double share) {
  const FrictionCoefficient mu = asked.mu_thread->low;
  Force low{};
  Force high = *asked.strength.yield_load;
  if (use_of_yield_at(asked, low, mu) >= share)
    return out_of_range("the running torque alone loads the bolt beyond that share of yield",
                        "check the running torque");
  for (int halving = 0; halving < 100; ++halving) {
    const Force middle = (low + high) / 2.0;
    (use_of_yield_at(asked, middle, mu) < share ? low : high) = middle;
  }
  return (low + high) / 2.0;
}

Result<Force> wanted_preload(const Case& asked, const Wanted& wanted) {
  const bool class_known = asked.strength.class_name != "unknown";
  const std::string hint = class_known ? "give the clamp load itself with --preload"
                                       : "name the strength class with --class, like --class 8.8";
  switch (wanted.aim) {
  case Aim::preload:
    if (!(wanted.preload > Force{}))
      return out_of_range("a clamp load of nothing needs no torque", "write a load like 15kN");
    return wanted.preload;
  case Aim::proof_share:
    if (!asked.strength.proof_load)
      return missing("proof-load-missing",
                     class_known ? fmt::format("class {} has no proof load for this thread", asked.strength.class_name)
                                 : "a share of the proof load needs the strength class",
                     hint);
    break;
  case Aim::yield_share:
    if (!asked.strength.yield || !bearing_section(asked))
      return missing("yield-missing",
                     class_known ? fmt::format("class {} has no yield for this thread", asked.strength.class_name)
                                 : "a share of yield needs the strength class",
                     hint);
    if (!asked.friction_stated || !asked.mu_thread)
      return missing("friction-missing", "a share of yield needs the friction, and none was stated",
                     "name the surfaces, like --surfaces oiled, or --mu 0.08..0.16");
    if (!asked.face)
      return missing("face-missing", "a share of yield needs the face under the turned part, which is not known",
                     "give it, like --face-outer 14mm --face-inner 9mm");
    break;
  }
  if (asked.kind != JointKind::bolt)
    return missing("not-a-bolt",
                   fmt::format("a share of proof or yield has no sense for a {}", joint_kind_name(asked.kind)),
                   "give the clamp load itself with --preload");
  if (!(wanted.share > 0.0) || wanted.share > 1.0)
    return out_of_range(fmt::format("a share of {:g} was understood; it lies above 0 and not above 1", wanted.share),
                        "write a share like 75% or 0.75");
  if (wanted.aim == Aim::proof_share) return wanted.share * *asked.strength.proof_load;
  return preload_at_yield_share(asked, wanted.share);
}

} // namespace

Result<TorqueAnswer> torque_for(const Case& given, const Wanted& wanted, std::optional<WrenchAccuracy> accuracy) {
  if (const auto section = check_section(given); !section) return Refusal(section.error());
  const Case asked = with_true_loads(given);
  const auto preload = wanted_preload(asked, wanted);
  if (!preload) return Refusal(preload.error());
  if (!friction_model_known(asked) && !asked.nut_factor)
    return missing("face-missing",
                   "neither model can work: the face under the turned part is not known, and no nut factor",
                   "give --face-outer and --face-inner, or --nut-factor");
  std::optional<Band<Torque>> by_friction;
  std::optional<Band<Torque>> by_k;
  if (friction_model_known(asked)) {
    const auto at = [&](FrictionCoefficient thread, FrictionCoefficient head) {
      return torque_by_friction(asked, *preload, thread, head);
    };
    by_friction =
        Band<Torque>{at(asked.mu_thread->low, asked.mu_head->low), at(asked.mu_thread->likely, asked.mu_head->likely),
                     at(asked.mu_thread->high, asked.mu_head->high)};
  }
  if (asked.nut_factor)
    by_k = quantity::map(*asked.nut_factor, [&](friction::NutFactor k) { return torque_by_k(asked, *preload, k); });
  const Band<Torque>& leading = by_friction ? *by_friction : *by_k;
  const Torque set = wanted.aim == Aim::yield_share ? leading.low : leading.likely;

  auto answer = clamp(asked, set, std::move(accuracy));
  if (!answer) return Refusal(answer.error());
  if (answer->thread_friction) answer->thread_friction->torque = by_friction;
  if (answer->nut_factor) answer->nut_factor->torque = by_k;

  answer->working = working_of(*answer, wanted, *preload);
  return TorqueAnswer{wanted, *preload, std::move(*answer)};
}

} // namespace clampwright::tightening
