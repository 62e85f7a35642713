// SPDX-License-Identifier: GPL-3.0-or-later
//
// The history of a record: what of it was changed, in words, and why; and the guard against two revisions that start
// from the same state.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/question/word_field.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// What a revision of a record needs besides what is to be another.
struct Revision {
  MaybeText because; // the reason, which is never missing
  // How many events the record had when the person looked at it. Where it has others by now, somebody else revised it
  // in between, and nothing is changed. Not asked where it is not said.
  std::optional<std::size_t> events_seen = {};
};

// The reason of a revision. `like` is a way to write it, for the hint.
[[nodiscard]] Result<std::string> kept_reason(const MaybeText& because, std::string_view like);

// "stroke: 50 mm -> 52 mm"; "none" for what is not there.
[[nodiscard]] std::string change_words(std::string_view option, const MaybeText& was, const MaybeText& is);

// What differs between the words of two records, field by field.
template<class Words, class Fields>
[[nodiscard]] std::vector<std::string> differences_of(const Words& was, const Words& is, const Fields& fields) {
  std::vector<std::string> out;
  for (const WordField<Words>& field : fields)
    if (was.*(field.text) != is.*(field.text))
      out.push_back(change_words(field.option, was.*(field.text), is.*(field.text)));
  return out;
}

// What is entered into the log of a record.
[[nodiscard]] EventRecord entered_event(std::chrono::year_month_day today);
[[nodiscard]] EventRecord revised_event(std::chrono::year_month_day today, const std::vector<std::string>& changes,
                                        const std::string& because);

// Refuses a revision that changes nothing of `what`.
[[nodiscard]] Refusal nothing_to_change(std::string_view what, std::string hint);

// Refuses a revision that starts from what is no longer there (busy): both changes would then seem to hold.
[[nodiscard]] Result<void> check_seen(const Revision& revision, const std::vector<EventRecord>& events,
                                      std::string_view what);

} // namespace clampwright::specdb
