// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/lock_question.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "specdb/catalogue/surfaces.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using finding::Severity;
using friction::LockFamily;

Result<friction::Lock> a_lock(const Catalogue& catalogue, const std::string& name, const char* field) {
  auto lock = find_lock(catalogue, name);
  if (!lock) return in_field(lock.error(), field);
  if (lock->family == LockFamily::none)
    return refuse(Trouble::usage, "no-lock", "that is no lock: the clamp load alone holds", name,
                  "clampwright lock lists the locks", field);
  return lock;
}

void add_source(std::vector<Source>& sources, const Source& source) {
  if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
}

// Each of two that are asked about together, the ones named with --with among themselves too.
Result<void> add_together(const Catalogue& catalogue, const LockQuestion& q, LockReply& reply) {
  std::vector<friction::Lock> others;
  for (const std::string& name : q.with) {
    auto other = a_lock(catalogue, name, "--with");
    if (!other) return Refusal(other.error());
    others.push_back(std::move(*other));
  }
  if (others.empty()) {
    for (const friction::Lock& other : all_locks(catalogue))
      if (other.name != reply.lock.name)
        if (auto pair = lock_pair(catalogue, reply.lock, other)) reply.together.push_back({other, std::move(*pair)});
    return {};
  }
  const auto hold = [&](const friction::Lock& one, const friction::Lock& other) {
    auto pair = lock_pair(catalogue, one, other);
    if (!pair) return;
    if (pair->verdict == Together::no)
      reply.findings.push_back({Code::lock_conflict, Severity::stop, {one.description, other.description, pair->why}});
    reply.verdict = std::max(reply.verdict, pair->verdict);
    add_source(reply.sources, pair->source);
    if (one.name == reply.lock.name) reply.together.push_back({other, std::move(*pair)});
  };
  for (const friction::Lock& other : others)
    hold(reply.lock, other);
  for (std::size_t i = 0; i < others.size(); ++i)
    for (std::size_t j = i + 1; j < others.size(); ++j)
      hold(others[i], others[j]);
  return {};
}

Result<void> add_thread(const Catalogue& catalogue, const LockQuestion& q, LockReply& reply) {
  if (!q.thread) return {};
  auto thread = find_thread(catalogue, *q.thread);
  if (!thread) return in_field(thread.error(), "--thread");
  if (reply.lock.family == LockFamily::compound) reply.strips = strips_of_compound(thread->thread.diameter);
  if (reply.lock.family == LockFamily::running_torque) {
    reply.running = running_limits(catalogue, thread->thread);
    for (const locking::RunningLimit& limit : reply.running)
      add_source(reply.sources, limit.source);
  }
  reply.thread = std::move(*thread);
  return {};
}

Result<void> add_temperature(const LockQuestion& q, LockReply& reply) {
  if (!q.temperature) return {};
  const auto read = quantity::read_quantity(*q.temperature, quantity::Kind::temperature);
  if (!read) return in_field(read.error(), "--temperature");
  reply.temperature = quantity::Temperature::from_value(read->si());
  if (!reply.lock.heat_limit) return {};
  reply.bears_temperature = *reply.temperature <= *reply.lock.heat_limit;
  if (*reply.bears_temperature) return {};
  reply.verdict = Together::no;
  reply.findings.push_back(
      {Code::heat_limit,
       Severity::stop,
       {std::string("joint"), *reply.temperature, reply.lock.description, *reply.lock.heat_limit}});
  return {};
}

Result<void> add_surfaces(const Catalogue& catalogue, const LockQuestion& q, LockReply& reply) {
  for (const std::string& name : q.surfaces) {
    auto surface = find_cure_surface(catalogue, name);
    if (!surface) return in_field(surface.error(), "--surface");
    if (reply.lock.family == LockFamily::compound) {
      if (surface->activity == locking::Activity::never) {
        reply.verdict = Together::no;
        reply.findings.push_back({Code::no_compound_here, Severity::stop, {surface->description, surface->note}});
      }
      if (surface->activity == locking::Activity::inactive) {
        reply.verdict = std::max(reply.verdict, Together::mind);
        reply.findings.push_back({Code::primer_needed, Severity::mind, {surface->description}});
      }
    }
    add_source(reply.sources, surface->source);
    reply.surfaces.push_back(std::move(*surface));
  }
  return {};
}

} // namespace

CheckByTurning check_by_turning(const friction::Lock& lock) {
  if (lock.family == LockFamily::compound) return CheckByTurning::no;
  return lock.family == LockFamily::positive ? CheckByTurning::with_lock_off : CheckByTurning::yes;
}

int strips_of_compound(quantity::Length diameter) {
  if (diameter <= quantity::inches(1.0)) return 1;
  return diameter <= quantity::inches(2.0) ? 2 : 3;
}

std::vector<friction::Lock> all_locks(const Catalogue& catalogue) {
  std::vector<friction::Lock> locks;
  for (const std::string& name : lock_names(catalogue))
    if (auto lock = find_lock(catalogue, name).value(); lock.family != LockFamily::none)
      locks.push_back(std::move(lock));
  return locks;
}

Result<LockReply> answer_lock(const Catalogue& catalogue, const LockQuestion& q) {
  auto lock = a_lock(catalogue, q.lock, "");
  if (!lock) return Refusal(lock.error());
  LockReply reply;
  reply.lock = std::move(*lock);
  reply.rules = lock_rules(catalogue, reply.lock);
  for (const LockRule& rule : reply.rules)
    add_source(reply.sources, rule.source);
  for (const Source& source : reply.lock.sources)
    add_source(reply.sources, source);
  if (auto done = add_together(catalogue, q, reply); !done) return Refusal(done.error());
  if (auto done = add_thread(catalogue, q, reply); !done) return Refusal(done.error());
  if (auto done = add_temperature(q, reply); !done) return Refusal(done.error());
  if (auto done = add_surfaces(catalogue, q, reply); !done) return Refusal(done.error());
  if (reply.lock.family == LockFamily::compound)
    reply.findings.push_back({Code::breakaway_not_known, Severity::note, {}});
  if (reply.lock.single_use && reply.lock.family != LockFamily::compound)
    reply.findings.push_back({Code::single_use, Severity::note, {reply.lock.description}});
  return reply;
}

} // namespace clampwright::specdb
