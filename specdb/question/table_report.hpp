// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/report/document.hpp"
#include "specdb/catalogue/tables.hpp"

namespace clampwright::specdb {

// All tables with what they hold.
[[nodiscard]] report::Document tables_document(const std::vector<TableSummary>& tables);

// Rows of a table, a block each: what the row is about, its values with their units, its sources and its note. `words`
// are those that were sought, as given.
[[nodiscard]] report::Document table_document(const TableAnswer& answer, const std::string& words);

// Could someone tighten by these rows? Where a column of the table is a torque to tighten with.
[[nodiscard]] bool gives_torques(const TableAnswer& answer);

// The sources of the rows, each once, in the order of the rows.
[[nodiscard]] std::vector<Source> used_sources(const TableAnswer& answer);

} // namespace clampwright::specdb
