// SPDX-License-Identifier: GPL-3.0-or-later
//
// A calculator is a sentence with blanks: its words, what each blank can hold, and the question of specdb that it asks.
// Every blank is named like the option of the command line that says the same, so a refusal finds its blank and any
// sentence can be written as a command line.
#pragma once

#include <array>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gui/drawings/plot_curve.hpp"
#include "gui/sentences/blank.hpp"
#include "gui/text/page_content.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::desk {

// Option to text, as typed. What was not said is not in it; a tick is "yes".
using Words = std::map<std::string, std::string, std::less<>>;

// "--torque" -> its text, if said.
[[nodiscard]] std::optional<std::string> said(const Words& words, std::string_view option);
[[nodiscard]] bool ticked(const Words& words, std::string_view option);
// "compound-medium + split-pin" is two.
[[nodiscard]] std::vector<std::string> several(const Words& words, std::string_view option);

// Fills the question's entries by their options.
template<class Question, std::size_t count>
void put_words(Question& question, const Words& words, const std::array<specdb::TextField<Question>, count>& fields) {
  for (const auto& field : fields)
    question.*field.text = said(words, field.option);
}

struct Blank {
  std::string option;       // "--torque"; "THREAD", in capitals, for a word of the command line that is no option
  const BlankKind* kind;    // lives as long as the program
  const char* label;        // English, to be translated: the accessible name, and the words before it among "more"
  std::string example;      // what a person might write; stands in the empty blank
  bool needed = false;      // there is no answer without it
  bool alternative = false; // another blank of the sentence says the same in another way; an example leaves it empty
  const char* unless = nullptr; // needed only where that blank is empty
};

// An answer as a page, and the curve that belongs to it where there is one.
struct Reply {
  PageContent page;
  std::optional<PlotCurve> curve = std::nullopt;
};

struct Sentence {
  std::string id;      // "clamp": for the find line, pictures and memory
  std::string command; // "clamp", "wrench set"
  const char* name;    // English, to be translated: "Clamp load of a torque"
  const char* also;    // English: other words by which the find line finds it
  // English, to be translated: the sentence, each blank as its option in braces: "An {THREAD} bolt …"
  const char* text;
  std::vector<Blank> blanks; // those in the sentence and, behind them, what else may be known
  Result<Reply> (*answer)(const Words& words, const Place& place);

  [[nodiscard]] const Blank* blank(std::string_view option) const;
  [[nodiscard]] bool stands_in_text(const Blank& blank) const;
};

// What its blanks are called in the language spoken, and behind them what the calculator of the clamp load calls its
// own: answers send there.
[[nodiscard]] BlankNames names_for(const std::vector<Blank>& blanks);

// All of them, in the order of the list.
[[nodiscard]] const std::vector<Sentence>& sentences();
// Nothing for an unknown id.
[[nodiscard]] const Sentence* sentence_named(std::string_view id);

// What a shell can run for the same answer: clampwright clamp M10 --class 8.8 … `more` are arguments behind it.
[[nodiscard]] std::string command_line(const Sentence& sentence, const Words& words,
                                       const std::vector<std::string>& more = {});
// The same as arguments, without the program's name.
[[nodiscard]] std::vector<std::string> arguments(const Sentence& sentence, const Words& words);

// The arguments by which the command line answers in the same units and, where a joint or wrench is named, from the
// same file.
[[nodiscard]] std::vector<std::string> same_circumstances(const Sentence& sentence, const Words& words,
                                                          const quantity::DisplayUnits& units,
                                                          const std::filesystem::path& workshop);

// What must still be filled in, as labels; empty: it can be answered.
[[nodiscard]] std::vector<const char*> still_to_fill_in(const Sentence& sentence, const Words& words);

} // namespace clampwright::desk
