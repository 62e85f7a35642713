// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/finding/finding.hpp"
#include "core/friction/friction.hpp"
#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"
#include "core/tightening/case.hpp"
#include "core/working/step.hpp"

namespace clampwright::tightening {

enum class Verdict { within, near_limit, may_exceed, over_limit, not_known };

// "within", "near-limit", "may-exceed", "over-limit", "not-known".
[[nodiscard]] std::string_view verdict_name(Verdict verdict);

// What the verdict was taken from.
enum class Governs { yield, proof, nothing };

// "yield", "proof"; "" for nothing.
[[nodiscard]] std::string_view governs_name(Governs governs);

// Clamp load by T - T_run = K·F·d.
struct NutFactorPart {
  friction::NutFactorBand k;
  quantity::Band<quantity::Force> preload;
  std::optional<quantity::Band<double>> use_of_proof;
  std::optional<quantity::Band<quantity::Torque>> torque; // for a wanted preload: at low, likely, high friction
};

// How the torque is spent at likely friction; adds to 1.
struct TorqueShare {
  double lift;
  double thread;
  double head;
};

// Clamp load by thread and head friction.
struct ThreadFrictionPart {
  friction::FrictionBand mu_thread;
  friction::FrictionBand mu_head;
  quantity::Length face_mean_diameter;
  quantity::Band<quantity::Force> preload;
  std::optional<quantity::Band<double>> use_of_proof;
  std::optional<quantity::Band<double>> use_of_yield;
  std::optional<double> mu_at_yield;
  TorqueShare share;
  std::optional<quantity::Band<quantity::Torque>> torque;
};

// The answer to "what does this torque clamp?".
struct ClampAnswer {
  quantity::Torque torque; // as set on the wrench
  WrenchAccuracy accuracy;
  Case asked;
  std::optional<NutFactorPart> nut_factor;
  std::optional<ThreadFrictionPart> thread_friction;
  Verdict verdict = Verdict::not_known;
  Governs governed_by = Governs::nothing;
  finding::Findings findings;
  Working working;
};

// The clamp load by the model that leads the verdict: thread friction where it is known, else the nut factor; nothing
// where neither is.
[[nodiscard]] inline std::optional<quantity::Band<quantity::Force>> leading_preload(const ClampAnswer& answer) {
  if (answer.thread_friction) return answer.thread_friction->preload;
  if (answer.nut_factor) return answer.nut_factor->preload;
  return std::nullopt;
}

// Its share of the proof load, by the same model.
[[nodiscard]] inline std::optional<quantity::Band<double>> leading_use_of_proof(const ClampAnswer& answer) {
  if (answer.thread_friction) return answer.thread_friction->use_of_proof;
  if (answer.nut_factor) return answer.nut_factor->use_of_proof;
  return std::nullopt;
}

// The torque that clamps on other surfaces what it clamped on its own, by the likely thread friction: `own` and `other`
// are the same torque on both. Nothing where either is not known by thread friction.
[[nodiscard]] inline std::optional<quantity::Torque> same_load_by_thread_friction(const ClampAnswer& own,
                                                                                  const ClampAnswer& other) {
  if (!own.thread_friction || !other.thread_friction) return std::nullopt;
  const quantity::Torque running = own.asked.running_torque.value_or(quantity::Torque());
  const double ratio = own.thread_friction->preload.likely / other.thread_friction->preload.likely;
  return running + (own.torque - running) * ratio;
}

// What a torque is wanted for: a clamp load, a share of the proof load, or a share of yield.
enum class Aim { preload, proof_share, yield_share };

struct Wanted {
  Aim aim = Aim::preload;
  quantity::Force preload; // for Aim::preload
  double share = 0;        // for the others, above 0, at most 1
};

// The answer to "what torque for this clamp load?": the torque to set, and what it does.
struct TorqueAnswer {
  Wanted wanted;
  quantity::Force preload;
  ClampAnswer clamp; // at the torque to set; its two parts carry `torque`
};

} // namespace clampwright::tightening
