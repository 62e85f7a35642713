// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keeping the joints of a workshop. Every change is one transaction; a revision leaves its line in the log of the
// joint's record: what was, what is, and why. Nothing is taken away. What is written can be shown: a joint about which
// the tables know nothing to say is refused.
#pragma once

#include <chrono>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/figure_record.hpp"
#include "specdb/question/joint_record.hpp"
#include "specdb/question/kept_changes.hpp"

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// The joint as it now stands, and what was done.
struct KeptJoint {
  JointRecord joint;
  std::vector<std::string> changes; // "class: 8.8 -> 10.9", or "entered"
};

// Enters a new joint of that machine (by slug or name) with its first figure; where the page gives none, its torque is
// "none". Fails with no-such where there is no such machine or source, with cannot-create where a joint has that short
// name, and for its words as new_joint and new_figure do. A short name that was not said is made so that it is free.
[[nodiscard]] Result<KeptJoint> add_joint(const Catalogue& catalogue, const std::filesystem::path& file,
                                          std::string_view machine, const JointWords& words, const FigureWords& figure,
                                          std::chrono::year_month_day today);

// Fails with no-such where there is no joint of that slug, with usage where nothing would change or no reason is given,
// with busy where it was revised since the caller looked, and for its words as with_words does.
[[nodiscard]] Result<KeptJoint> revise_joint(const Catalogue& catalogue, const std::filesystem::path& file,
                                             std::string_view slug, const JointWords& words, const Revision& revision,
                                             std::chrono::year_month_day today);

// For the registers: the joint of that slug inside a change; fails with no-such.
[[nodiscard]] Result<JointRecord> joint_to_change(const SQLite::Database& database, std::string_view slug);

// For the registers: whether the joint can be shown, with all its figures. Fails as answer_for does.
[[nodiscard]] Result<void> check_whole(const Catalogue& catalogue, const JointRecord& joint);

} // namespace clampwright::specdb
