// SPDX-License-Identifier: GPL-3.0-or-later
//
// The ways in which typed words can be read where the index has nothing for them as they stand.
#pragma once

#include <string>
#include <vector>

#include "specdb/workshop/index_words.hpp"
#include "specdb/workshop/near_words.hpp"

namespace clampwright::specdb {

// A typed word, or what may stand in its place: any of these will do.
using Place = std::vector<Meant>;

// All places must be filled.
struct Reading {
  std::vector<Place> places;
  std::size_t slips = 0;
};

// Everything that the words may have meant, fewest slips first; none where one of them is near to nothing. `unknown`
// are the words with which nothing begins.
struct Readings {
  std::vector<Reading> readings;
  std::vector<std::string> unknown;
};

[[nodiscard]] Readings readings_of(const std::vector<TypedWord>& words, const Vocabulary& vocabulary);

} // namespace clampwright::specdb
