// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/joint_answer.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/quantity/unit.hpp"
#include "core/tightening/clamp.hpp"
#include "specdb/catalogue/locking.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/as_fitted.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/question/hold_question.hpp"
#include "specdb/question/joint_question.hpp"
#include "specdb/question/wrench_words.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using finding::Finding;
using finding::Findings;
using finding::Severity;

bool has(const Findings& findings, Code code) {
  return std::ranges::any_of(findings, [&](const Finding& f) { return f.code == code; });
}

// Nothing is to be tightened by a number that cannot be meant, too high or too low.
Finding unit_slip(const FigureAnswer& answer) {
  const auto& clamp = *answer.clamp;
  const auto& use = clamp.thread_friction && clamp.thread_friction->use_of_proof ? clamp.thread_friction->use_of_proof
                                                                                 : clamp.nut_factor->use_of_proof;
  Finding slip{Code::unit_slip, Severity::stop, {answer.figure.printed}};
  slip.facts.emplace_back(use->likely);
  for (const tightening::UnitFit& fit : answer.unit_fits) {
    slip.facts.emplace_back(std::string(fit.unit->symbol));
    slip.facts.emplace_back(fit.torque);
  }
  return slip;
}

// What the surroundings, the number itself and the clamp load say of one figure.
Findings findings_of(const FigureAnswer& answer, const tightening::Case& asked, const joint::Surroundings& around) {
  Findings findings;
  // First: what the number does to the bolt is of no interest where it cannot be meant.
  if (!answer.unit_fits.empty()) findings.push_back(unit_slip(answer));
  if (answer.clamp) {
    const Findings& own = answer.turned ? answer.turned->findings : answer.clamp->findings;
    findings.insert(findings.end(), own.begin(), own.end());
  }
  const Findings more = joint::findings_around(around, asked, answer.clamp ? &*answer.clamp : nullptr);
  findings.insert(findings.end(), more.begin(), more.end());
  return findings;
}

// What the angle adds to the snug load, and the sentence that says so in the place of the general one.
void add_turn(FigureAnswer& answer, const Result<joint::Stack>& stack) {
  if (!answer.figure.angle_deg || !answer.clamp || !answer.unit_fits.empty()) return;
  if (!stack) {
    answer.not_turned_because = stack.error().message;
    return;
  }
  answer.turned = joint::add_angle(*answer.clamp, quantity::degrees(*answer.figure.angle_deg), *stack);
}

Result<FigureAnswer> answer_figure(const Catalogue& catalogue, const FigureRecord& figure, const ResolvedCase& resolved,
                                   const std::optional<tightening::WrenchAccuracy>& accuracy) {
  FigureAnswer answer;
  answer.figure = figure;
  answer.torque = torque_of(figure.value, figure);
  answer.low = torque_of(figure.low, figure);
  answer.high = torque_of(figure.high, figure);
  answer.set = answer.torque;
  if (answer.set && figure.running_torque_rule == "add" && resolved.asked.running_torque)
    answer.set = *answer.set + *resolved.asked.running_torque;
  const auto surfaces = find_surfaces(catalogue, figure.surfaces);
  if (!surfaces) return Refusal(surfaces.error());
  answer.surfaces_description = surfaces->description;
  if (!answer.set) return answer;
  for (const double pass : figure.passes)
    answer.passes.push_back(*torque_of(pass, figure));
  auto clamp = tightening::clamp(resolved.asked, *answer.set, accuracy);
  if (!clamp) return Refusal(clamp.error());
  answer.clamp = std::move(*clamp);
  answer.unit_fits = tightening::units_that_fit(*answer.clamp, *figure.value, quantity::unit_named(*figure.unit));
  return answer;
}

std::string source_words(const FigureRecord& figure) {
  return fmt::format("{} ({}, {}, {})", figure.printed, figure.source.title, figure.source.edition,
                     figure.source.where);
}

// The same torque for the same surfaces from two sources is no conflict.
bool differ(const FigureAnswer& one, const FigureAnswer& other) {
  const auto si = [](const FigureAnswer& answer) {
    return answer.torque ? quantity::in_newton_metres(*answer.torque) : 0.0;
  };
  const double gap = si(one) - si(other);
  return gap > 1e-9 || gap < -1e-9 || one.figure.surfaces != other.figure.surfaces ||
         one.figure.angle_deg.value_or(0.0) < other.figure.angle_deg.value_or(0.0) ||
         one.figure.angle_deg.value_or(0.0) > other.figure.angle_deg.value_or(0.0);
}

