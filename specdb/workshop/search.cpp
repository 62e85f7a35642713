// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/search.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/text/plain_text.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/browse.hpp"
#include "specdb/workshop/index_words.hpp"
#include "specdb/workshop/near_words.hpp"
#include "specdb/workshop/word_readings.hpp"

namespace clampwright::specdb {

namespace {

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

// The words that begin like it, one by one, where they are few: the index goes through each of them as it is asked, and
// for a beginning it would first put all of their joints in order.
std::string beginning(const std::string& word, const Vocabulary& vocabulary) {
  constexpr std::size_t k_few = 12;
  const std::vector<std::string> words = vocabulary.beginning_with(word, k_few);
  if (words.empty() || words.size() > k_few) return phrase({word});
  return any_of(words, [](const std::string& one) { return fmt::format("\"{}\"", one); });
}

std::string expression_of(const Meant& meant, const Vocabulary& vocabulary) {
  return all_of(meant.words, [&](const std::string& word) { return beginning(word, vocabulary); });
}

std::string expression_of(const Place& place, const Vocabulary& vocabulary) {
  return any_of(place, [&](const Meant& meant) { return expression_of(meant, vocabulary); });
}

std::string expression_of(const Reading& reading, const Vocabulary& vocabulary) {
  return all_of(reading.places, [&](const Place& place) { return expression_of(place, vocabulary); });
}

// Weighing costs time for every joint that fits, and says little where so many do.
constexpr int k_most_weighed = 1000;

bool fit_too_many(const Workshop& workshop, const std::string& expression) {
  Query row(workshop.connection(),
            "SELECT count(*) FROM (SELECT 1 FROM joint_search WHERE joint_search MATCH ? LIMIT ?)",
            std::string_view(expression), k_most_weighed + 1);
  return row.next() && row.integer(0) > k_most_weighed;
}

// What `sql` finds for the expression, behind what is there already, until there are `most`.
void add_found(const Workshop& workshop, const char* sql, const std::string& expression, std::size_t most,
               std::vector<long long>& joints) {
  Query row(workshop.connection(), sql, std::string_view(expression), static_cast<long long>(most));
  while (joints.size() < most && row.next())
    if (std::ranges::find(joints, row.integer(0)) == joints.end()) joints.push_back(row.integer(0));
}

// The joints that fit, best first, `most` of them or fewer.
std::vector<long long> best_joints(const Workshop& workshop, const std::string& expression, std::size_t most) {
  std::vector<long long> joints;
  if (!fit_too_many(workshop, expression)) {
    add_found(
        workshop,
        "SELECT rowid FROM joint_search WHERE joint_search MATCH ? ORDER BY joint_worth(joint_search), rowid LIMIT ?",
        expression, most, joints);
    return joints;
  }
  for (const char* places : {"{name}", "{name words}", "{name words assembly thread machine}"})
    if (joints.size() < most)
      add_found(workshop, "SELECT rowid FROM joint_search WHERE joint_search MATCH ? LIMIT ?",
                fmt::format("{} : ({})", places, expression), most, joints);
  return joints;
}

void add_hits(const Workshop& workshop, const std::string& expression, std::size_t most, Found& found) {
  std::vector<long long> joints = best_joints(workshop, expression, most + 1);
  found.more = joints.size() > most;
  if (found.more) joints.pop_back();
  found.hits = hits_of(workshop, joints);
}

bool has_hits(const Workshop& workshop, const std::string& expression) {
  return Query(workshop.connection(), "SELECT 1 FROM joint_search WHERE joint_search MATCH ? LIMIT 1",
               std::string_view(expression))
      .next();
}

// The reading without the words that no hit has, as far as words are named: what stands behind those finds nothing more
// where it is idle, and is not worth a question each.
Reading without_idle_words(const Workshop& workshop, Reading reading) {
  for (std::size_t i = 0; i < reading.places.size(); ++i) {
    if (reading.places[i].size() < 2) continue;
    std::string others;
    for (std::size_t other = 0; other < reading.places.size(); ++other)
      if (other != i) others += expression_of(reading.places[other], workshop.vocabulary()) + " AND ";
    std::size_t busy = 0;
    std::erase_if(reading.places[i], [&](const Meant& meant) {
      if (busy > k_most_named) return false;
      const bool is_busy = has_hits(workshop, others + expression_of(meant, workshop.vocabulary()));
      if (is_busy) ++busy;
      return !is_busy;
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
Found found_by_slips(const Workshop& workshop, const std::vector<TypedWord>& words, std::size_t most) {
  auto [readings, unknown] = readings_of(words, workshop.vocabulary());
  std::vector<Reading> finding;
  for (const Reading& reading : readings) {
    if (!finding.empty() && reading.slips > finding.front().slips) break;
    if (has_hits(workshop, expression_of(reading, workshop.vocabulary())))
      finding.push_back(without_idle_words(workshop, reading));
  }
  if (finding.empty()) return {};
  Found found;
  add_hits(workshop,
           any_of(finding, [&](const Reading& reading) { return expression_of(reading, workshop.vocabulary()); }), most,
           found);
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

Found search(const Workshop& workshop, std::string_view words, std::size_t most) {
  const std::string plain = plain_text(words);
  if (plain.empty()) return {};
  return translated([&] {
    Found found;
    add_hits(workshop, expression_as_typed(plain), most, found);
    if (!found.hits.empty() || found.more) return found;
    const std::vector<TypedWord> typed = typed_words(workshop.connection(), plain);
    return typed.empty() ? Found() : found_by_slips(workshop, typed, most);
  });
}

} // namespace clampwright::specdb
