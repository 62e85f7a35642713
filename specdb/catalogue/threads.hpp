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
  std::optional<int> choice; // ISO 261: first to third choice; metric only
};

// The thread that a text names: read as a designation, then looked up, because only listed pairs of diameter and pitch
// are threads that can be bought. Fails with not-understood for text that is no designation, no-such for a pair that is
// not listed, naming the ones that are.
[[nodiscard]] Result<ThreadEntry> find_thread(const Catalogue& catalogue, std::string_view text);

// The same, but a pair of diameter and pitch that is not listed passes as well: a metric one, or an inch one without a
// series, which is taken for Unified. It has no limits and no printed area, and its source is the standard of its form
// alone. Fails with out-of-range for a pitch that no thread of that diameter can have, as find_thread does for the
// rest.
[[nodiscard]] Result<ThreadEntry> find_thread_of_any_pitch(const Catalogue& catalogue, std::string_view text);

// Every listed thread, right-hand, with the limits of its usual class where it has any.
[[nodiscard]] std::vector<ThreadEntry> all_threads(const Catalogue& catalogue);
// Every listed thread of a form, by rising diameter, the coarser pitch first.
[[nodiscard]] std::vector<thread::Thread> threads_of(const Catalogue& catalogue, thread::Form form);

// The diameter that a text names by a thread or, for inch sizes too, by the size alone: "1/4" is that of "1/4-20 UNC".
// Fails as find_thread does; with no-such where no thread of that size is listed, or one of another form is named.
[[nodiscard]] Result<quantity::Length> find_size(const Catalogue& catalogue, std::string_view text, thread::Form form);

} // namespace clampwright::specdb
