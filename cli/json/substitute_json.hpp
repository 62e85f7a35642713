// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/substitute_question.hpp"

namespace clampwright::cli {

[[nodiscard]] Json substitute_json(const specdb::SubstituteAnswer& answer);

} // namespace clampwright::cli
