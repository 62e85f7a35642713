// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/workup_question.hpp"

namespace clampwright::cli {

// The result of `workup`.
[[nodiscard]] Json workup_json(const specdb::WorkupReply& reply);

} // namespace clampwright::cli
