// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <span>
#include <string>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/question/word_field.hpp"
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

// The fields of the words, all but its short name and what is not revised, in the order of the record.
[[nodiscard]] std::span<const WordField<WrenchWords>> wrench_fields();

// The words that enter the record again as it is: with_words changes nothing by them. What is not recorded is not said.
[[nodiscard]] WrenchWords words_of(const WrenchRecord& record);

} // namespace clampwright::specdb
