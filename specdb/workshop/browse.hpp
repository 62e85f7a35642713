// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a workshop holds, line by line, for whoever would rather look than type.
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
  int joints = 0;
};

// Every machine, in the order in which they were entered.
[[nodiscard]] std::vector<MachineLine> machine_lines(const Workshop& workshop);

// The joints of the machine of that slug, in the order in which they were entered; none where there is no such machine.
[[nodiscard]] std::vector<Hit> joints_of_machine(const Workshop& workshop, std::string_view slug);

} // namespace clampwright::specdb
