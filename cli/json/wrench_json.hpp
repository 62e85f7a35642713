// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/wrench_question.hpp"

namespace clampwright::cli {

// The `result` of wrench set.
[[nodiscard]] Json wrench_set_json(const specdb::WrenchSetReply& reply);

// A wrench and what a joint wants of it: `show`. `no_setting_because` is a reason of the joint's, or empty.
[[nodiscard]] Json wrench_for_joint_json(const specdb::WrenchAnswer& answer, const std::string& no_setting_because);

// The same with its short name and what speaks against it: an entry of `wrenches`.
[[nodiscard]] Json wrench_of_list_json(const specdb::WrenchAnswer& answer, const std::string& no_setting_because);

// A wrench of the register, with its log and whether it may be used today.
[[nodiscard]] Json wrench_record_json(const specdb::WrenchRecord& wrench, std::chrono::year_month_day today);

} // namespace clampwright::cli
