// SPDX-License-Identifier: GPL-3.0-or-later
//
// A quantity in other units.
#pragma once

#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/read.hpp"
#include "core/report/document.hpp"
#include "core/working/step.hpp"

namespace clampwright::specdb {

struct ConvertQuestion {
  std::string quantity;                      // "2.5 mkg"
  std::vector<std::string> units;            // "N.m"
  const quantity::Unit* preferred = nullptr; // one more
};

struct Converted {
  const quantity::Unit* unit;
  double value;
};

struct ConvertReply {
  std::string typed; // the quantity, fit to print
  quantity::Reading reading;
  std::vector<Converted> values; // in the units wanted, each once; in every unit of its kind where none was
  finding::Findings findings;
  Working working;
};

// Fails like read_quantity; with not-understood for a text that is no unit, or one of another kind.
[[nodiscard]] Result<ConvertReply> answer_convert(const ConvertQuestion& question);

[[nodiscard]] report::Document convert_document(const ConvertReply& reply);

} // namespace clampwright::specdb
