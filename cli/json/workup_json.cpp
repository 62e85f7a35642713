// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/workup_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/tightening_json.hpp"
#include "cli/json/values_json.hpp"

namespace clampwright::cli {

namespace {

Json newtons_or_null(const std::optional<quantity::Force>& load) {
  return load ? Json(quantity::in_newtons(*load)) : Json(nullptr);
}
Json N_m_or_null(const std::optional<quantity::Torque>& torque) {
  return torque ? Json(quantity::in_newton_metres(*torque)) : Json(nullptr);
}

Json limits_json(const workup::Answer& answer) {
  Json out = Json::array();
  for (const workup::AllowedLoad& limit : answer.limits)
    out.push_back({{"limit", workup::limit_name(limit.limit)},
                   {"bears_N", newtons_or_null(limit.bears)},
                   {"share", limit.share},
                   {"allowed_N", newtons_or_null(limit.allowed)},
                   {"torque_N_m", N_m_or_null(limit.torque)}});
  return out;
}

Json needs_json(const workup::NeededLoad& needed) {
  Json out = Json::array();
  for (const workup::Need& need : needed.needs)
    out.push_back({{"need", workup::need_name(need.kind)}, {"load_N", quantity::in_newtons(need.load)}});
  return out;
}

} // namespace

Json workup_json(const specdb::WorkupReply& reply) {
  const workup::Answer& answer = reply.answer;
  const bool told = !answer.needed.needs.empty();
  Json helps = Json::array();
  for (const workup::Help help : answer.helps)
    helps.push_back(workup::help_name(help));
  Json out;
  out["verdict"] = workup::verdict_name(answer.verdict);
  out["status"] = "derived";
  out["governed_by"] = answer.governed_by ? Json(workup::limit_name(*answer.governed_by)) : Json(nullptr);
  out["set_torque_N_m"] = N_m_or_null(answer.set);
  out["lowest_torque_N_m"] = N_m_or_null(answer.lowest);
  out["highest_torque_N_m"] = N_m_or_null(answer.highest);
  out["allowed_N"] = newtons_or_null(answer.allowed);
  out["limits"] = limits_json(answer);
  out["needs"] = needs_json(answer.needed);
  out["kept_N"] = told ? Json(quantity::in_newtons(answer.needed.kept)) : Json(nullptr);
  out["needed_N"] = told ? Json(quantity::in_newtons(answer.needed.tightened)) : Json(nullptr);
  out["loss"] = answer.asked.demand.loss;
  out["bolts"] = answer.asked.demand.bolts;
  out["scatter_alone"] = answer.scatter_alone;
  out["what_would_help"] = std::move(helps);
  out["makers_figure"] = text_or_null(reply.makers_figure);
  out["clamp"] = answer.clamp ? clamp_json(*answer.clamp, reply.thread) : Json(nullptr);
  return out;
}

} // namespace clampwright::cli
