// SPDX-License-Identifier: GPL-3.0-or-later
//
// The blanks by which the stack that a bolt clamps is described.
#pragma once

#include <vector>

#include "gui/sentences/sentence.hpp"
#include "specdb/question/stack_question.hpp"

namespace clampwright::desk {

// --grip and --part-material come first; what else may be known of a stack stands behind them.
[[nodiscard]] std::vector<Blank> stack_blanks();

[[nodiscard]] specdb::StackQuestion stack_question(const Words& words);

} // namespace clampwright::desk
