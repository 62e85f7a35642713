// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/word_readings.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace clampwright::specdb {

namespace {

// Whoever types more words than these is not searching for a joint with a slip of the hand.
constexpr std::size_t k_most_words = 12;
constexpr std::size_t k_most_unknown = 5;
constexpr std::size_t k_most_readings = 60;

struct Unit {
  std::vector<std::string> index_words; // side by side
  bool has_digits = false;
};

bool is_number_then_word(std::string_view word, std::size_t cut) {
  return cut + 2 <= word.size() && has_digit(word.substr(cut - 1, 1)) && !has_digit(word.substr(cut));
}

// "24unf" and "m8bolt" are two words, and nothing has been changed.
void push_with_number(std::vector<Unit>& units, Unit unit, const Vocabulary& vocabulary) {
  const std::string last = unit.index_words.back();
  if (!vocabulary.begins_a_word(last)) {
    for (std::size_t cut = 1; cut < last.size(); ++cut) {
      if (!is_number_then_word(last, cut)) continue;
      unit.index_words.back() = last.substr(0, cut);
      units.push_back(std::move(unit));
      units.push_back({{last.substr(cut)}, false});
      return;
    }
  }
  units.push_back(std::move(unit));
}

// A word with a digit stays in one piece, "10-32" and "M10x1.25"; any other falls apart at its signs.
std::vector<Unit> units_of(const std::vector<TypedWord>& words, const Vocabulary& vocabulary) {
  std::vector<Unit> units;
  for (const TypedWord& word : words) {
    if (std::ranges::any_of(word.index_words, has_digit)) {
      push_with_number(units, {word.index_words, true}, vocabulary);
    } else {
      for (const std::string& index_word : word.index_words)
        units.push_back({{index_word}, false});
    }
  }
  return units;
}

bool is_known(const Unit& unit, const Vocabulary& vocabulary) {
  return vocabulary.begins_a_word(unit.index_words.back());
}

Place as_typed(const Unit& unit) { return {{{fmt::format("{}", fmt::join(unit.index_words, " "))}, 0}}; }

// One place for each unit, whatever the number of slips; empty where a unit is near to nothing.
std::vector<Place> places_of(const std::vector<Unit>& units, const Vocabulary& vocabulary) {
  std::vector<Place> places;
  std::size_t unknown = 0;
  for (const Unit& unit : units) {
    if (is_known(unit, vocabulary)) {
      places.push_back(as_typed(unit));
      continue;
    }
    if (unit.has_digits || ++unknown > k_most_unknown) return {};
    places.push_back(vocabulary.meant_by(unit.index_words.front()));
    if (places.back().empty()) return {};
  }
  return places;
}

std::vector<Reading> fewest_slips_first(std::vector<Reading> readings) {
  std::ranges::stable_sort(readings, {}, &Reading::slips);
  if (readings.size() > k_most_readings) readings.resize(k_most_readings);
  return readings;
}

// Readings that differ in the number of slips of some place: first every place with its fewest.
void push_readings(std::vector<Reading>& readings, const std::vector<Place>& places, std::size_t slips_so_far) {
  std::vector<Reading> grown{{{}, slips_so_far}};
  for (const Place& place : places) {
    std::vector<Reading> next;
    for (auto first = place.begin(); first != place.end();) {
      const auto last = std::find_if(first, place.end(), [&](const Meant& m) { return m.slips != first->slips; });
      for (const Reading& reading : grown) {
        next.push_back(reading);
        next.back().places.emplace_back(first, last);
        next.back().slips += first->slips;
      }
      first = last;
    }
    grown = fewest_slips_first(std::move(next));
  }
  readings.insert(readings.end(), std::make_move_iterator(grown.begin()), std::make_move_iterator(grown.end()));
}

} // namespace

Readings readings_of(const std::vector<TypedWord>& words, const Vocabulary& vocabulary) {
  Readings out;
  const std::vector<Unit> units = units_of(words, vocabulary);
  if (units.size() > k_most_words) return out;
  for (const Unit& unit : units)
    if (!is_known(unit, vocabulary)) out.unknown.push_back(fmt::format("{}", fmt::join(unit.index_words, " ")));
  if (const auto places = places_of(units, vocabulary); !places.empty()) push_readings(out.readings, places, 0);
  // A surplus space, "fly wheel": two neighbours that together begin a word. That is a slip as well.
  for (std::size_t i = 0; i + 1 < units.size(); ++i) {
    if (units[i].index_words.size() != 1 || units[i + 1].index_words.size() != 1) continue;
    const std::string joined = units[i].index_words[0] + units[i + 1].index_words[0];
    if (!vocabulary.begins_a_word(joined)) continue;
    std::vector<Unit> fewer = units;
    fewer[i] = {{joined}, has_digit(joined)};
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    if (const auto places = places_of(fewer, vocabulary); !places.empty()) push_readings(out.readings, places, 1);
  }
  out.readings = fewest_slips_first(std::move(out.readings));
  return out;
}

} // namespace clampwright::specdb
