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
  std::string read_as;              // "drive pulley"; empty unless words were taken for others
  std::vector<std::string> unknown; // the typed words for which others were taken because nothing begins with them
};

// The joints in which every word is found, as a word or the beginning of one, in the joint's own name and words, its
// assembly, machine or thread. Any characters may stand in `words`; accents and case do not matter. Only where that
// finds nothing, words are taken for those that are a slip or two away, a space put in or taken out; words with digits
// never are.
[[nodiscard]] Found search(const Workshop& workshop, std::string_view words);

} // namespace clampwright::specdb
