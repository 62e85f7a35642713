// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/joint_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/hold_json.hpp"
#include "cli/json/locking_json.hpp"
#include "cli/json/stack_json.hpp"
#include "cli/json/tightening_json.hpp"
#include "cli/json/values_json.hpp"
#include "cli/json/wrench_json.hpp"
#include "core/quantity/unit.hpp"
#include "core/report/sequence_report.hpp"
#include "core/thread/designation.hpp"
#include "core/thread/turning.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::cli {

namespace {

Json newton_metres(const std::optional<quantity::Torque>& torque) {
  return torque ? Json(quantity::in_newton_metres(*torque)) : Json(nullptr);
}

Json torque_json(const specdb::FigureAnswer& answer, bool usable) {
  const specdb::FigureRecord& figure = answer.figure;
  return {{"printed", figure.printed},
          {"value", number_or_null(figure.value)},
          {"unit", text_or_null(figure.unit)},
          {"tolerance", text_or_null(figure.tolerance)},
          {"method", figure.method},
          {"angle_deg", number_or_null(figure.angle_deg)},
          {"low_N_m", newton_metres(answer.low)},
          {"nominal_N_m", newton_metres(answer.torque)},
          {"high_N_m", newton_metres(answer.high)},
          {"set_N_m", usable ? newton_metres(answer.set) : Json(nullptr)},
          {"reading", text_or_null(figure.reading)}};
}

Json unit_fits_json(const std::vector<tightening::UnitFit>& fits) {
  Json list = Json::array();
  for (const tightening::UnitFit& fit : fits)
    list.push_back({{"unit", fit.unit->name},
                    {"torque_N_m", quantity::in_newton_metres(fit.torque)},
                    {"likely_use_of_proof", fit.likely}});
  return list;
}

Json passes_json(const std::vector<quantity::Torque>& passes) {
  Json list = Json::array();
  for (const quantity::Torque& pass : passes)
    list.push_back(quantity::in_newton_metres(pass));
  return list;
}

Json rechecks_json(const std::vector<specdb::RecheckRecord>& rechecks) {
  Json list = Json::array();
  for (const specdb::RecheckRecord& recheck : rechecks)
    list.push_back({{"words", recheck.words},
                    {"after_h", number_or_null(recheck.hours)},
                    {"after_d", number_or_null(recheck.days)},
                    {"event", text_or_null(recheck.event)}});
  return list;
}

// One text, as the contract has it; the rules behind it stand in `rechecks`.
Json recheck_text(const std::vector<specdb::RecheckRecord>& rechecks) {
  if (rechecks.empty()) return nullptr;
  std::string words;
  for (const specdb::RecheckRecord& recheck : rechecks)
    words += (words.empty() ? "" : "; ") + recheck.words;
  return words;
}

Json neighbours_json(const std::vector<specdb::NeighbourRecord>& neighbours) {
  Json list = Json::array();
  for (const specdb::NeighbourRecord& neighbour : neighbours)
    list.push_back({{"name", neighbour.name},
                    {"bears_degC", number_or_null(neighbour.bears_degC)},
                    {"runs_at_degC", number_or_null(neighbour.runs_at_degC)}});
  return list;
}

Json running_json(const std::vector<locking::RuleAnswer>& rules) {
  Json list = Json::array();
  for (const locking::RuleAnswer& one : rules)
    list.push_back({{"rule", one.rule.name},
                    {"adds", one.adds},
                    {"set_torque_N_m", quantity::in_newton_metres(one.set)},
                    {"source", source_json(one.rule.source)}});
  return list;
}

// Everything that belongs to the figure rather than to the joint.
Json figure_json(const specdb::FigureAnswer& answer, const specdb::ThreadEntry& thread, bool usable) {
  const specdb::FigureRecord& figure = answer.figure;
  return {{"torque", torque_json(answer, usable)},
          {"surfaces", figure.surfaces},
          {"friction", text_or_null(figure.friction)},
          {"condition", text_or_null(figure.condition)},
          {"temperature", text_or_null(figure.temperature)},
          {"sequence", text_or_null(figure.sequence)},
          {"passes_N_m", passes_json(answer.passes)},
          {"recheck", recheck_text(figure.recheck)},
          {"rechecks", rechecks_json(figure.recheck)},
          {"reuse", text_or_null(figure.reuse)},
          {"source", source_json(figure.source)},
          {"status", figure.status},
          {"unit_fits", unit_fits_json(answer.unit_fits)},
          {"turned", answer.turned ? added_json(*answer.turned) : Json(nullptr)},
          {"not_turned_because", answer.not_turned_because.empty() ? Json(nullptr) : Json(answer.not_turned_because)},
          {"clamp", answer.clamp ? clamp_json(*answer.clamp, thread) : Json(nullptr)}};
}

// Computed, and only where the page does not print one itself.
Json order_json(const specdb::JointAnswer& answer) {
  if (!answer.order) return nullptr;
  return {{"pattern", tightening::pattern_name(answer.order->pattern)},
          {"positions", report::positions_words(answer.order->pattern)},
          {"order", answer.order->order},
          {"basis", "computed"}};
}

Json slot_hint_json(const specdb::JointAnswer& answer) {
  if (!answer.slot) return nullptr;
  const specdb::SlotHint& slot = *answer.slot;
  const auto newtons = [](quantity::Force force) { return quantity::in_newtons(force); };
  return {{"angle_deg", quantity::in_degrees(slot.angle)},
          {"preload_gain_N", slot.gain ? band_json(quantity::map(*slot.gain, newtons)) : Json(nullptr)},
          {"unknown_because", slot.unknown_because.empty() ? Json(nullptr) : Json(slot.unknown_because)}};
}

Json beside_json(const specdb::JointAnswer& answer) {
  Json list = Json::array();
  for (const specdb::FigureAnswer& figure : answer.beside)
    list.push_back(figure_json(figure, answer.thread, answer.not_to_be_used_because.empty()));
  return list;
}

Json superseded_json(const std::vector<specdb::FigureRecord>& figures) {
  Json list = Json::array();
  for (const specdb::FigureRecord& figure : figures)
    list.push_back({{"printed", figure.printed},
                    {"value", number_or_null(figure.value)},
                    {"unit", text_or_null(figure.unit)},
                    {"source", source_json(figure.source)},
                    {"status", figure.status}});
  return list;
}

Json as_fitted_json(const specdb::JointAnswer& answer) {
  if (!answer.as_fitted) return nullptr;
  const specdb::AsFitted& fitted = *answer.as_fitted;
  const auto clamp = [&](const std::optional<tightening::ClampAnswer>& at) {
    return at ? clamp_json(*at, answer.thread) : Json(nullptr);
  };
  return {{"surfaces", fitted.surfaces},
          {"differs", fitted.differs},
          {"factor", number_or_null(fitted.factor)},
          {"torque_N_m", newton_metres(fitted.torque)},
          {"thread_friction_torque_N_m", newton_metres(fitted.by_thread_friction)},
          {"passes_N_m", passes_json(fitted.passes)},
          {"no_correction_because",
           fitted.no_correction_because.empty() ? Json(nullptr) : Json(fitted.no_correction_because)},
          {"published", published_json(fitted.rivals)},
          {"clamp_at_figure", clamp(fitted.clamp_at_figure)},
          {"clamp", clamp(fitted.clamp)}};
}

Json wrench_json(const specdb::JointAnswer& answer) {
  return answer.wrench ? wrench_for_joint_json(*answer.wrench, answer.not_to_be_used_because) : Json(nullptr);
}

} // namespace

