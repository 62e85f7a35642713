// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/stop_working.hpp"

#include "core/thread/stripping.hpp"

namespace clampwright::crank {

namespace {

using quantity::in_degrees;
using quantity::in_megapascals;
using quantity::in_millimetres;
using quantity::in_newton_metres;
using quantity::in_newtons;

const std::string k_statics = "slider-crank statics without offset and friction";
const std::string k_areas = "FED-STD-H28/2, least material (from memory)";
const std::string k_given = "as given";

void add_forces(Working& working, const StopAnswer& answer) {
  const CrankForces& forces = answer.fitting.forces;
  working.push_back({"x", "piston below its top position", "r·(1 - cos t) + l·(1 - cos p)",
                     in_millimetres(answer.below_top), "mm", k_statics});
  working.push_back({"F_r", "force along the rod", "F_s/cos p", in_newtons(forces.rod), "N", k_statics});
  working.push_back({"F_n", "piston sideways on the bore", "F_s·tan p", in_newtons(forces.side), "N", k_statics});
  working.push_back(
      {"F_t", "crank pin, at a right angle to the web", "T·1000/r", in_newtons(forces.crankpin), "N", k_statics});
  working.push_back({"t_m", "angle of the least force", "where r·sin(t + p)/cos p is greatest, by halving",
                     in_degrees(answer.least_at), "°", k_statics});
  working.push_back(
      {"F_m", "least force of this torque", "T over the lever at t_m", in_newtons(answer.least), "N", k_statics});
}

void add_stop(Working& working, const StopAnswer& answer) {
  const StopCase& asked = answer.asked;
  const StopLoads& loads = answer.fitting;
  if (asked.incline) {
    working.push_back({"b", "stop inclined to the bore", k_given, in_degrees(*asked.incline), "°", k_given});
    working.push_back({"F_a", "force along the stop", "F_s/cos b", in_newtons(loads.along_stop), "N", k_statics});
    working.push_back({"F_b", "piston pushed aside", "F_s·tan b", in_newtons(loads.pushed_aside), "N", k_statics});
  }
  const std::string along = asked.incline ? "F_a" : "F_s";
  if (asked.tip_diameter) {
    working.push_back({"d_t", "flat tip", k_given, in_millimetres(*asked.tip_diameter), "mm", k_given});
    working.push_back({"p_t", "pressure under the tip", along + "·4/(π·d_t²)", in_megapascals(*loads.tip_pressure),
                       "MPa", "mean over a flat tip that stands square"});
  }
  if (!answer.plug_strips_at) return;
  const PlugThread& plug = *asked.plug;
  working.push_back({"A_s", "area of the head's thread sheared for each mm engaged",
                     "π/P·d_min·(P/2 + tan 30°·(d_min - D2_max))",
                     in_millimetres(thread::internal_strip_width(plug.thread, plug.limits)), "mm²/mm", k_areas});
  working.push_back({"m", "thread engaged, all of it bearing", k_given, in_millimetres(plug.engaged), "mm", k_given});
  working.push_back(
      {"τ_B", "shear strength of the head", "table", in_megapascals(*plug.shear), "MPa", "part_materials"});
  working.push_back({"C3", "factor for the bending of that thread", "the least, for a stop stronger than the head",
                     plug.bend_factor, "", "VDI 2230-1 (2003), step R11 (from memory)"});
  working.push_back(
      {"F_p", "load that strips the plug thread", "C3·A_s·m·τ_B", in_newtons(*answer.plug_strips_at), "N", k_areas});
  working.push_back({"S_p", "margin of the plug thread", "F_p/" + along, *loads.plug_margin, "", k_areas});
}

std::string limit_symbol(StopLimit limit) {
  switch (limit) {
  case StopLimit::tip_pressure:
    return "T_tip";
  case StopLimit::plug_thread:
    return "T_plug";
  case StopLimit::rod:
    return "T_rod";
  case StopLimit::stop:
    return "T_stop";
  }
  return "";
}

std::string limit_formula(StopLimit limit, bool inclined) {
  const std::string cos_b = inclined ? "·cos b" : "";
  switch (limit) {
  case StopLimit::tip_pressure:
    return "stated pressure·π/4·d_t²" + cos_b + "·l_c/1000";
  case StopLimit::plug_thread:
    return "F_p over the stated margin" + cos_b + "·l_c/1000";
  case StopLimit::rod:
    return "stated force·cos p·l_c/1000";
  case StopLimit::stop:
    return "stated force" + cos_b + "·l_c/1000";
  }
  return "";
}

} // namespace

Working lever_working(const SliderCrank& crank, quantity::Angle before_top, quantity::Torque torque,
                      const WorkingNames& names) {
  return {{"r", "crank radius", "half of the stroke", in_millimetres(crank.radius), "mm", names.crank},
          {"l", "rod length", names.rod_formula, in_millimetres(crank.rod), "mm", names.crank},
          {"t", "angle of the stop before top dead centre", names.angle_formula, in_degrees(before_top), "°",
           names.angle_source},
          {"p", "angle of the rod", "asin(r/l·sin t)", in_degrees(rod_angle(crank, before_top)), "°", k_statics},
          {"l_c", "lever of the piston", "r·sin(t + p)/cos p", in_millimetres(bore_lever(crank, before_top)), "mm",
           k_statics},
          {"F_s", "force on the stop and the crown", "T·1000/l_c", in_newtons(stop_force(crank, before_top, torque)),
           "N", k_statics}};
}

Working stop_working(const StopAnswer& answer) {
  const StopCase& asked = answer.asked;
  Working working{{"T", "torque on the crank", k_given, in_newton_metres(asked.torque), "N·m", k_given}};
  const Working lever = lever_working(asked.crank, asked.before_top, asked.torque, {});
  working.insert(working.end(), lever.begin(), lever.end());
  add_forces(working, answer);
  add_stop(working, answer);
  for (const LimitTorque& limit : answer.limits)
    working.push_back({limit_symbol(limit.limit), "torque at which the stated limit is reached",
                       limit_formula(limit.limit, asked.incline.has_value()), in_newton_metres(limit.torque), "N·m",
                       k_statics});
  return working;
}

} // namespace clampwright::crank
