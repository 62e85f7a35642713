// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/hold_json.hpp"

#include <array>

#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "core/report/crank_words.hpp"
#include "core/report/hand_report.hpp"
#include "core/thread/designation.hpp"
#include "core/thread/stripping.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::cli {

namespace {

using crank::StopAnswer;
using crank::StopLoads;
using quantity::in_degrees;
using quantity::in_megapascals;
using quantity::in_millimetres;
using quantity::in_newton_metres;
using quantity::in_newtons;

Json mm_or_null(const std::optional<quantity::Length>& length) {
  return length ? Json(in_millimetres(*length)) : Json(nullptr);
}
Json MPa_or_null(const std::optional<quantity::Stress>& stress) {
  return stress ? Json(in_megapascals(*stress)) : Json(nullptr);
}
Json N_or_null(const std::optional<quantity::Force>& force) { return force ? Json(in_newtons(*force)) : Json(nullptr); }
Json N_m_or_null(const std::optional<quantity::Torque>& torque) {
  return torque ? Json(in_newton_metres(*torque)) : Json(nullptr);
}

// Of one torque.
Json loads_json(const StopLoads& loads) {
  return {{"piston_N", in_newtons(loads.forces.piston)},      {"rod_N", in_newtons(loads.forces.rod)},
          {"side_N", in_newtons(loads.forces.side)},          {"crankpin_N", in_newtons(loads.forces.crankpin)},
          {"along_stop_N", in_newtons(loads.along_stop)},     {"pushed_aside_N", in_newtons(loads.pushed_aside)},
          {"across_stop_N", in_newtons(loads.across_stop)},   {"tip_pressure_MPa", MPa_or_null(loads.tip_pressure)},
          {"plug_margin", number_or_null(loads.plug_margin)}, {"crown_bending_MPa", MPa_or_null(loads.crown_bending)}};
}

Json neighbour_json(const std::optional<crank::Neighbour>& neighbour) {
  if (!neighbour) return nullptr;
  return {{"below_tdc_mm", in_millimetres(neighbour->below_top)},
          {"angle_deg", in_degrees(neighbour->before_top)},
          {"piston_N", in_newtons(neighbour->piston)}};
}

Json plug_json(const StopAnswer& stop) {
  if (!stop.asked.plug) return nullptr;
  const crank::PlugThread& plug = *stop.asked.plug;
  return {{"thread", thread::write_designation(plug.thread)},
          {"engaged_mm", in_millimetres(plug.engaged)},
          {"strip_area_mm2",
           in_millimetres(thread::internal_strip_width(plug.thread, plug.limits)) * in_millimetres(plug.engaged)},
          {"shear_strength_MPa", MPa_or_null(plug.shear)},
          {"strip_N", N_or_null(stop.plug_strips_at)}};
}

Json limits_json(const StopAnswer& stop) {
  Json list = Json::array();
  for (const crank::LimitTorque& limit : stop.limits)
    list.push_back({{"limit", crank::limit_name(limit.limit)}, {"torque_N_m", in_newton_metres(limit.torque)}});
  return list;
}

Json ways_json(const std::vector<crank::HoldingWay>& ways) {
  Json list = Json::array();
  for (const crank::HoldingWay& way : ways) {
    const report::WayWords words = report::way_words(way.way);
    list.push_back({{"way", crank::way_name(way.way)},
                    {"rank", way.rank},
                    {"title", words.title},
                    {"load_path", words.load_path},
                    {"reason", words.reason},
                    {"force_N", N_or_null(way.force)},
                    {"slip_torque_N_m", way.slips_at ? band_json(quantity::map(*way.slips_at,
                                                                               [](quantity::Torque torque) {
                                                                                 return in_newton_metres(torque);
                                                                               }))
                                                     : Json(nullptr)}});
  }
  return list;
}

Json turns_json(const std::optional<crank::WrenchTurns>& turns) {
  if (!turns) return nullptr;
  return {{"tighten", thread::turn_name(turns->tighten)},
          {"undo", thread::turn_name(turns->undo)},
          {"seen_from", turns->seen_from}};
}

// Every key of a stop, for an answer without one.
constexpr std::array k_stop_keys{"stroke_mm",        "rod_mm",
                                 "angle_deg",        "below_tdc_mm",
                                 "rod_angle_deg",    "lever_mm",
                                 "piston_N",         "rod_N",
                                 "side_N",           "crankpin_N",
                                 "along_stop_N",     "pushed_aside_N",
                                 "across_stop_N",    "tip_pressure_MPa",
                                 "plug_margin",      "crown_bending_MPa",
                                 "least_piston_N",   "least_angle_deg",
                                 "over_least",       "half_mm_shorter",
                                 "half_mm_longer",   "ports",
                                 "port_depth_mm",    "tip_diameter_mm",
                                 "stop_incline_deg", "plug",
                                 "limits",           "governed_by",
                                 "torque_limit_N_m", "undo"};

} // namespace

