// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <string>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/question/wrench_register.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// The record of a new wrench. Fails with usage where its range or direction is missing, with not-understood where a
// text is not.
[[nodiscard]] Result<WrenchRecord> new_wrench(const std::string& slug, const WrenchWords& words,
                                              std::chrono::year_month_day today);

// The record with what the words say of it put in.
[[nodiscard]] Result<WrenchRecord> with_words(WrenchRecord record, const WrenchWords& words);

// What differs, field by field: "step: 0.5 -> 1".
[[nodiscard]] std::vector<std::string> differences(const WrenchRecord& was, const WrenchRecord& is);

// A reason or a note as it may be kept: one line, not empty. `option` names where it came from.
[[nodiscard]] Result<std::string> kept_text(const std::string& text, const char* option);

} // namespace clampwright::specdb
