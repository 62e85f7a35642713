// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/friction/friction.hpp"
#include "core/locking/cure.hpp"
#include "core/locking/running.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/catalogue/locking.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::specdb {

// What a person asks about a way of locking, as text.
struct LockQuestion {
  std::string lock;
  std::vector<std::string> with;          // other locks in the same joint
  std::optional<std::string> thread;      // for how much compound, and for running torques
  std::optional<std::string> temperature; // in service
  std::vector<std::string> surfaces;      // what a compound is on
};

// Without the locks and the surfaces, which may be several.
inline constexpr std::array k_lock_fields{
    TextField<LockQuestion>{"--thread", &LockQuestion::thread},
    TextField<LockQuestion>{"--temperature", &LockQuestion::temperature},
};

struct LockTogether {
  friction::Lock other;
  LockPair pair;
};

// May its seating be checked by turning?
enum class CheckByTurning { yes, with_lock_off, no };

struct LockReply {
  friction::Lock lock;
  std::vector<LockRule> rules;
  std::vector<LockTogether> together; // with those asked about, else with every lock
  std::optional<ThreadEntry> thread;
  std::optional<int> strips; // of compound along the thread
  std::vector<locking::RunningLimit> running;
  std::optional<quantity::Temperature> temperature;
  std::optional<bool> bears_temperature; // empty where not asked or no limit is known
  std::vector<locking::CureSurface> surfaces;
  Together verdict = Together::ok; // the worst of what was asked
  finding::Findings findings;
  std::vector<Source> sources;
};

[[nodiscard]] CheckByTurning check_by_turning(const friction::Lock& lock);

// Strips of compound along the thread: one up to 1 in of diameter, two up to 2 in, three above (TM 10-3930-643-20, para
// 2-12).
[[nodiscard]] int strips_of_compound(quantity::Length diameter);

// Fails with no-such and not-understood for the texts, with usage for "none", which is no lock.
[[nodiscard]] Result<LockReply> answer_lock(const Catalogue& catalogue, const LockQuestion& question);

// All locks, in the order of the table.
[[nodiscard]] std::vector<friction::Lock> all_locks(const Catalogue& catalogue);

[[nodiscard]] report::Document locks_document(const std::vector<friction::Lock>& locks);
[[nodiscard]] report::Document lock_document(const LockReply& reply, bool pairs_asked);

} // namespace clampwright::specdb
