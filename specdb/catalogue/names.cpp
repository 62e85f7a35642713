// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/names.hpp"

#include <algorithm>
#include <vector>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

std::string name_key(std::string_view name) {
  std::string key = text::to_lower(text::plain_spaces(name));
  for (char& c : key)
    if (c == ' ' || c == '_') c = '-';
  return key;
}

std::string class_key(std::string_view name) {
  std::string key;
  for (const char c : text::to_lower(name))
    if (c != ' ' && c != '-' && c != '_') key += c;
  if (key.starts_with("class")) key.erase(0, 5);
  for (const std::string_view prefix : {"saej429grade", "saegrade", "saej429", "grade", "gr."})
    if (key.starts_with(prefix)) return "sae" + key.substr(prefix.size());
  if (key == "a574") return "astma574";
  return key;
}

std::size_t letters_apart(std::string_view first, std::string_view second) {
  constexpr std::size_t k_longest = 64;
  const std::string one = text::to_lower(first.substr(0, k_longest));
  const std::string other = text::to_lower(second.substr(0, k_longest));
  std::vector<std::size_t> before_last;
  std::vector<std::size_t> last(other.size() + 1);
  for (std::size_t j = 0; j <= other.size(); ++j)
    last[j] = j;
  for (std::size_t i = 1; i <= one.size(); ++i) {
    std::vector<std::size_t> row(other.size() + 1);
    row[0] = i;
    for (std::size_t j = 1; j <= other.size(); ++j) {
      const std::size_t change = one[i - 1] == other[j - 1] ? 0 : 1;
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + change});
      if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
        row[j] = std::min(row[j], before_last[j - 2] + 1);
    }
    before_last = std::move(last);
    last = std::move(row);
  }
  return last.back();
}

std::string nearest_name(std::string_view given, std::span<const std::string> names) {
  std::string best;
  std::size_t best_distance = std::max<std::size_t>(given.size() / 3, 1) + 1;
  for (const std::string& name : names) {
    const std::size_t distance = letters_apart(given, name);
    if (distance < best_distance) {
      best_distance = distance;
      best = name;
    }
  }
  return best;
}

Refusal no_such_name(std::string_view what, std::string_view given, std::span<const std::string> names) {
  const std::string nearest = nearest_name(given, names);
  std::string hint = nearest.empty() ? std::string() : fmt::format("did you mean {}? ", nearest);
  hint += fmt::format("known are {}", fmt::join(names, ", "));
  return refuse(Trouble::no_such, "no-such-name", fmt::format("that names no {}", what), given, std::move(hint));
}

} // namespace clampwright::specdb
