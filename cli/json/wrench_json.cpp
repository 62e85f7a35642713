// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/wrench_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "core/calendar/moment.hpp"
#include "specdb/question/wrench_list_report.hpp"
#include "specdb/question/wrench_report.hpp"
#include "specdb/question/wrench_words.hpp"
#include "specdb/question/wrench_working.hpp"

namespace clampwright::cli {

namespace {

using quantity::in_millimetres;
using quantity::in_newton_metres;

Json torque_or_null(const std::optional<quantity::Torque>& torque) {
  return torque ? Json(in_newton_metres(*torque)) : Json(nullptr);
}

Json mark_N_m(const tightening::Wrench& wrench, const std::optional<double>& mark) {
  return mark ? Json(quantity::to_si(*mark, *wrench.unit)) : Json(nullptr);
}

Json levers_json(const tightening::Levers& levers, bool arm_known) {
  const auto& adaptor = levers.adaptor;
  return {{"arm_mm", arm_known ? Json(in_millimetres(levers.arm)) : Json(nullptr)},
          {"adaptor_mm", adaptor ? Json(in_millimetres(adaptor->length)) : Json(nullptr)},
          {"adaptor_angle_deg", adaptor ? Json(quantity::in_degrees(adaptor->angle)) : Json(nullptr)},
          {"effective_mm", arm_known ? Json(in_millimetres(tightening::effective_arm(levers))) : Json(nullptr)},
          {"factor", tightening::setting_share(levers)}};
}

Json scale_json(const specdb::WrenchSetReply& reply) {
  const tightening::Wrench& wrench = reply.wrench;
  const bool ends = wrench.high < tightening::k_no_end;
  const auto end = [&](double mark) { return ends ? std::optional(mark) : std::nullopt; };
  Json out{{"name", reply.is_registered ? Json(wrench.name) : Json(nullptr)},
           {"unit", wrench.unit->name},
           {"low", number_or_null(end(wrench.low))},
           {"high", number_or_null(end(wrench.high))},
           {"step", number_or_null(wrench.step)},
           {"low_N_m", mark_N_m(wrench, end(wrench.low))},
           {"high_N_m", mark_N_m(wrench, end(wrench.high))},
           {"step_N_m", mark_N_m(wrench, wrench.step)},
           {"accuracy", wrench.accuracy.share},
           {"accuracy_basis", wrench.accuracy.basis}};
  if (reply.is_registered) {
    out["turns"] = wrench.turns_clockwise && wrench.turns_anticlockwise ? "both"
                   : wrench.turns_clockwise                             ? "clockwise"
                                                                        : "anticlockwise";
  } else {
    out["turns"] = nullptr;
  }
  return out;
}

Json budget_json(const tightening::Budget& budget) {
  Json influences = Json::array();
  for (const tightening::BudgetLine& line : budget.lines)
    influences.push_back({{"name", line.influence.name},
                          {"share", line.influence.share},
                          {"spread", line.influence.spread == tightening::Spread::limits ? "limits" : "standard"},
                          {"standard", line.standard},
                          {"share_of_variance", line.of_variance},
                          {"basis", line.influence.basis}});
  Json published = Json::array();
  for (const tightening::PublishedSpread& spread : tightening::k_published_spreads)
    published.push_back({{"share", spread.share},
                         {"surfaces", spread.surfaces},
                         {"source", source_json(specdb::published_spread_source())}});
  return {{"influences", std::move(influences)},
          {"torque_standard", budget.torque},
          {"load_standard", budget.load},
          {"coverage", tightening::k_coverage},
          {"load_expanded", tightening::k_coverage * budget.load},
          {"published", std::move(published)}};
}

} // namespace

Json wrench_set_json(const specdb::WrenchSetReply& reply) {
  const tightening::LeverSetting& set = reply.set;
  Json out;
  out["torque_N_m"] = in_newton_metres(reply.task.torque);
  out["low_N_m"] = torque_or_null(reply.task.low);
  out["high_N_m"] = torque_or_null(reply.task.high);
  out["turn"] = reply.task.turn ? Json(thread::turn_name(*reply.task.turn)) : Json(nullptr);
  out["setting_N_m"] = torque_or_null(set.setting);
  out["setting"] = number_or_null(set.on_scale.setting);
  out["unit"] = reply.wrench.unit->name;
  out["exact_setting_N_m"] = in_newton_metres(set.exact);
  out["applied_N_m"] = torque_or_null(set.applied);
  out["applied_over_wanted"] =
      set.applied ? Json(static_cast<double>(*set.applied / reply.task.torque)) : Json(nullptr);
  out["applied_if_forgotten_N_m"] = in_newton_metres(set.applied_if_forgotten);
  out["suitable"] = reply.suits;
  out["levers"] = levers_json(set.levers, reply.arm_known);
  out["wrench"] = scale_json(reply);
  out["budget"] = budget_json(reply.budget);
  return out;
}

Json wrench_for_joint_json(const specdb::WrenchAnswer& answer, const std::string& no_setting_because) {
  const tightening::Wrench& wrench = answer.wrench;
  const auto& setting = answer.setting.setting;
  return {{"name", wrench.name},
          {"low_N_m", quantity::to_si(wrench.low, *wrench.unit)},
          {"high_N_m", quantity::to_si(wrench.high, *wrench.unit)},
          {"unit", wrench.unit->name},
          {"accuracy", wrench.accuracy.share},
          {"setting", number_or_null(setting)},
          {"setting_N_m", mark_N_m(wrench, setting)},
          {"no_setting_because", no_setting_because.empty() ? Json(nullptr) : Json(no_setting_because)},
          {"suitable", answer.setting.suitable}};
}

Json wrench_of_list_json(const specdb::WrenchAnswer& answer, const std::string& no_setting_because) {
  Json out{{"wrench", answer.slug}};
  out.update(wrench_for_joint_json(answer, no_setting_because));
  out["findings"] = findings_json(answer.setting.findings);
  return out;
}

Json wrench_record_json(const specdb::WrenchRecord& record, std::chrono::year_month_day today) {
  const tightening::Wrench wrench = specdb::registered_wrench(record);
  const tightening::Upkeep& upkeep = *wrench.upkeep;
  const auto day_or_null = [](const std::optional<std::chrono::year_month_day>& day) {
    return day ? Json(calendar::write_day(*day)) : Json(nullptr);
  };
  const finding::Findings findings = tightening::upkeep_findings(record.name, upkeep, today);
  const auto next = tightening::next_due(upkeep, today, specdb::pulls_a_day(upkeep, today));
  Json events = Json::array();
  for (const specdb::EventRecord& event : record.events)
    events.push_back({{"on", event.on_date},
                      {"kind", event.kind},
                      {"words", event.words},
                      {"cycles", event.cycles ? Json(*event.cycles) : Json(nullptr)}});
  return {{"wrench", record.slug},
          {"name", record.name},
          {"unit", record.unit},
          {"low", record.low},
          {"high", record.high},
          {"step", number_or_null(record.step)},
          {"low_N_m", mark_N_m(wrench, record.low)},
          {"high_N_m", mark_N_m(wrench, record.high)},
          {"step_N_m", mark_N_m(wrench, record.step)},
          {"accuracy", record.accuracy},
          {"accuracy_basis", record.accuracy_basis},
          {"class", text_or_null(record.accuracy_class)},
          {"turns", record.turns},
          {"arm_mm", number_or_null(record.arm_mm)},
          {"calibrated_on", day_or_null(upkeep.calibrated)},
          {"months", upkeep.months.value_or(tightening::k_default_months)},
          {"months_assumed", !upkeep.months},
          {"cycles", upkeep.cycle_limit.value_or(tightening::k_default_cycles)},
          {"cycles_assumed", !upkeep.cycle_limit},
          {"cycles_since", upkeep.cycles},
          {"cycles_left", tightening::cycles_left(upkeep)},
          {"due_on", day_or_null(tightening::due_day(upkeep))},
          {"next_due_on", next ? Json(calendar::write_day(next->day)) : Json(nullptr)},
          {"next_due_by_cycles", next ? Json(next->by_cycles) : Json(nullptr)},
          {"retired_on", text_or_null(record.retired_on)},
          {"retired_because", text_or_null(record.retired_because)},
          {"usable", findings.empty()},
          {"findings", findings_json(findings)},
          {"events", std::move(events)}};
}

} // namespace clampwright::cli
