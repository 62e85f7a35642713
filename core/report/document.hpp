// SPDX-License-Identifier: GPL-3.0-or-later
//
// An answer as a document, before anyone has decided whether it becomes text, a page or a widget.
#pragma once

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

struct Section {
  std::string heading; // may be empty
  std::vector<Row> rows;
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
  Working working; // empty unless it was asked for
  std::vector<Source> sources;
  bool has_foot = false; // someone could tighten by this
};

} // namespace clampwright::report
