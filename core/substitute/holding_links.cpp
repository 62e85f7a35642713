// SPDX-License-Identifier: GPL-3.0-or-later
#include <numbers>

#include "core/joint/strip.hpp"
#include "core/substitute/links.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::substitute {

namespace {

using quantity::Area;
using quantity::Force;
using tightening::Face;

void add_nut(Checks& checks, const Question& q) {
  const auto& nut = q.place.around.nut;
  if (!nut) {
    if (!q.place.mating) checks.push_back({Link::nut, Outcome::note, Reason::nut_not_told});
    return;
  }
  const strength::Strength& bolt = q.offered.as.strength;
  Check check{Link::nut, Outcome::ok, Reason::nut_goes_with_it};
  check.original = {q.original.as.strength.class_name};
  check.offered = {bolt.class_name};
  check.facts = {nut->nut_class, nut->highest_bolt_class.value_or(""), bolt.class_name};
  if (!nut->highest_bolt_class) {
    check.outcome = Outcome::not_known, check.reason = Reason::nut_thin;
  } else if (const auto weak = joint::nut_strips_first(*nut, bolt); !weak) {
    check.outcome = Outcome::not_known, check.reason = Reason::nut_not_comparable;
  } else if (*weak) {
    const auto before = joint::nut_strips_first(*nut, q.original.as.strength);
    check.outcome = Outcome::no;
    check.reason = before.value_or(false) ? Reason::nut_too_weak_before : Reason::nut_too_weak;
    check.facts.emplace_back(q.original.as.strength.class_name);
  }
  checks.push_back(std::move(check));
}

// The fastener offered, at the torque that would be used.
const tightening::ClampAnswer* as_used(const Answer& answer) {
  if (answer.offered_at_other_torque) return &*answer.offered_at_other_torque;
  return answer.offered ? &*answer.offered : nullptr;
}

// What strips the thread in the part with this fastener in it; nothing where length or strength is not known.
std::optional<Force> part_strip_load(const Fastener& fastener, const Place& place) {
  const TappedThread& tapped = *place.tapped;
  const auto length = engaged(fastener, place);
  if (!length || !tapped.material.shear_strength) return std::nullopt;
  if (*length <= tapped.incomplete) return Force{};
  return joint::strip({fastener.as.thread, tapped.limits, fastener.as.strength, fastener.thread_shear, tapped.material,
                       std::nullopt, *length, tapped.incomplete})
      .loads.part_thread;
}

bool may_strip(const std::optional<quantity::Band<Force>>& load, const std::optional<Force>& limit) {
  return load && limit && load->high > *limit;
}

void judge_part(Check& check, const Question& q, const Answer& answer, Force limit) {
  const std::string& part = q.place.tapped->part;
  const auto* used = as_used(answer);
  const auto load = used != nullptr ? joint::graver_load(*used) : std::nullopt;
  check.facts = {part, limit};
  if (load) check.facts.insert(check.facts.end(), {load->likely, load->high});
  if (load && load->likely > limit) {
    check.outcome = Outcome::no, check.reason = Reason::part_gives;
  } else if (may_strip(load, limit)) {
    // With the original it was as near, or nearer: then nothing is new.
    const auto before = answer.original ? joint::graver_load(*answer.original) : std::nullopt;
    const bool as_before =
        may_strip(before, part_strip_load(q.original, q.place)) && load->high <= before->high / k_as_much;
    check.outcome = as_before ? Outcome::note : Outcome::not_known;
    check.reason = as_before ? Reason::part_may_give_as_before : Reason::part_may_give;
  } else if (const auto& proof = q.offered.as.strength.proof_load; proof && limit < *proof) {
    check.outcome = Outcome::note, check.reason = Reason::part_gives_before_bolt;
    check.facts = {part, limit, *proof};
  } else if (!load) {
    check.outcome = Outcome::note, check.reason = Reason::part_torque_not_told;
  }
}

void add_part_thread(Checks& checks, const Question& q, const Answer& answer) {
  if (q.place.around.nut || !q.place.mating) return;
  Check check{Link::part_thread, Outcome::ok, Reason::part_holds};
  if (!q.place.mating->shear_strength || !q.place.tapped) {
    check.outcome = Outcome::not_known, check.reason = Reason::part_strength_not_known;
    check.facts = {text::without_hyphens(q.place.mating->name)};
    checks.push_back(std::move(check));
    return;
  }
  if (const auto before = part_strip_load(q.original, q.place)) check.original = {*before};
  if (const auto limit = part_strip_load(q.offered, q.place)) {
    check.offered = {*limit};
    judge_part(check, q, answer, *limit);
  } else {
    check.outcome = Outcome::note, check.reason = Reason::part_length_not_told;
    check.facts = {q.place.tapped->part};
  }
  checks.push_back(std::move(check));
}

void add_seat(Checks& checks, const Question& q, const Answer& answer) {
  const auto& seat = q.place.around.seat;
  Check check{Link::seat, Outcome::note, Reason::seat_not_told};
  const auto pressure_of = [&](const tightening::ClampAnswer* clamp, std::vector<finding::Fact>& side) {
    const auto load = clamp ? joint::graver_load(*clamp) : std::nullopt;
    if (!load || !clamp->asked.face) return std::optional<quantity::Band<quantity::Stress>>();
    const auto pressure =
        quantity::map(*load, [&](Force force) { return joint::seat_pressure(force, *clamp->asked.face); });
    side = {pressure.likely};
    return std::optional(pressure);
  };
  (void)pressure_of(answer.original ? &*answer.original : nullptr, check.original);
  const auto now = pressure_of(as_used(answer), check.offered);
  if (!seat) {
    checks.push_back(std::move(check));
    return;
  }
  check.facts = {text::without_hyphens(seat->name)};
  if (!seat->seat_pressure) {
    check.outcome = Outcome::not_known, check.reason = Reason::seat_not_known;
  } else if (!now) {
    check.reason = Reason::seat_not_told;
  } else {
    const quantity::Stress limit = *seat->seat_pressure;
    check.facts = {text::without_hyphens(seat->name), limit, now->likely, now->high};
    if (now->likely > limit)
      check.outcome = Outcome::no, check.reason = Reason::seat_gives;
    else if (now->high > limit)
      check.reason = Reason::seat_may_give;
    else
      check.outcome = Outcome::ok, check.reason = Reason::seat_bears;
  }
  checks.push_back(std::move(check));
}

Area ring(const Face& face) { return std::numbers::pi / 4.0 * (face.outer * face.outer - face.inner * face.inner); }

// A smaller face presses harder; whether the seat bears that, the link before has said where the seat is known.
void add_head(Checks& checks, const Question& q) {
  Check check{Link::head, Outcome::note, Reason::head_not_told};
  const auto& was = q.original.as.face;
  const auto& comes = q.offered.as.face;
  if (was && comes) {
    check.original = {was->outer};
    check.offered = {comes->outer};
  }
  if (!q.original.head_told && !q.offered.head_told) {
    checks.push_back(std::move(check));
    return;
  }
  if (!was || !comes) {
    check.outcome = Outcome::not_known, check.reason = Reason::face_not_known;
    checks.push_back(std::move(check));
    return;
  }
  const double share = double(ring(*comes) / ring(*was));
  check.facts = {share};
  const bool seat_judged = q.place.around.seat && q.place.around.seat->seat_pressure && q.place.torque;
  if (share >= k_as_much)
    check.outcome = Outcome::ok, check.reason = share > 1.0 / k_as_much ? Reason::larger_face : Reason::same_face;
  else if (seat_judged)
    check.reason = Reason::smaller_face_on_known_seat;
  else
    check.outcome = Outcome::not_known, check.reason = Reason::smaller_face;
  checks.push_back(std::move(check));
}

} // namespace

void add_holding(Checks& checks, const Question& q, const Answer& answer) {
  add_nut(checks, q);
  add_part_thread(checks, q, answer);
  add_seat(checks, q, answer);
  add_head(checks, q);
}

} // namespace clampwright::substitute
