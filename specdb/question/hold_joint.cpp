// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/hold_joint.hpp"

#include <fmt/format.h>

namespace clampwright::specdb {

namespace {

// Why the figure on record is not what will be pulled; empty where it is.
std::string no_torque_because(const JointAnswer& joint) {
  if (!torque_on_crank(joint)) return fmt::format("the page says \"{}\"", joint.figure.figure.printed);
  if (!joint.not_to_be_used_because.empty()) return joint.not_to_be_used_because;
  if (joint.figure.figure.angle_deg) return "an angle follows the figure, and nobody knows the torque at its end";
  return {};
}

} // namespace

Result<HoldQuestion> hold_for_joint(const JointAnswer& joint, HoldQuestion typed) {
  if (!joint.joint.on_crank)
    return refuse(Trouble::no_such, "not-on-crank",
                  fmt::format("{} is not recorded as sitting on the crank, so a crank that is held says nothing of it",
                              joint.joint.slug),
                  joint.joint.slug, "give the torque and the machine's figures without --joint", "--joint");
  if (!typed.torque) {
    if (const std::string because = no_torque_because(joint); !because.empty())
      return refuse(
          Trouble::usage, "missing",
          fmt::format("--torque is missing, and the figure of {} is not taken for it: {}", joint.joint.slug, because),
          {}, "give the torque that will be pulled, like --torque 40Nm", "--torque");
    typed.torque = fmt::format("{}N.m", quantity::in_newton_metres(*torque_on_crank(joint)));
  }
  typed.holding = joint.joint.holding;
  typed.turns = crank::WrenchTurns{joint.tighten, joint.undo, joint.joint.seen_from};
  return with_record(std::move(typed), joint.joint.machine);
}

} // namespace clampwright::specdb
