// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/sequence_question.hpp"

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "specdb/question/stack_question.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using finding::Severity;
using tightening::Pattern;
using tightening::Sequence;

constexpr const char* k_like = "write clampwright sequence --bolts 6 --pattern circle --torque 24Nm";

Result<int> bolts_of(const SequenceQuestion& q, const JointAnswer* joint) {
  if (q.bolts) {
    const auto bolts = quantity::read_count(*q.bolts, tightening::k_fewest_bolts, tightening::k_most_bolts);
    if (!bolts) return in_field(bolts.error(), "--bolts");
    if (joint != nullptr && joint->joint.quantity != *bolts)
      return refuse(Trouble::usage, "surplus",
                    fmt::format("{} has {} of them", joint->joint.slug, joint->joint.quantity), *q.bolts,
                    "leave out --bolts: the record of the joint has their number", "--bolts");
    return bolts;
  }
  if (joint != nullptr && joint->joint.quantity < tightening::k_fewest_bolts)
    return refuse(Trouble::usage, "surplus", fmt::format("{} is one alone: there is no order", joint->joint.slug), {},
                  "name a joint of several bolts", "--joint");
  if (joint != nullptr) return joint->joint.quantity;
  return refuse(Trouble::usage, "missing", "the number of bolts is missing", {}, k_like, "--bolts");
}

Result<Pattern> pattern_of(const SequenceQuestion& q, const JointAnswer* joint) {
  if (q.pattern) return tightening::read_pattern(*q.pattern);
  if (joint != nullptr && joint->joint.pattern) return tightening::read_pattern(*joint->joint.pattern);
  if (joint != nullptr)
    return refuse(Trouble::usage, "missing",
                  fmt::format("the record of {} does not say how its bolts lie", joint->joint.slug), {},
                  "add --pattern circle, row or rows", "--pattern");
  return Pattern::circle;
}

Result<void> check_undo(const SequenceQuestion& q) {
  if (!q.undo || !(q.passes || q.torque)) return {};
  return refuse(Trouble::usage, "surplus", "loosening has no torque to set", {},
                "leave out --passes and --torque, or --undo", q.passes ? "--passes" : "--torque");
}

// The passes of the page, word for word in its unit.
void take_page_passes(Sequence& sequence, const FigureAnswer& figure, const quantity::Unit& unit) {
  sequence.passes_because = "as the page prints them";
  for (const quantity::Torque& pass : figure.passes) {
    sequence.passes.push_back(pass / *figure.torque);
    sequence.marks.push_back(quantity::from_si(quantity::in_newton_metres(pass), unit));
  }
}

Result<void> add_passes(const SequenceQuestion& q, const JointAnswer* joint, SequenceReply& reply) {
  Sequence& sequence = reply.sequence;
  if (q.torque) {
    const auto torque = quantity::read_quantity(*q.torque, quantity::Kind::torque);
    if (!torque) return in_field(torque.error(), "--torque");
    if (!(torque->value > 0.0))
      return not_understood("out-of-range", "a torque of nothing was understood", *q.torque, "write it like 24Nm",
                            "--torque");
    sequence.torque = quantity::newton_metres(torque->si());
    sequence.unit = q.unit != nullptr ? q.unit : torque->unit;
    if (torque->mass_as_force) reply.findings.push_back({Code::mass_as_force, Severity::note, {}});
  } else if (joint != nullptr && joint->not_to_be_used_because.empty() && joint->figure.set) {
    sequence.torque = joint->figure.set;
    sequence.unit = q.unit != nullptr ? q.unit : &quantity::unit_named(*joint->figure.figure.unit);
  }
  if (q.passes) {
    const auto passes = tightening::read_passes(*q.passes);
    if (!passes) return Refusal(passes.error());
    sequence.passes = *passes;
    sequence.passes_because = "as given";
  } else if (!q.torque && sequence.torque && !joint->figure.passes.empty()) {
    take_page_passes(sequence, joint->figure, *sequence.unit);
    return {};
  } else {
    sequence.passes = tightening::usual_passes(sequence.torque);
    sequence.passes_because =
        sequence.passes.size() < 3
            ? fmt::format(
                  "two only: up to {} a quarter of it is hardly more than friction and a small wrench leave open "
                  "(our own rule)",
                  quantity::write(tightening::small_torque(), {}))
        : reply.page_words.empty()
            ? "three, common practice where the page gives none"
            : "three, common practice; where the words of the page (above) name another number, that one holds";
  }
  if (sequence.torque)
    sequence.marks = tightening::wrench_marks(
        sequence.passes, quantity::from_si(quantity::in_newton_metres(*sequence.torque), *sequence.unit));
  return {};
}

} // namespace

Result<SequenceReply> answer_sequence(const SequenceQuestion& q, const JointAnswer* joint) {
  if (const auto undo = check_undo(q); !undo) return Refusal(undo.error());
  const auto bolts = bolts_of(q, joint);
  if (!bolts) return Refusal(bolts.error());
  const auto pattern = pattern_of(q, joint);
  if (!pattern) return Refusal(pattern.error());
  if (const auto fits = tightening::check_bolts(*pattern, *bolts); !fits) return Refusal(fits.error());
  SequenceReply reply;
  reply.seen_from = "looking at the heads";
  Sequence& sequence = reply.sequence;
  sequence.pattern = *pattern;
  sequence.bolts = *bolts;
  sequence.undo = q.undo;
  sequence.order = tightening::order_of(*pattern, *bolts);
  if (joint != nullptr) {
    reply.heading = joint->joint.name;
    reply.seen_from = joint->joint.seen_from;
    reply.page_words = joint->figure.figure.sequence.value_or("");
    reply.findings = joint->findings;
    if (joint->figure.figure.angle_deg && !q.undo) sequence.angle = quantity::degrees(*joint->figure.figure.angle_deg);
  } else {
    reply.findings.push_back({Code::maker_first, Severity::note, {}});
  }
  if (q.undo) {
    sequence.order = tightening::undoing_order(std::move(sequence.order));
    return reply;
  }
  if (const auto passes = add_passes(q, joint, reply); !passes) return Refusal(passes.error());
  finding::put_in_order(reply.findings);
  return reply;
}

} // namespace clampwright::specdb
