// SPDX-License-Identifier: GPL-3.0-or-later
//
// A working can be followed only from above to below: whatever symbol a formula takes was given a value on an earlier
// line.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/working/step.hpp"

namespace clampwright::test {

// The symbols in a formula; "l_t high" is one. Words of English are none, as long as no symbol is spelled like them.
[[nodiscard]] inline std::vector<std::string> parts_of(std::string formula) {
  for (const std::string_view sign : {"·", "√", "²", "³", "(", ")", "+", "/", "-", "=", ","})
    for (std::size_t at = 0; (at = formula.find(sign, at)) != std::string::npos;)
      formula.replace(at, sign.size(), " ");
  std::vector<std::string> parts;
  std::string word;
  for (const char c : formula + " ") {
    if (c != ' ') {
      word += c;
      continue;
    }
    if ((word == "low" || word == "high") && !parts.empty())
      parts.back() += " " + word;
    else if (!word.empty())
      parts.push_back(word);
    word.clear();
  }
  return parts;
}

// The first symbol that is used before it has a value; "" if there is none.
[[nodiscard]] inline std::string used_too_early(const Working& working) {
  std::set<std::string> all;
  for (const Step& step : working)
    all.insert(step.symbol);
  std::set<std::string> known;
  for (const Step& step : working) {
    if (step.formula.find("halving") == std::string::npos)
      for (const std::string& part : parts_of(step.formula))
        if (all.contains(part) && !known.contains(part)) return part + " in " + step.symbol + " = " + step.formula;
    known.insert(step.symbol);
  }
  return {};
}

// The first symbol that is given a value twice; "" if there is none.
[[nodiscard]] inline std::string given_twice(const Working& working) {
  std::set<std::string> known;
  for (const Step& step : working)
    if (!known.insert(step.symbol).second) return step.symbol;
  return {};
}

// Does a formula take that symbol, and is its value known before?
[[nodiscard]] inline bool is_taken_after_its_value(const Working& working, const std::string& symbol) {
  std::set<std::string> known;
  for (const Step& step : working) {
    for (const std::string& part : parts_of(step.formula))
      if (part == symbol) return known.contains(symbol);
    known.insert(step.symbol);
  }
  return false;
}

} // namespace clampwright::test
