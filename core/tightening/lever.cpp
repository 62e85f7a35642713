// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/lever.hpp"

#include <cmath>

#include "core/thread/geometry.hpp"

namespace clampwright::tightening {

quantity::Angle friction_angle(const thread::Thread& thread, friction::FrictionCoefficient mu) {
  const double flank = quantity::in_radians(thread::geometry_of(thread).flank_angle);
  return quantity::radians(std::atan(mu.value() / std::cos(flank)));
}

quantity::TorquePerForce thread_lever(const thread::Thread& thread, friction::FrictionCoefficient mu) {
  const quantity::Angle slope = thread::helix_angle(thread) + friction_angle(thread, mu);
  return quantity::lever(thread::geometry_of(thread).pitch_diameter / 2.0 * std::tan(quantity::in_radians(slope)));
}

quantity::TorquePerForce head_lever(quantity::Length face_mean_diameter, friction::FrictionCoefficient mu) {
  return quantity::lever(mu.value() * face_mean_diameter / 2.0);
}

quantity::TorquePerForce lift_lever(const thread::Thread& thread) { return thread.pitch / quantity::one_turn(); }

quantity::TorquePerForce rounded_lever(const thread::Thread& thread, quantity::Length face_mean_diameter,
                                       friction::FrictionCoefficient mu_thread, friction::FrictionCoefficient mu_head) {
  const quantity::Length d2 = thread::geometry_of(thread).pitch_diameter;
  return quantity::lever(0.16 * thread.pitch + 0.58 * d2 * mu_thread.value() +
                         face_mean_diameter / 2.0 * mu_head.value());
}

quantity::TorquePerForce nut_factor_lever(const thread::Thread& thread, friction::NutFactor k) {
  return quantity::lever(k.value() * thread.diameter);
}

} // namespace clampwright::tightening
