// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the tables say about locks: how they are fitted and undone, which go together, how compound cures, and what a
// used locking nut must still drag.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/friction/friction.hpp"
#include "core/locking/cure.hpp"
#include "core/locking/running.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// A rule for one lock. Topics, in this order: about, fit, never, heat, undo, check, renew, bears.
struct LockRule {
  std::string topic;
  std::string rule;
  std::string note;
  Source source;
};

// The rules of a lock, those of its kind (any compound, any locking nut) among them, by topic; the lock's own first.
[[nodiscard]] std::vector<LockRule> lock_rules(const Catalogue& catalogue, const friction::Lock& lock);

enum class Together { ok, mind, no };

struct LockPair {
  Together verdict = Together::ok;
  std::string why;
  std::string note;
  Source source;
};

// May the two stand in one joint? In either order. Nothing where one of them is no lock at all.
[[nodiscard]] std::optional<LockPair> lock_pair(const Catalogue& catalogue, const friction::Lock& one,
                                                const friction::Lock& other);

[[nodiscard]] std::vector<locking::CureTime> cure_times(const Catalogue& catalogue);
// Fails with no-such and the list.
[[nodiscard]] Result<locking::CureSurface> find_cure_surface(const Catalogue& catalogue, std::string_view name);
[[nodiscard]] std::vector<std::string> cure_surface_names(const Catalogue& catalogue);

// Every line for that thread, and those that name its size alone.
[[nodiscard]] std::vector<locking::RunningLimit> running_limits(const Catalogue& catalogue,
                                                                const thread::Thread& thread);
[[nodiscard]] std::vector<locking::RunningRule> running_rules(const Catalogue& catalogue);

} // namespace clampwright::specdb
