// SPDX-License-Identifier: GPL-3.0-or-later
//
// For the .cpp files of this folder only: this header shows SQLiteCpp.
#pragma once

#include "specdb/sql/query.hpp"
#include "specdb/workshop/search.hpp"

namespace clampwright::specdb {

// Seven columns: slug, machine, assembly, name and thread of the joint, printed text and value of its figure.
[[nodiscard]] inline Hit hit_in(const Query& query) {
  Hit hit{query.text(0), query.text(1), query.text(2), query.text(3), query.text(4), std::nullopt};
  if (!query.is_null(6)) hit.torque_printed = query.maybe_text(5);
  return hit;
}

} // namespace clampwright::specdb
