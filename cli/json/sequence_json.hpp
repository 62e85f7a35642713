// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/sequence_question.hpp"

namespace clampwright::cli {

[[nodiscard]] Json sequence_json(const specdb::SequenceReply& reply);

} // namespace clampwright::cli
