// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/lock_advice.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/catalogue/locking.hpp"
#include "specdb/question/cure_question.hpp"
#include "specdb/question/lock_question.hpp"

namespace clampwright::specdb {

namespace {

void add_once(std::vector<std::string>& lines, std::string line) {
  if (std::ranges::find(lines, line) == lines.end()) lines.push_back(std::move(line));
}

// "232 to 316 °C softens it, but the crank seal bears 120 °C: …"
std::string heat_words(const friction::Lock& lock, const std::vector<NeighbourRecord>& neighbours) {
  const double least = quantity::in_degrees_celsius(*lock.parts_from);
  std::string words =
      fmt::format("{} to {} °C at the thread softens it", least, quantity::in_degrees_celsius(*lock.parts_to));
  std::vector<std::string> harmed;
  for (const NeighbourRecord& neighbour : neighbours)
    if (neighbour.bears_degC && *neighbour.bears_degC < least)
      harmed.push_back(
          fmt::format("the {} bears {} °C", neighbour.name, quantity::write_number(*neighbour.bears_degC, 4)));
  if (!harmed.empty()) words += fmt::format(", but {}: take it out first or stay below", fmt::join(harmed, ", "));
  return words;
}

// The published time, and where it does not hold.
std::string cure_words(const Catalogue& catalogue, const std::string& surfaces) {
  if (surfaces.starts_with("zinc") || surfaces.starts_with("stainless"))
    return fmt::format("not known on {}: such a surface lets it cure slowly or not at all; it wants a primer, and the "
                       "compound's sheet has the time",
                       text::without_hyphens(surfaces));
  for (const locking::CureTime& line : cure_times(catalogue))
    if (line.step == locking::CureStep::full_strength)
      return fmt::format("full strength within {} at {} °C or warmer on plain steel; else see clampwright cure",
                         duration_words(*line.most_min), quantity::in_degrees_celsius(*line.from));
  return {};
}

} // namespace

LockAdvice lock_advice(const Catalogue& catalogue, const std::vector<friction::Lock>& locks,
                       const std::vector<NeighbourRecord>& neighbours, const std::string& surfaces) {
  LockAdvice advice;
  for (const friction::Lock& lock : locks) {
    const std::vector<LockRule> rules = lock_rules(catalogue, lock);
    const auto undo = std::ranges::find(rules, "undo", &LockRule::topic);
    // A lock that comes off with the turning itself asks for nothing before it.
    if (undo != rules.end() && check_by_turning(lock) != CheckByTurning::yes)
      add_once(advice.undo,
               lock.parts_from ? fmt::format("{}; {}", undo->rule, heat_words(lock, neighbours)) : undo->rule);
    if (lock.family == friction::LockFamily::compound) advice.cure = cure_words(catalogue, surfaces);
    const auto check = std::ranges::find(rules, "check", &LockRule::topic);
    if (check != rules.end() && check_by_turning(lock) != CheckByTurning::yes) add_once(advice.check, check->rule);
  }
  return advice;
}

} // namespace clampwright::specdb
