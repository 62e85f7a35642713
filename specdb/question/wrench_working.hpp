// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/source/source.hpp"
#include "core/working/step.hpp"
#include "specdb/question/wrench_question.hpp"

namespace clampwright::specdb {

// How the setting and the uncertainty come about, to be done again on a pocket calculator.
[[nodiscard]] Working working_of(const WrenchSetReply& reply);

// What the setting rests on: the joint's own figure first, where there is one.
[[nodiscard]] std::vector<Source> sources_of(const WrenchSetReply& reply, const JointAnswer* joint);

// The rule behind the published spreads of the clamp load.
[[nodiscard]] Source published_spread_source();

} // namespace clampwright::specdb
