// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/workshop/records.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// The joint of that slug ("pump/clutch-hub"), in any case, with what happened to its record and that of its
// machine; nothing if there is none.
[[nodiscard]] std::optional<JointRecord> joint_of_slug(const Workshop& workshop, std::string_view slug);

// The same inside a change: what is read is what the change finds. Without translation of errors.
[[nodiscard]] std::optional<JointRecord> joint_of_slug(const SQLite::Database& database, std::string_view slug);

// The slugs of all joints, in the order in which they were entered.
[[nodiscard]] std::vector<std::string> joint_slugs(const Workshop& workshop);

// The joint that a person names: its slug, or words that fit one joint only. Fails with no-such and the candidates.
[[nodiscard]] Result<JointRecord> find_joint(const Workshop& workshop, std::string_view words);

} // namespace clampwright::specdb
