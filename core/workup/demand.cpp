// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workup/demand.hpp"

#include <algorithm>
#include <numbers>

namespace clampwright::workup {

std::string_view need_name(NeedKind kind) {
  switch (kind) {
  case NeedKind::clamp:
    return "clamp";
  case NeedKind::friction_torque:
    return "friction-torque";
  case NeedKind::friction_force:
    return "friction-force";
  case NeedKind::pull:
    return "pull";
  case NeedKind::pressure:
    return "pressure";
  }
  return "";
}

NeededLoad needed_load(const Demand& demand) {
  NeededLoad out;
  const double bolts = demand.bolts;
  quantity::Force grip;
  quantity::Force pull;
  const auto grips = [&](NeedKind kind, quantity::Force load) {
    out.needs.push_back({kind, load});
    grip = std::max(grip, load);
  };
  const auto pulls = [&](NeedKind kind, quantity::Force load) {
    out.needs.push_back({kind, load});
    pull += load;
  };
  if (demand.clamp) grips(NeedKind::clamp, *demand.clamp);
  if (demand.friction) {
    const ByFriction& by = *demand.friction;
    const double grip_share = bolts * by.friction * by.faces;
    if (by.torque) grips(NeedKind::friction_torque, *by.torque / (grip_share * quantity::lever(*by.radius)));
    if (by.force) grips(NeedKind::friction_force, *by.force / grip_share);
  }
  if (demand.pull) pulls(NeedKind::pull, *demand.pull);
  if (demand.sealed) {
    const Sealed& sealed = *demand.sealed;
    pulls(NeedKind::pressure, sealed.pressure * (std::numbers::pi / 4.0 * sealed.diameter * sealed.diameter) / bolts);
  }
  out.kept = grip + pull;
  out.tightened = out.kept / (1.0 - demand.loss);
  return out;
}

} // namespace clampwright::workup
