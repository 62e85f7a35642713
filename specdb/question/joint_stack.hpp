// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the record of a joint says of its order, and of the stack that its bolts clamp.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/joint/resilience.hpp"
#include "core/quantity/band.hpp"
#include "core/tightening/sequence.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

struct JointOrder {
  tightening::Pattern pattern = tightening::Pattern::circle;
  std::vector<int> order;
};

// The computed order, where the record says how the bolts lie and the page does not print one itself.
[[nodiscard]] std::optional<JointOrder> order_of_joint(const JointRecord& joint, const FigureRecord& figure);

// Does the page print the places themselves ("1, 3, 2, 4") and not only words?
[[nodiscard]] bool prints_an_order(std::string_view words, int bolts);

// The stack as recorded: the grip, the bolt's length, and what the turned part presses on, else what it screws into.
// Fails as stack_of does, naming what the record lacks.
[[nodiscard]] Result<joint::Stack> stack_of_joint(const Catalogue& catalogue, const JointRecord& joint,
                                                  const CaseQuestion& fastener, const tightening::Case& asked);

// For a split pin: how far it is to the next slot of a nut with six of them, and what that adds.
struct SlotHint {
  quantity::Angle angle;
  std::optional<quantity::Band<quantity::Force>> gain;
  std::string unknown_because; // empty where the gain is known
};

[[nodiscard]] std::optional<SlotHint> slot_hint(const Result<joint::Stack>& stack,
                                                const std::vector<friction::Lock>& locks);

} // namespace clampwright::specdb
