// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/friction/friction.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// What the locks of a joint ask of a person, in a line each.
struct LockAdvice {
  std::vector<std::string> undo;  // what comes off before anything is turned
  std::vector<std::string> check; // why its torque is not simply checked by turning; empty where it may be
  std::string cure;               // of a compound, before it is run; empty without one
};

// Heat that would part a compound is held against the neighbours that bear less.
[[nodiscard]] LockAdvice lock_advice(const Catalogue& catalogue, const std::vector<friction::Lock>& locks,
                                     const std::vector<NeighbourRecord>& neighbours, const std::string& surfaces);

} // namespace clampwright::specdb