void add_conflict(JointAnswer& answer) {
  Finding conflict{Code::sources_conflict, Severity::mind, {source_words(answer.figure.figure)}};
  for (const FigureAnswer& other : answer.beside)
    if (differ(answer.figure, other)) conflict.facts.emplace_back(source_words(other.figure));
  if (conflict.facts.size() > 1) answer.findings.push_back(std::move(conflict));
}

// The stop on record of its machine, for a joint on the crank.
void add_stop(const Catalogue& catalogue, JointAnswer& answer) {
  const auto torque = torque_on_crank(answer);
  if (!answer.joint.on_crank || !torque) return;
  if (auto reply = recorded_stop(catalogue, answer.joint.machine, *torque)) answer.stop = std::move(reply->answer.stop);
}

// What follows from the place of the joint rather than from its clamp load.
void add_place(JointAnswer& answer) {
  const JointRecord& joint = answer.joint;
  Findings& findings = answer.findings;
  if (!answer.figure.torque) findings.push_back({Code::no_maker_value, Severity::mind, {answer.figure.figure.printed}});
  if (answer.thread.thread.hand == thread::Hand::left && !has(findings, Code::left_hand))
    findings.push_back({Code::left_hand, Severity::mind, {}});
  if (!joint.on_crank) return;
  Finding reaction{Code::crank_reaction, Severity::mind, {}};
  const auto torque = torque_on_crank(answer);
  if (answer.stop) {
    const crank::StopAnswer& stop = *answer.stop;
    reaction.facts = {stop.asked.before_top, stop.fitting.forces.piston, stop.below_top};
  } else if (answer.crank && torque) {
    reaction.facts.emplace_back(k_stop_angle);
    reaction.facts.emplace_back(crank::stop_force(*answer.crank, k_stop_angle, *torque));
  }
  findings.push_back(std::move(reaction));
  if (!joint.holding) findings.push_back({Code::holding_unknown, Severity::mind, {}});
}

// As fitted, the joint is judged by what is fitted: at the corrected torque, or where there is none at the figure
// itself, which someone may be about to use.
void judge_as_fitted(JointAnswer& answer) {
  const AsFitted& fitted = *answer.as_fitted;
  if (!fitted.differs || !answer.figure.torque) return;
  if (const auto& clamp = fitted.clamp ? fitted.clamp : fitted.clamp_at_figure) {
    FigureAnswer corrected = answer.figure;
    corrected.clamp = clamp;
    // The same turn, on the snug load of what is fitted.
    if (const auto& turned = corrected.turned)
      corrected.turned = joint::add_angle(*clamp, turned->angle, joint::Stack(turned->stack));
    corrected.unit_fits.clear(); // the print's sense belongs to the figure's own surfaces
    answer.findings = findings_of(corrected, clamp->asked, answer.around);
    if (!answer.figure.unit_fits.empty()) answer.findings.insert(answer.findings.begin(), unit_slip(answer.figure));
  }
  const bool breaks = fitted.clamp_at_figure && fitted.clamp_at_figure->verdict == tightening::Verdict::over_limit;
  Finding notice{Code::surfaces_differ,
                 breaks ? Severity::stop : Severity::mind,
                 {answer.figure.figure.surfaces, fitted.surfaces, *answer.figure.set}};
  const auto load = fitted.clamp_at_figure ? tightening::leading_preload(*fitted.clamp_at_figure) : std::nullopt;
  if (load) {
    notice.facts.emplace_back(load->likely);
    notice.facts.emplace_back(load->high);
    if (fitted.torque) notice.facts.emplace_back(*fitted.torque);
  }
  answer.findings.push_back(std::move(notice));
}

// By a number that cannot be meant, or by one of two that contradict each other, nothing is set or corrected.
std::string why_not_to_be_used(const JointAnswer& answer) {
  if (!answer.figure.set) return "there is no figure";
  if (!answer.figure.unit_fits.empty()) return "the figure cannot be meant as printed";
  for (const FigureAnswer& other : answer.beside)
    if (differ(answer.figure, other)) return "the sources in force differ";
  return {};
}

// On other surfaces the corrected torque, and none where it cannot be corrected.
std::optional<quantity::Torque> torque_to_set(const JointAnswer& answer) {
  if (!answer.not_to_be_used_because.empty()) return std::nullopt;
  if (answer.as_fitted && answer.as_fitted->differs) return answer.as_fitted->torque;
  return answer.figure.set;
}

WrenchAnswer wrench_answer(const JointAnswer& answer, const WrenchRecord& record, std::chrono::year_month_day today) {
  WrenchAnswer wrench{record.slug, registered_wrench(record), torque_to_set(answer), {}};
  if (const auto task = task_of(answer)) wrench.setting = tightening::set_wrench(wrench.wrench, *task, today);
  return wrench;
}

