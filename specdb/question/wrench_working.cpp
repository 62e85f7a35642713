// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/wrench_working.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace clampwright::specdb {

namespace {

using quantity::in_millimetres;
using quantity::in_newton_metres;

constexpr const char* k_lever_rule = "moment of a force square to the handle; TM 9-254, fig. 46";
constexpr const char* k_gum = "GUM: relative variances of a product add";

void add_levers(Working& steps, const WrenchSetReply& reply) {
  const tightening::Levers& levers = reply.set.levers;
  if (!levers.adaptor) return;
  steps.push_back({"L", "middle of the grip to the drive", "as given", in_millimetres(levers.arm), "mm", "measured"});
  steps.push_back({"A", "drive to the fastener", "as given", in_millimetres(levers.adaptor->length), "mm", "measured"});
  steps.push_back({"a", "angle of the adaptor, 0° straight ahead", "as given",
                   quantity::in_degrees(levers.adaptor->angle), "°", "measured"});
  steps.push_back({"L_e", "middle of the grip to the fastener, along the wrench", "L + A·cos a",
                   in_millimetres(tightening::effective_arm(levers)), "mm", k_lever_rule});
}

void add_torques(Working& steps, const WrenchSetReply& reply) {
  const tightening::LeverSetting& set = reply.set;
  const bool has_adaptor = set.levers.adaptor.has_value();
  steps.push_back(
      {"T", "torque wanted at the fastener", "as given", in_newton_metres(reply.task.torque), "N·m", "the figure"});
  steps.push_back({"S", "setting", has_adaptor ? "T·L/L_e" : "T", in_newton_metres(set.exact), "N·m", k_lever_rule});
  if (set.setting) {
    if (reply.wrench.step)
      steps.push_back({"S_m", "setting, on a mark", "the nearest mark that the limits allow",
                       in_newton_metres(*set.setting), "N·m", "the scale"});
    steps.push_back({"T_a", "torque that reaches the fastener",
                     fmt::format("{}{}", reply.wrench.step ? "S_m" : "S", has_adaptor ? "·L_e/L" : ""),
                     in_newton_metres(*set.applied), "N·m", k_lever_rule});
  }
  if (has_adaptor)
    steps.push_back({"T_f", "torque that reaches it where T itself is set", "T·L_e/L",
                     in_newton_metres(set.applied_if_forgotten), "N·m", k_lever_rule});
}

void add_budget(Working& steps, const tightening::Budget& budget) {
  std::vector<std::string> squares;
  for (const tightening::BudgetLine& line : budget.lines) {
    const auto& influence = line.influence;
    const std::string name = fmt::format("u_{}", influence.name);
    const bool limits = influence.spread == tightening::Spread::limits;
    const std::string half = fmt::format("g_{}", influence.name);
    if (limits)
      steps.push_back({half, fmt::format("limits of the {}, as a share", influence.name), "as given", influence.share,
                       "", influence.basis});
    steps.push_back({name, fmt::format("standard uncertainty by the {}", influence.name),
                     limits ? fmt::format("{}/√3", half) : "as given", line.standard, "",
                     limits ? "GUM: even between its limits" : influence.basis});
    squares.push_back(name + "²");
    if (&line + 1 == &budget.lines.back())
      steps.push_back({"u_T", "standard uncertainty of the torque", fmt::format("√({})", fmt::join(squares, " + ")),
                       budget.torque, "", k_gum});
  }
  steps.push_back({"u_F", "standard uncertainty of the clamp load, F = T/(K·d)",
                   fmt::format("√({})", fmt::join(squares, " + ")), budget.load, "", k_gum});
}

} // namespace

Working working_of(const WrenchSetReply& reply) {
  Working steps;
  add_levers(steps, reply);
  add_torques(steps, reply);
  add_budget(steps, reply.budget);
  return steps;
}

Source published_spread_source() {
  return {"NASA-STD-5020, as quoted in J. Failure Anal. Prev. 19 (2019)", "", "preload uncertainty of torque control",
          Known::second_hand};
}

std::vector<Source> sources_of(const WrenchSetReply& reply, const JointAnswer* joint) {
  std::vector<Source> sources;
  if (joint != nullptr) sources.push_back(joint->figure.figure.source);
  if (reply.set.levers.adaptor)
    sources.push_back({"US Army Technical Manual TM 9-254, torque wrenches with adaptors", "", "figs. 45 and 46",
                       Known::second_hand});
  sources.push_back({"ISO 6789, hand torque tools", "2003",
                     "permissible deviation, recalibration; as set out in a "
                     "tool handbook",
                     Known::second_hand});
  sources.push_back({"Guide to the expression of uncertainty in measurement (GUM)", "2008", "5.1.6", Known::memory});
  sources.push_back(published_spread_source());
  return sources;
}

} // namespace clampwright::specdb
