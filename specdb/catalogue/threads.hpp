// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/thread/limits.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// A thread as the tables list it.
struct ThreadEntry {
  thread::Thread thread;
  std::optional<quantity::Area> stress_area_table; // as its standard prints it
  std::optional<thread::Limits> limits;            // 6g/6H or 2A/2B; none where another class was asked for
  std::vector<Source> sources;
};

// The thread that a text names: read as a designation, then looked up, because only listed pairs of diameter and pitch
// are threads that can be bought. Fails with not-understood for text that is no designation, no-such for a pair that is
// not listed, naming the ones that are.
[[nodiscard]] Result<ThreadEntry> find_thread(const Catalogue& catalogue, std::string_view text);

} // namespace clampwright::specdb
