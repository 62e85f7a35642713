// SPDX-License-Identifier: GPL-3.0-or-later
//
// Options for the entries of a question, by the names that specdb gives them.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

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

// Precondition: tells_all(help, fields).
template<class Question, std::size_t count>
void declare_fields(CLI::App& app, Question& question, const std::array<specdb::TextField<Question>, count>& fields,
                    const std::array<OptionHelp, count>& help) {
  for (std::size_t i = 0; i < count; ++i)
    app.add_option(std::string(fields[i].option), question.*fields[i].text, help[i].says)->type_name(help[i].type);
}

// "--tip-diameter" is "tip_diameter".
[[nodiscard]] std::string key_of(std::string_view option);

// What was said, as it was typed, for the answer's `input`.
template<class Question, std::size_t count>
void echo_into(Json& input, const Question& question, const std::array<specdb::TextField<Question>, count>& fields) {
  for (const auto& field : fields)
    if (const auto& text = question.*field.text) input[key_of(field.option)] = *text;
}

} // namespace clampwright::cli
