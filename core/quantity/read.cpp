// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/read.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"

namespace clampwright::quantity {

namespace {

using text::is_digit;
using text::is_printable;
using text::plain_spaces;
using text::quotable;
using text::to_lower;

constexpr std::size_t k_longest_text = 200;
constexpr double k_smallest = 1e-12;
constexpr double k_largest = 1e12;

std::string without_commas(std::string_view text) {
  std::string out(text);
  std::erase(out, ',');
  return out;
}

std::string example(std::optional<Kind> wanted) {
  return fmt::format("write it like {}", example_of(wanted.value_or(Kind::torque)));
}

// A number at the start of a text, and what follows it.
struct Scanned {
  double value;
  std::string_view number;
  std::string_view rest;
  bool is_fraction = false;
};

std::string_view leading_digits(std::string_view text) {
  std::size_t n = 0;
  while (n < text.size() && is_digit(text[n]))
    ++n;
  return text.substr(0, n);
}

// [sign] digits [. digits] [e [sign] digits]
std::string_view leading_decimal(std::string_view text) {
  std::size_t n = 0;
  if (n < text.size() && (text[n] == '+' || text[n] == '-')) ++n;
  const std::size_t whole = leading_digits(text.substr(n)).size();
  n += whole;
  std::size_t part = 0;
  if (n < text.size() && text[n] == '.') {
    part = leading_digits(text.substr(n + 1)).size();
    if (whole + part > 0 && (part > 0 || whole > 0)) n += 1 + part;
  }
  if (whole + part == 0) return {};
  if (n < text.size() && (text[n] == 'e' || text[n] == 'E')) {
    std::size_t m = n + 1;
    if (m < text.size() && (text[m] == '+' || text[m] == '-')) ++m;
    const std::size_t exponent = leading_digits(text.substr(m)).size();
    if (exponent > 0) n = m + exponent;
  }
  return text.substr(0, n);
}

std::optional<double> to_double(std::string_view text) {
  if (text.starts_with('+')) text.remove_prefix(1);
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

// "3/8", "1 1/2", "1-1/2" at the start of a text.
std::optional<Scanned> leading_fraction(std::string_view text) {
  const std::string_view first = leading_digits(text);
  if (first.empty() || first.size() > 6) return std::nullopt;
  std::string_view rest = text.substr(first.size());
  std::string_view whole;
  std::string_view numerator = first;
  if (!rest.empty() && (rest[0] == ' ' || rest[0] == '-')) {
    whole = first;
    numerator = leading_digits(rest.substr(1));
    rest = rest.substr(1 + numerator.size());
  }
  if (numerator.empty() || numerator.size() > 6 || rest.empty() || rest[0] != '/') return std::nullopt;
  const std::string_view denominator = leading_digits(rest.substr(1));
  if (denominator.empty() || denominator.size() > 6) return std::nullopt;
  rest = rest.substr(1 + denominator.size());
  const double bottom = *to_double(denominator);
  if (bottom < 1) return std::nullopt;
  const double value = (whole.empty() ? 0.0 : *to_double(whole)) + *to_double(numerator) / bottom;
  return Scanned{value, text.substr(0, text.size() - rest.size()), rest, true};
}

// What follows the number, fraction or not, with which a text begins.
std::string after_number(const std::string& text) {
  if (const auto fraction = leading_fraction(text)) return std::string(fraction->rest);
  return text.substr(leading_decimal(text).size());
}

// What the readers work on: the spaces plain, and the minus sign of print a '-'.
std::string tidied(std::string_view original) {
  constexpr std::string_view k_minus = "−";
  std::string text = plain_spaces(original.substr(0, k_longest_text));
  if (text.starts_with(k_minus)) text.replace(0, k_minus.size(), "-");
  return text;
}

// Nothing may be read of a text of which only the beginning was looked at.
std::optional<Refusal> refuse_length(std::string_view original, std::string hint) {
  if (original.size() <= k_longest_text) return std::nullopt;
  return not_understood("too-long", fmt::format("the text has {} characters", original.size()), original,
                        std::move(hint));
}

// Zero, or of a size that can be meant.
bool is_in_range(double value) {
  const double size = std::abs(value);
  return size <= k_largest && (size >= k_smallest || !(size > 0));
}

// Refuses what no reading could make sense of, before any number is looked for.
std::optional<Refusal> refuse_at_sight(std::string_view text, std::string_view original, std::optional<Kind> wanted) {
  if (auto refusal = refuse_length(original, example(wanted))) return refusal;
  if (text.empty()) return not_understood("empty", "nothing was given", original, example(wanted));
  if (!is_printable(text))
    return not_understood("not-plain-text", "the text holds control characters or is not UTF-8", original,
                          example(wanted));
  if (const auto comma = text.find(','); comma != std::string_view::npos) {
    const std::string removed = without_commas(text);
    // Two commas, or a decimal point behind the comma: a decimal mark it cannot be.
    const std::size_t point = text.find('.', comma);
    const bool point_follows = point != std::string_view::npos && point > 0 && is_digit(text[point - 1]) &&
                               point + 1 < text.size() && is_digit(text[point + 1]);
    if (removed.size() + 1 < text.size() || point_follows)
      return not_understood("comma", "commas can be decimal points or thousands marks", original,
                            fmt::format("write the decimal point as a point and no thousands mark, like {}", removed));
    // As the decimal mark it makes any point before it a thousands mark.
    std::string as_point(text);
    as_point[comma] = '.';
    for (std::size_t at = comma; at-- > 0;)
      if (as_point[at] == '.') as_point.erase(at, 1);
    return not_understood(
        "comma", fmt::format("the comma can be read as {} or as {}", as_point, removed), original,
        fmt::format("write the decimal point as a point and no thousands mark: {} or {}", as_point, removed));
  }
  const std::string folded = to_lower(text);
  std::string_view unsigned_text = folded;
  if (unsigned_text.starts_with('+') || unsigned_text.starts_with('-')) unsigned_text.remove_prefix(1);
  if (unsigned_text.starts_with("nan") || unsigned_text.starts_with("inf") || unsigned_text.starts_with("∞"))
    return not_understood("not-finite", "that is not a finite number", original, example(wanted));
  if (unsigned_text.starts_with("0x"))
    return not_understood("hexadecimal", "hexadecimal numbers are not read", original, example(wanted));
  if (!unsigned_text.empty() && static_cast<unsigned char>(unsigned_text[0]) >= 0x80 && !unsigned_text.starts_with("−"))
    return not_understood("foreign-digits", "only the digits 0 to 9 are read, and fractions as 1/4", original,
                          example(wanted));
  return std::nullopt;
}

Result<Scanned> scan_number(std::string_view text, std::string_view original, std::optional<Kind> wanted) {
  if (auto refusal = refuse_at_sight(text, original, wanted)) return *refusal;
  if (auto fraction = leading_fraction(text)) return *fraction;
  const std::string_view number = leading_decimal(text);
  if (number.empty())
    return not_understood("not-a-number", fmt::format("\"{}\" does not begin with a number", quotable(text)), original,
                          example(wanted));
  const auto value = to_double(number);
  if (!value)
    return not_understood("out-of-range", fmt::format("the number {} is too large or too small", quotable(number)),
                          original, example(wanted));
  return Scanned{*value, number, text.substr(number.size())};
}

// "¼" to "¾" and the rarer "⅐" to "⅞".
bool begins_with_fraction_character(std::string_view text) {
  if (text.starts_with("¼") || text.starts_with("½") || text.starts_with("¾")) return true;
  return text.size() >= 3 && text.substr(0, 3) >= "⅐" && text.substr(0, 3) <= "⅞";
}

// What follows the number is not a unit but more number: "12.5.3", "20-25 Nm", "25±5", "1_000", "1’000", "5 ¼", "10^3".
bool continues_number(std::string_view rest) {
  if (rest.starts_with(' ')) rest.remove_prefix(1);
  if (rest.empty()) return false;
  if (rest.starts_with("±") || begins_with_fraction_character(rest)) return true;
  if (is_digit(rest[0]) || rest[0] == '_' || rest[0] == '\'' || rest[0] == '+' || rest[0] == ';') return true;
  if (rest.starts_with("/ ")) return true;
  if (rest[0] == '.') return true; // the number has had its point: "5..", "5.5."
  if (rest.starts_with("–") || rest.starts_with("to ") || rest.starts_with("x ") || rest.starts_with("×")) return true;
  // Whatever signs stand between, a digit behind them begins another number.
  if (rest[0] == 'x') rest.remove_prefix(1);
  const auto is_letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
  const auto next = std::ranges::find_if(rest, [&](char c) { return is_digit(c) || is_letter(c); });
  return next != rest.end() && is_digit(*next);
}

std::string range_text(const Reading& reading) { return fmt::format("{:.6g} {}", reading.value, reading.unit->name); }

std::optional<Refusal> refuse_range(const Reading& reading, std::string_view original) {
  const Kind kind = reading.unit->kind;
  const bool may_be_negative = kind == Kind::angle || kind == Kind::temperature;
  if (!may_be_negative && reading.value < 0)
    return not_understood("out-of-range",
                          fmt::format("{} was understood; a {} is not negative", range_text(reading), kind_name(kind)),
                          original, example(kind));
  if (kind == Kind::temperature && reading.si() < 0)
    return not_understood("out-of-range", fmt::format("{} lies below absolute zero", range_text(reading)), original,
                          example(kind));
  if (!is_in_range(reading.value))
    return not_understood("out-of-range", fmt::format("{} is beyond anything that can be meant", range_text(reading)),
                          original, example(kind));
  return std::nullopt;
}

Result<Reading> read(std::string_view original, std::optional<Kind> wanted) {
  const std::string text = tidied(original);
  const auto scanned = scan_number(text, original, wanted);
  if (!scanned) return Refusal(scanned.error());
  if (continues_number(scanned->rest))
    return not_understood(
        "second-value",
        fmt::format("after {} comes \"{}\": one value with one unit is read", scanned->number, quotable(scanned->rest)),
        original, example(wanted));
  std::string_view unit_text = scanned->rest;
  if (unit_text.starts_with(' ')) unit_text.remove_prefix(1);
  if (unit_text.empty()) {
    const std::string_view unit = wanted ? example_of(*wanted) : example_of(Kind::torque);
    return not_understood("bare-number", fmt::format("the number {} carries no unit", scanned->number), original,
                          fmt::format("write the unit with it, like {}", unit));
  }
  if (unit_text == "%")
    return not_understood("wrong-kind", fmt::format("{}% is a share, not a quantity", scanned->number), original,
                          example(wanted));
  auto spelling = read_unit(unit_text);
  if (!spelling) {
    Problem problem = spelling.error();
    problem.message = fmt::format("the number {} was understood; {}", scanned->number, quotable(problem.message));
    problem.input = quotable(original);
    if (problem.code == "unknown-unit")
      problem.hint = wanted ? fmt::format("write it like {}; the units of {} are {}", example_of(*wanted),
                                          kind_name(*wanted), unit_names(*wanted))
                            : fmt::format("write it like {}; {}", example_of(Kind::torque), problem.hint);
    return Refusal(std::move(problem));
  }
  // The sum turns a minus zero into zero.
  const Reading reading{scanned->value + 0.0, spelling->unit, spelling->mass_as_force};
  if (wanted && reading.unit->kind != *wanted)
    return not_understood("wrong-kind",
                          fmt::format("{} {} was understood, a {}; a {} is wanted", scanned->number, reading.unit->name,
                                      kind_name(reading.unit->kind), kind_name(*wanted)),
                          original, example(wanted));
  if (scanned->is_fraction && reading.unit->kind != Kind::length)
    return not_understood("fraction", fmt::format("{} is a fraction; fractions are read for lengths", scanned->number),
                          original, fmt::format("write {:.6g}{}", scanned->value, reading.unit->name));
  if (auto refusal = refuse_range(reading, original)) return *refusal;
  return reading;
}

// `original`, tidied to `text`, is one number and nothing else.
Result<double> plain_number(std::string_view text, std::string_view original, std::string_view like) {
  const std::string hint = fmt::format("write a plain number, like {}", like);
  if (auto refusal = refuse_at_sight(text, original, std::nullopt)) {
    Problem problem = refusal->value();
    problem.hint = hint;
    return Refusal(std::move(problem));
  }
  const std::string_view number = leading_decimal(text);
  if (number.empty() || number.size() < text.size())
    return not_understood("not-a-number", "a plain number is wanted", original, hint);
  const auto value = to_double(number);
  if (!value || !is_in_range(*value))
    return not_understood("out-of-range", fmt::format("the number {} is too large or too small", quotable(number)),
                          original, hint);
  return *value + 0.0; // the sum turns a minus zero into zero
}

} // namespace

Result<Reading> read_quantity(std::string_view text) { return read(text, std::nullopt); }
Result<Reading> read_quantity(std::string_view text, Kind wanted) { return read(text, wanted); }

Result<Torque> read_torque(std::string_view text) {
  return read(text, Kind::torque).map([](const Reading& reading) { return newton_metres(reading.si()); });
}

Result<Force> read_force(std::string_view text) {
  return read(text, Kind::force).map([](const Reading& reading) { return newtons(reading.si()); });
}

Result<Length> read_length(std::string_view text) {
  const auto reading = read(text, Kind::length);
  if (!reading) return Refusal(reading.error());
  const double length = reading->si();
  if (!(length > 0))
    return not_understood("out-of-range", "a length of nothing was understood", text,
                          "write a length above zero, like 10mm");
  return metres(length);
}

// Degrees through their own maker, so that 15° is the angle that the code calls so.
Result<Angle> read_angle(std::string_view text) {
  return read(text, Kind::angle).map([](const Reading& reading) {
    return reading.unit == &unit_named("deg") ? degrees(reading.value) : radians(reading.si());
  });
}

Result<Stress> read_stress(std::string_view text) {
  const auto reading = read(text, Kind::stress);
  if (!reading) return Refusal(reading.error());
  if (!(reading->si() > 0))
    return not_understood("out-of-range", "a stress of nothing was understood", text,
                          "write a stress above zero, like 60MPa");
  return pascals(reading->si());
}

Result<double> read_number(std::string_view original) { return plain_number(tidied(original), original, "0.12"); }

Result<int> read_count(std::string_view text, int least, int most) {
  const std::string hint = fmt::format("write a whole number from {} to {}", least, most);
  const auto number = read_number(text);
  if (!number) {
    Problem problem = number.error();
    problem.hint = hint;
    return Refusal(std::move(problem));
  }
  if (!(*number >= least && *number <= most) || std::floor(*number) < *number)
    return not_understood("out-of-range",
                          fmt::format("a number from {} to {} is wanted; {:.6g} was understood", least, most, *number),
                          text, hint);
  return static_cast<int>(*number);
}

Result<double> read_share(std::string_view original) {
  std::string text = tidied(original);
  const bool percent = text.ends_with('%');
  if (percent) {
    text.pop_back();
    if (text.ends_with(' ')) text.pop_back();
  }
  const auto number = plain_number(text, original, "0.75 or 75%");
  if (!number) return number;
  if (*number < 0)
    return not_understood("out-of-range", fmt::format("{:.6g} was understood; a share is not negative", *number),
                          original, "write a share of one, like 0.75 or 75%");
  return percent ? *number / 100.0 : *number;
}

Result<LengthPair> read_length_pair(std::string_view original) {
  const std::string text = plain_spaces(original.substr(0, k_longest_text));
  const std::string hint = "write outer by inner diameter, like 24x13mm";
  if (auto refusal = refuse_length(original, hint)) return *refusal;
  std::size_t at = text.find("×");
  std::size_t width = 2;
  if (at == std::string::npos) at = text.find_first_of("xX"), width = 1;
  if (at == std::string::npos)
    return not_understood("not-understood", "two lengths joined by x are wanted", original, hint);
  const auto second = read_length(text.substr(at + width));
  if (!second) return Refusal(second.error());
  std::string first_text = plain_spaces(text.substr(0, at));
  // "24x13mm": the unit of the second stands for both.
  if (after_number(first_text).empty()) first_text += after_number(plain_spaces(text.substr(at + width)));
  const auto first = read_length(first_text);
  if (!first) return Refusal(first.error());
  return LengthPair{*first, *second};
}

} // namespace clampwright::quantity
