// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/clamp_working.hpp"

#include <array>
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

// One corner of the band.
struct Corner {
  std::string suffix; // "", " low", " high": the end of the clamp load's band
  std::string words;
  std::string friction_words; // which end of the friction's band
  quantity::Torque torque;
  std::string torque_formula;
  std::optional<FrictionCoefficient> mu_thread;
  std::optional<FrictionCoefficient> mu_head;
  std::optional<friction::NutFactor> k;
  quantity::Force by_friction;
  quantity::Force by_k;
};

std::string friction_source(const Case& asked) {
  return asked.surfaces.empty() ? k_given : "surfaces " + asked.surfaces;
}

// The name that leads a title: "ISO 898-1".
std::string short_name(const Source& source) { return source.title.substr(0, source.title.find(',')); }

std::vector<Corner> corners_of(const ClampAnswer& answer) {
  std::vector<Corner> corners{{"", "likely", "likely of the band", answer.torque, "as set", {}, {}, {}, {}, {}},
                              {" low",
                               "least load",
                               "highest of the band",
                               answer.torque * (1.0 - answer.accuracy.share),
                               "T·(1 - a)",
                               {},
                               {},
                               {},
                               {},
                               {}},
                              {" high",
                               "most load",
                               "lowest of the band",
                               answer.torque * (1.0 + answer.accuracy.share),
                               "T·(1 + a)",
                               {},
                               {},
                               {},
                               {},
                               {}}};
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

void add_common(Working& steps, const ClampAnswer& answer) {
  const Case& asked = answer.asked;
  const auto geometry = thread::geometry_working(asked.thread);
  steps.insert(steps.end(), geometry.begin(), geometry.end());
  steps.push_back({"T", "torque set on the wrench", "as given", in_newton_metres(answer.torque), "N·m", k_given});
  steps.push_back({"a", "accuracy of the wrench", "share of T", answer.accuracy.share, "", answer.accuracy.basis});
  steps.push_back({"T_run", "running torque, before anything is clamped", asked.running_torque ? "as given" : "none",
                   in_newton_metres(asked.running_torque.value_or(quantity::Torque{})), "N·m", k_given});
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
  if (asked.kind != JointKind::bolt) return;
  if (asked.strength.proof_load)
    steps.push_back({"F_p", "proof load",
                     asked.strength.proof_load_basis == strength::LoadBasis::table ? "as the standard prints it"
                                                                                   : "proof stress · area",
                     in_newtons(*asked.strength.proof_load), "N",
                     asked.strength.sources.empty() ? "" : short_name(asked.strength.sources.back())});
  if (asked.strength.yield && answer.thread_friction) {
    if (const auto section = bearing_section(asked)) {
      steps.push_back({"R", asked.strength.yield_kind + ", least value of the class",
                       "of class " + asked.strength.class_name, in_megapascals(*asked.strength.yield), "MPa",
                       short_name(asked.strength.sources.front())});
      steps.push_back({"A0", "section that bears the load",
                       asked.shank || asked.bore ? "smaller of As and shank, less the bore" : "As",
                       in_square_millimetres(*section), "mm²", k_guideline});
      steps.push_back({"d0", "diameter of that section", "√(4·A0/π)", in_millimetres(section_diameter(*section)), "mm",
                       k_guideline});
      const double d0 = in_millimetres(section_diameter(*section));
      steps.push_back({"W_P", "resistance to torsion, section fully plastic", "π/12·d0³",
                       std::numbers::pi / 12.0 * d0 * d0 * d0, "mm³", "VDI 2230-1 since 2001"});
    }
  }
}

void add_friction_corner(Working& steps, const ClampAnswer& answer, const Corner& corner) {
  const Case& asked = answer.asked;
  const auto name = [&](const char* symbol) { return symbol + corner.suffix; };
  const auto in_thread = thread_lever(asked.thread, *corner.mu_thread);
  const auto in_head = head_lever(answer.thread_friction->face_mean_diameter, *corner.mu_head);
  steps.push_back({name("μ_t"), "friction in the thread", corner.friction_words, corner.mu_thread->value(), "",
                   friction_source(asked)});
  steps.push_back({name("μ_h"), "friction under the turned part", corner.friction_words, corner.mu_head->value(), "",
                   friction_source(asked)});
  steps.push_back({name("ρ′"), "friction angle of the thread", fmt::format("atan({}/cos α)", name("μ_t")),
                   in_degrees(friction_angle(asked.thread, *corner.mu_thread)), "°", k_guideline});
  steps.push_back({name("l_t"), "lever of the thread", fmt::format("d2/2·tan(φ + {})", name("ρ′")),
                   in_millimetres(in_thread), "mm", k_guideline});
  steps.push_back({name("l_h"), "lever of the turned part", fmt::format("{}·D_m/2", name("μ_h")),
                   in_millimetres(in_head), "mm", k_guideline});
  if (corner.suffix.empty() && asked.thread.form == thread::Form::metric)
    steps.push_back({"l_r", "both by the rounded formula, to compare", "0.16·P + 0.58·d2·μ_t + D_m/2·μ_h",
                     in_millimetres(rounded_lever(asked.thread, answer.thread_friction->face_mean_diameter,
                                                  *corner.mu_thread, *corner.mu_head)),
                     "mm", k_guideline});
  steps.push_back({name("F"), "clamp load by thread friction, " + corner.words,
                   fmt::format("({} - T_run)·1000/({} + {})", name("T"), name("l_t"), name("l_h")),
                   in_newtons(corner.by_friction), "N", k_guideline});
  if (answer.thread_friction->use_of_proof)
    steps.push_back({name("u_p"), "share of the proof load", fmt::format("{}/F_p", name("F")),
                     corner.by_friction / *asked.strength.proof_load, "", k_definition});
  if (!answer.thread_friction->use_of_yield) return;
  const quantity::Area section = *bearing_section(asked);
  const quantity::Torque torque = corner.by_friction * in_thread + asked.running_torque.value_or(quantity::Torque{});
  const quantity::Stress sigma = tension(corner.by_friction, section);
  const quantity::Stress tau = plastic_torsion(torque, section);
  steps.push_back({name("σ"), "tension", fmt::format("{}/A0", name("F")), in_megapascals(sigma), "MPa", k_guideline});
  steps.push_back({name("τ"), "torsion by the thread's torque",
                   fmt::format("({}·{} + T_run·1000)/W_P", name("F"), name("l_t")), in_megapascals(tau), "MPa",
                   k_guideline});
  steps.push_back({name("σ_v"), "both together, von Mises", fmt::format("√({}² + 3·{}²)", name("σ"), name("τ")),
                   in_megapascals(equivalent(sigma, tau)), "MPa", k_guideline});
  steps.push_back({name("u_y"), "share of yield", fmt::format("{}/R", name("σ_v")),
                   equivalent(sigma, tau) / *asked.strength.yield, "", k_definition});
}

void add_k_corner(Working& steps, const ClampAnswer& answer, const Corner& corner) {
  const auto name = [&](const char* symbol) { return symbol + corner.suffix; };
  const std::string d = answer.asked.thread.form == thread::Form::metric ? "d" : "D";
  steps.push_back(
      {name("K"), "nut factor", corner.friction_words, corner.k->value(), "", friction_source(answer.asked)});
  steps.push_back({name("F_K"), "clamp load by nut factor, " + corner.words,
                   fmt::format("({} - T_run)·1000/({}·{})", name("T"), name("K"), d), in_newtons(corner.by_k), "N",
                   "T = K·F·d"});
  if (answer.nut_factor->use_of_proof)
    steps.push_back({name("u_K"), "share of the proof load", fmt::format("{}/F_p", name("F_K")),
                     corner.by_k / *answer.asked.strength.proof_load, "", k_definition});
}

} // namespace

