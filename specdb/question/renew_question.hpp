// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/report/document.hpp"
#include "core/source/source.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/workshop/records.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

// A part that is new each time, of one joint.
struct RenewedPart {
  std::string joint;   // its slug
  std::string machine; // its name
  std::string name;    // of the joint
  std::string part;    // "self-locking nut with a plastic or fibre ring"
  std::string thread;
  int quantity = 1;
  std::string because; // the page of the figure, or the rule
  Source source;
};

// What must be at hand before a strip-down: the parts of single use of every joint that `words` names, by machine
// (slug or name) or as find does; of the whole workshop without words. Compounds are in it, since they are fresh each
// time; a part that may serve again by its page or while it is good is not. Fails with no-such where the words fit
// nothing.
[[nodiscard]] Result<std::vector<RenewedPart>> parts_to_renew(const Catalogue& catalogue, const Workshop& workshop,
                                                              const std::string& words);

struct RenewedTotal {
  std::string part;
  std::string thread;
  int quantity = 0;
};

// The same part for the same thread together, in the order in which they come.
[[nodiscard]] std::vector<RenewedTotal> totals_of(const std::vector<RenewedPart>& parts);

[[nodiscard]] report::Document renew_document(const std::string& words, const std::vector<RenewedPart>& parts);

} // namespace clampwright::specdb
