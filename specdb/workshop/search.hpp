// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

struct Hit {
  std::string joint; // slug
  std::string machine;
  std::string assembly;
  std::string name;
  std::string thread;
  std::optional<std::string> torque_printed; // nothing where the page gives no value
};

struct Found {
  std::vector<Hit> hits;            // best first
  bool more = false;                // there are others behind them
  std::string read_as;              // "drive pulley"; empty unless words were taken for others
  std::vector<std::string> unknown; // the typed words for which others were taken because nothing begins with them
};

// The joints in which every word is found, as a word or the beginning of one, in the joint's own name and words, its
// assembly, machine or thread. Any characters may stand in `words`; accents and case do not matter. Only where that
// finds nothing, words are taken for those that are a slip or two away, a space put in or taken out; words with digits
// never are.
//
// Of all that fit the `most` best are given: a joint's own name weighs most, then its other words, its assembly, its
// thread, its machine. Where more fit than anyone would look through (a letter, "bolt" in a big workshop), those that
// have the words in their name come first, then in the other places, each in the order in which they were entered. So
// it is quick enough to be called at every letter that is typed: of 100 000 joints in a fraction of a frame.
[[nodiscard]] Found search(const Workshop& workshop, std::string_view words, std::size_t most = 50);

} // namespace clampwright::specdb
