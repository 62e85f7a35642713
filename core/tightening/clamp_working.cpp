// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/clamp_working.hpp"

#include <array>
#include <iterator>
#include <numbers>
#include <string>

#include <fmt/format.h>

#include "core/tightening/lever.hpp"
#include "core/tightening/stress.hpp"

namespace clampwright::tightening {

namespace {

using friction::FrictionCoefficient;
using quantity::in_degrees;
using quantity::in_megapascals;
using quantity::in_millimetres;
using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::in_square_millimetres;

constexpr const char* k_guideline = "VDI 2230-1";
constexpr const char* k_given = "as given";
constexpr const char* k_definition = "definition";
constexpr const char* k_nut_factor = "T = K·F·d";

// One corner of the band.
struct Corner {
  std::string suffix; // "", " low", " high": the end of the clamp load's band
  std::string words;
  std::string friction_words; // which end of the friction's band
  quantity::Torque torque;
  std::optional<FrictionCoefficient> mu_thread;
  std::optional<FrictionCoefficient> mu_head;
  std::optional<friction::NutFactor> k;
  quantity::Force by_friction;
  quantity::Force by_k;

  [[nodiscard]] std::string name(const char* symbol) const { return symbol + suffix; }
};

std::string friction_source(const Case& asked) {
  return asked.surfaces.empty() ? k_given : "surfaces " + asked.surfaces;
}

// The name that leads a title: "ISO 898-1".
std::string short_name(const Source& source) { return source.title.substr(0, source.title.find(',')); }

std::string diameter_symbol(const Case& asked) { return asked.thread.form == thread::Form::metric ? "d" : "D"; }

std::array<Corner, 3> corners_of(const ClampAnswer& answer) {
  const double a = answer.accuracy.share;
  std::array<Corner, 3> corners{
      Corner{"", "likely", "likely of the band", answer.torque, {}, {}, {}, {}, {}},
      Corner{" low", "least load", "highest of the band", answer.torque * (1.0 - a), {}, {}, {}, {}, {}},
      Corner{" high", "most load", "lowest of the band", answer.torque * (1.0 + a), {}, {}, {}, {}, {}}};
  if (const auto& part = answer.thread_friction) {
    const std::array thread{part->mu_thread.likely, part->mu_thread.high, part->mu_thread.low};
    const std::array head{part->mu_head.likely, part->mu_head.high, part->mu_head.low};
    const std::array preload{part->preload.likely, part->preload.low, part->preload.high};
    for (std::size_t i = 0; i < corners.size(); ++i) {
      corners[i].mu_thread = thread[i];
      corners[i].mu_head = head[i];
      corners[i].by_friction = preload[i];
    }
  }
  if (const auto& part = answer.nut_factor) {
    const std::array k{part->k.likely, part->k.high, part->k.low};
    const std::array preload{part->preload.likely, part->preload.low, part->preload.high};
    for (std::size_t i = 0; i < corners.size(); ++i) {
      corners[i].k = k[i];
      corners[i].by_k = preload[i];
    }
  }
  return corners;
}

// The section that bears the load, and what the class makes of it.
void add_strength(Working& steps, const ClampAnswer& answer) {
  const Case& asked = answer.asked;
  const auto section = bearing_section(asked);
  if (asked.kind != JointKind::bolt || asked.strength.sources.empty() || !section) return;
  std::string formula = "As";
  if (asked.shank) {
    steps.push_back({"d_s", "diameter of the shank", k_given, in_millimetres(*asked.shank), "mm", k_given});
    formula = "smaller of As and π/4·d_s²";
  }
  if (asked.bore) {
    steps.push_back({"d_b", "bore", k_given, in_millimetres(*asked.bore), "mm", k_given});
    formula += ", less π/4·d_b²";
  }
  steps.push_back({"A0", "section that bears the load", formula, in_square_millimetres(*section), "mm²", k_guideline});
  const std::string standard = short_name(asked.strength.sources.front());
  const bool reduced = asked.strength.loadability < 1.0;
  if (reduced)
    steps.push_back({"f_h", "share of the full loads that the head bears", "of mark " + asked.strength.class_name,
                     asked.strength.loadability, "", "ISO 898-1: reduced loadability"});
  if (asked.strength.proof_load) {
    const double load = in_newtons(*asked.strength.proof_load);
    if (asked.strength.proof_load_basis == strength::LoadBasis::stress_area) {
      steps.push_back({"S_p", "proof stress", "of class " + asked.strength.class_name,
                       in_megapascals(*asked.strength.proof_stress), "MPa", standard});
      steps.push_back({"F_p", "proof load", reduced ? "f_h·S_p·A0" : "S_p·A0", load, "N", k_definition});
    } else if (reduced) {
      steps.push_back({"F_p0", "proof load of the full class", "as the standard prints it",
                       load / asked.strength.loadability, "N", standard});
      steps.push_back({"F_p", "proof load", "f_h·F_p0", load, "N", k_definition});
    } else {
      steps.push_back({"F_p", "proof load", "as the standard prints it", load, "N", standard});
    }
  }
  if (!asked.strength.yield || !answer.thread_friction) return;
  const double d0 = in_millimetres(section_diameter(*section));
  steps.push_back({"R", asked.strength.yield_kind + ", least value of the class",
                   "of class " + asked.strength.class_name, in_megapascals(*asked.strength.yield), "MPa", standard});
  steps.push_back({"d0", "diameter of the section", "√(4·A0/π)", d0, "mm", k_guideline});
  steps.push_back({"W_P", "resistance to torsion, section fully plastic", "π/12·d0³",
                   std::numbers::pi / 12.0 * d0 * d0 * d0, "mm³", "VDI 2230-1 since 2001"});
}

void add_levers(Working& steps, const ClampAnswer& answer, const Corner& corner) {
  const Case& asked = answer.asked;
  const std::string source = friction_source(asked);
  if (answer.thread_friction) {
    const quantity::Length d_m = answer.thread_friction->face_mean_diameter;
    steps.push_back(
        {corner.name("μ_t"), "friction in the thread", corner.friction_words, corner.mu_thread->value(), "", source});
    steps.push_back({corner.name("μ_h"), "friction under the turned part", corner.friction_words,
                     corner.mu_head->value(), "", source});
    steps.push_back({corner.name("ρ′"), "friction angle of the thread",
                     fmt::format("atan({}/cos α)", corner.name("μ_t")),
                     in_degrees(friction_angle(asked.thread, *corner.mu_thread)), "°", k_guideline});
    steps.push_back({corner.name("l_t"), "lever of the thread", fmt::format("d2/2·tan(φ + {})", corner.name("ρ′")),
                     in_millimetres(thread_lever(asked.thread, *corner.mu_thread)), "mm", k_guideline});
    steps.push_back({corner.name("l_h"), "lever of the turned part", fmt::format("{}·D_m/2", corner.name("μ_h")),
                     in_millimetres(head_lever(d_m, *corner.mu_head)), "mm", k_guideline});
    if (corner.suffix.empty() && asked.thread.form == thread::Form::metric)
      steps.push_back({"l_r", "both by the rounded formula, to compare", "0.16·P + 0.58·d2·μ_t + D_m/2·μ_h",
                       in_millimetres(rounded_lever(asked.thread, d_m, *corner.mu_thread, *corner.mu_head)), "mm",
                       k_guideline});
  }
  if (answer.nut_factor)
    steps.push_back({corner.name("K"), "nut factor", corner.friction_words, corner.k->value(), "", source});
}

// Everything that does not depend on the torque.
Working basis_of(const ClampAnswer& answer) {
  const Case& asked = answer.asked;
  Working steps = thread::geometry_working(asked.thread);
  if (answer.thread_friction) {
    steps.push_back({"α", "flank angle, half of the thread angle", "of the thread form",
                     in_degrees(thread::geometry_of(asked.thread).flank_angle), "°", "thread standard"});
    steps.push_back(
        {"φ", "helix angle", "atan(P/(π·d2))", in_degrees(thread::helix_angle(asked.thread)), "°", k_guideline});
    steps.push_back({"D_o", "outer diameter of the face under the turned part", "of the face",
                     in_millimetres(asked.face->outer), "mm", asked.face->basis});
    steps.push_back({"D_i", "inner diameter of that face", "of the face", in_millimetres(asked.face->inner), "mm",
                     asked.face->basis});
    steps.push_back({"D_m", "mean diameter of that face", "(D_o + D_i)/2",
                     in_millimetres(answer.thread_friction->face_mean_diameter), "mm", k_guideline});
  }
  add_strength(steps, answer);
  steps.push_back({"T_run", "running torque, before anything is clamped", asked.running_torque ? k_given : "none",
                   in_newton_metres(asked.running_torque.value_or(quantity::Torque{})), "N·m", k_given});
  for (const Corner& corner : corners_of(answer))
    add_levers(steps, answer, corner);
  return steps;
}

void add_loads_by_friction(Working& steps, const ClampAnswer& answer, const Corner& corner) {
  const Case& asked = answer.asked;
  const auto name = [&](const char* symbol) { return corner.name(symbol); };
  steps.push_back({name("F"), "clamp load by thread friction, " + corner.words,
                   fmt::format("({} - T_run)·1000/({} + {})", name("T"), name("l_t"), name("l_h")),
                   in_newtons(corner.by_friction), "N", k_guideline});
  if (answer.thread_friction->use_of_proof)
    steps.push_back({name("u_p"), "share of the proof load", fmt::format("{}/F_p", name("F")),
                     corner.by_friction / *asked.strength.proof_load, "", k_definition});
  if (!answer.thread_friction->use_of_yield) return;
  const quantity::Area section = *bearing_section(asked);
  const quantity::Torque torque = corner.by_friction * thread_lever(asked.thread, *corner.mu_thread) +
                                  asked.running_torque.value_or(quantity::Torque{});
  const quantity::Stress sigma = tension(corner.by_friction, section);
  const quantity::Stress tau = plastic_torsion(torque, section);
  const quantity::Stress both = equivalent(sigma, tau);
  steps.push_back({name("σ"), "tension", fmt::format("{}/A0", name("F")), in_megapascals(sigma), "MPa", k_guideline});
  steps.push_back({name("τ"), "torsion by the thread's torque",
                   fmt::format("({}·{} + T_run·1000)/W_P", name("F"), name("l_t")), in_megapascals(tau), "MPa",
                   k_guideline});
  steps.push_back({name("σ_v"), "both together, von Mises", fmt::format("√({}² + 3·{}²)", name("σ"), name("τ")),
                   in_megapascals(both), "MPa", k_guideline});
  steps.push_back(
      {name("u_y"), "share of yield",
       asked.strength.loadability < 1.0 ? fmt::format("{}/(f_h·R)", name("σ_v")) : fmt::format("{}/R", name("σ_v")),
       both / *asked.strength.yield / asked.strength.loadability, "", k_definition});
}

void add_loads_by_nut_factor(Working& steps, const ClampAnswer& answer, const Corner& corner) {
  const auto name = [&](const char* symbol) { return corner.name(symbol); };
  steps.push_back({name("F_K"), "clamp load by nut factor, " + corner.words,
                   fmt::format("({} - T_run)·1000/({}·{})", name("T"), name("K"), diameter_symbol(answer.asked)),
                   in_newtons(corner.by_k), "N", k_nut_factor});
  if (answer.nut_factor->use_of_proof)
    steps.push_back({name("u_K"), "share of the proof load", fmt::format("{}/F_p", name("F_K")),
                     corner.by_k / *answer.asked.strength.proof_load, "", k_definition});
}

// What the torque does.
Working loads_of(const ClampAnswer& answer, const std::string& torque_formula) {
  Working steps;
  steps.push_back(
      {"T", "torque set on the wrench", torque_formula, in_newton_metres(answer.torque), "N·m", torque_formula});
  steps.push_back(
      {"a", "accuracy of the wrench, as a share", k_given, answer.accuracy.share, "", answer.accuracy.basis});
  for (const Corner& corner : corners_of(answer)) {
    if (!corner.suffix.empty())
      steps.push_back({corner.name("T"), "torque that may be reached",
                       corner.suffix == " low" ? "T·(1 - a)" : "T·(1 + a)", in_newton_metres(corner.torque), "N·m",
                       answer.accuracy.basis});
    if (answer.thread_friction) add_loads_by_friction(steps, answer, corner);
    if (answer.nut_factor) add_loads_by_nut_factor(steps, answer, corner);
  }
  if (!answer.thread_friction) return steps;
  const auto& share = answer.thread_friction->share;
  steps.push_back({"s_l", "share of T - T_run that lifts", "P/(2·π)/(l_t + l_h)", share.lift, "", k_definition});
  steps.push_back({"s_t", "share that rubs in the thread", "l_t/(l_t + l_h) - s_l", share.thread, "", k_definition});
  steps.push_back({"s_h", "share that rubs under the turned part", "l_h/(l_t + l_h)", share.head, "", k_definition});
  if (const auto mu = answer.thread_friction->mu_at_yield)
    steps.push_back({"μ_y", "friction in thread and head at which T brings the bolt to yield",
                     "u_y = 1, found by halving the interval", *mu, "", k_definition});
  return steps;
}

std::string wanted_formula(const ClampAnswer& answer, const Wanted& wanted) {
  switch (wanted.aim) {
  case Aim::preload:
    return k_given;
  case Aim::proof_share:
    return fmt::format("{:g}·F_p", wanted.share);
  case Aim::yield_share:
    break;
  }
  const std::string stress =
      fmt::format("{:g}{}·R", wanted.share, answer.asked.strength.loadability < 1.0 ? "·f_h" : "");
  if (answer.asked.running_torque)
    return fmt::format("F that solves (F/A0)² + 3·((F·l_t high + T_run·1000)/W_P)² = ({})²", stress);
  return fmt::format("{}/√((1/A0)² + 3·(l_t high/W_P)²)", stress);
}

// How the torque to set follows from the load: at the three frictions, and which of them is taken.
void add_wanted(Working& steps, const ClampAnswer& answer, const Wanted& wanted, quantity::Force preload) {
  steps.push_back({"F_w", "clamp load wanted", wanted_formula(answer, wanted), in_newtons(preload), "N",
                   wanted.aim == Aim::yield_share ? k_guideline : k_given});
  const std::string d = diameter_symbol(answer.asked);
  const auto add = [&](const char* symbol, const char* end, const char* words) {
    const auto torque_at = [&](const quantity::Band<quantity::Torque>& band) {
      return in_newton_metres(*end == '\0' ? band.likely : std::string_view(end) == " high" ? band.low : band.high);
    };
    if (const auto& part = answer.thread_friction)
      steps.push_back({symbol, fmt::format("torque for it by thread friction, {} friction", words),
                       fmt::format("F_w·(l_t{0} + l_h{0})/1000 + T_run", end), torque_at(*part->torque), "N·m",
                       k_guideline});
    if (const auto& part = answer.nut_factor)
      steps.push_back({std::string(symbol) + "K", fmt::format("torque for it by nut factor, {} friction", words),
                       fmt::format("F_w·K{}·{}/1000 + T_run", end, d), torque_at(*part->torque), "N·m", k_nut_factor});
  };
  add("T_1", " high", "lowest");
  add("T_2", "", "likely");
  add("T_3", " low", "highest");
  const char* taken = wanted.aim == Aim::yield_share ? "T_1" : "T_2";
  steps.push_back({"T_set", "torque to set", answer.thread_friction ? std::string(taken) : fmt::format("{}K", taken),
                   in_newton_metres(answer.torque), "N·m",
                   wanted.aim == Aim::yield_share ? "the bolt is loaded most at the lowest friction" : k_definition});
}

void append(Working& steps, Working more) {
  steps.insert(steps.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace

Working working_of(const ClampAnswer& answer) {
  Working steps = basis_of(answer);
  append(steps, loads_of(answer, k_given));
  return steps;
}

Working working_of(const ClampAnswer& answer, const Wanted& wanted, quantity::Force preload) {
  Working steps = basis_of(answer);
  add_wanted(steps, answer, wanted, preload);
  append(steps, loads_of(answer, "T_set"));
  return steps;
}

} // namespace clampwright::tightening
