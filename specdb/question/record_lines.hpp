// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a record has several of, as one line of text: parted by commas, what belongs to each in brackets behind it. Such
// a line is read again as it was written.
#pragma once

#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/question/figure_record.hpp"
#include "specdb/question/joint_record.hpp"

namespace clampwright::specdb {

// "compound-medium (on clean thread), split-pin". Nothing for none.
[[nodiscard]] MaybeText locks_line(const std::vector<LockRecord>& locks);
[[nodiscard]] Result<std::vector<LockRecord>> read_locks_line(std::string_view line);

// "crank oil seal (bears 120 degC), exhaust (runs at 300 degC)".
[[nodiscard]] MaybeText neighbours_line(const std::vector<NeighbourWords>& neighbours);
[[nodiscard]] Result<std::vector<NeighbourWords>> read_neighbours_line(std::string_view line);

// "after the first heat (first heat), every ten days (10 d)": hours end in h, days in d, all else is an event.
[[nodiscard]] MaybeText rechecks_line(const std::vector<RecheckWords>& rechecks);
[[nodiscard]] Result<std::vector<RecheckWords>> read_rechecks_line(std::string_view line);

} // namespace clampwright::specdb
