// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whatever is typed as a quantity, a number, a share or a pair of lengths: what is accepted is finite, in range, free
// of commas, and what we write of it is read as the same again; what is refused is refused helpfully.
#include <cmath>
#include <cstddef>
#include <cstdint>

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace clampwright::fuzz {

namespace {

using quantity::in_metres;
using quantity::Kind;
using quantity::Reading;

constexpr std::size_t k_longest_text = 200; // of read.cpp
constexpr Kind k_kinds[] = {Kind::torque, Kind::force,       Kind::stress, Kind::length,
                            Kind::angle,  Kind::temperature, Kind::time,   Kind::speed};

bool same(double one, double other) { return !(one < other) && !(one > other); }

// Zero, or between 1e-12 and 1e12.
bool is_in_range(double value) {
  const double size = std::abs(value);
  return std::isfinite(value) && size <= 1e12 && (size >= 1e-12 || !(size > 0)) &&
         !(std::signbit(value) && !(size > 0));
}

void must_be_plain(std::string_view text, const char* what) {
  must(text.find(',') == std::string_view::npos, fmt::format("a {} with a comma was read", what));
  must(text.size() <= k_longest_text, fmt::format("a {} of endless text was read", what));
  must(text::is_printable(text::plain_spaces(text)), fmt::format("a {} with control characters was read", what));
  must(std::ranges::any_of(text, text::is_digit), fmt::format("a {} without a digit was read", what));
}

void must_read_as(const std::string& written, const Reading& reading) {
  const auto again = quantity::read_quantity(written);
  must(again.has_value(), "what we write is refused: " + written);
  must(again->unit == reading.unit, "what we write has another unit: " + written);
  must(same(again->value, reading.value), "what we write has another value: " + written);
}

void must_be_sound(const Reading& reading, std::string_view text) {
  must_be_plain(text, "quantity");
  must(is_in_range(reading.value), "a quantity is out of range");
  must(std::isfinite(reading.si()), "a quantity is not finite in SI units");
  const Kind kind = reading.unit->kind;
  if (kind != Kind::angle && kind != Kind::temperature) must(reading.value >= 0, "a quantity is negative");
  if (kind == Kind::temperature) must(reading.si() >= 0, "a temperature is below absolute zero");
  must(!reading.mass_as_force || kind == Kind::torque, "a mass stands for a force outside a torque");

  must_read_as(fmt::format("{}{}", reading.value, reading.unit->name), reading);
  must_read_as(quantity::write_value(reading.value, *reading.unit, 17), reading);
  if (text.size() + 2 <= k_longest_text) must_read_as(fmt::format(" {}\t", text), reading);

  for (const Kind wanted : k_kinds) {
    const auto as_wanted = quantity::read_quantity(text, wanted);
    if (wanted == kind)
      must(as_wanted && as_wanted->unit == reading.unit && same(as_wanted->value, reading.value),
           "the wanted kind changes the reading");
    else
      must(!as_wanted && as_wanted.error().code == "wrong-kind", "a quantity of the wrong kind is not named so");
  }
}

void try_numbers(std::string_view text) {
  if (const auto number = quantity::read_number(text)) {
    must_be_plain(text, "number");
    must(is_in_range(*number), "a number is out of range");
    const auto again = quantity::read_number(fmt::format("{}", *number));
    must(again && same(*again, *number), "a number does not read back");
    must(!quantity::read_quantity(text), "a bare number is a quantity");
  } else {
    must_help(number.error());
  }
  if (const auto share = quantity::read_share(text)) {
    must_be_plain(text, "share");
    must(std::isfinite(*share) && !std::signbit(*share) && *share <= 1e12, "a share is out of range");
  } else {
    must_help(share.error());
  }
}

void try_lengths(std::string_view text) {
  if (const auto pair = quantity::read_length_pair(text)) {
    must_be_plain(text, "pair");
    for (const double length : {in_metres(pair->first), in_metres(pair->second)})
      must(std::isfinite(length) && length > 0, "a pair of lengths is out of range");
    must(!quantity::read_quantity(text), "a pair of lengths is one quantity");
  } else {
    must_help(pair.error());
  }
  if (const auto length = quantity::read_length(text))
    must(in_metres(*length) > 0, "a length is not above zero");
  else
    must_help(length.error());
}

} // namespace

void try_quantity(std::string_view text) {
  if (const auto reading = quantity::read_quantity(text)) {
    must_be_sound(*reading, text);
  } else {
    must_help(reading.error());
    for (const Kind wanted : k_kinds) {
      const auto as_wanted = quantity::read_quantity(text, wanted);
      must(!as_wanted, "a text is refused, but not where a kind is wanted");
      must_help(as_wanted.error());
    }
  }
  try_numbers(text);
  try_lengths(text);
}

} // namespace clampwright::fuzz

#ifndef CLAMPWRIGHT_REPLAY
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  clampwright::fuzz::try_quantity({reinterpret_cast<const char*>(data), size});
  return 0;
}
#endif
