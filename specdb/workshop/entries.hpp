// SPDX-License-Identifier: GPL-3.0-or-later
//
// Entering into a workshop file. Everything here belongs into one transaction of the caller (Workshop::create or
// Workshop::change): it stands whole or not at all. History is kept: a figure is never overwritten, a newer one takes
// its place and says which.
#pragma once

#include <string_view>

#include "core/problem/problem.hpp"
#include "specdb/workshop/records.hpp"

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

void add_source(const SQLite::Database& database, const SourceRecord& source);

// The machine with the events of its record.
void add_machine(const SQLite::Database& database, const MachineRecord& machine);

// Puts the fields of `now` (all but slug and events) in the place of those recorded under its slug, and its name into
// the words by which its joints are found.
void revise_machine(const SQLite::Database& database, const MachineRecord& now);

// Something happened to the record of the machine or joint of that slug, which is there.
void add_machine_event(const SQLite::Database& database, std::string_view slug, const EventRecord& event);
void add_joint_event(const SQLite::Database& database, std::string_view slug, const EventRecord& event);

// The wrench or compound with the events of its record.
void add_wrench(const SQLite::Database& database, const WrenchRecord& wrench);
void add_compound(const SQLite::Database& database, const CompoundRecord& compound);

// Something happened to the wrench or compound of that slug, which is there.
void add_wrench_event(const SQLite::Database& database, std::string_view slug, const EventRecord& event);
void add_compound_event(const SQLite::Database& database, std::string_view slug, const EventRecord& event);

// Puts the fields of `now` (all but slug and events) in the place of those recorded under its slug. What they were
// belongs into an event of kind `revised` or `retired`, which the caller adds.
void revise_wrench(const SQLite::Database& database, const WrenchRecord& now);
void revise_compound(const SQLite::Database& database, const CompoundRecord& now);

// The joint with its locks, neighbours, figures and events, and its words in the search index. `machine.slug` names the
// machine and each figure's `source_slug` its source; both are there already. `figure` is entered first, then those
// `beside` it; `superseded` figures are entered with revise_figure, not here.
void add_joint(const SQLite::Database& database, const JointRecord& joint);

// Puts the fields of `now` (all but slug, machine, figures and events) in the place of those recorded under its slug,
// and its words into the search index.
void revise_joint(const SQLite::Database& database, const JointRecord& now);

// Enters a figure beside those of the joint of that slug, which is there. Its id.
long long add_figure_beside(const SQLite::Database& database, std::string_view joint, const FigureRecord& figure);

// Puts `figure` in the place of the one with id `superseded`, which stays in the file. Fails with no-such where there
// is no such figure, and with busy where another has taken its place in the meantime: both revisions would then hold.
[[nodiscard]] Result<void> revise_figure(const SQLite::Database& database, long long superseded,
                                         const FigureRecord& figure);

} // namespace clampwright::specdb
