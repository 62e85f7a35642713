// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/resilience.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/thread/geometry.hpp"

namespace clampwright::joint {

namespace {

using quantity::Area;
using quantity::in_megapascals;
using quantity::in_millimetres;
using quantity::in_millimetres_per_newton;
using quantity::Length;
using quantity::millimetres;
using quantity::Resilience;
using quantity::Stress;

const std::string k_step = "VDI 2230-1, step R3 (from memory)";

Area circle(Length diameter) { return std::numbers::pi / 4.0 * diameter * diameter; }

Area less_bore(Area section, const Stack& stack) { return stack.bore ? section - circle(*stack.bore) : section; }

Area shank_section(const Stack& stack) { return less_bore(circle(stack.waist.value_or(stack.thread.diameter)), stack); }
Area head_section(const Stack& stack) { return less_bore(circle(stack.thread.diameter), stack); }
Area root_section(const Stack& stack) {
  return less_bore(circle(thread::geometry_of(stack.thread).root_diameter), stack);
}

Resilience piece(Length length, Stress modulus, Area section) { return length / (modulus * section); }

double cones(const Stack& stack) { return stack.into_part ? 2.0 : 1.0; }

// The pressure does not spread wider than this, however wide the parts are (the limit of 1986).
Length outer_of(const Stack& stack) {
  const Length widest = stack.face + cones(stack) * stack.grip;
  return stack.outer ? std::min(*stack.outer, widest) : widest;
}

double cone_slope(const Stack& stack) {
  const double beta = stack.grip / stack.face;
  const double y = outer_of(stack) / stack.face;
  return stack.into_part ? 0.348 + 0.013 * std::log(beta) + 0.193 * std::log(y)
                         : 0.362 + 0.032 * std::log(beta / 2.0) + 0.153 * std::log(y);
}

quantity::Band<Resilience> parts_band(const Stack& stack) {
  const auto least = [&](Stress modulus) {
    return std::min(cone_resilience(stack, modulus), cylinder_resilience(stack, modulus));
  };
  const auto most = [&](Stress modulus) {
    return std::max(cone_resilience(stack, modulus), cylinder_resilience(stack, modulus));
  };
  return {least(stack.part.most), cone_resilience(stack, stack.part.mean()), most(stack.part.least)};
}

} // namespace

Resilience bolt_resilience(const Stack& stack, Length free_thread) {
  const Length d = stack.thread.diameter;
  const Stress modulus = stack.bolt.mean();
  const double anchor = stack.into_part ? k_tapped_part_gives : k_nut_gives;
  const Stress anchor_modulus = stack.into_part ? stack.part.mean() : modulus;
  return piece(stack.head_gives * d, modulus, head_section(stack)) +
         piece(stack.grip - free_thread, modulus, shank_section(stack)) +
         piece(free_thread + k_engaged_thread_gives * d, modulus, root_section(stack)) +
         piece(anchor * d, anchor_modulus, circle(d));
}

Resilience sleeve_resilience(Length length, Stress modulus, Length outer, Length inner) {
  return piece(length, modulus, circle(outer) - circle(inner));
}

Resilience cone_resilience(const Stack& stack, Stress modulus) {
  const Length face = stack.face;
  const Length hole = stack.hole;
  const Length outer = outer_of(stack);
  if (outer <= face) return sleeve_resilience(stack.grip, modulus, outer, hole);
  const double w = cones(stack);
  const double slope = cone_slope(stack);
  const Length reach = face + w * stack.grip * slope;
  const Length widest = std::min(outer, reach);
  const double spread = ((face + hole) * (widest - hole)) / ((face - hole) * (widest + hole));
  Resilience out = 2.0 * std::log(spread) / (w * std::numbers::pi * slope) / (modulus * hole);
  if (outer < reach) {
    const Length sleeve = stack.grip - (outer - face) / (w * slope);
    out += sleeve_resilience(sleeve, modulus, outer, hole);
  }
  return out;
}

Resilience cylinder_resilience(const Stack& stack, Stress modulus) {
  const Length face = stack.face;
  const Length outer = std::min(outer_of(stack), face + stack.grip);
  if (outer <= face) return sleeve_resilience(stack.grip, modulus, outer, stack.hole);
  const double x = std::cbrt(static_cast<double>(stack.grip * face / (outer * outer)));
  const Area section = circle(face) - circle(stack.hole) +
                       std::numbers::pi / 8.0 * face * (outer - face) * ((x + 1.0) * (x + 1.0) - 1.0);
  return piece(stack.grip, modulus, section);
}

StackResilience resilience_of(const Stack& stack) {
  const auto bolt = quantity::map(stack.free_thread, [&](Length free) { return bolt_resilience(stack, free); });
  // A waisted shank gives more than the thread: then much free thread is the stiff end.
  const auto [least, most] = std::minmax(bolt.low, bolt.high);
  return {{std::min(least, bolt.likely), bolt.likely, std::max(most, bolt.likely)}, parts_band(stack)};
}

quantity::Force load_of_turn(quantity::Angle angle, const thread::Thread& thread, Resilience whole) {
  return static_cast<double>(angle / quantity::one_turn()) * thread.pitch / whole;
}

Length usual_settling(const Stack& stack) { return millimetres(stack.into_part ? 0.006 : 0.009); }

quantity::Force settling_loss(Length settling, Resilience whole) { return settling / whole; }

Length thread_on_bolt(const thread::Thread& thread, Length bolt_length) {
  if (thread.form == thread::Form::metric)
    return 2.0 * thread.diameter + millimetres(bolt_length <= millimetres(125)   ? 6
                                               : bolt_length <= millimetres(200) ? 12
                                                                                 : 25);
  return 2.0 * thread.diameter + quantity::inches(bolt_length <= quantity::inches(6) ? 0.25 : 0.5);
}

Working stack_working(const Stack& stack, const StackResilience& resilience) {
  const auto area = [](Area section) { return quantity::in_square_millimetres(section); };
  const bool metric = stack.thread.form == thread::Form::metric;
  const std::string d = metric ? "d" : "D";
  const std::string& own = stack.bolt.words;
  Working steps;
  steps.push_back({"l_K", "grip", "as given", in_millimetres(stack.grip), "mm", "as given"});
  steps.push_back({"l_G", "free thread in it, likely", stack.free_thread_basis,
                   in_millimetres(stack.free_thread.likely), "mm", stack.free_thread_basis});
  steps.push_back({"E_S", "modulus of the bolt", own, in_megapascals(stack.bolt.mean()), "MPa", own});
  steps.push_back({"A_N", "section of the bolt in the head", stack.bore ? "π/4·(" + d + "² - bore²)" : "π/4·" + d + "²",
                   area(head_section(stack)), "mm²", k_step});
  steps.push_back(
      {"A_i", "section of the shank", stack.waist ? "of the waist" : "A_N", area(shank_section(stack)), "mm²", k_step});
  steps.push_back({"A_d3", "section at the root of the thread", stack.bore ? "π/4·(d3² - bore²)" : "π/4·d3²",
                   area(root_section(stack)), "mm²", k_step});
  steps.push_back({"h", "what gives in the head, over the diameter",
                   stack.head_gives < k_hexagon_gives ? "socket head" : "hexagon", stack.head_gives, "", k_step});
  const std::string anchor =
      stack.into_part ? "0.33·" + d + "/(E_P·π/4·" + d + "²)" : "0.4·" + d + "/(E_S·π/4·" + d + "²)";
  steps.push_back({"E_P", "modulus of the parts, mean", stack.part.words, in_megapascals(stack.part.mean()), "MPa",
                   stack.part.words});
  steps.push_back({"δ_S", "resilience of the bolt",
                   "h·" + d + "/(E_S·A_N) + (l_K - l_G)/(E_S·A_i) + (l_G + 0.5·" + d + ")/(E_S·A_d3) + " + anchor,
                   in_millimetres_per_newton(resilience.bolt.likely), "mm/N", k_step});
  steps.push_back({"d_W", "face on the parts", "of the face", in_millimetres(stack.face), "mm", "face"});
  steps.push_back({"d_h", "hole", "of the hole", in_millimetres(stack.hole), "mm", "hole"});
  const Length outer = outer_of(stack);
  steps.push_back({"D_A", "how wide the parts are round the bolt",
                   stack.outer && outer >= *stack.outer ? "as given"
                   : stack.into_part                    ? "d_W + 2·l_K"
                                                        : "d_W + l_K",
                   in_millimetres(outer), "mm", "wider parts do not count"});
  if (outer <= stack.face) {
    steps.push_back({"δ_P", "resilience of the parts, a sleeve", "l_K/(E_P·π/4·(D_A² - d_h²))",
                     in_millimetres_per_newton(resilience.parts.likely), "mm/N", k_step});
  } else {
    steps.push_back({"w", "1 with a nut, 2 where the part is the nut", "of the joint", cones(stack), "", k_step});
    steps.push_back({"t", "slope of the cone",
                     stack.into_part ? "0.348 + 0.013·ln(l_K/d_W) + 0.193·ln(D_A/d_W)"
                                     : "0.362 + 0.032·ln(l_K/(2·d_W)) + 0.153·ln(D_A/d_W)",
                     cone_slope(stack), "", "VDI 2230-1 since 2003 (from memory)"});
    steps.push_back(
        {"D_K", "width of the cone at its end, at most that of the parts", "smaller of D_A and d_W + w·l_K·t",
         in_millimetres(std::min(outer, stack.face + cones(stack) * stack.grip * cone_slope(stack))), "mm", k_step});
    steps.push_back({"δ_P", "resilience of the parts, by cone and sleeve",
                     "2·ln((d_W + d_h)·(D_K - d_h)/((d_W - d_h)·(D_K + d_h)))/(w·E_P·π·d_h·t) + (l_K - (D_K - "
                     "d_W)/(w·t))/(E_P·π/4·(D_K² - d_h²))",
                     in_millimetres_per_newton(resilience.parts.likely), "mm/N", k_step});
    steps.push_back({"δ_Z", "the same by the cylinder of 1986, to compare", "l_K/(E_P·A_ers)",
                     in_millimetres_per_newton(cylinder_resilience(stack, stack.part.mean())), "mm/N",
                     "VDI 2230-1 (1986), as a lecture script has it"});
  }
  const auto both = resilience.both();
  steps.push_back({"δ", "both together, likely", "δ_S + δ_P", in_millimetres_per_newton(both.likely), "mm/N", k_step});
  steps.push_back({"δ low", "the stiffest that the stack may be", "least of both", in_millimetres_per_newton(both.low),
                   "mm/N", "free thread, modulus and model of the parts"});
  steps.push_back({"δ high", "the softest", "most of both", in_millimetres_per_newton(both.high), "mm/N",
                   "free thread, modulus and model of the parts"});
  return steps;
}

std::vector<Source> sources_of(const Stack& stack) {
  std::vector<Source> sources{
      {"VDI 2230-1, Systematic calculation of highly stressed bolted joints", "2003",
       "step R3: resilience of bolt and parts, cone", Known::memory},
      {"VDI 2230-1, substitution cylinder, as a lecture script has it", "1986", "lesson 12", Known::second_hand}};
  for (const Modulus* modulus : {&stack.bolt, &stack.part})
    for (const Source& source : modulus->sources)
      if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
  return sources;
}

} // namespace clampwright::joint
