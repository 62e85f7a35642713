// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a clamp load takes up torque. Thread: F·d2/2·tan(φ + ρ′), with tan φ = P/(π·d2) and tan ρ′ = μ/cos α, the exact
// form on which the published preload tables of VDI 2230-1 rest (its printed 0.16·P + 0.58·d2·μ is this, rounded and
// without the product term: -0.7 to +0.1 %). Head or nut: F·μ·D_m/2.
#pragma once

#include "core/friction/friction.hpp"
#include "core/quantity/quantity.hpp"
#include "core/thread/thread.hpp"

namespace clampwright::tightening {

// ρ′ of tan ρ′ = μ/cos α.
[[nodiscard]] quantity::Angle friction_angle(const thread::Thread& thread, friction::FrictionCoefficient mu);

// Torque in the thread for each newton of clamp load.
[[nodiscard]] quantity::TorquePerForce thread_lever(const thread::Thread& thread, friction::FrictionCoefficient mu);

// Torque under the turned part for each newton of clamp load.
[[nodiscard]] quantity::TorquePerForce head_lever(quantity::Length face_mean_diameter,
                                                  friction::FrictionCoefficient mu);

// The part of the thread's torque that lifts the load: F·P/2π, for each newton.
[[nodiscard]] quantity::TorquePerForce lift_lever(const thread::Thread& thread);

// The rounded form of VDI 2230-1, for comparison: 0.16·P + 0.58·d2·μ + D_m/2·μ. Metric flanks.
[[nodiscard]] quantity::TorquePerForce rounded_lever(const thread::Thread& thread, quantity::Length face_mean_diameter,
                                                     friction::FrictionCoefficient mu_thread,
                                                     friction::FrictionCoefficient mu_head);

// K·d.
[[nodiscard]] quantity::TorquePerForce nut_factor_lever(const thread::Thread& thread, friction::NutFactor k);

} // namespace clampwright::tightening
