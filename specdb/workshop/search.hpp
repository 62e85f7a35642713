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

// The joints in which every word is found, as a word or the beginning of one, in the joint's own name and words, its
// assembly, machine or thread; best first. Any characters may stand in `words`; accents and case do not matter.
[[nodiscard]] std::vector<Hit> search(const Workshop& workshop, std::string_view words);

} // namespace clampwright::specdb
