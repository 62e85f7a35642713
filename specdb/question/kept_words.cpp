// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/kept_words.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/read.hpp"
#include "core/quantity/spelling.hpp"
#include "core/thread/designation.hpp"
#include "specdb/catalogue/threads.hpp"

namespace clampwright::specdb {

namespace {

constexpr std::size_t k_longest_text = 500;
constexpr std::size_t k_longest_name = 60;

} // namespace

Result<std::string> kept_text(const std::string& text, const char* option) {
  std::string kept = text::plain_spaces(text);
  if (kept.empty())
    return refuse(Trouble::usage, "missing", fmt::format("the text of {} is empty", option), {},
                  fmt::format("say it in words, like {} \"sheet 114, J. Holm\"", option), option);
  if (!text::is_printable(kept) || kept.size() > k_longest_text)
    return not_understood("not-understood", "one line of text is wanted, without control characters", text,
                          fmt::format("write it in up to {} letters", k_longest_text), option);
  return kept;
}

bool is_none(const std::string& text) { return text::equal_fold(text::plain_spaces(text), "none"); }

Result<void> put_text(MaybeText& field, const MaybeText& text, const char* option) {
  return put(field, text, option, [&](const std::string& words) { return kept_text(words, option); });
}

Result<void> put_needed_text(std::string& field, const MaybeText& text, const char* option, std::string_view like) {
  return put_needed(field, text, option, like, [&](const std::string& words) { return kept_text(words, option); });
}

Result<void> first_refusal(std::initializer_list<Result<void>> results) {
  for (const Result<void>& result : results)
    if (!result) return result;
  return {};
}

Result<std::string> one_of(const std::string& text, std::span<const std::string_view> words) {
  const std::string given = text::plain_spaces(text);
  for (const std::string_view word : words)
    if (text::equal_fold(given, word)) return std::string(word);
  return not_understood("not-understood", "that is none of the words that are known here", text,
                        fmt::format("write {}", fmt::join(words, " or ")));
}

Result<std::string> thread_words(const Catalogue& catalogue, const std::string& text) {
  const auto found = find_thread(catalogue, text);
  if (!found) return Refusal(found.error());
  const auto designation = thread::read_designation(text);
  if (designation && !designation->tolerance.empty()) return text::plain_spaces(text);
  return thread::write_designation(found->thread);
}

Result<double> number_in(const std::string& text, const quantity::Unit& unit) {
  const auto read = quantity::read_quantity(text, unit.kind);
  if (!read) return Refusal(read.error());
  const double number = read->unit == &unit ? read->value : quantity::convert(read->value, *read->unit, unit);
  if (!(number > 0) && unit.kind != quantity::Kind::temperature)
    return not_understood("out-of-range", fmt::format("a {} of nothing was understood", quantity::kind_name(unit.kind)),
                          text, fmt::format("write one above zero, like {}", quantity::example_of(unit.kind)));
  return number;
}

std::string number_words(double value, std::string_view unit) { return fmt::format("{} {}", value, unit); }

MaybeText maybe_words(const std::optional<double>& value, std::string_view unit) {
  if (!value) return std::nullopt;
  return number_words(*value, unit);
}

MaybeText in_one_line(const std::vector<std::string>& lines) {
  if (lines.empty()) return std::nullopt;
  return fmt::format("{}", fmt::join(lines, ", "));
}

std::string short_name_of(std::string_view text, std::string_view otherwise) {
  std::string name;
  for (const char c : text::to_lower(text)) {
    if (text::is_digit(c) || (c >= 'a' && c <= 'z'))
      name += c;
    else if (!name.empty() && !name.ends_with('-'))
      name += '-';
  }
  name.resize(std::min(name.size(), k_longest_name));
  while (name.ends_with('-'))
    name.pop_back();
  return name.empty() ? std::string(otherwise) : name;
}

Result<std::string> read_short_name(const std::string& text) {
  std::string name = text::to_lower(text::plain_spaces(text));
  if (name.empty() || name != short_name_of(name, ""))
    return not_understood(
        "not-understood",
        fmt::format("a short name of up to {} letters, digits and single hyphens is wanted", k_longest_name), text,
        "write it like clutch-hub", "--short-name");
  return name;
}

std::string free_name(const std::string& name, const std::function<bool(const std::string&)>& is_taken) {
  std::string own = name;
  for (int number = 2; is_taken(own); ++number)
    own = fmt::format("{}-{}", name, number);
  return own;
}

} // namespace clampwright::specdb
