// SPDX-License-Identifier: GPL-3.0-or-later
//
// The blanks by which a fastener is described, alike in every sentence that asks about one.
#pragma once

#include <vector>

#include "gui/sentences/sentence.hpp"
#include "specdb/question/case_question.hpp"

namespace clampwright::desk {

// THREAD, --class and --surfaces come first; what else may be known of a fastener stands behind them.
inline constexpr int k_case_blanks_in_text = 3;
[[nodiscard]] std::vector<Blank> case_blanks();

// The question that they say; thread and locks included.
[[nodiscard]] specdb::CaseQuestion case_question(const Words& words);

} // namespace clampwright::desk
