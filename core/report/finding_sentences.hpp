// SPDX-License-Identifier: GPL-3.0-or-later
//
// For finding_words.cpp: the sentence of each finding and what it rests on.
#pragma once

#include <string_view>

#include "core/finding/finding.hpp"

namespace clampwright::report {

struct Sentence {
  finding::Code code;
  std::string_view text; // {0}, {1}: the facts; {4}: what the severity says
  std::string_view basis;
};

[[nodiscard]] const Sentence& sentence_of(finding::Code code);

} // namespace clampwright::report
