// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/wrench_register.hpp"

#include <utility>

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/calendar/moment.hpp"
#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "core/tightening/upkeep.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/kept_changes.hpp"
#include "specdb/question/kept_file.hpp"
#include "specdb/question/kept_words.hpp"
#include "specdb/question/wrench_record.hpp"
#include "specdb/question/wrench_words.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/workshop_file.hpp"
#include "specdb/workshop/wrenches.hpp"

namespace clampwright::specdb {

namespace {

using std::chrono::year_month_day;
constexpr int k_most_pulls = 100'000; // in one entry

Refusal name_taken(const std::string& name, const WrenchRecord& by) {
  return refuse(
      Trouble::cannot_create, "name-taken", fmt::format("a wrench has that name already: {} ({})", by.slug, by.name),
      name,
      fmt::format("give the new one another name, or change the old one with clampwright wrench revise {}", by.slug));
}

// A name must tell one wrench from all others.
Result<void> check_names(const std::vector<WrenchRecord>& others, const WrenchRecord& wrench) {
  for (const WrenchRecord& other : others) {
    if (other.slug == wrench.slug) continue;
    for (const std::string& name : {wrench.slug, wrench.name})
      if (text::equal_fold(other.slug, name) || text::equal_fold(other.name, name)) return name_taken(name, other);
  }
  return {};
}

// Lets `work` change the wrench of that name, and answers with it as it then stands.
template<class Work>
Result<KeptWrench> changed(const std::filesystem::path& file, std::string_view name, Work work) {
  KeptWrench kept;
  const auto done = Workshop::change(file, [&](SQLite::Database& database) -> Result<void> {
    const auto was = find_wrench(database, name);
    if (!was) return Refusal(was.error());
    if (auto worked = work(database, *was, kept); !worked) return worked;
    auto is = find_wrench(database, was->slug);
    if (!is) return Refusal(is.error());
    kept.wrench = std::move(*is);
    return {};
  });
  if (!done) return Refusal(done.error());
  return kept;
}

// What happened, read from its words; the record's own fields change with a calibration only.
struct Happened {
  EventRecord event;
  std::optional<std::string> due;
};

Result<Happened> happened(const WrenchHappening& h, year_month_day today) {
  const int said =
      (h.calibrated ? 1 : 0) + (h.used ? 1 : 0) + (h.drop ? 1 : 0) + (h.overload ? 1 : 0) + (h.note ? 1 : 0);
  if (said != 1)
    return refuse(Trouble::usage, said == 0 ? "missing" : "surplus",
                  said == 0 ? "what happened to it is missing" : "several things are said to have happened at once", {},
                  "write one of --used N, --drop, --overload, --calibrated DAY, or --note with --words");
  if (h.due && !h.calibrated)
    return refuse(Trouble::usage, "surplus", "--due goes with --calibrated: the day that its new sheet names", *h.due,
                  "clampwright wrench revise NAME --due DAY --because TEXT changes it alone", "--due");
  if (h.on && h.calibrated)
    return refuse(Trouble::usage, "surplus", "--calibrated names the day itself", *h.on, "leave --on away", "--on");
  if (h.note && !h.words)
    return refuse(Trouble::usage, "missing", "the words of the note are missing", {},
                  "write --note --words \"handle taped\"", "--words");
  Happened out;
  const std::optional<std::string>& day_text = h.calibrated ? h.calibrated : h.on;
  const auto day = day_text ? read_past_day(*day_text, today) : Result<year_month_day>(today);
  if (!day) return in_field(day.error(), h.calibrated ? "--calibrated" : "--on");
  out.event.on_date = calendar::write_day(*day);
  out.event.kind = h.calibrated ? "calibrated" : h.used ? "used" : h.drop ? "drop" : h.overload ? "overload" : "note";
  if (h.used) {
    const auto pulls = quantity::read_count(*h.used, 1, k_most_pulls);
    if (!pulls) return in_field(pulls.error(), "--used");
    out.event.cycles = *pulls;
  }
  if (h.words) {
    auto words = kept_text(*h.words, "--words");
    if (!words) return Refusal(words.error());
    out.event.words = std::move(*words);
  }
  if (h.due) {
    const auto due = calendar::read_day(*h.due);
    if (!due) return in_field(due.error(), "--due");
    if (*due <= *day)
      return not_understood("out-of-range", "it would be due before it was calibrated", *h.due,
                            "write the day that the new sheet names", "--due");
    out.due = calendar::write_day(*due);
  }
  return out;
}

} // namespace

Result<KeptWrench> add_to_register(const std::filesystem::path& file, const std::string& slug, const WrenchWords& words,
                                   year_month_day today) {
  auto wrench = new_wrench(slug, words, today);
  if (!wrench) return Refusal(wrench.error());
  KeptWrench kept{std::move(*wrench), {"entered"}, false};
  const auto made = change_or_make(file, [&](SQLite::Database& database) -> Result<void> {
    const std::vector<WrenchRecord> others = all_wrenches(database);
    for (const WrenchRecord& other : others)
      if (other.slug == kept.wrench.slug) return name_taken(slug, other);
    if (auto free = check_names(others, kept.wrench); !free) return free;
    add_wrench(database, kept.wrench);
    return {};
  });
  if (!made) return Refusal(made.error());
  kept.made_file = *made;
  return kept;
}

Result<KeptWrench> revise_in_register(const std::filesystem::path& file, std::string_view name,
                                      const WrenchWords& words, const Revision& revision, year_month_day today) {
  const auto why =
      kept_reason(revision.because, "clampwright wrench revise A --step 1Nm --because \"new calibration sheet\"");
  if (!why) return Refusal(why.error());
  return changed(
      file, name, [&](SQLite::Database& database, const WrenchRecord& was, KeptWrench& kept) -> Result<void> {
        if (auto seen = check_seen(revision, was.events, was.name); !seen) return seen;
        auto is = with_words(was, words);
        if (!is) return Refusal(is.error());
        kept.changes = differences(was, *is);
        if (kept.changes.empty())
          return refuse(Trouble::usage, "nothing-to-change", fmt::format("nothing of {} would change", was.slug), {},
                        "say what is to be another: --step 1Nm, --arm 320mm, --months 6; clampwright wrench list shows "
                        "what is recorded");
        if (auto free = check_names(all_wrenches(database), *is); !free) return free;
        revise_wrench(database, *is);
        add_wrench_event(database, was.slug,
                         {calendar::write_day(today),
                          "revised",
                          fmt::format("{}; because: {}", fmt::join(kept.changes, "; "), *why),
                          {}});
        return {};
      });
}

Result<KeptWrench> retire_in_register(const std::filesystem::path& file, std::string_view name,
                                      const std::optional<std::string>& because, const std::optional<std::string>& on,
                                      year_month_day today) {
  const auto why = kept_reason(because, "clampwright wrench retire A --because \"new calibration sheet\"");
  if (!why) return Refusal(why.error());
  const auto day = on ? read_past_day(*on, today) : Result<year_month_day>(today);
  if (!day) return in_field(day.error(), "--on");
  return changed(
      file, name, [&](SQLite::Database& database, const WrenchRecord& was, KeptWrench& kept) -> Result<void> {
        if (was.retired_on)
          return refuse(
              Trouble::usage, "nothing-to-change",
              fmt::format("{} was retired on {}: {}", was.slug, *was.retired_on, *was.retired_because), {},
              fmt::format("bring it back with clampwright wrench revise {} --in-use --because TEXT", was.slug));
        WrenchRecord is = was;
        is.retired_on = calendar::write_day(*day);
        is.retired_because = *why;
        kept.changes = {fmt::format("retired on {}: {}", *is.retired_on, *why)};
        revise_wrench(database, is);
        add_wrench_event(database, was.slug, {*is.retired_on, "retired", *why, {}});
        return {};
      });
}

Result<KeptWrench> log_in_register(const std::filesystem::path& file, std::string_view name,
                                   const WrenchHappening& happening, year_month_day today) {
  auto what = happened(happening, today);
  if (!what) return Refusal(what.error());
  return changed(file, name,
                 [&](SQLite::Database& database, const WrenchRecord& was, KeptWrench& kept) -> Result<void> {
                   EventRecord event = what->event;
                   kept.changes = {fmt::format("{} on {}{}", event.kind, event.on_date,
                                               event.cycles ? fmt::format(", {} pulls", *event.cycles) : "")};
                   // An older sheet found later changes nothing that holds today.
                   const auto last = upkeep_of(was).calibrated;
                   if (event.kind == "calibrated" && (!last || event.on_date >= calendar::write_day(*last))) {
                     WrenchRecord is = was;
                     is.calibrated_on = event.on_date;
                     is.due_on = what->due; // the day of the sheet before has been met
                     for (std::string& change : differences(was, is)) {
                       event.words += (event.words.empty() ? "" : "; ") + change;
                       kept.changes.push_back(std::move(change));
                     }
                     revise_wrench(database, is);
                   }
                   add_wrench_event(database, was.slug, event);
                   return {};
                 });
}

} // namespace clampwright::specdb
