// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/source_register.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/question/kept_file.hpp"
#include "specdb/question/kept_words.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/sources.hpp"

namespace clampwright::specdb {

namespace {

constexpr const char* k_like = "write --title \"Workshop sheets\" --edition \"2nd print\" --known printed";
constexpr std::array<std::string_view, 5> k_known{known_name(Known::printed), known_name(Known::second_hand),
                                                  known_name(Known::memory), known_name(Known::computed),
                                                  known_name(Known::common_practice)};

Result<SourceRecord> new_source(const SourceWords& words) {
  const auto missing = [](const char* what, const char* option) {
    return refuse(Trouble::usage, "missing", fmt::format("{} is missing", what), {}, k_like, option);
  };
  if (!words.title) return missing("the title of the document", "--title");
  if (!words.edition) return missing("its edition, or \"undated\",", "--edition");
  if (!words.known)
    return missing("how it is known: printed only where the document itself was read, else second-hand or memory",
                   "--known");
  SourceRecord source;
  if (auto done =
          first_refusal({put_needed_text(source.title, words.title, "--title", k_like),
                         put_needed_text(source.edition, words.edition, "--edition", k_like),
                         put_needed(source.known, words.known, "--known", k_like,
                                    [](const std::string& text) { return one_of(text, k_known).map(known_named); })});
      !done)
    return Refusal(done.error());
  source.slug = short_name_of(source.title, "source");
  if (!words.short_name) return source;
  auto name = read_short_name(*words.short_name);
  if (!name) return Refusal(name.error());
  source.slug = std::move(*name);
  return source;
}

Result<void> check_names(const std::vector<SourceRecord>& others, SourceRecord& source, bool name_was_said) {
  const auto taken = [&](const std::string& slug) {
    return std::ranges::any_of(others, [&](const SourceRecord& other) { return text::equal_fold(other.slug, slug); });
  };
  for (const SourceRecord& other : others)
    if (text::equal_fold(other.title, source.title) && text::equal_fold(other.edition, source.edition))
      return refuse(Trouble::cannot_create, "name-taken",
                    fmt::format("this document is entered already, as {}", other.slug), source.title,
                    "use that one, or say how the edition differs", "--edition");
  if (name_was_said && taken(source.slug))
    return refuse(Trouble::cannot_create, "name-taken", "a document has that short name already", source.slug,
                  "give the new one another short name", "--short-name");
  source.slug = free_name(source.slug, taken);
  return {};
}

} // namespace

Result<KeptSource> add_source(const std::filesystem::path& file, const SourceWords& words) {
  auto source = new_source(words);
  if (!source) return Refusal(source.error());
  const auto made = change_or_make(file, [&](SQLite::Database& database) -> Result<void> {
    if (auto free = check_names(all_sources(database), *source, words.short_name.has_value()); !free) return free;
    add_source(database, *source);
    return {};
  });
  if (!made) return Refusal(made.error());
  return KeptSource{std::move(*source), *made};
}

} // namespace clampwright::specdb
