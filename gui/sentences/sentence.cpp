// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/sentences/sentence.hpp"

#include <algorithm>
#include <iterator>

#include <QCoreApplication>
#include <fmt/format.h>

#include "gui/sentences/all_sentences.hpp"

namespace clampwright::desk {

namespace {

bool is_option(const Blank& blank) { return blank.option.starts_with("--"); }

// As a shell takes it: quoted where anything in it means something to one.
std::string for_shell(const std::string& word) {
  constexpr std::string_view k_plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-+./:,=@%";
  if (!word.empty() && word.find_first_not_of(k_plain) == std::string::npos) return word;
  std::string out = "'";
  for (const char c : word)
    out += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return out + "'";
}

std::vector<std::string> parts_at_plus(std::string_view text) {
  std::vector<std::string> parts;
  while (true) {
    const std::size_t plus = text.find('+');
    std::string part(text.substr(0, plus));
    part.erase(0, part.find_first_not_of(' '));
    part.erase(part.find_last_not_of(' ') + 1);
    if (!part.empty()) parts.push_back(std::move(part));
    if (plus == std::string_view::npos) return parts;
    text.remove_prefix(plus + 1);
  }
}

} // namespace

std::optional<std::string> said(const Words& words, std::string_view option) {
  const auto found = words.find(option);
  return found == words.end() ? std::nullopt : std::optional(found->second);
}

bool ticked(const Words& words, std::string_view option) { return words.contains(option); }

std::vector<std::string> several(const Words& words, std::string_view option) {
  const auto text = said(words, option);
  return text ? parts_at_plus(*text) : std::vector<std::string>();
}

const Blank* Sentence::blank(std::string_view option) const {
  const auto found = std::ranges::find(blanks, option, &Blank::option);
  return found == blanks.end() ? nullptr : &*found;
}

bool Sentence::stands_in_text(const Blank& blank) const {
  return std::string_view(text).find(fmt::format("{{{}}}", blank.option)) != std::string_view::npos;
}

const std::vector<Sentence>& sentences() {
  static const std::vector<Sentence> all = all_sentences();
  return all;
}

const Sentence* sentence_named(std::string_view id) {
  const auto found = std::ranges::find(sentences(), id, &Sentence::id);
  return found == sentences().end() ? nullptr : &*found;
}

std::vector<std::string> arguments(const Sentence& sentence, const Words& words) {
  std::vector<std::string> out;
  for (std::size_t begin = 0; begin < sentence.command.size();) {
    const std::size_t end = std::min(sentence.command.find(' ', begin), sentence.command.size());
    out.push_back(sentence.command.substr(begin, end - begin));
    begin = end + 1;
  }
  for (const bool options : {false, true})
    for (const Blank& blank : sentence.blanks) {
      const auto text = said(words, blank.option);
      if (!text || is_option(blank) != options) continue;
      if (!options && blank.kind->is_list()) {
        std::ranges::move(parts_at_plus(*text), std::back_inserter(out));
      } else if (!options) {
        out.push_back(*text);
      } else if (blank.kind->shape() == Shape::tick) {
        out.push_back(blank.option);
      } else if (blank.kind->is_list()) {
        for (std::string& part : parts_at_plus(*text)) {
          out.push_back(blank.option);
          out.push_back(std::move(part));
        }
      } else {
        out.push_back(blank.option);
        out.push_back(*text);
      }
    }
  return out;
}

std::vector<std::string> same_circumstances(const Sentence& sentence, const Words& words,
                                            const quantity::DisplayUnits& units,
                                            const std::filesystem::path& workshop) {
  std::vector<std::string> out;
  auto system = quantity::DisplayUnits();
  if (units.force != system.force) {
    system = quantity::DisplayUnits::imperial();
    out = {"--units", "imperial"};
  }
  if (units.torque != system.torque) out.insert(out.end(), {"--unit", std::string(units.torque->name)});
  const bool on_record = std::ranges::any_of(sentence.blanks, [&](const Blank& blank) {
    return (blank.kind == &joint_blank() || blank.kind == &wrench_blank()) && words.contains(blank.option);
  });
  if (on_record && !workshop.empty()) out.insert(out.end(), {"--workshop", workshop.string()});
  return out;
}

std::string command_line(const Sentence& sentence, const Words& words, const std::vector<std::string>& more) {
  std::string out = "clampwright";
  for (const std::string& word : arguments(sentence, words))
    out += " " + for_shell(word);
  for (const std::string& word : more)
    out += " " + for_shell(word);
  return out;
}

BlankNames names_for(const std::vector<Blank>& blanks) {
  BlankNames names;
  for (const auto* some : {&blanks, &sentence_named("clamp")->blanks})
    for (const Blank& blank : *some)
      names.push_back({blank.option, QCoreApplication::translate("Sentences", blank.label)});
  return names;
}

std::vector<const char*> still_to_fill_in(const Sentence& sentence, const Words& words) {
  std::vector<const char*> missing;
  for (const Blank& blank : sentence.blanks)
    if (blank.needed && !words.contains(blank.option) && !(blank.unless != nullptr && words.contains(blank.unless)))
      missing.push_back(blank.label);
  return missing;
}

} // namespace clampwright::desk
