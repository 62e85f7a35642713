// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/search.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/text/plain_text.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/hit_row.hpp"
#include "specdb/workshop/index_words.hpp"
#include "specdb/workshop/near_words.hpp"
#include "specdb/workshop/word_readings.hpp"

namespace clampwright::specdb {

namespace {

constexpr int k_most_hits = 50;
constexpr std::size_t k_longest_text = 1000;
constexpr std::size_t k_most_named = 4; // of words that are equally near

// "M10 x 1.25", "M10x 1.25" and "M10×1.25" are M10x1.25.
std::string threads_joined(std::string text) {
  for (std::size_t at = 0; (at = text.find("×", at)) != std::string::npos;)
    text.replace(at, std::string_view("×").size(), "x");
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] != 'x' && text[at] != 'X') continue;
    const std::size_t before = at >= 1 && text[at - 1] == ' ' ? 2 : 1; // how far back the digit would be
    const std::size_t after = at + 1 < text.size() && text[at + 1] == ' ' ? 2 : 1;
    if (at < before || at + after >= text.size()) continue;
    if (!text::is_digit(text[at - before]) || !text::is_digit(text[at + after])) continue;
    text.replace(at - before + 1, before + after - 1, 1, text[at]);
  }
  return text;
}

// What was typed, at a length that anyone would type, without line ends and the like.
std::string plain_text(std::string_view text) {
  std::string plain;
  for (const char c : text.substr(0, k_longest_text)) {
    if (c != '\0') plain += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
  }
  return threads_joined(text::plain_spaces(plain));
}

// Every word becomes a quoted phrase and a beginning. The signs inside a word ("M10x1.25", "1/4-20") part index words
// as well, so a quoted phrase finds them in order; unquoted they would be operators.
std::string expression_as_typed(std::string_view plain) {
  std::string expression;
  std::string word;
  const auto end_word = [&] {
    if (!word.empty()) expression += fmt::format("{}\"{}\"*", expression.empty() ? "" : " AND ", word);
    word.clear();
  };
  for (const char c : plain) {
    if (c == ' ')
      end_word();
    else
      word += c == '"' ? ' ' : c;
  }
  end_word();
  return expression;
}

// Index words side by side, the last a beginning. They hold letters and digits only, so nothing in them is an operator.
std::string phrase(const std::vector<std::string>& index_words) {
  return fmt::format("\"{}\"*", fmt::join(index_words, " "));
}

std::string joined(const std::vector<std::string>& expressions, std::string_view by) {
  if (expressions.size() == 1) return expressions.front();
  return fmt::format("({})", fmt::join(expressions, by));
}

template<class List, class Express>
std::string any_of(const List& list, Express express) {
  std::vector<std::string> expressions;
  for (const auto& one : list)
    expressions.push_back(express(one));
  return joined(expressions, " OR ");
}

template<class List, class Express>
std::string all_of(const List& list, Express express) {
  std::vector<std::string> expressions;
  for (const auto& one : list)
    expressions.push_back(express(one));
  return joined(expressions, " AND ");
}

std::string expression_of(const Meant& meant) {
  return all_of(meant.words, [](const std::string& word) { return phrase({word}); });
}

std::string expression_of(const Reading& reading) {
  return all_of(reading.places, [](const Place& place) {
    return any_of(place, [](const Meant& meant) { return expression_of(meant); });
  });
}

std::vector<Hit> hits_of(const Workshop& workshop, const std::string& expression) {
  // A joint's own name weighs most, then its other words, its assembly, its thread, its machine. The best are taken
  // before anything else is looked up: "bolt" fits half of a big workshop.
  Query query(
      workshop.connection(),
      "SELECT j.slug, m.name, a.name, j.name, j.thread, f.printed, f.value FROM (SELECT rowid AS id, "
      "bm25(joint_search, 8, 4, 1, 4, 6) AS worth FROM joint_search WHERE joint_search MATCH ? ORDER BY worth, rowid "
      "LIMIT ?) s JOIN joint j ON j.id = s.id JOIN assembly a ON a.id = j.assembly_id JOIN machine m ON m.id = "
      "a.machine_id LEFT JOIN figure f ON f.id = (SELECT min(g.id) FROM figure g WHERE g.joint_id = j.id AND g.id NOT "
      "IN (SELECT supersedes FROM figure WHERE supersedes IS NOT NULL)) ORDER BY s.worth, s.id",
      std::string_view(expression), k_most_hits);
  std::vector<Hit> hits;
  while (query.next())
    hits.push_back(hit_in(query));
  return hits;
}

bool has_hits(const Workshop& workshop, const std::string& expression) {
  return Query(workshop.connection(), "SELECT 1 FROM joint_search WHERE joint_search MATCH ? LIMIT 1",
               std::string_view(expression))
      .next();
}

// The reading without the words that no hit has.
Reading without_idle_words(const Workshop& workshop, Reading reading) {
  const std::string all = expression_of(reading);
  for (Place& place : reading.places) {
    if (place.size() < 2) continue;
    std::erase_if(place, [&](const Meant& meant) {
      return !has_hits(workshop, fmt::format("{} AND {}", all, expression_of(meant)));
    });
  }
  return reading;
}

// "clutch/catch hub"
std::string in_words(const Reading& reading) {
  std::vector<std::string> places;
  for (const Place& place : reading.places) {
    std::vector<std::string> meant;
    for (const Meant& one : place)
      meant.push_back(meant.size() < k_most_named ? fmt::format("{}", fmt::join(one.words, " ")) : "…");
    if (meant.size() > k_most_named) meant.resize(k_most_named + 1);
    places.push_back(fmt::format("{}", fmt::join(meant, "/")));
  }
  return fmt::format("{}", fmt::join(places, " "));
}

// The readings with the fewest slips that find anything.
Found found_by_slips(const Workshop& workshop, const std::vector<TypedWord>& words) {
  auto [readings, unknown] = readings_of(words, Vocabulary(words_of_index(workshop)));
  std::vector<Reading> finding;
  for (const Reading& reading : readings) {
    if (!finding.empty() && reading.slips > finding.front().slips) break;
    if (has_hits(workshop, expression_of(reading))) finding.push_back(without_idle_words(workshop, reading));
  }
  if (finding.empty()) return {};
  Found found;
  found.hits = hits_of(workshop, any_of(finding, [](const Reading& reading) { return expression_of(reading); }));
  if (finding.front().slips == 0) return found;
  std::vector<std::string> read_as;
  for (const Reading& reading : finding)
    if (const std::string text = in_words(reading); std::ranges::find(read_as, text) == read_as.end())
      read_as.push_back(text);
  found.read_as = fmt::format("{}", fmt::join(read_as, " or "));
  found.unknown = std::move(unknown);
  return found;
}

} // namespace

Found search(const Workshop& workshop, std::string_view words) {
  const std::string plain = plain_text(words);
  if (plain.empty()) return {};
  return translated([&] {
    if (auto hits = hits_of(workshop, expression_as_typed(plain)); !hits.empty()) return Found{std::move(hits), {}, {}};
    const std::vector<TypedWord> typed = typed_words(plain);
    return typed.empty() ? Found() : found_by_slips(workshop, typed);
  });
}

} // namespace clampwright::specdb