Json joint_json(const specdb::JointAnswer& answer, bool invented) {
  const specdb::JointRecord& joint = answer.joint;
  Json out{{"joint", joint.slug},
           {"machine", joint.machine.name},
           {"serial_from", text_or_null(joint.machine.serial_from)},
           {"serial_to", text_or_null(joint.machine.serial_to)},
           {"assembly", joint.assembly},
           {"name", joint.name},
           {"invented", invented},
           {"kind", joint.kind},
           {"count", joint.quantity},
           {"thread", thread::write_designation(answer.thread.thread)},
           {"class", joint.strength_class},
           {"nut_class", text_or_null(joint.nut_class)},
           {"seat", text_or_null(joint.seat)},
           {"seat_material", text_or_null(joint.seat_material)},
           {"soft_material", text_or_null(joint.soft_material)},
           {"taper", text_or_null(joint.taper)},
           {"mating_part", text_or_null(joint.mating_part)},
           {"mating_material", text_or_null(joint.mating_material)},
           {"bolt_length", text_or_null(joint.bolt_length)},
           {"grip", text_or_null(joint.grip)},
           {"hole_depth", text_or_null(joint.hole_depth)},
           {"duty", text_or_null(joint.duty)},
           {"regulated_by", text_or_null(joint.machine.regulated_by)},
           {"engagement", text_or_null(joint.engagement)},
           {"engagement_mm",
            answer.around.tapped ? Json(quantity::in_millimetres(answer.around.tapped->engagement)) : Json(nullptr)},
           {"stroke_mm", number_or_null(joint.machine.stroke_mm)},
           {"rod_mm", number_or_null(joint.machine.rod_mm)},
           {"port_below_top_mm", number_or_null(joint.machine.port_below_top_mm)},
           {"plug_reach_mm", number_or_null(joint.machine.plug_reach_mm)},
           {"stop", answer.stop ? stop_json(&*answer.stop) : Json(nullptr)},
           {"drive", text_or_null(joint.drive)},
           {"turn_to_tighten", thread::turn_name(answer.tighten)},
           {"turn_to_undo", thread::turn_name(answer.undo)},
           {"seen_from", joint.seen_from},
           {"holding", text_or_null(joint.holding)},
           {"lock", answer.locks.empty() ? Json("none") : lock_json(answer.locks)},
           {"off_first", answer.lock_advice.undo},
           {"check_lock", answer.lock_advice.check},
           {"cure", answer.lock_advice.cure.empty() ? Json(nullptr) : Json(answer.lock_advice.cure)},
           {"running_rules", running_json(answer.running)},
           {"neighbours", neighbours_json(joint.neighbours)}};
  out.update(figure_json(answer.figure, answer.thread, answer.not_to_be_used_because.empty()));
  out["not_to_be_used_because"] =
      answer.not_to_be_used_because.empty() ? Json(nullptr) : Json(answer.not_to_be_used_because);
  out["order"] = order_json(answer);
  out["slot"] = slot_hint_json(answer);
  out["beside"] = beside_json(answer);
  out["superseded"] = superseded_json(joint.superseded);
  out["as_fitted"] = as_fitted_json(answer);
  out["wrench"] = wrench_json(answer);
  if (answer.wrenches) {
    Json list = Json::array();
    for (const specdb::WrenchAnswer& wrench : *answer.wrenches)
      list.push_back(wrench_of_list_json(wrench, answer.not_to_be_used_because));
    out["wrenches"] = std::move(list);
  }
  return out;
}

Outcome joint_outcome(const specdb::JointAnswer& answer, const Context& context, bool invented) {
  Outcome out;
  out.result = std::make_shared<Json>(joint_json(answer, invented));
  out.findings = answer.findings;
  out.document = specdb::joint_report(answer, context.units, invented);
  out.working = out.document.working;
  out.sources.push_back(answer.joint.figure.source);
  for (const specdb::FigureAnswer& other : answer.beside)
    out.sources.push_back(other.figure.source);
  out.sources.insert(out.sources.end(), out.document.sources.begin(), out.document.sources.end());
  return out;
}

} // namespace clampwright::cli
