// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/kept_changes.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/calendar/moment.hpp"
#include "specdb/question/kept_words.hpp"

namespace clampwright::specdb {

Result<std::string> kept_reason(const MaybeText& because, std::string_view like) {
  if (!because)
    return refuse(Trouble::usage, "missing", "the reason is missing", {}, fmt::format("say why: {}", like),
                  "--because");
  return kept_text(*because, "--because");
}

std::string change_words(std::string_view option, const MaybeText& was, const MaybeText& is) {
  std::string field(option.substr(option.find_first_not_of('-')));
  std::ranges::replace(field, '-', ' ');
  return fmt::format("{}: {} -> {}", field, was.value_or("none"), is.value_or("none"));
}

EventRecord entered_event(std::chrono::year_month_day today) {
  return {.on_date = calendar::write_day(today), .kind = "entered"};
}

EventRecord revised_event(std::chrono::year_month_day today, const std::vector<std::string>& changes,
                          const std::string& because) {
  return {.on_date = calendar::write_day(today),
          .kind = "revised",
          .words = fmt::format("{}", fmt::join(changes, "; ")),
          .because = because};
}

Refusal nothing_to_change(std::string_view what, std::string hint) {
  return refuse(Trouble::usage, "nothing-to-change", fmt::format("nothing of {} would change", what), {},
                std::move(hint));
}

Result<void> check_seen(const Revision& revision, const std::vector<EventRecord>& events, std::string_view what) {
  if (!revision.events_seen || *revision.events_seen == events.size()) return {};
  const std::string last =
      events.empty() ? std::string() : fmt::format(": on {} {}", events.back().on_date, events.back().words);
  return refuse(Trouble::busy, "revised-meanwhile",
                fmt::format("the record of {} was revised after it was looked up{}", what, last), {},
                "look it up again and revise what stands there now; nothing was changed");
}

} // namespace clampwright::specdb
