// SPDX-License-Identifier: GPL-3.0-or-later
//
// The blanks by which a fastener is described, alike in every sentence that asks about one.
#pragma once

#include <initializer_list>
#include <string_view>
#include <vector>

#include "gui/sentences/sentence.hpp"
#include "specdb/question/case_question.hpp"

namespace clampwright::desk {

// THREAD, --class and --surfaces come first; what else may be known of a fastener stands behind them.
[[nodiscard]] std::vector<Blank> case_blanks();
// The sentence's own between those three and the rest.
[[nodiscard]] std::vector<Blank> with_case(std::vector<Blank> own);
// One of them. Precondition: it is one.
[[nodiscard]] Blank case_blank(std::string_view option);
// Those that are not listed, in their order.
[[nodiscard]] std::vector<Blank> case_blanks_but(std::initializer_list<std::string_view> options);

// The question that they say; thread and locks included.
[[nodiscard]] specdb::CaseQuestion case_question(const Words& words);

} // namespace clampwright::desk
