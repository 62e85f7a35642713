// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/substitute/links.hpp"

namespace clampwright::substitute {

namespace {

using quantity::Length;

// Where two threads of different systems come so near, one starts on the other before it jams: diameter within 6 %,
// pitch within 7 %, as the published list of confusable threads was drawn up.
constexpr double k_starts_diameter = 0.06;
constexpr double k_starts_pitch = 0.07;

bool nearly(Length one, Length other, double share) { return std::abs(double(one / other) - 1.0) <= share; }

bool same(Length one, Length other) { return nearly(one, other, 1e-9); }

void add_identity(Checks& checks, const Question& q) {
  const strength::Strength& was = q.original.as.strength;
  const strength::Strength& comes = q.offered.as.strength;
  Check check{Link::identity, Outcome::ok, Reason::classes_known};
  check.original = {q.original.as.thread.designation + " " + was.class_name};
  check.offered = {q.offered.as.thread.designation + " " + comes.class_name};
  if (!class_known(q.offered)) {
    check.outcome = Outcome::not_known, check.reason = Reason::offered_unknown;
  } else if (!class_known(q.original)) {
    check.outcome = Outcome::not_known, check.reason = Reason::original_unknown;
  } else if (was.class_name == comes.class_name &&
             q.original.as.thread.designation == q.offered.as.thread.designation) {
    check.reason = Reason::like_for_like;
  }
  checks.push_back(std::move(check));
}

void add_form(Checks& checks, const thread::Thread& was, const thread::Thread& comes) {
  Check check{Link::form, Outcome::ok, Reason::same_form};
  check.original = {std::string(thread::form_name(was.form))};
  check.offered = {std::string(thread::form_name(comes.form))};
  check.facts = {was.designation, comes.designation};
  if (was.form != comes.form) {
    check.outcome = Outcome::no;
    check.reason =
        nearly(was.diameter, comes.diameter, k_starts_diameter) && nearly(was.pitch, comes.pitch, k_starts_pitch)
            ? Reason::starts_on_it
            : Reason::other_form;
  }
  checks.push_back(std::move(check));
}

void add_size(Checks& checks, Link link, Length was, Length comes, Reason alike, Reason differs) {
  const bool fits = same(was, comes);
  checks.push_back({link, fits ? Outcome::ok : Outcome::no, fits ? alike : differs, {was}, {comes}});
}

void add_hand(Checks& checks, const thread::Thread& was, const thread::Thread& comes) {
  const bool fits = was.hand == comes.hand;
  checks.push_back({Link::hand,
                    fits ? Outcome::ok : Outcome::no,
                    fits ? Reason::same_hand : Reason::other_hand,
                    {std::string(thread::hand_name(was.hand))},
                    {std::string(thread::hand_name(comes.hand))}});
}

// With the grip known a screw shows what it engages; with the depth of the hole, whether it bottoms.
void judge_reach(Check& check, const Question& q) {
  const Length grip = *q.place.grip;
  const Length length = *q.offered.length;
  if (length <= grip) {
    check.outcome = Outcome::no, check.reason = Reason::does_not_reach, check.facts = {length, grip};
    return;
  }
  const Length reach = length - grip;
  if (q.place.hole_depth && reach > *q.place.hole_depth && !same(reach, *q.place.hole_depth)) {
    check.outcome = Outcome::no, check.reason = Reason::bottoms, check.facts = {reach, *q.place.hole_depth};
    return;
  }
  const auto before = engaged(q.original, q.place);
  const Length now = *engaged(q.offered, q.place);
  if (before && now < *before && !same(now, *before)) {
    check.outcome = Outcome::no, check.reason = Reason::engages_less, check.facts = {now, *before};
    return;
  }
  if (!q.place.hole_depth && !(q.original.length && length <= *q.original.length)) {
    check.outcome = Outcome::not_known, check.reason = Reason::longer_depth_not_told, check.facts = {reach};
    return;
  }
  check.reason = Reason::reaches_and_clears;
  check.facts = {now};
}

// Without the grip only the two lengths can be held against each other.
void judge_lengths(Check& check, Length was, Length comes) {
  if (same(was, comes)) {
    check.reason = Reason::same_length;
    return;
  }
  check.outcome = Outcome::not_known;
  check.reason = comes > was ? Reason::longer_depth_not_told : Reason::shorter_grip_not_told;
  check.facts = {comes > was ? comes - was : was - comes};
}

void add_length(Checks& checks, const Question& q) {
  Check check{Link::length, Outcome::ok, Reason::length_not_told};
  if (q.original.length) check.original = {*q.original.length};
  if (q.offered.length) check.offered = {*q.offered.length};
  if (q.offered.length && q.place.grip)
    judge_reach(check, q);
  else if (q.offered.length && q.original.length)
    judge_lengths(check, *q.original.length, *q.offered.length);
  else
    check.outcome = Outcome::note;
  checks.push_back(std::move(check));
}

} // namespace

std::optional<Length> engaged_by_lengths(const Fastener& fastener, const Place& place) {
  if (!fastener.length || !place.grip || *fastener.length <= *place.grip) return std::nullopt;
  const Length reach = *fastener.length - *place.grip;
  return place.hole_depth ? std::min(reach, *place.hole_depth) : reach;
}

std::optional<Length> engaged(const Fastener& fastener, const Place& place) {
  if (const auto length = engaged_by_lengths(fastener, place)) return length;
  return place.tapped ? place.tapped->engagement : std::nullopt;
}

bool class_known(const Fastener& fastener) { return fastener.as.strength.class_name != "unknown"; }

void add_fit(Checks& checks, const Question& q) {
  const thread::Thread& was = q.original.as.thread;
  const thread::Thread& comes = q.offered.as.thread;
  add_identity(checks, q);
  add_form(checks, was, comes);
  add_size(checks, Link::diameter, was.diameter, comes.diameter, Reason::same_diameter, Reason::other_diameter);
  add_size(checks, Link::pitch, was.pitch, comes.pitch, Reason::same_pitch, Reason::other_pitch);
  add_hand(checks, was, comes);
  add_length(checks, q);
}

} // namespace clampwright::substitute
