// SPDX-License-Identifier: GPL-3.0-or-later
//
// Answers and refusals name what may be said as the command line does: "give it with --length". On a page with blanks
// that is the blank with that label.
#pragma once

#include <string>
#include <vector>

#include <QString>

#include "core/problem/problem.hpp"

namespace clampwright::desk {

struct BlankName {
  std::string option; // "--length"
  QString label;      // in the language spoken
};
using BlankNames = std::vector<BlankName>;

// "give it with --length" -> "give it with “length of thread that bears”". Options without a blank stay. The blank
// `own`, beside which the text stands, needs no name: "write --turn 60deg" becomes "write 60deg".
[[nodiscard]] QString by_blanks(const QString& text, const BlankNames& names, const std::string& own = {});

// What is wrong and what to write, in the language spoken.
[[nodiscard]] QString refusal_words(const Problem& problem, const BlankNames& names, const std::string& own = {});

} // namespace clampwright::desk
