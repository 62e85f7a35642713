// SPDX-License-Identifier: GPL-3.0-or-later
//
// An answer as a document, before anyone has decided whether it becomes text, a page or a widget.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/source/source.hpp"
#include "core/working/step.hpp"

namespace clampwright::report {

// "Tighten    anticlockwise, looking at the clutch". A row without a label goes on where the one above ended.
struct Row {
  std::string label;
  std::string value;
};

// A column of a table. Columns that stand side by side under one `group` share that heading.
struct Column {
  std::string group; // "Set clamps, kN"; may be empty
  std::string heading;
  bool is_number = true; // stands to the right
  bool is_main = false;  // what the eye must find first
};

// Rows have as many cells as there are columns; the first cell names its row.
struct Table {
  std::vector<Column> columns;
  std::vector<std::vector<std::string>> rows;
  // On paper a table is cut by pages and by scissors: these stand over and under every piece of it.
  std::string over;
  std::string under;
};

struct Section {
  std::string heading; // may be empty
  std::vector<Row> rows;
  std::optional<Table> table = std::nullopt; // behind the rows
};

// A finding in words.
struct Remark {
  finding::Severity severity;
  std::string code;
  std::string text;
};

struct Document {
  std::string title;
  std::string banner; // "INVENTED": what must not be overlooked; may be empty
  std::vector<Section> sections;
  std::vector<Remark> remarks;
  Working working;              // empty unless it was asked for
  std::string working_for = {}; // which of several answers it is for; may be empty
  std::vector<Source> sources;
  bool has_foot = false;     // someone could tighten by this
  bool stands_alone = false; // is read away from the program: every source in full
};

} // namespace clampwright::report
