// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/field_options.hpp"

#include <algorithm>

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

namespace clampwright::cli {

void declare_text(CLI::App& app, std::optional<std::string>& text, const OptionHelp& help) {
  app.add_option(std::string(help.option), text, help.says)->type_name(help.type);
}

void echo_text(Json& input, std::string_view option, const std::optional<std::string>& text) {
  if (!text) return;
  std::string key(option.substr(2));
  std::ranges::replace(key, '-', '_');
  input[key] = *text;
}

} // namespace clampwright::cli
