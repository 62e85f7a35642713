// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/wrench_question.hpp"

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/question/wrench_words.hpp"
#include "specdb/question/wrench_working.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/wrenches.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using finding::Severity;
using quantity::Torque;
using tightening::Influence;
using tightening::Spread;

constexpr const char* k_example =
    "clampwright wrench set --torque 25Nm --arm 300mm --adaptor 50mm --adaptor-angle 45deg";
constexpr const char* k_unnamed = "this wrench";

Refusal missing(std::string what, std::string hint, std::string option) {
  return refuse(Trouble::usage, "missing", std::move(what), {}, std::move(hint), std::move(option));
}

Refusal surplus(std::string what, std::string_view input, std::string hint, std::string option) {
  return refuse(Trouble::usage, "surplus", std::move(what), input, std::move(hint), std::move(option));
}

Result<quantity::Reading> read_above_zero(const std::string& text, const char* option) {
  const auto reading = quantity::read_quantity(text, quantity::Kind::torque);
  if (!reading) return in_field(reading.error(), option);
  if (!(reading->value > 0))
    return not_understood("out-of-range", "a torque of nothing was understood", text,
                          fmt::format("write a torque above zero, like {} 25Nm", option), option);
  return *reading;
}

// What is wanted at the fastener, and the unit in which it was said.
struct Wanted {
  tightening::WrenchTask task;
  const quantity::Unit* unit = nullptr;
  bool mass_as_force = false;
};

Result<void> add_limits(const WrenchSetQuestion& q, Wanted& wanted) {
  Torque torque = wanted.task.torque;
  if (q.tolerance) {
    if (q.low || q.high)
      return surplus("--tolerance is given beside --low or --high", *q.tolerance,
                     "give the limits in one way: --tolerance 10%, or --low 22Nm --high 28Nm", "--tolerance");
    const auto share = read_accuracy(*q.tolerance);
    if (!share) return in_field(share.error(), "--tolerance");
    wanted.task.low = torque * (1.0 - *share);
    wanted.task.high = torque * (1.0 + *share);
  }
  if (q.low) {
    const auto low = read_above_zero(*q.low, "--low");
    if (!low) return Refusal(low.error());
    wanted.task.low = quantity::newton_metres(low->si());
  }
  if (q.high) {
    const auto high = read_above_zero(*q.high, "--high");
    if (!high) return Refusal(high.error());
    wanted.task.high = quantity::newton_metres(high->si());
  }
  const auto outside = [&](const std::string& text, const char* option, const char* side) {
    return not_understood("out-of-range", fmt::format("the torque lies {} that", side), text,
                          "give limits on both sides of the torque: --torque 25Nm --low 22Nm --high 28Nm", option);
  };
  if (q.low && *wanted.task.low > torque) return outside(*q.low, "--low", "below");
  if (q.high && *wanted.task.high < torque) return outside(*q.high, "--high", "above");
  return {};
}

Result<Wanted> wanted_of(const WrenchSetQuestion& q) {
  if (!q.torque)
    return missing("the torque that is to reach the joint is missing",
                   fmt::format("write {}, or name a joint of the workshop with --joint", k_example), "--torque");
  const auto torque = read_above_zero(*q.torque, "--torque");
  if (!torque) return Refusal(torque.error());
  Wanted wanted{{quantity::newton_metres(torque->si()), {}, {}, {}}, torque->unit, torque->mass_as_force};
  if (auto limits = add_limits(q, wanted); !limits) return Refusal(limits.error());
  if (q.turn) {
    const auto turn = thread::read_turn(*q.turn);
    if (!turn) return in_field(turn.error(), "--turn");
    wanted.task.turn = *turn;
  }
  return wanted;
}

Result<Wanted> wanted_of(const WrenchSetQuestion& q, const JointAnswer& joint) {
  const std::pair<const char*, const std::optional<std::string>&> own[] = {
      {"--torque", q.torque}, {"--tolerance", q.tolerance}, {"--low", q.low}, {"--high", q.high}, {"--turn", q.turn}};
  for (const auto& [option, text] : own)
    if (text)
      return surplus(fmt::format("{} is given beside --joint, whose record says it", option), *text,
                     fmt::format("leave one away; clampwright show {} shows the record", joint.joint.slug), option);
  const auto task = task_of(joint);
  if (!task)
    return refuse(Trouble::no_such, "no-torque",
                  fmt::format("no wrench is set for {}: {}", joint.joint.slug, joint.not_to_be_used_because),
                  joint.figure.figure.printed,
                  fmt::format("see clampwright show {}; where you know the torque that holds, give it with --torque in "
                              "the place of --joint",
                              joint.joint.slug),
                  "--joint");
  return Wanted{*task, &quantity::unit_named(joint.figure.figure.unit.value_or("N.m")), false};
}

