// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/strip_working.hpp"

#include <string>

#include "core/thread/geometry.hpp"

namespace clampwright::joint {

namespace {

using quantity::in_megapascals;
using quantity::in_millimetres;
using quantity::in_newtons;

const std::string k_areas = "FED-STD-H28/2, least material (from memory)";
const std::string k_guide = "VDI 2230-1 (2003), step R11 (from memory)";

std::string limit_source(const thread::Limits& limits) {
  return limits.source.title.empty() ? "limits of size" : limits.source.title;
}

void add_thread(Working& working, const StripCase& asked) {
  const auto geometry = thread::geometry_of(asked.thread);
  const std::string source = limit_source(asked.limits);
  const std::string words = asked.limits.external_class + "/" + asked.limits.internal_class;
  working.push_back({"P", "pitch", "of the series", in_millimetres(asked.thread.pitch), "mm", "thread standard"});
  working.push_back({"α", "flank angle, half of the thread angle", "of the thread form",
                     quantity::in_degrees(geometry.flank_angle), "°", "thread standard"});
  working.push_back({"D1_max", "greatest crest diameter of the thread that the bolt turns in", "limits " + words,
                     in_millimetres(asked.limits.D1_max), "mm", source});
  working.push_back({"d2_min", "least pitch diameter of the bolt", "limits " + words,
                     in_millimetres(asked.limits.d2_min), "mm", source});
}

void add_part_limits(Working& working, const StripCase& asked) {
  const bool wire = asked.insert && asked.insert->kind == InsertKind::wire;
  const thread::Limits& limits = asked.insert ? asked.insert->outer_limits : asked.limits;
  const std::string source = wire ? "ASME B18.29.1 (from memory)" : limit_source(limits);
  const std::string from = wire ? "limit of the bolt's own thread + 3·√3/4·P"
                                : "limits " + limits.external_class + "/" + limits.internal_class;
  const std::string of = asked.insert ? "insert" : "bolt";
  if (asked.insert && !wire)
    working.push_back({"P_o", "pitch of the insert's outer thread", "of the series",
                       in_millimetres(asked.insert->outer.pitch), "mm", "thread standard"});
  working.push_back({"d_min", "least crest diameter of the " + of, from, in_millimetres(limits.d_min), "mm", source});
  working.push_back(
      {"D2_max", "greatest pitch diameter in the part", from, in_millimetres(limits.D2_max), "mm", source});
}

void add_areas(Working& working, const StripAnswer& answer) {
  const auto& insert = answer.asked.insert;
  const std::string pitch = insert && insert->kind == InsertKind::keyed ? "P_o" : "P";
  working.push_back({"A_s2", "area of the bolt's thread sheared for each mm that bears",
                     "π/P·D1_max·(P/2 + tan α·(d2_min - D1_max))", in_millimetres(answer.bolt_width), "mm²/mm",
                     k_areas});
  working.push_back({"A_s1", "area of the part's thread sheared for each mm that bears",
                     "π/" + pitch + "·d_min·(" + pitch + "/2 + tan α·(d_min - D2_max))",
                     in_millimetres(answer.part_width), "mm²/mm", k_areas});
}

void add_strengths(Working& working, const StripAnswer& answer) {
  const StripCase& asked = answer.asked;
  if (asked.bolt.tensile) {
    working.push_back({"Rm", "least tensile strength of class " + asked.bolt.class_name, "table",
                       in_megapascals(*asked.bolt.tensile), "MPa", "strength_classes"});
    working.push_back({"Rm_high", "highest tensile strength of the class", "1.2·Rm",
                       in_megapascals(*answer.tensile_highest), "MPa", k_guide});
  }
  if (asked.bolt_shear)
    working.push_back({"r", "shear over tensile strength of the bolt", "table", asked.bolt_shear->share, "",
                       asked.bolt_shear->source.title});
  if (asked.part.shear_strength)
    working.push_back({"τ_B", "shear strength of " + asked.part.description, "table",
                       in_megapascals(*asked.part.shear_strength), "MPa", "part_materials"});
}

void add_factors(Working& working, const StripAnswer& answer) {
  if (answer.strength_ratio) {
    working.push_back({"R_S", "strength of the part's thread over that of the bolt's, weakest bolt",
                       "τ_B·A_s1/(r·Rm·A_s2)", *answer.strength_ratio, "", k_guide});
    working.push_back({"R_S_high", "the same with the strongest bolt", "τ_B·A_s1/(r·Rm_high·A_s2)",
                       *answer.strength_ratio_highest, "", k_guide});
  }
  const bool least = answer.asked.insert || !answer.strength_ratio;
  working.push_back({"C2", "factor for the bolt's thread",
                     least ? "the least that it can be"
                           : "5.594 - 13.682·x + 14.107·x² - 6.057·x³ + 0.9353·x⁴; x is R_S_high, from 1 to 2.2",
                     answer.c2, "", k_guide});
  working.push_back({"C3", "factor for the part's thread",
                     answer.asked.insert ? "1 against an insert"
                     : least             ? "the least that it can be"
                                         : "0.728 + 1.769·x - 2.896·x² + 1.296·x³; x is R_S, from 0.4 to 1",
                     answer.c3, "", k_guide});
}

void add_break(Working& working, const StripAnswer& answer) {
  if (answer.bolt_break)
    working.push_back({"F_b", "load that breaks the weakest bolt", "tensile load of the class",
                       in_newtons(*answer.bolt_break), "N", "bolt_loads, or Rm·As"});
  const auto area = thread::geometry_of(answer.asked.thread).stress_area;
  if (!answer.bolt_break_highest || !area) return;
  working.push_back(
      {"As", "stress area", "of the thread", quantity::in_square_millimetres(*area), "mm²", "thread standard"});
  working.push_back({"F_b_high", "load that breaks the strongest bolt", "Rm_high·As",
                     in_newtons(*answer.bolt_break_highest), "N", k_guide});
}

void add_needed(Working& working, const StripAnswer& answer) {
  working.push_back({"m_i", "of the length engaged, what does not bear", "two turns if nothing else is said",
                     in_millimetres(answer.asked.incomplete), "mm", k_guide});
  if (!answer.needed) return;
  working.push_back({"m_n", "length to be engaged so that the strongest bolt breaks first",
                     "m_i + the longer of F_b_high/(C3·τ_B·A_s1) and F_b_high/(C2·r·Rm_high·A_s2)",
                     in_millimetres(*answer.needed), "mm", k_guide});
}

void add_loads(Working& working, const StripAnswer& answer) {
  if (!answer.bearing) return;
  working.push_back({"m", "length engaged", "as given", in_millimetres(*answer.asked.length), "mm", "as given"});
  working.push_back({"m_e", "length that bears", "m - m_i", in_millimetres(*answer.bearing), "mm", k_guide});
  if (answer.loads.part_thread)
    working.push_back({"F_m", "load that strips the part's thread", "C3·τ_B·A_s1·m_e",
                       in_newtons(*answer.loads.part_thread), "N", k_guide});
  if (answer.loads.bolt_thread) {
    working.push_back({"F_s", "load that strips the weakest bolt's thread", "C2·r·Rm·A_s2·m_e",
                       in_newtons(*answer.loads.bolt_thread), "N", k_guide});
    working.push_back({"F_s_high", "load that strips the strongest bolt's thread", "C2·r·Rm_high·A_s2·m_e",
                       in_newtons(*answer.loads.bolt_thread_highest), "N", k_guide});
  }
}

} // namespace

Working strip_working(const StripAnswer& answer) {
  Working working;
  add_thread(working, answer.asked);
  add_part_limits(working, answer.asked);
  add_areas(working, answer);
  add_strengths(working, answer);
  add_factors(working, answer);
  add_break(working, answer);
  add_needed(working, answer);
  add_loads(working, answer);
  return working;
}

} // namespace clampwright::joint
