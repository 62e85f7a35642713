// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the cited checks share: the tables of the program, asked as a user would ask them, and figures as they stand in
// print, whose number of places is part of what they say.
#pragma once

#include "specdb/catalogue/catalogue.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/case_question.hpp"

#include <charconv>
#include <cmath>
#include <string_view>

namespace clampwright::test {

// How a figure of a table in this folder is known.
enum class How { seen, memory };

[[nodiscard]] inline const specdb::Catalogue& catalogue() {
  static const specdb::Catalogue opened;
  return opened;
}

[[nodiscard]] inline specdb::ThreadEntry thread_named(std::string_view designation) {
  return specdb::find_thread(catalogue(), designation).value();
}

[[nodiscard]] inline strength::Strength strength_named(std::string_view class_name, std::string_view designation) {
  return specdb::find_strength(catalogue(), class_name, thread_named(designation).thread).value();
}

[[nodiscard]] inline specdb::ResolvedCase resolved(const specdb::CaseQuestion& question) {
  return specdb::resolve(catalogue(), question).value();
}

// "22.5": the value 22.5 and the step of its last place, 0.1.
struct Printed {
  double value;
  double last_place;
};

[[nodiscard]] inline Printed printed(std::string_view text) {
  double value = std::nan("");
  std::from_chars(text.data(), text.data() + text.size(), value);
  const auto point = text.find('.');
  const auto places = point == std::string_view::npos ? 0U : text.size() - point - 1;
  return {value, std::pow(10.0, -static_cast<double>(places))};
}

// By how many steps of its last place the printed figure is off.
[[nodiscard]] inline double places_off(std::string_view text, double value) {
  const Printed figure = printed(text);
  return std::abs(value - figure.value) / figure.last_place;
}

// Half a step is rounding; the rest is for the last bits of the figures themselves.
inline constexpr double k_rounding = 0.5 + 1e-6;

} // namespace clampwright::test