Result<tightening::Levers> levers_of(const WrenchSetQuestion& q, const std::optional<quantity::Length>& recorded,
                                     bool is_registered) {
  if (q.adaptor_angle && !q.adaptor)
    return missing("the length of the adaptor is missing; only its angle is given",
                   "measure from the middle of the drive to the middle of the fastener: --adaptor 50mm", "--adaptor");
  std::optional<quantity::Length> arm = recorded;
  if (q.arm) {
    const auto length = quantity::read_length(*q.arm);
    if (!length) return in_field(length.error(), "--arm");
    arm = *length;
  }
  if (!arm && (q.adaptor || !is_registered))
    return missing(is_registered ? "the arm of the wrench is missing, and its record has none"
                                 : "the arm of the wrench is missing",
                   "measure from the middle of the grip to the middle of the drive: --arm 300mm", "--arm");
  // Of a registered wrench without an adaptor no arm is needed; any would do.
  tightening::Levers levers{arm.value_or(quantity::metres(1.0)), {}};
  if (!q.adaptor) return levers;
  const auto length = quantity::read_length(*q.adaptor);
  if (!length) {
    Problem problem = length.error();
    if (problem.code == "out-of-range") problem.hint = "write its length, like --adaptor 50mm, or leave it away";
    return in_field(std::move(problem), "--adaptor");
  }
  levers.adaptor = tightening::Adaptor{*length, quantity::radians(0.0)};
  if (q.adaptor_angle) {
    const auto angle = quantity::read_quantity(*q.adaptor_angle, quantity::Kind::angle);
    if (!angle) return in_field(angle.error(), "--adaptor-angle");
    levers.adaptor->angle = quantity::radians(angle->si());
  }
  if (auto sound = tightening::check_levers(levers); !sound) {
    Problem problem = sound.error();
    problem.input = text::quotable(problem.field == "--adaptor-angle" ? *q.adaptor_angle : *q.adaptor);
    return Refusal(std::move(problem));
  }
  return levers;
}

Result<tightening::WrenchAccuracy> accuracy_of(const WrenchSetQuestion& q, const tightening::Wrench& wrench,
                                               Torque wanted) {
  if (q.accuracy) {
    const auto share = read_accuracy(*q.accuracy);
    if (!share) return in_field(share.error(), "--wrench-accuracy");
    return tightening::WrenchAccuracy{*share, "as given with --wrench-accuracy"};
  }
  if (wrench.high < tightening::k_no_end)
    return tightening::tool_accuracy(quantity::newton_metres(quantity::to_si(wrench.high, *wrench.unit)));
  return tightening::standard_accuracy(wanted);
}

// A wrench that is in no register: what is said of its scale, and nothing about its calibration.
Result<tightening::Wrench> unregistered(const WrenchSetQuestion& q, const Wanted& wanted,
                                        const quantity::Unit* preferred) {
  const bool prefers_torque = preferred != nullptr && preferred->kind == quantity::Kind::torque;
  tightening::Wrench wrench{k_unnamed,
                            0,
                            tightening::k_no_end,
                            prefers_torque ? preferred : wanted.unit,
                            {},
                            tightening::standard_accuracy(wanted.task.torque),
                            true,
                            true};
  if (q.range) {
    const auto range = read_scale_range(*q.range);
    if (!range) return in_field(range.error(), "--range");
    wrench.low = range->low;
    wrench.high = range->high;
    wrench.unit = range->unit;
  } else if (q.step) {
    const auto step = read_above_zero(*q.step, "--step");
    if (!step) return Refusal(step.error());
    wrench.unit = step->unit;
  }
  if (q.step) {
    const auto step = read_scale_step(*q.step, *wrench.unit);
    if (!step) return in_field(step.error(), "--step");
    wrench.step = *step;
  }
  return wrench;
}

Result<tightening::Wrench> wrench_of(const WrenchSetQuestion& q, const WrenchSetContext& context,
                                     const Wanted& wanted) {
  if (!context.wrench) {
    auto wrench = unregistered(q, wanted, context.unit);
    if (!wrench) return wrench;
    auto accuracy = accuracy_of(q, *wrench, wanted.task.torque);
    if (!accuracy) return Refusal(accuracy.error());
    wrench->accuracy = std::move(*accuracy);
    return wrench;
  }
  for (const auto& [option, text] : {std::pair("--range", q.range), std::pair("--step", q.step)})
    if (text)
      return surplus(fmt::format("{} is given beside --wrench, whose record says it", option), *text,
                     "leave one away; clampwright wrench list shows the records", option);
  auto wrench = registered_wrench(*context.wrench);
  if (q.accuracy) {
    auto accuracy = accuracy_of(q, wrench, wanted.task.torque);
    if (!accuracy) return Refusal(accuracy.error());
    wrench.accuracy = std::move(*accuracy);
  }
  return wrench;
}

