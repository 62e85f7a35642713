// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/joint_stack.hpp"

#include <algorithm>

#include "core/joint/slot.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/question/stack_question.hpp"

namespace clampwright::specdb {

namespace {

constexpr int k_usual_slots = 6;

} // namespace

bool prints_an_order(std::string_view words, int bolts) {
  int numbers = 0;
  bool in_number = false;
  for (const char c : words) {
    if (text::is_digit(c) && !in_number) ++numbers;
    in_number = text::is_digit(c);
  }
  return numbers >= std::min(bolts, 3);
}

std::optional<JointOrder> order_of_joint(const JointRecord& joint, const FigureRecord& figure) {
  if (!joint.pattern || prints_an_order(figure.sequence.value_or(""), joint.quantity)) return std::nullopt;
  const auto pattern = tightening::read_pattern(*joint.pattern);
  if (!pattern || !tightening::check_bolts(*pattern, joint.quantity)) return std::nullopt;
  return JointOrder{*pattern, tightening::order_of(*pattern, joint.quantity)};
}

Result<joint::Stack> stack_of_joint(const Catalogue& catalogue, const JointRecord& joint, const CaseQuestion& fastener,
                                    const tightening::Case& asked) {
  StackQuestion q;
  q.grip = joint.grip;
  q.bolt_length = joint.bolt_length;
  q.part_material = joint.seat_material ? joint.seat_material : joint.mating_material;
  q.into_part = joint.mating_material.has_value() && !joint.nut_class;
  auto stack = stack_of(catalogue, q, fastener, asked);
  if (!stack && !joint.grip) // in the words of a record, not of options
    return refuse(Trouble::usage, "missing",
                  q.part_material ? "the record has no grip" : "the record has no grip and no material of the parts",
                  {}, "record what is clamped");
  if (!stack && !q.part_material)
    return refuse(Trouble::usage, "missing", "the record has no material of the parts", {}, "record what is clamped");
  return stack;
}

std::optional<SlotHint> slot_hint(const Result<joint::Stack>& stack, const std::vector<friction::Lock>& locks) {
  if (std::ranges::find(locks, "split-pin", &friction::Lock::name) == locks.end()) return std::nullopt;
  SlotHint hint{joint::slot_angle(k_usual_slots, 1), {}, {}};
  if (!stack) {
    hint.unknown_because = stack.error().message;
    return hint;
  }
  const auto both = joint::resilience_of(*stack).both();
  const auto load = [&](quantity::Resilience whole) { return joint::load_of_turn(hint.angle, stack->thread, whole); };
  hint.gain = quantity::Band<quantity::Force>{load(both.high), load(both.likely), load(both.low)};
  return hint;
}

} // namespace clampwright::specdb
