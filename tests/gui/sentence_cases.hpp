// SPDX-License-Identifier: GPL-3.0-or-later
//
// Sentences with their blanks filled in, for tests that hold the desk against the command line.
#pragma once

#include <filesystem>
#include <ostream>
#include <string>
#include <string_view>
#include <vector>

#include "gui/sentences/sentence.hpp"

namespace clampwright::desk::testing_support {

// A big figure, and where the command line's JSON has the same.
struct ExpectedFigure {
  std::size_t figure;
  std::string pointer;   // "/result/torque_N_m"
  std::string unit = {}; // in which the figure is shown: "=mm" where the JSON has the same; empty for words
  std::string says = {}; // what the desk says for a word of the JSON that has several meanings
};

struct SentenceCase {
  const char* name;
  const char* sentence;
  Words words; // added to the sentence's example, or in its place
  bool alone = false;
  bool imperial = false;
  std::vector<ExpectedFigure> figures = {};
};
inline void PrintTo(const SentenceCase& one, std::ostream* out) { *out << one.name; }

[[nodiscard]] const std::vector<SentenceCase>& sentence_cases();

// What the button of the page fills in.
[[nodiscard]] Words example_of(const Sentence& sentence);
[[nodiscard]] Words words_of(const SentenceCase& one);

struct Finished {
  std::string out;
  std::string err;
  int exit = -1;
};
// The built command line program, as it was started by a person of another desk.
[[nodiscard]] Finished run_program(std::vector<std::string> arguments, const std::filesystem::path& workshop);

} // namespace clampwright::desk::testing_support
