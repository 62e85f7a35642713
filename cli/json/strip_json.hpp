// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/strip_question.hpp"

namespace clampwright::cli {

// The result of `strip`.
[[nodiscard]] Json strip_json(const specdb::StripReply& reply);

} // namespace clampwright::cli