Json stop_json(const StopAnswer* stop) {
  Json out = Json::object();
  if (stop == nullptr) {
    for (const char* key : k_stop_keys)
      out[key] = nullptr;
    return out;
  }
  const crank::StopCase& asked = stop->asked;
  out["stroke_mm"] = in_millimetres(2.0 * asked.crank.radius);
  out["rod_mm"] = in_millimetres(asked.crank.rod);
  out["angle_deg"] = in_degrees(asked.before_top);
  out["below_tdc_mm"] = in_millimetres(stop->below_top);
  out["rod_angle_deg"] = in_degrees(stop->rod_angle);
  out["lever_mm"] = in_millimetres(stop->lever);
  out.update(loads_json(stop->fitting));
  out["least_piston_N"] = in_newtons(stop->least);
  out["least_angle_deg"] = in_degrees(stop->least_at);
  out["over_least"] = stop->over_least;
  out["half_mm_shorter"] = neighbour_json(stop->shorter);
  out["half_mm_longer"] = neighbour_json(stop->longer);
  out["ports"] = crank::ports_name(stop->ports);
  out["port_depth_mm"] = mm_or_null(asked.port_below_top);
  out["tip_diameter_mm"] = mm_or_null(asked.tip_diameter);
  out["stop_incline_deg"] = asked.incline ? Json(in_degrees(*asked.incline)) : Json(nullptr);
  out["plug"] = plug_json(*stop);
  out["limits"] = limits_json(*stop);
  out["governed_by"] = stop->governs ? Json(crank::limit_name(stop->governs->limit)) : Json(nullptr);
  out["torque_limit_N_m"] = stop->governs ? Json(in_newton_metres(stop->governs->torque)) : Json(nullptr);
  out["undo"] = stop->undoing ? loads_json(*stop->undoing) : Json(nullptr);
  return out;
}

Json hold_json(const specdb::HoldReply& reply, const specdb::JointAnswer* joint, bool invented) {
  const crank::HoldAnswer& answer = reply.answer;
  Json out;
  out["by"] = crank::way_name(answer.asked.by);
  out["torque_N_m"] = in_newton_metres(answer.asked.torque);
  out["undo_torque_N_m"] = N_m_or_null(answer.asked.undo_torque);
  out["verdict"] = crank::verdict_name(answer.verdict);
  out.update(stop_json(answer.stop ? &*answer.stop : nullptr));
  if (!out["plug"].is_null()) out["plug"]["material"] = text_or_null(reply.plug_material);
  out["ways"] = ways_json(answer.ways);
  out["turns"] = turns_json(answer.asked.turns);
  out["joint"] = joint != nullptr ? Json(joint->joint.slug) : Json(nullptr);
  out["machine"] = joint != nullptr ? Json(joint->joint.machine.name) : Json(nullptr);
  out["holding"] = joint != nullptr ? text_or_null(joint->joint.holding) : Json(nullptr);
  out["invented"] = joint != nullptr ? Json(invented) : Json(nullptr);
  return out;
}

Json hand_json(const crank::HandAnswer& answer) {
  const auto hand_name = [](thread::Hand hand) { return Json(thread::hand_name(hand)); };
  const crank::Drive& drive = answer.asked.drive;
  Json reversals = Json::array();
  for (const report::Reversal& reversal : report::reversals())
    reversals.push_back({{"name", reversal.name}, {"words", reversal.words}});
  const auto creep = [&](thread::Turn turn, thread::Hand tightens, const std::optional<double>& turns) {
    return Json{{"creeps", thread::turn_name(turn)},
                {"tightens", thread::hand_name(tightens)},
                {"with_the_drive", tightens == answer.hand},
                {"most_turns_per_turn", number_or_null(turns)}};
  };
  Json out;
  out["hand"] = hand_name(answer.hand);
  out["rotation_from_free_end"] = thread::turn_name(drive.shaft_turn);
  out["driver"] = drive.driver == crank::Driver::shaft ? "shaft" : "part";
  out["turn_to_tighten"] = thread::turn_name(thread::turn_to_tighten(answer.hand));
  out["turn_to_undo"] = thread::turn_name(thread::turn_to_undo(answer.hand));
  out["hand_on_record"] = answer.asked.fitted ? hand_name(*answer.asked.fitted) : Json(nullptr);
  out["agrees"] = answer.asked.fitted ? Json(*answer.asked.fitted == answer.hand) : Json(nullptr);
  out["reversed_by"] = std::move(reversals);
  out["precession"] = {
      {"hub", creep(crank::hub_creeps(drive.shaft_turn), answer.hub_creep_tightens, answer.hub_turns)},
      {"pin", creep(crank::pin_creeps(drive.shaft_turn), answer.pin_creep_tightens, answer.pin_turns)}};
  return out;
}

} // namespace clampwright::cli
