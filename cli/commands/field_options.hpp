// SPDX-License-Identifier: GPL-3.0-or-later
//
// Options for the entries of a question, by the names that specdb gives them.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "cli/command.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::cli {

// What --help says of an option.
struct OptionHelp {
  std::string_view option;
  const char* type;
  const char* says;
};

// Does the help stand for each of the fields, in their order?
template<class Question, std::size_t helps, std::size_t count>
consteval bool tells_all(const std::array<OptionHelp, helps>& help,
                         const std::array<specdb::TextField<Question>, count>& fields) {
  if (helps != count) return false;
  for (std::size_t i = 0; i < count; ++i)
    if (help[i].option != fields[i].option) return false;
  return true;
}

// One entry as an option.
void declare_text(CLI::App& app, std::optional<std::string>& text, const OptionHelp& help);

// One entry as it was typed, where it was: "--tip-diameter" under "tip_diameter".
void echo_text(Json& input, std::string_view option, const std::optional<std::string>& text);

// Precondition: tells_all(help, fields).
template<class Question, std::size_t count>
void declare_fields(CLI::App& app, Question& question, const std::array<specdb::TextField<Question>, count>& fields,
                    const std::array<OptionHelp, count>& help) {
  for (std::size_t i = 0; i < count; ++i)
    declare_text(app, question.*fields[i].text, help[i]);
}

// What was said, for the answer's `input`.
template<class Question, std::size_t count>
void echo_into(Json& input, const Question& question, const std::array<specdb::TextField<Question>, count>& fields) {
  for (const auto& field : fields)
    echo_text(input, field.option, question.*field.text);
}

} // namespace clampwright::cli
