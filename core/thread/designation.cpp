// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/designation.hpp"

#include <algorithm>
#include <array>
#include <charconv>

#include <fmt/format.h>

#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::thread {

namespace {

using text::is_digit;
using text::quotable;

constexpr std::string_view k_examples =
    "write it like M10, M10x1.25, M14x1.5-LH, 1/4-28 UNF, #10-32 UNF, 5/16 BSW, 2 BA";

// Takes pieces off the front of a text, ignoring case and spaces between pieces.
class Cursor {
 public:
  explicit Cursor(std::string_view text) : rest_(text) {}

  [[nodiscard]] std::string_view rest() const { return rest_; }
  [[nodiscard]] bool at_end() const { return rest_.empty(); }
  [[nodiscard]] char next() const { return rest_.empty() ? '\0' : rest_[0]; }

  void skip_spaces() {
    while (next() == ' ')
      rest_.remove_prefix(1);
  }

  bool take(std::string_view word) {
    if (rest_.size() < word.size() || !text::equal_fold(rest_.substr(0, word.size()), word)) return false;
    rest_.remove_prefix(word.size());
    return true;
  }

  // A word that no further letter follows.
  bool take_word(std::string_view word) {
    const std::string_view before = rest_;
    if (!take(word)) return false;
    const char c = next();
    if ((c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z')) {
      rest_ = before;
      return false;
    }
    return true;
  }

  std::string_view take_digits() {
    std::size_t n = 0;
    while (n < rest_.size() && is_digit(rest_[n]))
      ++n;
    const std::string_view digits = rest_.substr(0, n);
    rest_.remove_prefix(n);
    return digits;
  }

  // digits [. digits] or . digits
  std::string_view take_decimal() {
    const std::string_view before = rest_;
    const auto whole = take_digits();
    std::size_t part = 0;
    if (next() == '.') {
      rest_.remove_prefix(1);
      part = take_digits().size();
    }
    if (whole.empty() && part == 0) {
      rest_ = before;
      return {};
    }
    return before.substr(0, before.size() - rest_.size());
  }

 private:
  std::string_view rest_;
};

std::optional<double> to_number(std::string_view text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.size() > 12 || error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

bool take_times(Cursor& cursor) { return cursor.take("x") || cursor.take("×"); }

// One tolerance class: "6g", "6g6g", "6H/6g" (ISO 965-1: grade 3 to 9 and position), "2A" (ASME B1.1: 1 to 3, A or B).
// Nothing where another letter or digit follows.
std::string take_tolerance(Cursor& cursor, Form form) {
  const std::string_view letters = form == Form::metric ? "efghGH" : "ABab";
  const std::string_view digits = form == Form::metric ? "3456789" : "123";
  const std::string_view start = cursor.rest();
  std::string_view rest = start;
  const auto take_one = [&] {
    if (rest.size() < 2 || digits.find(rest[0]) == std::string_view::npos ||
        letters.find(rest[1]) == std::string_view::npos)
      return false;
    rest.remove_prefix(2);
    return true;
  };
  if (!take_one()) return {};
  (void)take_one();
  if (rest.starts_with('/')) {
    rest.remove_prefix(1);
    if (!take_one()) return {};
    (void)take_one();
  }
  if (!rest.empty() && rest[0] != ' ' && rest[0] != '-') return {};
  const std::string_view taken = start.substr(0, start.size() - rest.size());
  (void)cursor.take(taken);
  return std::string(taken);
}

// "-6g", "-6g6g", "-6H/6g", "-2A", "-LH" and the like, in any order, until the end.
bool take_suffixes(Cursor& cursor, Designation& designation) {
  bool hand_given = false;
  while (!cursor.at_end()) {
    cursor.skip_spaces();
    if (cursor.take("-")) cursor.skip_spaces();
    const bool left = cursor.take_word("LH") || cursor.take_word("left");
    if (left || cursor.take_word("RH") || cursor.take_word("right")) {
      if (hand_given) return false;
      hand_given = true;
      designation.hand = left ? Hand::left : Hand::right;
      continue;
    }
    if (!designation.tolerance.empty()) return false;
    designation.tolerance = take_tolerance(cursor, designation.form);
    if (designation.tolerance.empty()) return false;
  }
  return true;
}

Refusal trailing(std::string_view text, std::string_view understood, std::string_view rest) {
  return not_understood(
      "not-understood",
      fmt::format("{} was understood as the thread; \"{}\" behind it was not", understood, quotable(rest)), text,
      "a strength class goes to --class, a length is not part of a thread; " + std::string(k_examples));
}

Result<Designation> read_metric(std::string_view text, Cursor cursor) {
  Designation out;
  cursor.skip_spaces();
  const auto diameter = cursor.take_decimal();
  const auto d = to_number(diameter);
  if (diameter.empty() || !d || !(*d > 0))
    return not_understood("not-understood", "after M the diameter in millimetres is missing", text,
                          std::string(k_examples));
  out.diameter_mm = *d;
  out.size = fmt::format("M{}", quantity::write_number(*d, 6));
  cursor.skip_spaces();
  std::string understood = out.size;
  if (take_times(cursor)) {
    cursor.skip_spaces();
    const auto pitch = cursor.take_decimal();
    const auto p = to_number(pitch);
    if (pitch.empty() || !p || !(*p > 0))
      return not_understood("not-understood",
                            fmt::format("{} was understood; after x the pitch in millimetres is missing", out.size),
                            text, std::string(k_examples));
    out.pitch_mm = *p;
    understood = fmt::format("{}x{}", out.size, quantity::write_number(*p, 6));
    if (*p >= *d)
      return not_understood("out-of-range", fmt::format("{}: the pitch is not smaller than the diameter", understood),
                            text, "write diameter x pitch, like M10x1.25");
    Cursor after = cursor;
    after.skip_spaces();
    if (take_times(after))
      return not_understood("not-understood", fmt::format("{} was understood; a second x follows", understood), text,
                            "a length is not part of a thread: write M10x1.25 alone");
  }
  const std::string_view rest = cursor.rest();
  if (!take_suffixes(cursor, out)) return trailing(text, understood, rest);
  return out;
}

constexpr std::array<std::string_view, 7> k_inch_series{"UNEF", "UNC", "UNF", "BSW", "BSF", "BSC", "BA"};

bool take_series(Cursor& cursor, Designation& out) {
  for (const std::string_view series : k_inch_series) {
    if (!cursor.take_word(series)) continue;
    out.series = series;
    if (series == "BSW" || series == "BSF") out.form = Form::whitworth;
    if (series == "BSC") out.form = Form::bsc;
    if (series == "BA") out.form = Form::ba;
    return true;
  }
  return false;
}

// "1/4", "1 1/4", "1-1/4", "#10", "10", "0.25"; a number size keeps its '#'.
bool take_inch_size(Cursor& cursor, Designation& out) {
  if (cursor.take("#") || cursor.take_word("No.") || cursor.take_word("No")) {
    cursor.skip_spaces();
    const auto digits = cursor.take_digits();
    if (digits.empty() || digits.size() > 3) return false;
    out.size = fmt::format("#{}", digits);
    return true;
  }
  const auto first = cursor.take_digits();
  if (first.size() > 3) return false;
  if (cursor.next() == '.') { // 0.25, .25
    Cursor part = cursor;
    (void)part.take(".");
    const auto decimals = part.take_digits();
    if (decimals.empty() || decimals.size() > 5) return false;
    out.size = fmt::format("{}.{}", first.empty() ? "0" : first, decimals);
    cursor = part;
    return true;
  }
  if (first.empty()) return false;
  out.size = first;
  Cursor fraction = cursor;
  const bool joined = fraction.take("-") || fraction.take(" ");
  const auto numerator = joined ? fraction.take_digits() : first;
  if (numerator.size() > 3) return false;
  if (!numerator.empty() && fraction.take("/")) {
    const auto denominator = fraction.take_digits();
    if (denominator.empty() || denominator.size() > 2) return false;
    out.size =
        joined ? fmt::format("{} {}/{}", first, numerator, denominator) : fmt::format("{}/{}", numerator, denominator);
    cursor = fraction;
  }
  return true;
}

Result<Designation> read_inch(std::string_view text, Cursor cursor) {
  Designation out;
  out.form = Form::unified;
  if (!take_inch_size(cursor, out))
    return not_understood("not-understood", fmt::format("\"{}\" does not begin like a thread", quotable(text)), text,
                          std::string(k_examples));
  Cursor behind_unit = cursor;
  behind_unit.skip_spaces();
  if (behind_unit.take("\"") || behind_unit.take_word("in")) cursor = behind_unit;
  cursor.skip_spaces();
  bool series = take_series(cursor, out);
  if (!series) {
    Cursor pitch = cursor;
    if (pitch.take("-")) {
      pitch.skip_spaces();
      const auto digits = pitch.take_decimal();
      const auto tpi = to_number(digits);
      const bool count = tpi && *tpi > 0;
      const char after = pitch.next();
      const bool tolerance = after == 'A' || after == 'B' || after == 'a' || after == 'b';
      if (count && !(tolerance && digits.size() == 1)) {
        out.tpi = *tpi;
        cursor = pitch;
        cursor.skip_spaces();
        series = take_series(cursor, out);
      }
    }
  }
  std::string understood = out.size;
  if (out.tpi) understood += fmt::format("-{}", quantity::write_number(*out.tpi, 6));
  if (series) understood += " " + out.series;
  const std::string_view rest = cursor.rest();
  if (!take_suffixes(cursor, out)) return trailing(text, understood, rest);
  return out;
}

} // namespace

std::string_view form_name(Form form) {
  switch (form) {
  case Form::metric:
    return "metric";
  case Form::unified:
    return "unified";
  case Form::whitworth:
    return "whitworth";
  case Form::ba:
    return "ba";
  case Form::bsc:
    return "bsc";
  }
  return "";
}

std::string_view form_standard(Form form) {
  switch (form) {
  case Form::metric:
    return "ISO 68-1";
  case Form::unified:
    return "ASME B1.1";
  case Form::whitworth:
    return "BS 84";
  case Form::ba:
    return "BS 93";
  case Form::bsc:
    return "BS 811";
  }
  return "";
}

std::string_view hand_name(Hand hand) { return hand == Hand::left ? "left" : "right"; }

Result<Designation> read_designation(std::string_view text) {
  auto designation = read_designation_or_size(text);
  if (!designation || designation->is_complete()) return designation;
  return not_understood("pitch-missing", fmt::format("the inch size {} has no pitch or series", designation->size),
                        text, "write threads per inch or series with it, like 1/4-20, 1/4-28 UNF, 5/16 BSW");
}

Result<Designation> read_designation_or_size(std::string_view original) {
  constexpr std::size_t k_longest = 60;
  const std::string text = text::plain_spaces(original.substr(0, k_longest));
  // Of a longer text only the beginning was looked at: behind the spaces may stand anything.
  if (original.size() > k_longest || !text::is_printable(text))
    return not_understood("not-understood", "that is too long or not plain text", original, std::string(k_examples));
  if (text.empty()) return not_understood("empty", "no thread was given", original, std::string(k_examples));
  if (const auto comma = text.find(','); comma != std::string::npos) {
    std::string as_point = text;
    as_point[comma] = '.';
    std::string removed = text;
    std::erase(removed, ',');
    if (removed.size() + 1 < text.size())
      return not_understood("comma", "there is more than one comma", original, std::string(k_examples));
    return not_understood("comma", fmt::format("the comma can be read as {} or as {}", as_point, removed), original,
                          fmt::format("write the decimal point as a point: {}", as_point));
  }
  Cursor cursor(text);
  if (cursor.take("M")) {
    const char next = cursor.next();
    if (is_digit(next) || next == ' ' || next == '.' || next == '\0') return read_metric(original, cursor);
    return not_understood("not-understood", fmt::format("\"{}\" does not begin like a thread", quotable(text)),
                          original, std::string(k_examples));
  }
  return read_inch(original, Cursor(text));
}

std::string write_designation(const Thread& thread) {
  return thread.hand == Hand::left ? thread.designation + "-LH" : thread.designation;
}

} // namespace clampwright::thread
