// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/head_mark.hpp"

#include <algorithm>
#include <array>
#include <set>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/head_mark_words.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using finding::Severity;
using Table = std::vector<HeadMark>;

// One mark that the table has: the words in which it was understood, and its rows.
struct Match {
  std::string reading;
  Table rows;
};

Table rows_of(const Table& table, std::string_view key) {
  Table rows;
  std::ranges::copy_if(table, std::back_inserter(rows), [&](const HeadMark& row) { return mark_key(row.mark) == key; });
  return rows;
}

// "A2" alone: the classes of that steel.
Table classes_of_steel(const Table& table, std::string_view steel) {
  Table rows;
  for (const HeadMark& row : table)
    if (row.system == "ISO 3506-1" && text::to_lower(row.mark).starts_with(std::string(steel) + "-")) {
      rows.push_back(row);
      rows.back().verdict = "may-mean";
    }
  return rows;
}

bool is_figures(std::string_view text) { return !text.empty() && std::ranges::all_of(text, text::is_digit); }

// The dot may be missing on the part: "88" is 8.8, "0109" is 010.9, "underlined 129" underlined 12.9.
std::optional<std::string> with_dot(std::string_view words) {
  const std::size_t figures = words.rfind(' ') == std::string_view::npos ? 0 : words.rfind(' ') + 1;
  if (words.size() - figures < 2 || !is_figures(words.substr(figures))) return std::nullopt;
  std::string dotted(words);
  dotted.insert(dotted.size() - 1, 1, '.');
  return dotted;
}

std::optional<Match> match_of(const Table& table, const std::string& words) {
  const std::string key = mark_key(words);
  if (key.empty()) return std::nullopt;
  if (Table rows = rows_of(table, key); !rows.empty()) return Match{rows.front().mark, std::move(rows)};
  if (const auto dotted = with_dot(words))
    if (Table rows = rows_of(table, mark_key(*dotted)); !rows.empty())
      return Match{fmt::format("{}, without its dot", *dotted), std::move(rows)};
  if (Table rows = classes_of_steel(table, key); !rows.empty())
    return Match{fmt::format("{}, a stainless steel without its class", rows.front().mark.substr(0, key.size())),
                 std::move(rows)};
  return std::nullopt;
}

struct Sorted {
  std::vector<Match> matches;
  std::vector<std::string> letters; // that no row has
  std::vector<std::string> rest;    // figures and signs that no row has
};

bool is_letters(std::string_view words) {
  return std::ranges::none_of(words, [](char c) { return text::is_digit(c); });
}

// Neighbours belong together where the table has them so: "A2" and "70".
Sorted sorted(const Table& table, const std::vector<MarkPiece>& pieces) {
  Sorted out;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (!pieces[i].is_sign && i + 1 < pieces.size() && !pieces[i + 1].is_sign) {
      const std::string joined = pieces[i].words + pieces[i + 1].words;
      if (Table rows = rows_of(table, mark_key(joined)); !rows.empty()) {
        out.matches.push_back({rows.front().mark, std::move(rows)});
        ++i;
        continue;
      }
    }
    if (auto match = match_of(table, pieces[i].words))
      out.matches.push_back(std::move(*match));
    else if (!pieces[i].is_sign && is_letters(pieces[i].words))
      out.letters.push_back(pieces[i].words);
    else
      out.rest.push_back(pieces[i].words);
  }
  return out;
}

// Beside the figures of a class a single X or O is a letter of the maker's mark.
std::vector<MarkPiece> with_makers_letters(const Table& table, std::vector<MarkPiece> pieces) {
  const bool has_class = std::ranges::any_of(pieces, [&](const MarkPiece& piece) {
    return !piece.is_sign && !is_letters(piece.words) && match_of(table, piece.words);
  });
  if (has_class)
    for (MarkPiece& piece : pieces)
      if (!piece.letter.empty()) piece = {piece.letter, false};
  return pieces;
}

