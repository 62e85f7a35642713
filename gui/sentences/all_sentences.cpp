// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/sentences/all_sentences.hpp"

#include <algorithm>
#include <iterator>

namespace clampwright::desk {

std::vector<Sentence> all_sentences() {
  std::vector<Sentence> all;
  const auto add = [&](std::vector<Sentence> some) { std::ranges::move(some, std::back_inserter(all)); };
  add(tightening_sentences());
  add(wrench_sentences());
  add(substitute_sentences());
  add(strip_sentences());
  add(thread_sentences());
  add(crank_sentences());
  add(turn_sentences());
  add(sequence_sentences());
  add(workup_sentences());
  add(chart_sentences());
  add(locking_sentences());
  add(convert_sentences());
  return all;
}

} // namespace clampwright::desk
