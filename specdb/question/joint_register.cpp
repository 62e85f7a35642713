// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/joint_register.hpp"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include "core/calendar/moment.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/question/kept_words.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/machines.hpp"
#include "specdb/workshop/sources.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

namespace {

using std::chrono::year_month_day;

// A short name that was said must be free; one that was made is made free.
Result<void> check_slug(const SQLite::Database& database, JointRecord& joint, bool was_said) {
  const auto other = joint_of_slug(database, joint.slug);
  if (!other) return {};
  if (was_said)
    return refuse(Trouble::cannot_create, "name-taken",
                  fmt::format("a joint has that short name already: {} ({})", other->slug, other->name), joint.slug,
                  "give the new one another short name, or change the record of the old one", "--short-name");
  joint.slug =
      free_name(joint.slug, [&](const std::string& slug) { return joint_of_slug(database, slug).has_value(); });
  return {};
}

} // namespace

Result<JointRecord> joint_to_change(const SQLite::Database& database, std::string_view slug) {
  if (auto joint = joint_of_slug(database, text::plain_spaces(slug))) return std::move(*joint);
  return refuse(Trouble::no_such, "no-such-joint", "no joint of that short name is in the workshop file", slug,
                "look it up again: it is written like pump/clutch-hub");
}

Result<void> check_whole(const Catalogue& catalogue, const JointRecord& joint) {
  if (const auto answer = answer_for(catalogue, joint); !answer) return Refusal(answer.error());
  return {};
}

Result<KeptJoint> add_joint(const Catalogue& catalogue, const std::filesystem::path& file, std::string_view machine,
                            const JointWords& words, const FigureWords& figure, year_month_day today) {
  KeptJoint kept;
  const auto done = Workshop::change(file, [&](SQLite::Database& database) -> Result<void> {
    const auto owner = find_machine(database, machine);
    if (!owner) return in_field(owner.error(), "--machine");
    auto joint = new_joint(catalogue, *owner, words);
    if (!joint) return Refusal(joint.error());
    auto first = new_figure(catalogue, all_sources(database), figure);
    if (!first) return Refusal(first.error());
    first->entered_on = calendar::write_day(today);
    joint->figure = std::move(*first);
    joint->events = {entered_event(today)};
    if (auto whole = check_whole(catalogue, *joint); !whole) return whole;
    if (auto free = check_slug(database, *joint, words.short_name.has_value()); !free) return free;
    add_joint(database, *joint);
    kept = {*joint_of_slug(database, joint->slug), {"entered"}};
    return {};
  });
  if (!done) return Refusal(done.error());
  return kept;
}

Result<KeptJoint> revise_joint(const Catalogue& catalogue, const std::filesystem::path& file, std::string_view slug,
                               const JointWords& words, const Revision& revision, year_month_day today) {
  const auto why = kept_reason(revision.because, "--because \"the class was read off the head\"");
  if (!why) return Refusal(why.error());
  KeptJoint kept;
  const auto done = Workshop::change(file, [&](SQLite::Database& database) -> Result<void> {
    const auto was = joint_to_change(database, slug);
    if (!was) return Refusal(was.error());
    if (auto seen = check_seen(revision, was->events, was->slug); !seen) return seen;
    auto is = with_words(catalogue, *was, words);
    if (!is) return Refusal(is.error());
    kept.changes = differences(*was, *is);
    if (kept.changes.empty())
      return nothing_to_change(was->slug, "say what is to be another, like --class 10.9 or --washer none");
    if (auto whole = check_whole(catalogue, *is); !whole) return whole;
    const EventRecord event = revised_event(today, kept.changes, *why);
    revise_joint(database, *is);
    add_joint_event(database, is->slug, event);
    kept.joint = *joint_of_slug(database, is->slug);
    return {};
  });
  if (!done) return Refusal(done.error());
  return kept;
}

} // namespace clampwright::specdb
