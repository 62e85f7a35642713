// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/problem/problem.hpp"
#include "core/quantity/read.hpp"

#include <string>
#include <string_view>

namespace clampwright::test {

// The refusal in a result; a problem of code "answered" where there is an answer, so that a table of refusals can be
// walked without a branch.
template<class T>
[[nodiscard]] Problem problem_of(const Result<T>& result) {
  if (result) return Problem{Trouble::internal, "answered", {}, {}, {}, {}};
  return result.error();
}

// "24.5 N.m" as it was understood, "" where it was refused, with the code in brackets.
[[nodiscard]] inline std::string understood(const Result<quantity::Reading>& reading) {
  if (!reading) return "(" + reading.error().code + ")";
  return std::string(reading->unit->name);
}

[[nodiscard]] inline bool says(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

} // namespace clampwright::test
