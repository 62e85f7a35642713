// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/machine_register.hpp"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/question/kept_file.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/machines.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

namespace {

using std::chrono::year_month_day;

// A name must tell one machine from all others.
Result<void> check_names(const SQLite::Database& database, const MachineRecord& machine, bool is_new) {
  for (const MachineRecord& other : all_machines(database)) {
    if (!is_new && other.slug == machine.slug) continue;
    const bool same_slug = other.slug == machine.slug;
    for (const std::string& name : {machine.slug, machine.name})
      if (text::equal_fold(other.slug, name) || text::equal_fold(other.name, name))
        return refuse(Trouble::cannot_create, "name-taken",
                      fmt::format("a machine has that name already: {} ({})", other.slug, other.name), name,
                      "give the new one another name, or change the record of the old one",
                      same_slug && !text::equal_fold(other.name, machine.name) ? "--short-name" : "--called");
  }
  return {};
}

} // namespace

Result<KeptMachine> add_machine(const Catalogue& catalogue, const std::filesystem::path& file,
                                const MachineWords& words, year_month_day today) {
  auto machine = new_machine(catalogue, words);
  if (!machine) return Refusal(machine.error());
  machine->events = {entered_event(today)};
  const auto made = change_or_make(file, [&](SQLite::Database& database) -> Result<void> {
    if (auto free = check_names(database, *machine, true); !free) return free;
    add_machine(database, *machine);
    return {};
  });
  if (!made) return Refusal(made.error());
  return KeptMachine{std::move(*machine), {"entered"}, *made};
}

Result<KeptMachine> revise_machine(const Catalogue& catalogue, const std::filesystem::path& file, std::string_view name,
                                   const MachineWords& words, const Revision& revision, year_month_day today) {
  const auto why = kept_reason(revision.because, "--because \"measured again\"");
  if (!why) return Refusal(why.error());
  KeptMachine kept;
  const auto done = Workshop::change(file, [&](SQLite::Database& database) -> Result<void> {
    const auto was = find_machine(database, name);
    if (!was) return Refusal(was.error());
    if (auto seen = check_seen(revision, was->events, was->slug); !seen) return seen;
    auto is = with_words(catalogue, *was, words);
    if (!is) return Refusal(is.error());
    kept.changes = differences(*was, *is);
    if (kept.changes.empty())
      return nothing_to_change(was->slug, "say what is to be another, like --stroke 52mm or --rod none");
    if (auto free = check_names(database, *is, false); !free) return free;
    const EventRecord event = revised_event(today, kept.changes, *why);
    revise_machine(database, *is);
    add_machine_event(database, is->slug, event);
    is->events.push_back(event);
    kept.machine = std::move(*is);
    return {};
  });
  if (!done) return Refusal(done.error());
  return kept;
}

} // namespace clampwright::specdb
