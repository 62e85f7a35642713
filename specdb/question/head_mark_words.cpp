// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/head_mark_words.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

namespace {

using Words = std::vector<std::string>;
using text::is_digit;

struct Alias {
  std::string_view typed;
  std::string_view means;
};

// clang-format off
constexpr std::array k_numbers{
    Alias{"no", "0"},    Alias{"zero", "0"}, Alias{"one", "1"},  Alias{"single", "1"}, Alias{"two", "2"},
    Alias{"double", "2"}, Alias{"pair", "2"}, Alias{"three", "3"}, Alias{"four", "4"},  Alias{"five", "5"},
    Alias{"six", "6"},   Alias{"seven", "7"}, Alias{"eight", "8"}, Alias{"nine", "9"},  Alias{"ten", "10"},
    Alias{"eleven", "11"}, Alias{"twelve", "12"},
};

// Long marks that can be counted.
constexpr std::array k_shapes{
    Alias{"line", "line"}, Alias{"lines", "line"},   Alias{"stroke", "line"}, Alias{"strokes", "line"},
    Alias{"slash", "line"}, Alias{"slashes", "line"}, Alias{"dash", "dash"},   Alias{"dashes", "dash"},
    Alias{"hyphen", "dash"}, Alias{"bar", "bar"},     Alias{"bars", "bar"},    Alias{"dot", "dot"},
    Alias{"dots", "dot"},  Alias{"point", "dot"},
};

constexpr std::array k_signs{
    Alias{"x", "cross"},          Alias{"×", "cross"},        Alias{"cross", "cross"},    Alias{"crosses", "cross"},
    Alias{"asterisk", "cross"},   Alias{"*", "cross"},        Alias{"star", "cross"},     Alias{"+", "plus"},
    Alias{"plus", "plus"},        Alias{"o", "circle"},       Alias{"○", "circle"},       Alias{"circle", "circle"},
    Alias{"ring", "circle"},      Alias{"□", "square"},       Alias{"square", "square"},  Alias{"△", "triangle"},
    Alias{"▲", "triangle"},       Alias{"triangle", "triangle"}, Alias{"arrow", "arrow"}, Alias{"<-", "arrow"},
    Alias{"<--", "arrow"},        Alias{"<", "arrow"},        Alias{"<=", "arrow"},       Alias{"←", "arrow"},
    Alias{"↺", "arrow"},          Alias{"->", "arrow to the right"}, Alias{"-->", "arrow to the right"},
    Alias{"→", "arrow to the right"}, Alias{"↻", "arrow to the right"}, Alias{"notch", "notch"},
    Alias{"notches", "notch"},    Alias{"notched", "notch"},  Alias{"groove", "notch"},   Alias{"nick", "notch"},
    Alias{"nicks", "notch"},      Alias{"lh", "L"},           Alias{"l", "L"},            Alias{"left", "L"}, Alias{"left-hand", "L"}, Alias{"left-handed", "L"},
    Alias{"|||", "3 lines"},      Alias{"none", "no mark"},   Alias{"nothing", "no mark"}, Alias{"unmarked", "no mark"},
    Alias{"blank", "no mark"},    Alias{"plain", "no mark"},  Alias{"nil", "no mark"},
};

constexpr std::array k_parts{
    Alias{"bolt", "bolt"},   Alias{"bolts", "bolt"}, Alias{"screw", "screw"}, Alias{"screws", "screw"},
    Alias{"stud", "stud"},   Alias{"studs", "stud"}, Alias{"nut", "nut"},     Alias{"nuts", "nut"},
};

// Words that say how a sign was made or where it stands, and not which it is.
constexpr std::array<std::string_view, 31> k_fillers{
    "a",       "an",     "the",     "on",       "of",      "at",     "and",     "with",   "is",      "head",
    "mark",    "marks",  "marked",  "marking",  "stamped", "stamp",  "raised",  "recessed", "indented", "radial",
    "o'clock", "oclock", "symbol",  "hand",     "hours",   "thread", "apart",   "in",     "sign",    "any",     "class"};
// clang-format on

template<class Table>
std::optional<std::string> meaning_of(const Table& table, std::string_view typed) {
  const auto row = std::ranges::find_if(table, [&](const Alias& alias) { return alias.typed == typed; });
  return row == table.end() ? std::nullopt : std::optional(std::string(row->means));
}

bool is_filler(std::string_view word) { return std::ranges::find(k_fillers, word) != k_fillers.end(); }

bool is_number(std::string_view word) { return !word.empty() && std::ranges::all_of(word, is_digit); }

// A count or an hour: at most two figures, or a word.
std::optional<std::string> number_in(std::string_view word) {
  if (is_number(word) && word.size() <= 2) return std::string(word);
  return meaning_of(k_numbers, word);
}

std::optional<std::string> hour_in(std::string_view word) {
  const auto number = number_in(word);
  const bool is_hour = number && (number->size() == 1 ? *number != "0" : *number >= "10" && *number <= "12");
  return is_hour ? number : std::nullopt;
}

// Commas between figures are dots; what else stands between words is a space.
Words words_of(std::string_view mark) {
  Words words(1);
  for (std::size_t i = 0; i < mark.size(); ++i) {
    const char c = mark[i];
    const bool in_figures = i > 0 && i + 1 < mark.size() && is_digit(mark[i - 1]) && is_digit(mark[i + 1]);
    const bool separates = c == ' ' || c == '"' || c == ';' || c == '(' || c == ')' || (c == ',' && !in_figures) ||
                           (c == '.' && (i + 1 == mark.size() || mark[i + 1] == ' '));
    if (!separates)
      words.back() += c == ',' ? '.' : c;
    else if (!words.back().empty())
      words.emplace_back();
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

// One dash for every kind of dash, a plain apostrophe, and the middle dot of a class.
std::string plain_signs(std::string text) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 7> k_stand_ins{
      {{"−", "-"}, {"–", "-"}, {"—", "-"}, {"‑", "-"}, {"’", "'"}, {"·", "."}, {"°", " degrees "}}};
  for (const auto& [sign, plain] : k_stand_ins)
    for (std::size_t at = 0; (at = text.find(sign, at)) != std::string::npos; at += plain.size())
      text.replace(at, sign.size(), plain);
  return text;
}

class MarkReader {
 public:
  explicit MarkReader(const Words& words) : words_(words) {
    for (const std::string& word : words)
      lower_.push_back(text::to_lower(word));
  }

  MarkWords read() {
    while (at_ < words_.size())
      step();
    add_clock_mark();
    add_spacing();
    add_underline();
    // Where something was seen, the head is not empty.
    if (out_.pieces.empty() && counted_nothing_) sign("no mark");
    std::erase_if(out_.pieces, [&](const MarkPiece& p) { return p.words == "no mark" && out_.pieces.size() > 1; });
    if (out_.pieces.empty()) sign(words_.empty() || out_.part ? "no mark" : words_.front());
    return std::move(out_);
  }

 private:
  void sign(std::string words) { out_.pieces.push_back({std::move(words), true}); }

  // The next word that is no filler, from `from` on.
  std::size_t past_fillers(std::size_t from) const {
    while (from < lower_.size() && is_filler(lower_[from]))
      ++from;
    return from;
  }

  // Does the number at that place count a sign? "dot 3 lines" does, "dot 12 bar 8" has the hours of both.
  bool counts(std::size_t number) const {
    const std::size_t shape = past_fillers(number + 1);
    return meaning_of(k_shapes, lower(shape)) && !number_in(lower(past_fillers(shape + 1)));
  }

  std::string_view lower(std::size_t at) const { return at < lower_.size() ? std::string_view(lower_[at]) : ""; }

  void step() {
    const std::string word = lower_[at_];
    if (const auto part = meaning_of(k_parts, word)) {
      out_.part = *part;
      ++at_;
    } else if (take_dashes() || take_counted(word) || take_shape(word, 0) || take_words_about(word)) {
    } else if (const auto known = meaning_of(k_signs, word)) {
      // "left-hand" is one thing said twice.
      if (!(*known == "L" && !out_.pieces.empty() && out_.pieces.back().words == "L")) sign(*known);
      if (word == "x" || word == "o") out_.pieces.back().letter = words_[at_];
      ++at_;
    } else {
      if (!is_filler(words_[at_].size() == 1 ? words_[at_] : word)) out_.pieces.push_back({words_[at_], false});
      ++at_;
    }
  }

  // "-", "- -", "--"
  bool take_dashes() {
    int count = 0;
    while (at_ < lower_.size() && lower_[at_].find_first_not_of('-') == std::string::npos) {
      count += static_cast<int>(lower_[at_].size());
      ++at_;
    }
    if (count == 0) return false;
    sign(fmt::format("{} dash{}", count, count == 1 ? "" : "es"));
    return true;
  }

  // "3 lines", "six radial lines", "no mark", "60 degrees"
  bool take_counted(std::string_view word) {
    const auto number = number_in(word);
    if (!number && !is_number(word)) return false;
    if (hour_in(word) && (lower(at_ + 1) == "o'clock" || lower(at_ + 1) == "oclock")) {
      hour_before_ = *number; // "4 o'clock bar"
      at_ += 2;
      return true;
    }
    const std::size_t start = at_;
    ++at_;
    const bool spaced = take_spacing(); // "six equally spaced lines"
    const std::size_t shape = past_fillers(at_);
    at_ = start;
    if (spaced && !meaning_of(k_shapes, lower(shape))) spacing_.clear();
    if (lower(at_ + 1).starts_with("deg")) {
      spacing_ = "equally";
      at_ += 2;
      return true;
    }
    if (!number) return false;
    if (*number == "0" && word == "no") {
      counted_nothing_ = true;
      at_ = meaning_of(k_shapes, lower(shape)) ? shape + 1 : std::max(shape, at_ + 1);
      return true;
    }
    if (!meaning_of(k_shapes, lower(shape))) return false;
    at_ = shape;
    if (*number == "0") {
      counted_nothing_ = true;
      ++at_;
      return true;
    }
    int count = 0;
    for (const char c : *number)
      count = 10 * count + (c - '0');
    return take_shape(lower(shape), count);
  }

  // A line, dash, bar or dot, with its hour if one follows; a count of 0 was not said.
  bool take_shape(std::string_view word, int count) {
    const auto shape = meaning_of(k_shapes, word);
    if (!shape) return false;
    const bool uncounted = count == 0 && word.ends_with('s');
    count = std::max(count, 1);
    ++at_;
    const std::size_t next = past_fillers(at_);
    auto hour = hour_in(lower(next));
    bool is_hour = hour && !counts(next) && !lower(next + 1).starts_with("deg");
    if (is_hour) {
      at_ = next + 1;
    } else if (!hour_before_.empty()) {
      is_hour = true;
      hour = std::exchange(hour_before_, {});
    }
    if (*shape == "dot") {
      dot_ = true;
      if (is_hour && *hour != "12") dot_hour_ = *hour;
      return true;
    }
    if (is_hour) {
      bar_hour_ = *hour;
      bars_ = count;
      return true;
    }
    if (dot_ && count == 1) {
      bars_ = count;
      bar_hour_ = "?";
      return true;
    }
    const std::string noun = *shape == "bar" ? "dash" : *shape;
    if (uncounted)
      sign(noun == "dash" ? "dashes" : "lines");
    else
      sign(fmt::format("{} {}{}", count, noun, count == 1 ? "" : noun == "dash" ? "es" : "s"));
    return true;
  }

  // "equally spaced", "not equally spaced"
  bool take_spacing() {
    const bool negated = lower(at_) == "not";
    const std::string_view word = lower(negated ? at_ + 1 : at_);
    const bool even = word == "equally" || word == "evenly" || word == "equal" || word == "even";
    const bool uneven = word == "unequally" || word == "unevenly" || word == "unequal" || word == "uneven";
    if (!even && (!uneven || negated)) return false;
    spacing_ = even && !negated ? "equally" : "unequally";
    at_ += negated ? 2 : 1;
    if (lower(at_) == "spaced") ++at_;
    return true;
  }

  bool take_words_about(std::string_view word) {
    if (take_spacing()) return true;
    if (word == "underlined" || word == "underline" || word == "underscored")
      underlined_ = true;
    else if (word != "spaced" && word != "spacing")
      return false;
    ++at_;
    return true;
  }

  void add_clock_mark() {
    if (!bar_hour_.empty() && bar_hour_ != "?")
      sign(fmt::format("{} at {} o'clock", bars_ == 1 ? "bar" : fmt::format("{} bars", bars_), bar_hour_));
    else if (!dot_hour_.empty())
      sign(fmt::format("dot at {} o'clock", dot_hour_));
    else if (bar_hour_ == "?")
      sign("bar at an hour");
    else if (dot_)
      sign("dot");
    if (!hour_before_.empty()) sign(hour_before_ + " o'clock");
  }

  void add_spacing() {
    if (spacing_.empty()) return;
    for (MarkPiece& piece : out_.pieces)
      if (piece.is_sign && piece.words.ends_with(" lines")) piece.words += fmt::format(" {} spaced", spacing_);
  }

  // "underlined 12.9", "12.9 underlined", "_12.9_"
  void add_underline() {
    for (MarkPiece& piece : out_.pieces) {
      if (piece.is_sign || piece.words.find_first_of("0123456789") == std::string::npos) continue;
      const bool marked = piece.words.find('_') != std::string::npos;
      std::erase(piece.words, '_');
      if (marked || underlined_) piece = {"underlined " + piece.words, false};
    }
  }

  const Words& words_;
  Words lower_;
  std::size_t at_ = 0;
  MarkWords out_;
  bool counted_nothing_ = false;
  bool underlined_ = false;
  bool dot_ = false;
  std::string hour_before_; // said before the sign that stands there
  std::string dot_hour_;
  std::string bar_hour_; // "?" where a bar stands beside a dot and no hour was said
  int bars_ = 1;
  std::string spacing_;
};

} // namespace

std::optional<std::string> part_named(std::string_view word) { return meaning_of(k_parts, text::to_lower(word)); }

Result<MarkWords> read_mark_words(std::string_view original) {
  constexpr std::size_t k_longest = 100;
  constexpr const char* k_hint =
      "write what stands on the head, like 8.8, A2-70, \"3 lines\", \"XYZ 10.9\", \"dot 12 bar 8\", none";
  if (original.size() > k_longest)
    return not_understood("not-understood", "that is too long for a mark", original, k_hint);
  const std::string plain = text::plain_spaces(original);
  if (!text::is_printable(plain)) return not_understood("not-understood", "that is not plain text", original, k_hint);
  const Words words = words_of(text::plain_spaces(plain_signs(plain)));
  return MarkReader(words).read();
}

} // namespace clampwright::specdb
