// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/sentences/all_sentences.hpp"

#include <algorithm>
#include <iterator>

namespace clampwright::desk {

std::vector<Sentence> all_sentences() {
  std::vector<Sentence> all;
  const auto add = [&](std::vector<Sentence> some) { std::ranges::move(some, std::back_inserter(all)); };
  add(tightening_sentences());
  return all;
}

} // namespace clampwright::desk