std::optional<std::string> joined(const std::vector<std::string>& words) {
  if (words.empty()) return std::nullopt;
  return fmt::format("{}", fmt::join(words, " "));
}

// Several readings of one mark: none of them is sure.
void put_in_doubt(Table& rows) {
  if (rows.size() < 2) return;
  for (HeadMark& row : rows)
    if (row.verdict == "means") row.verdict = "may-mean";
}

void add_once(std::vector<std::string>& list, const std::string& item) {
  if (std::ranges::find(list, item) == list.end()) list.push_back(item);
}

// 9.8 upside down reads 8.6.
std::string upside_down(std::string_view mark) {
  constexpr std::string_view k_figures = "01689.";
  constexpr std::string_view k_turned = "01986.";
  std::string out;
  for (auto c = mark.rbegin(); c != mark.rend(); ++c) {
    const std::size_t at = k_figures.find(*c);
    if (at == std::string_view::npos) return {};
    out += k_turned[at];
  }
  return out;
}

std::string look_alike(const HeadMark& row) {
  return fmt::format("{}: {}, on a {}", row.mark, row.meaning, row.parts_in_words());
}

// What is near a mark that nobody lists: it upside down, the mark of a class that was typed by its name, marks a slip
// away, signs of the same kind in another number.
std::vector<std::string> near_marks(const Table& table, const std::string& words) {
  constexpr std::size_t k_most = 6;
  std::vector<std::string> near;
  const std::string key = mark_key(words);
  const std::string turned = upside_down(words);
  const std::string noun = words.substr(words.find(' ') == std::string::npos ? words.size() : words.find(' '));
  const auto add_where = [&](auto is_near, const char* why) {
    for (const HeadMark& row : table)
      if (near.size() < k_most && is_near(row)) add_once(near, look_alike(row) + why);
  };
  add_where([&](const HeadMark& row) { return !turned.empty() && turned != words && row.mark == turned; },
            ", read upside down");
  add_where([&](const HeadMark& row) { return row.class_name && class_key(*row.class_name) == class_key(words); },
            "; it is not stamped as its name");
  add_where([&](const HeadMark& row) { return key.size() > 1 && letters_apart(mark_key(row.mark), key) == 1; }, "");
  add_where(
      [&](const HeadMark& row) {
        return (noun == " lines" || noun == " line" || noun == " dashes") &&
               (row.mark.ends_with(" lines") || row.mark.ends_with(noun));
      },
      "");
  add_where([&](const HeadMark& row) { return words == "lines" && row.mark.ends_with(" lines"); }, "");
  add_where([&](const HeadMark& row) { return words == "dashes" && row.mark.find(" dash") != std::string::npos; }, "");
  add_where([&](const HeadMark& row) { return words.starts_with("arrow") && row.mark == "arrow"; }, "");
  add_where([&](const HeadMark& row) { return words.starts_with("dot") && row.mark.starts_with("bar at"); }, "");
  return near;
}

void add_findings(HeadMarkAnswer& answer) {
  if (answer.hand == thread::Hand::left) answer.findings.push_back({Code::left_hand, Severity::mind, {}});
  const bool class_known = std::ranges::any_of(
      answer.readings, [](const HeadMark& row) { return row.class_name.has_value() && row.verdict == "means"; });
  const bool not_known = answer.readings.empty() || std::ranges::any_of(answer.readings, [](const HeadMark& row) {
                           return row.verdict == "not-known";
                         });
  if (not_known && !class_known) answer.findings.push_back({Code::class_unknown, Severity::mind, {}});
  for (const HeadMark& row : answer.readings)
    if (row.system == "ISO 898-1" && row.class_name && row.class_name->starts_with('0'))
      answer.findings.push_back({Code::reduced_head, Severity::note, {*row.class_name, 0.8}});
  const auto is_stainless = [](const HeadMark& row) { return row.system == "ISO 3506-1"; };
  const auto stainless = std::ranges::find_if(answer.readings, is_stainless);
  if (stainless != answer.readings.end()) {
    const std::string& name = *stainless->class_name;
    const bool one = std::ranges::count_if(answer.readings, is_stainless) == 1;
    answer.findings.push_back({Code::galling, Severity::note, {one ? name : name.substr(0, name.find('-'))}});
  }
  answer.findings.push_back({Code::mark_proves_nothing, Severity::note, {}});
  finding::put_in_order(answer.findings);
}

