// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/substitute_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/tightening_json.hpp"
#include "cli/json/values_json.hpp"
#include "core/report/substitute_words.hpp"
#include "core/thread/designation.hpp"

namespace clampwright::cli {

namespace {

using substitute::Check;

Json text_or_nothing(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json checks_json(const std::vector<Check>& checks) {
  const quantity::DisplayUnits metric;
  Json list = Json::array();
  for (const Check& check : checks)
    list.push_back({{"link", substitute::link_name(check.link)},
                    {"verdict", substitute::outcome_name(check.outcome)},
                    {"original", text_or_nothing(report::side_text(check.original, metric))},
                    {"offered", text_or_nothing(report::side_text(check.offered, metric))},
                    {"text", report::check_text(check, metric)},
                    {"basis", report::check_basis(check.reason)}});
  return list;
}

Json fastener_json(const substitute::Fastener& fastener) {
  return {{"thread", thread::write_designation(fastener.as.thread)},
          {"class", fastener.as.strength.class_name},
          {"surfaces", fastener.as.surfaces.empty() ? Json(nullptr) : Json(fastener.as.surfaces)}};
}

Json clamp_or_null(const std::optional<tightening::ClampAnswer>& clamp, const specdb::ThreadEntry& thread) {
  return clamp ? clamp_json(*clamp, thread) : Json(nullptr);
}

Json other_torque_json(const specdb::SubstituteAnswer& answer) {
  const auto& other = answer.answer.other_torque;
  if (!other) return nullptr;
  const auto band = [](const std::optional<quantity::Band<quantity::Torque>>& torque) {
    return torque ? torque_band(*torque) : Json(nullptr);
  };
  return {{"set_N_m", quantity::in_newton_metres(other->set)},
          {"nut_factor_N_m", band(other->by_nut_factor)},
          {"thread_friction_N_m", band(other->by_thread_friction)}};
}

} // namespace

Json substitute_json(const specdb::SubstituteAnswer& answer) {
  const substitute::Answer& chain = answer.answer;
  const auto& torque = answer.question.place.torque;
  Json published = Json::array();
  for (const friction::Reduction& rule : answer.published)
    published.push_back({{"rule", rule.rule}, {"factor", rule.factor}, {"source", source_json(rule.source)}});
  return {{"original", fastener_json(answer.question.original)},
          {"offered", fastener_json(answer.question.offered)},
          {"verdict", substitute::verdict_name(chain.verdict)},
          {"governed_by", chain.governed_by ? Json(substitute::link_name(*chain.governed_by)) : Json(nullptr)},
          {"checks", checks_json(chain.checks)},
          {"torque_N_m", torque ? Json(quantity::in_newton_metres(*torque)) : Json(nullptr)},
          {"torque_not_taken_because", text_or_nothing(answer.question.place.no_torque_because)},
          {"factor", number_or_null(chain.factor)},
          {"other_torque", other_torque_json(answer)},
          {"published", std::move(published)},
          {"clamp_of_original", clamp_or_null(chain.original, answer.original)},
          {"clamp_at_torque", clamp_or_null(chain.offered, answer.offered)},
          {"clamp_at_other_torque", clamp_or_null(chain.offered_at_other_torque, answer.offered)}};
}

} // namespace clampwright::cli
