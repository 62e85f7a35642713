// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a workshop holds, as lists to leaf through: what is shown of each, and nothing more is read.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "specdb/workshop/search.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

struct MachineLine {
  std::string slug;
  std::string name;
  std::string kind;
  long long joints = 0; // how many it has
};

// All machines, in the order in which they were entered.
[[nodiscard]] std::vector<MachineLine> machines_with_counts(const Workshop& workshop);

// The joints of the machine of that slug, in any case: assembly by assembly, each in the order in which they were
// entered. None where there is no such machine.
[[nodiscard]] std::vector<Hit> joints_of_machine(const Workshop& workshop, std::string_view machine);

// For the .cpp files of this folder: the joints of those ids, in that order. Without translation of errors.
[[nodiscard]] std::vector<Hit> hits_of(const Workshop& workshop, const std::vector<long long>& joints);

} // namespace clampwright::specdb
