// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/cure_question.hpp"
#include "specdb/question/lock_question.hpp"
#include "specdb/question/running_question.hpp"
#include "specdb/question/surfaces_question.hpp"

namespace clampwright::cli {

// The `result` of cure, lock (one, or all), running and surfaces (one change, or all states).
[[nodiscard]] Json cure_json(const locking::CureAnswer& answer);
[[nodiscard]] Json lock_json(const specdb::LockReply& reply);
[[nodiscard]] Json locks_json(const std::vector<friction::Lock>& locks);
[[nodiscard]] Json running_json(const specdb::RunningReply& reply);
[[nodiscard]] Json surfaces_json(const specdb::SurfacesReply& reply);
[[nodiscard]] Json all_surfaces_json(const std::vector<friction::Surfaces>& surfaces);

// Published factors, each with its torque.
[[nodiscard]] Json published_json(const std::vector<specdb::RivalReduction>& rivals);

} // namespace clampwright::cli