void add_wrench(JointAnswer& answer, const JointRequest& request) {
  answer.wrench = wrench_answer(answer, *request.wrench, request.today);
  const Findings& found = answer.wrench->setting.findings;
  answer.findings.insert(answer.findings.end(), found.begin(), found.end());
}

} // namespace

std::optional<tightening::WrenchTask> task_of(const JointAnswer& answer) {
  const auto torque = torque_to_set(answer);
  if (!torque) return std::nullopt;
  const bool limits_hold = !answer.as_fitted && answer.figure.set == answer.figure.torque;
  return tightening::WrenchTask{*torque, limits_hold ? answer.figure.low : std::nullopt,
                                limits_hold ? answer.figure.high : std::nullopt, answer.tighten};
}

std::optional<quantity::Torque> torque_on_crank(const JointAnswer& answer) {
  return answer.as_fitted && answer.as_fitted->torque ? answer.as_fitted->torque : answer.figure.set;
}

Result<JointAnswer> answer_for(const Catalogue& catalogue, const JointRecord& joint, const JointRequest& request) {
  auto resolved = resolve(catalogue, question_of(joint, joint.figure));
  if (!resolved) return Refusal(resolved.error());
  auto around = surroundings_of(catalogue, joint, *resolved);
  if (!around) return Refusal(around.error());
  std::optional<tightening::WrenchAccuracy> accuracy;
  if (request.wrench) accuracy = registered_wrench(*request.wrench).accuracy;

  JointAnswer answer;
  answer.joint = joint;
  answer.thread = resolved->thread;
  answer.crank = crank_of(joint.machine);
  answer.tighten = thread::turn_to_tighten(resolved->asked.thread.hand);
  answer.undo = thread::turn_to_undo(resolved->asked.thread.hand);
  answer.locks = resolved->asked.locks;
  answer.lock_advice = lock_advice(catalogue, answer.locks, joint.neighbours, joint.figure.surfaces);
  answer.around = std::move(*around);
  auto figure = answer_figure(catalogue, joint.figure, *resolved, accuracy);
  if (!figure) return Refusal(figure.error());
  answer.figure = std::move(*figure);
  const auto stack = stack_of_joint(catalogue, joint, question_of(joint, joint.figure), resolved->asked);
  add_turn(answer.figure, stack);
  answer.order = order_of_joint(joint, joint.figure);
  answer.slot = slot_hint(stack, answer.locks);
  if (answer.figure.torque && resolved->asked.running_torque && !joint.figure.running_torque_rule)
    answer.running =
        locking::add_running(*answer.figure.torque, *resolved->asked.running_torque, running_rules(catalogue));
  answer.findings = findings_of(answer.figure, resolved->asked, answer.around);
  Findings of_others;
  for (const FigureRecord& record : joint.beside) {
    const auto other = resolve(catalogue, question_of(joint, record));
    if (!other) return Refusal(other.error());
    auto beside = answer_figure(catalogue, record, *other, accuracy);
    if (!beside) return Refusal(beside.error());
    add_turn(*beside, stack);
    const Findings found = findings_of(*beside, other->asked, answer.around);
    of_others.insert(of_others.end(), found.begin(), found.end());
    answer.beside.push_back(std::move(*beside));
  }
  answer.around_working = joint::working_around(answer.around, answer.figure.clamp ? &*answer.figure.clamp : nullptr);
  answer.not_to_be_used_because = why_not_to_be_used(answer);
  if (request.as_fitted) {
    auto fitted =
        as_fitted(catalogue, joint, answer.figure, *request.as_fitted, accuracy, answer.not_to_be_used_because);
    if (!fitted) return Refusal(fitted.error());
    answer.as_fitted = std::move(*fitted);
    judge_as_fitted(answer);
  }
  for (const Finding& finding : of_others)
    if (!has(answer.findings, finding.code)) answer.findings.push_back(finding);
  if (!has(answer.findings, Code::maker_first)) answer.findings.push_back({Code::maker_first, Severity::note, {}});
  add_conflict(answer);
  add_stop(catalogue, answer);
  add_place(answer);
  if (request.wrench) add_wrench(answer, request);
  if (request.wrenches) {
    answer.wrenches.emplace();
    for (const WrenchRecord& record : *request.wrenches)
      answer.wrenches->push_back(wrench_answer(answer, record, request.today));
  }
  finding::put_in_order(answer.findings);
  return answer;
}

} // namespace clampwright::specdb