// The part on which every reading stands, if it is one alone.
std::optional<std::string> only_part(const Table& rows) {
  std::set<std::string> parts;
  for (const HeadMark& row : rows)
    parts.insert(row.part);
  if (parts.size() != 1 || parts.begin()->find(' ') != std::string::npos) return std::nullopt;
  return *parts.begin();
}

Result<std::optional<std::string>> part_of(const MarkWords& words, const std::optional<std::string>& said,
                                           std::string_view text) {
  if (!said) return words.part;
  const auto part = part_named(*said);
  if (!part) return no_such_part(*said);
  if (words.part && words.part != part)
    return not_understood("not-understood", fmt::format("the mark speaks of a {}, --part of a {}", *words.part, *part),
                          text, "say the part once", "--part");
  return part;
}

// Of the rows of a mark those on the part that was said; the others become look-alikes.
Table on_part(const Table& rows, const std::optional<std::string>& part, std::vector<std::string>& look_alikes) {
  if (!part) return rows;
  Table on;
  for (const HeadMark& row : rows)
    if (row.is_on(*part))
      on.push_back(row);
    else
      add_once(look_alikes, look_alike(row));
  return on;
}

} // namespace

Refusal no_such_part(std::string_view text) {
  return not_understood("not-understood", "that is no part with a mark", text, "write --part bolt, screw, stud or nut",
                        "--part");
}

Result<HeadMarkAnswer> read_head_mark(const Catalogue& catalogue, std::string_view text,
                                      const std::optional<std::string>& said) {
  const auto words = read_mark_words(text);
  if (!words) return Refusal(words.error());
  const auto part = part_of(*words, said, text);
  if (!part) return Refusal(part.error());
  const Table table = head_marks(catalogue);
  // "grade 8", "SAE 5": the name of a grade, and no mark.
  const bool is_name = class_key(text::plain_spaces(text)).starts_with("sae");
  const Sorted found = is_name ? Sorted{} : sorted(table, with_makers_letters(table, words->pieces));

  HeadMarkAnswer answer;
  std::vector<std::string> readings;
  std::set<std::string> classes;
  for (const Match& match : found.matches) {
    Table rows = on_part(match.rows, *part, answer.look_alikes);
    put_in_doubt(rows);
    readings.push_back(match.reading);
    for (HeadMark& row : rows) {
      if (row.meaning == "left-hand thread") answer.hand = thread::Hand::left;
      if (row.class_name) classes.insert(row.mark);
      for (const std::string& item : row.look_alikes)
        add_once(answer.look_alikes, item);
      answer.readings.push_back(std::move(row));
    }
  }
  // Two marks of a class on one part contradict each other.
  if (classes.size() > 1) put_in_doubt(answer.readings);
  if (found.matches.empty()) {
    if (is_name) readings.push_back(text::plain_spaces(text));
    for (const MarkPiece& piece : words->pieces)
      if (!is_name) readings.push_back(piece.words);
    for (const std::string& reading : readings)
      for (const std::string& near : near_marks(table, reading))
        add_once(answer.look_alikes, near);
  } else {
    answer.maker_mark = joined(found.letters);
    answer.not_read = joined(found.rest);
  }
  answer.reading = text::printable(fmt::format("{}", fmt::join(readings, " and ")));
  answer.part = *part ? *part : only_part(answer.readings);
  add_findings(answer);
  return answer;
}

} // namespace clampwright::specdb
