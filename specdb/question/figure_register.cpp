// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/figure_register.hpp"

#include <algorithm>

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include "core/calendar/moment.hpp"
#include "specdb/question/joint_register.hpp"
#include "specdb/question/kept_changes.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/sources.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

namespace {

using std::chrono::year_month_day;

// The figure in force of that id in the joint, or nothing.
FigureRecord* in_force(JointRecord& joint, long long id) {
  if (joint.figure.id == id) return &joint.figure;
  const auto at = std::ranges::find(joint.beside, id, &FigureRecord::id);
  return at == joint.beside.end() ? nullptr : &*at;
}

// Why no figure of that id can be revised: another has taken its place, or it was never there.
Refusal not_in_force(const JointRecord& joint, long long id) {
  const auto at = std::ranges::find(joint.superseded, id, &FigureRecord::id);
  if (at == joint.superseded.end())
    return refuse(Trouble::no_such, "no-such-figure", fmt::format("{} has no such figure", joint.slug), {},
                  "look the joint up again; nothing was changed");
  return refuse(Trouble::busy, "revised-meanwhile",
                fmt::format("another figure has taken its place{}: {}",
                            at->superseded_on ? fmt::format(" on {}", *at->superseded_on) : "",
                            at->superseded_because.value_or("no reason is recorded")),
                at->printed, "look the joint up again and revise what stands there now; nothing was changed");
}

// The joint as it is read again, and the figure in force that was entered last.
void keep(const SQLite::Database& database, const JointRecord& joint, KeptFigure& kept) {
  kept.joint = *joint_of_slug(database, joint.slug);
  kept.figure = kept.joint.figure;
  for (const FigureRecord& figure : kept.joint.beside)
    if (figure.id > kept.figure.id) kept.figure = figure;
}

} // namespace

Result<KeptFigure> add_figure(const Catalogue& catalogue, const std::filesystem::path& file, std::string_view joint,
                              const FigureWords& words, year_month_day today) {
  KeptFigure kept;
  kept.changes = {"entered"};
  const auto done = Workshop::change(file, [&](SQLite::Database& database) -> Result<void> {
    auto record = joint_to_change(database, joint);
    if (!record) return Refusal(record.error());
    auto figure = new_figure(catalogue, all_sources(database), words);
    if (!figure) return Refusal(figure.error());
    figure->entered_on = calendar::write_day(today);
    record->beside.push_back(*figure);
    if (auto whole = check_whole(catalogue, *record); !whole) return whole;
    add_figure_beside(database, record->slug, *figure);
    keep(database, *record, kept);
    return {};
  });
  if (!done) return Refusal(done.error());
  return kept;
}

Result<KeptFigure> revise_figure(const Catalogue& catalogue, const std::filesystem::path& file, std::string_view joint,
                                 long long id, const FigureWords& words, const MaybeText& because,
                                 year_month_day today) {
  const auto why = kept_reason(because, "--because \"the second print raised it for the new gasket\"");
  if (!why) return Refusal(why.error());
  KeptFigure kept;
  const auto done = Workshop::change(file, [&](SQLite::Database& database) -> Result<void> {
    auto record = joint_to_change(database, joint);
    if (!record) return Refusal(record.error());
    FigureRecord* const place = in_force(*record, id);
    if (place == nullptr) return not_in_force(*record, id);
    auto is = with_words(catalogue, all_sources(database), *place, words);
    if (!is) return Refusal(is.error());
    kept.changes = differences(*place, *is);
    if (kept.changes.empty())
      return nothing_to_change("the figure", "say what is to be another, like --printed \"45 N·m\" --torque 45Nm");
    is->entered_on = calendar::write_day(today);
    is->revised_because = *why;
    *place = *is;
    if (auto whole = check_whole(catalogue, *record); !whole) return whole;
    if (auto revised = revise_figure(database, id, *is); !revised) return revised;
    keep(database, *record, kept);
    return {};
  });
  if (!done) return Refusal(done.error());
  return kept;
}

} // namespace clampwright::specdb