Working working_of(const ClampAnswer& answer) {
  Working steps;
  add_common(steps, answer);
  for (const Corner& corner : corners_of(answer)) {
    if (!corner.suffix.empty())
      steps.push_back({"T" + corner.suffix, "torque that may be reached", corner.torque_formula,
                       in_newton_metres(corner.torque), "N·m", answer.accuracy.basis});
    if (answer.thread_friction) add_friction_corner(steps, answer, corner);
    if (answer.nut_factor) add_k_corner(steps, answer, corner);
  }
  if (answer.thread_friction) {
    const auto& share = answer.thread_friction->share;
    steps.push_back({"s_l", "share of T - T_run that lifts", "P/(2·π)/(l_t + l_h)", share.lift, "", k_definition});
    steps.push_back({"s_t", "share that rubs in the thread", "l_t/(l_t + l_h) - s_l", share.thread, "", k_definition});
    steps.push_back({"s_h", "share that rubs under the turned part", "l_h/(l_t + l_h)", share.head, "", k_definition});
    if (const auto mu = answer.thread_friction->mu_at_yield)
      steps.push_back({"μ_y", "friction in thread and head at which T brings the bolt to yield",
                       "u_y = 1, found by halving the interval", *mu, "", k_definition});
  }
  return steps;
}

} // namespace clampwright::tightening