// A share as given, or the one that is assumed and says so.
Result<Influence> influence_of(const char* name, const std::optional<std::string>& text, const char* option,
                               double assumed, Spread spread, const char* measured) {
  if (!text) return Influence{name, assumed, spread, fmt::format("{}; assumed, {} says another", measured, option)};
  const auto share = quantity::read_share(*text);
  if (!share) return in_field(share.error(), option);
  if (*share >= 1)
    return not_understood("out-of-range",
                          fmt::format("{} was understood; it must be under one", quantity::write_share(*share)), *text,
                          fmt::format("write a share, like {} 10%", option), option);
  return Influence{name, *share, spread, fmt::format("as given with {}", option)};
}

Result<tightening::Budget> budget_for(const WrenchSetQuestion& q, const tightening::Wrench& wrench,
                                      const tightening::Levers& levers) {
  std::vector<Influence> of_torque{tightening::wrench_influence(wrench.accuracy)};
  if (levers.adaptor) {
    auto lever = influence_of("adaptor", q.lever_share, "--lever-error", tightening::k_assumed_lever, Spread::limits,
                              "of the levers and the hand on them");
    if (!lever) return Refusal(lever.error());
    of_torque.push_back(std::move(*lever));
  } else if (q.lever_share) {
    return missing("--lever-error is given without an adaptor", "give --adaptor too, or leave it away", "--adaptor");
  }
  auto hand = influence_of("operator", q.operator_share, "--operator", tightening::k_assumed_operator, Spread::standard,
                           "of the pull");
  if (!hand) return Refusal(hand.error());
  of_torque.push_back(std::move(*hand));
  auto friction = influence_of("friction", q.nut_factor_spread, "--nut-factor-spread", tightening::k_assumed_nut_factor,
                               Spread::standard, "nut factor of one lot, lubricated in one way");
  if (!friction) return Refusal(friction.error());
  return tightening::budget_of(std::move(of_torque), std::move(*friction));
}

void add_findings(WrenchSetReply& reply, const WrenchSetContext& context, bool mass_as_force) {
  finding::Findings& findings = reply.findings;
  findings = reply.set.on_scale.findings;
  if (!reply.is_registered && reply.task.turn == thread::Turn::anticlockwise)
    findings.push_back({Code::wrench_direction, Severity::mind, {reply.wrench.name, std::string("anticlockwise")}});
  if (mass_as_force) findings.push_back({Code::mass_as_force, Severity::note, {}});
  if (context.joint != nullptr)
    findings.insert(findings.end(), context.joint->findings.begin(), context.joint->findings.end());
  else
    findings.push_back({Code::maker_first, Severity::note, {}});
  finding::put_in_order(findings);
}

} // namespace

Result<WrenchSetReply> answer_wrench_set(const WrenchSetQuestion& q, const WrenchSetContext& context) {
  const auto wanted = context.joint != nullptr ? wanted_of(q, *context.joint) : wanted_of(q);
  if (!wanted) return Refusal(wanted.error());
  auto wrench = wrench_of(q, context, *wanted);
  if (!wrench) return Refusal(wrench.error());
  const auto levers = levers_of(q, wrench->arm, context.wrench.has_value());
  if (!levers) return Refusal(levers.error());
  auto budget = budget_for(q, *wrench, *levers);
  if (!budget) return Refusal(budget.error());
  const bool arm_on_record = wrench->arm.has_value();
  WrenchSetReply reply{wanted->task,
                       std::move(*wrench),
                       context.wrench.has_value(),
                       q.arm || arm_on_record,
                       {},
                       std::move(*budget),
                       false,
                       {},
                       {},
                       {}};
  reply.set = tightening::set_wrench(reply.wrench, reply.task, *levers, context.today);
  reply.suits = reply.set.on_scale.suitable;
  add_findings(reply, context, wanted->mass_as_force);
  reply.working = working_of(reply);
  reply.sources = sources_of(reply, context.joint);
  return reply;
}

Result<WrenchSetTold> tell_wrench_set(const Catalogue& catalogue, const Workshop* workshop, const WrenchSetNames& names,
                                      const WrenchSetQuestion& question, const quantity::Unit* unit,
                                      std::chrono::year_month_day today) {
  WrenchSetContext context{{}, nullptr, unit, today};
  std::optional<JointAnswer> joint;
  if (names.wrench) {
    auto wrench = find_wrench(*workshop, *names.wrench);
    if (!wrench) return in_field(wrench.error(), "--wrench");
    context.wrench = std::move(*wrench);
  }
  if (names.joint) {
    const auto record = find_joint(*workshop, *names.joint);
    if (!record) return in_field(record.error(), "--joint");
    auto answer = answer_for(catalogue, *record);
    if (!answer) return Refusal(answer.error());
    joint = std::move(*answer);
    context.joint = &*joint;
  }
  auto reply = answer_wrench_set(question, context);
  if (!reply) return Refusal(reply.error());
  const bool invented = (names.wrench || names.joint) && workshop->is_invented();
  return WrenchSetTold{std::move(*reply), std::move(joint), invented};
}

} // namespace clampwright::specdb
