// SPDX-License-Identifier: GPL-3.0-or-later
//
// Between what a person enters and what a workshop file keeps: texts read into the fields of a record, and back. A
// problem names its entry like the option of the command line ("--stroke").
#pragma once

#include <functional>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/quantity/unit.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// A reason or a note as it may be kept: one line, not empty. `option` names where it came from.
[[nodiscard]] Result<std::string> kept_text(const std::string& text, const char* option);

// "none", which takes a field away that may be missing.
[[nodiscard]] bool is_none(const std::string& text);

// A field that may be taken away again: what `read` makes of the text, or nothing for "none".
template<class T, class Reader>
[[nodiscard]] Result<void> put(std::optional<T>& field, const MaybeText& text, const char* option, Reader read) {
  if (!text) return {};
  if (is_none(*text)) {
    field.reset();
    return {};
  }
  auto value = read(*text);
  if (!value) return in_field(value.error(), option);
  field = std::move(*value);
  return {};
}

// A field that is never missing: "none" and an empty text are refused. `like` is a way to write it, for the hint.
template<class T, class Reader>
[[nodiscard]] Result<void> put_needed(T& field, const MaybeText& text, const char* option, std::string_view like,
                                      Reader read) {
  if (!text) return {};
  if (is_none(*text) || text::plain_spaces(*text).empty())
    return refuse(Trouble::usage, "missing", "this cannot be left out", *text, std::string(like), option);
  auto value = read(*text);
  if (!value) return in_field(value.error(), option);
  field = std::move(*value);
  return {};
}

// A line of words.
[[nodiscard]] Result<void> put_text(MaybeText& field, const MaybeText& text, const char* option);
[[nodiscard]] Result<void> put_needed_text(std::string& field, const MaybeText& text, const char* option,
                                           std::string_view like);

// The first refusal of several, or none.
[[nodiscard]] Result<void> first_refusal(std::initializer_list<Result<void>> results);

// One of a few words, in any case, as it stands in the list.
[[nodiscard]] Result<std::string> one_of(const std::string& text, std::span<const std::string_view> words);

// A reader of one of them, for put.
[[nodiscard]] inline auto word_of(std::span<const std::string_view> words) {
  return [words](const std::string& text) { return one_of(text, words); };
}

// The thread that a text names, as it is stored: "M14x1.5-LH". A class of tolerance that was written stays with it.
// Fails like find_thread.
[[nodiscard]] Result<std::string> thread_words(const Catalogue& catalogue, const std::string& text);

// The number of a quantity in `unit`, exactly as written where it is written in that unit. Above nothing.
[[nodiscard]] Result<double> number_in(const std::string& text, const quantity::Unit& unit);

// "44 mm": a number of a record with its unit, every digit of it, as it is entered again.
[[nodiscard]] std::string number_words(double value, std::string_view unit);
[[nodiscard]] MaybeText maybe_words(const std::optional<double>& value, std::string_view unit);

// "a, b": several in one line; nothing where there are none.
[[nodiscard]] MaybeText in_one_line(const std::vector<std::string>& lines);

// "Pump Marrowfen P3" is "pump-marrowfen-p3": small letters and digits, a hyphen for what stands between. `otherwise`
// where nothing is left.
[[nodiscard]] std::string short_name_of(std::string_view text, std::string_view otherwise);

// The short name that a person gives: letters, digits and hyphens, in small letters.
[[nodiscard]] Result<std::string> read_short_name(const std::string& text);

// `name`, or `name-2`, `name-3`, … where `is_taken` says so of it.
[[nodiscard]] std::string free_name(const std::string& name, const std::function<bool(const std::string&)>& is_taken);

} // namespace clampwright::specdb
