// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/text/plain_text.hpp"

namespace clampwright::cli {

void Command::declare_words(CLI::App& app) { app.add_option("words", words_)->group(""); }

Result<std::string> Command::only_word(std::string_view what, std::string_view like) const {
  if (words_.empty())
    return refuse(Trouble::usage, "missing", fmt::format("{} is missing", what), {},
                  fmt::format("write clampwright {}", like));
  if (words_.size() > 1)
    return refuse(Trouble::usage, "surplus",
                  fmt::format("{} was taken for {}; more follows", text::quotable(words_[0]), what),
                  text::quotable(fmt::format("{}", fmt::join(words_.begin() + 1, words_.end(), " "))),
                  fmt::format("put quotes round an entry with spaces, like clampwright {}", like));
  return words_.front();
}

Result<std::filesystem::path> workshop_file(const Context& context) {
  if (!context.workshop.empty()) return context.workshop;
  return refuse(Trouble::usage, "missing", "there is no home folder to look for the workshop file in", {},
                "name the file, like clampwright --workshop crew.clampwright find head nut", "--workshop");
}

} // namespace clampwright::cli
