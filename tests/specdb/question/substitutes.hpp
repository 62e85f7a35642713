// SPDX-License-Identifier: GPL-3.0-or-later
//
// For tests of what may take the place of what: asking, and finding a link of the answer.
#pragma once

#include <algorithm>
#include <functional>
#include <stdexcept>
#include <string>
#include <utility>

#include "specdb/question/substitute_question.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb::test_substitute {

using substitute::Check;
using substitute::Link;
using substitute::Outcome;
using substitute::Reason;
using substitute::Verdict;
using Tweak = std::function<void(SubstituteQuestion&)>;

inline SubstituteAnswer ask(std::string original, std::string offered, const Tweak& tweak = {}) {
  static const Catalogue catalogue;
  SubstituteQuestion question;
  question.original = std::move(original);
  question.offered = std::move(offered);
  if (tweak) tweak(question);
  auto answer = answer_for(catalogue, question);
  if (!answer) throw std::runtime_error(answer.error().message);
  return std::move(*answer);
}

inline Problem refusal(std::string original, std::string offered, const Tweak& tweak = {}) {
  static const Catalogue catalogue;
  SubstituteQuestion question;
  question.original = std::move(original);
  question.offered = std::move(offered);
  if (tweak) tweak(question);
  return test::problem_of(answer_for(catalogue, question));
}

inline const Check& link(const SubstituteAnswer& answer, Link wanted) {
  const auto found = std::ranges::find(answer.answer.checks, wanted, &Check::link);
  if (found == answer.answer.checks.end()) throw std::runtime_error("no such link in the chain");
  return *found;
}

inline Outcome outcome(const SubstituteAnswer& answer, Link wanted) { return link(answer, wanted).outcome; }
inline Reason reason(const SubstituteAnswer& answer, Link wanted) { return link(answer, wanted).reason; }

inline double share(const SubstituteAnswer& answer, Link wanted) {
  return std::get<double>(link(answer, wanted).facts.at(0));
}

} // namespace clampwright::specdb::test_substitute
