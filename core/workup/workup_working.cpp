// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workup/workup_working.hpp"

#include <string>

#include <fmt/format.h>

#include "core/joint/surroundings.hpp"

namespace clampwright::workup {

namespace {

using quantity::in_megapascals;
using quantity::in_millimetres;
using quantity::in_newton_metres;
using quantity::in_newtons;

const std::string k_told = "as told";

void add_need(Working& working, const Need& need, const Demand& demand) {
  const double load = in_newtons(need.load);
  switch (need.kind) {
  case NeedKind::clamp:
    working.push_back({"F_told", "clamp load that each bolt must keep", k_told, load, "N", k_told});
    break;
  case NeedKind::friction_torque:
    working.push_back(
        {"T_c", "torque to be carried", k_told, in_newton_metres(*demand.friction->torque), "N·m", k_told});
    working.push_back(
        {"r", "radius at which the faces rub", k_told, in_millimetres(*demand.friction->radius), "mm", k_told});
    working.push_back({"F_t", "clamp load for it, each bolt", "1000·T_c/(n·μ_f·r·i)", load, "N",
                       "friction of clamped faces; F = T/(n·μ·r·i)"});
    break;
  case NeedKind::friction_force:
    working.push_back({"Q", "force across the bolts", k_told, in_newtons(*demand.friction->force), "N", k_told});
    working.push_back({"F_q", "clamp load for it, each bolt", "Q/(n·μ_f·i)", load, "N", "friction of clamped faces"});
    break;
  case NeedKind::pull:
    working.push_back({"F_A", "pull along each bolt", k_told, load, "N", k_told});
    break;
  case NeedKind::pressure:
    working.push_back({"p", "pressure inside", k_told, in_megapascals(demand.sealed->pressure), "MPa", k_told});
    working.push_back(
        {"D", "diameter that it works on", k_told, in_millimetres(demand.sealed->diameter), "mm", k_told});
    working.push_back({"F_p", "pull of it on each bolt", "p·π/4·D²/n", load, "N", "pressure on an area"});
    break;
  }
}

void add_needs(Working& working, const Answer& answer) {
  const Demand& demand = answer.asked.demand;
  if (answer.needed.needs.empty()) return;
  working.push_back({"n", "bolts that share it", k_told, static_cast<double>(demand.bolts), "", k_told});
  if (demand.friction) {
    working.push_back(
        {"μ_f", "friction of the clamped faces, the least", k_told, demand.friction->friction, "", k_told});
    working.push_back(
        {"i", "faces that would have to slip", k_told, static_cast<double>(demand.friction->faces), "", k_told});
  }
  std::string grips;
  std::string pulls;
  for (const Need& need : answer.needed.needs) {
    add_need(working, need, demand);
    const std::string symbol = working.back().symbol;
    const bool pull = need.kind == NeedKind::pull || need.kind == NeedKind::pressure;
    std::string& list = pull ? pulls : grips;
    if (!list.empty()) list += pull ? " + " : ", ";
    list += symbol;
  }
  const std::string grip = grips.empty() ? "" : grips.find(',') == std::string::npos ? grips : "max(" + grips + ")";
  working.push_back({"F_keep", "clamp load that each bolt must keep in service",
                     grip + (grip.empty() || pulls.empty() ? "" : " + ") + pulls, in_newtons(answer.needed.kept), "N",
                     "the whole of a pull unloads the parts: the careful side of VDI 2230-1"});
  working.push_back({"v", "share that is lost after tightening", k_told, demand.loss, "", "embedding, see the report"});
  working.push_back({"F_need", "clamp load that each bolt must have when tightened", "F_keep/(1 - v)",
                     in_newtons(answer.needed.tightened), "N", "definition of the loss"});
}

// The ring on which seat or soft part is pressed.
void add_ring(Working& working, const Case& asked) {
  const auto& face = asked.fastener.face;
  const auto bears = asked.seat ? asked.seat->seat_pressure : asked.soft ? asked.soft->bears : std::nullopt;
  if (!face || !bears) return;
  const std::string of = asked.seat ? asked.seat->description : asked.soft->name;
  working.push_back(
      {"D_seat", "outer diameter of the face", face->basis, in_millimetres(face->outer), "mm", face->basis});
  working.push_back(
      {"d_seat", "inner diameter of the face", face->basis, in_millimetres(face->inner), "mm", face->basis});
  working.push_back({"p_seat", "pressure that it bears: " + of, asked.seat ? "table" : k_told, in_megapascals(*bears),
                     "MPa", asked.seat ? "part_materials" : k_told});
}

void add_limits(Working& working, const Answer& answer) {
  if (answer.strip && !answer.limits.empty())
    working.insert(working.end(), answer.strip->working.begin(), answer.strip->working.end());
  if (!answer.limits.empty()) add_ring(working, answer.asked);
  int index = 0;
  for (const AllowedLoad& limit : answer.limits) {
    const std::string i = fmt::format("{}", ++index);
    if (!limit.bears || !limit.allowed) continue;
    const std::string name(limit_name(limit.limit));
    const bool on_ring = limit.limit == Limit::seat || limit.limit == Limit::soft_part;
    working.push_back({"B" + i, "load at which it gives: " + name,
                       on_ring ? "p_seat·π/4·(D_seat² - d_seat²)" : "of that part", in_newtons(*limit.bears), "N",
                       "tables of the class, the material and the limits of size"});
    working.push_back({"s" + i, "share of it that may be used", "told or usual", limit.share, "", "see the report"});
    if (limit.limit == Limit::bolt_yield && answer.asked.fastener.face)
      working.push_back({"A" + i, "greatest clamp load allowed by it: tension and torsion reach s" + i + " of yield",
                         "clamp load at the torque that does", in_newtons(*limit.allowed), "N",
                         "VDI 2230-1: von Mises"});
    else
      working.push_back({"A" + i, "greatest clamp load allowed by it", "s" + i + "·B" + i, in_newtons(*limit.allowed),
                         "N", "definition of the share"});
  }
}

} // namespace

Working working_of(const Answer& answer) {
  Working working;
  add_needs(working, answer);
  add_limits(working, answer);
  if (answer.highest)
    working.push_back({"T_most", "torque at which the greatest clamp load reaches the first of these",
                       "by halving, at the least friction and the most that the wrench gives",
                       in_newton_metres(*answer.highest), "N·m", "both models, the graver"});
  if (answer.lowest)
    working.push_back({"T_least", "torque at which the least clamp load reaches F_need",
                       "by halving, at the most friction and the least that the wrench gives",
                       in_newton_metres(*answer.lowest), "N·m", "both models, the lower"});
  if (answer.clamp) working.insert(working.end(), answer.clamp->working.begin(), answer.clamp->working.end());
  return working;
}

} // namespace clampwright::workup
