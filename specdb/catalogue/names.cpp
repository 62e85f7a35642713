// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/names.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/text/plain_text.hpp"
#include "core/text/slips.hpp"

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
  for (const std::string_view prefix : {"astmf3125grade", "astmf3125", "f3125grade", "f3125"})
    if (key.starts_with(prefix)) key.erase(0, prefix.size());
  for (const std::string_view short_name : {"a307", "a325", "a354bd", "a449", "a490", "a574"})
    if (key == short_name) return "astm" + key;
  return key;
}

std::size_t letters_apart(std::string_view one, std::string_view other) {
  return text::slips(text::letters(text::to_lower(one)), text::letters(text::to_lower(other))).whole;
}

std::string nearest_name(std::string_view given, std::span<const std::string> names) {
  std::string best;
  // A word all of whose letters would have to change is near to nothing.
  std::size_t best_distance = std::min(std::max<std::size_t>(given.size() / 3, 1) + 1, given.size());
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
