// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/write.hpp"
#include "core/substitute/links.hpp"
#include "core/text/plain_text.hpp"
#include "core/tightening/clamp_findings.hpp"

namespace clampwright::substitute {

namespace {

using strength::Metal;

// ISO 4042:2018, 4.4: from 360 to 390 HV a process that was verified replaces the baking.
constexpr double k_verified_from_HV = 360.0;

void add_brittleness(Checks& checks, const Question& q) {
  const strength::Strength& comes = q.offered.as.strength;
  Check check{Link::brittleness, Outcome::ok, Reason::soft_enough};
  if (class_known(q.original)) check.original = {q.original.as.strength.class_name};
  check.offered = {comes.class_name};
  check.facts = {comes.class_name};
  const bool plated = q.offered.coating == Coating::electroplated;
  if (!class_known(q.offered)) {
    check.outcome = Outcome::not_known, check.reason = Reason::hardness_not_known;
  } else if (is_hard(comes)) {
    check.outcome = plated                                       ? Outcome::no
                    : q.offered.coating == Coating::without_bath ? Outcome::note
                                                                 : Outcome::not_known;
    check.reason = plated                                       ? Reason::hard_plated
                   : q.offered.coating == Coating::without_bath ? Reason::hard_not_plated
                                                                : Reason::hard_coating_not_told;
  } else if (comes.hardest_HV && *comes.hardest_HV >= k_verified_from_HV) {
    check.outcome = Outcome::note;
    check.reason = plated ? Reason::midway_plated : Reason::midway;
  }
  checks.push_back(std::move(check));
}

std::string end_words(const std::optional<quantity::Temperature>& end) {
  return end ? quantity::write_si(end->value(), quantity::unit_named("degC")) : "not known";
}

void add_temperature(Checks& checks, const Question& q) {
  Check check{Link::temperature, Outcome::note, Reason::temperature_not_told};
  const auto& bears = q.offered.bears;
  if (const auto& runs = q.place.runs_at) {
    if (q.original.bears && q.original.bears->high) check.original = {*q.original.bears->high};
    if (bears && bears->high) check.offered = {*bears->high};
    const bool too_hot = bears && bears->high && *runs > *bears->high;
    const bool too_cold = bears && bears->low && *runs < *bears->low;
    check.outcome = Outcome::not_known, check.reason = Reason::temperature_range_not_known;
    if (too_hot || too_cold)
      check.outcome = Outcome::no, check.reason = Reason::temperature_not_borne;
    else if (bears && bears->low && bears->high)
      check.outcome = Outcome::ok, check.reason = Reason::temperature_borne;
    check.facts = {*runs};
    if (bears) check.facts.insert(check.facts.end(), {end_words(bears->low), end_words(bears->high)});
  }
  // What runs hot beside it heats it too, nobody said how far.
  for (const joint::HotNeighbour& hot : q.place.around.hot)
    if (!q.place.runs_at && (!bears || !bears->high || hot.runs_at > *bears->high)) {
      check.outcome = Outcome::not_known, check.reason = Reason::temperature_hot_neighbour;
      check.facts = {hot.name, hot.runs_at};
    }
  checks.push_back(std::move(check));
}

// What a stainless bolt does to the metal round it. A small noble bolt in a large base part is borne dry; in the wet it
// eats light metal.
void judge_stainless(Check& check, const Question& q) {
  if (!q.place.mating) {
    check.outcome = Outcome::not_known, check.reason = Reason::stainless_mating_not_told;
    return;
  }
  const Metal metal = q.place.mating->metal;
  const bool light = metal == Metal::aluminium || metal == Metal::magnesium;
  if (!light || q.place.duty == Duty::dry) {
    const bool wet = q.place.duty == Duty::wet;
    if (metal != Metal::stainless) {
      check.outcome = Outcome::note;
      check.reason = wet ? Reason::stainless_in_other_metal_wet : Reason::stainless_in_other_metal_dry;
    }
  } else if (!q.place.duty) {
    check.outcome = Outcome::not_known, check.reason = Reason::stainless_in_light_metal_duty_not_told;
  } else if (metal == Metal::magnesium) {
    check.outcome = Outcome::no, check.reason = Reason::stainless_in_magnesium_wet;
  } else {
    check.outcome = Outcome::not_known, check.reason = Reason::stainless_in_light_metal_wet;
  }
}

void judge_loss_of_stainless(Check& check, const Question& q) {
  if (!q.place.duty)
    check.outcome = Outcome::not_known, check.reason = Reason::loses_stainless_duty_not_told;
  else if (*q.place.duty == Duty::wet)
    check.outcome = Outcome::no, check.reason = Reason::loses_stainless_wet;
  else
    check.outcome = Outcome::note, check.reason = Reason::loses_stainless_dry;
}

void add_corrosion(Checks& checks, const Question& q) {
  Check check{Link::corrosion, Outcome::ok, Reason::same_metal};
  const bool was = q.original.as.strength.stainless;
  const bool comes = q.offered.as.strength.stainless;
  const auto metal = [](bool stainless) { return std::string(stainless ? "stainless steel" : "steel"); };
  if (class_known(q.original)) check.original = {metal(was)};
  if (class_known(q.offered)) check.offered = {metal(comes)};
  check.facts = {q.offered.as.strength.class_name,
                 q.place.mating ? text::without_hyphens(q.place.mating->name) : std::string("part")};
  if (!class_known(q.offered)) return;
  if (comes && !(was && q.place.mating == std::nullopt))
    judge_stainless(check, q);
  else if (was && !comes)
    judge_loss_of_stainless(check, q);
  else if (is_hard(q.offered.as.strength) && q.place.duty == Duty::wet)
    check.outcome = Outcome::note, check.reason = Reason::hard_in_the_wet;
  checks.push_back(std::move(check));
}

// Austenitic steel on itself seizes while it is turned, unless it is lubricated.
void add_galling(Checks& checks, const Question& q) {
  if (!class_known(q.offered)) return;
  Check check{Link::galling, Outcome::ok, Reason::does_not_gall};
  check.facts = {q.offered.as.strength.class_name};
  if (q.offered.as.strength.stainless) {
    const bool told = q.offered.as.friction_stated && !q.offered.as.surfaces.empty();
    const bool dry = told && (q.offered.as.surfaces == "dry" || q.offered.as.surfaces == "stainless-dry");
    if (!q.place.mating)
      check.outcome = Outcome::not_known, check.reason = Reason::galls_mating_not_told;
    else if (q.place.mating->metal != Metal::stainless)
      ;
    else if (dry)
      check.outcome = Outcome::no, check.reason = Reason::galls_dry;
    else if (told)
      check.outcome = Outcome::note, check.reason = Reason::galls_lubricated;
    else
      check.outcome = Outcome::not_known, check.reason = Reason::galls_not_told;
  }
  checks.push_back(std::move(check));
}

void add_fatigue(Checks& checks, const Question& q) {
  const bool same = q.original.as.strength.class_name == q.offered.as.strength.class_name;
  checks.push_back({Link::fatigue, Outcome::note, same ? Reason::fatigue_same : Reason::fatigue_no_better});
}

void add_reuse(Checks& checks, const Question& q) {
  Check check{Link::reuse, Outcome::note, Reason::reuse_not_told};
  const auto& rule = q.place.around.reuse;
  const bool never = rule && rule->never;
  if (rule) check.facts = {rule->words};
  if (never && q.place.used == true)
    check.outcome = Outcome::no, check.reason = Reason::reuse_never;
  else if (never && !q.place.used)
    check.outcome = Outcome::not_known, check.reason = Reason::reuse_never;
  else if (q.place.used == true)
    check.reason = Reason::reuse_used;
  else if (q.place.used == false)
    check.outcome = Outcome::ok, check.reason = Reason::reuse_new;
  checks.push_back(std::move(check));
}

void add_approval(Checks& checks, const Question& q) {
  const auto is_structural = [](const Fastener& fastener) {
    return fastener.as.strength.class_name == "ASTM A325" || fastener.as.strength.class_name == "ASTM A490";
  };
  const bool needed = q.place.approval_needed || is_structural(q.original) || is_structural(q.offered) ||
                      q.original.as.strength.approved_data || q.offered.as.strength.approved_data;
  checks.push_back({Link::approval, needed ? Outcome::not_known : Outcome::note,
                    needed ? Reason::approval_needed : Reason::approval_prompt});
}

} // namespace

void add_condition(Checks& checks, const Question& q) {
  add_brittleness(checks, q);
  add_temperature(checks, q);
}

void add_metal(Checks& checks, const Question& q) {
  add_corrosion(checks, q);
  add_galling(checks, q);
  add_fatigue(checks, q);
}

void add_paper(Checks& checks, const Question& q) {
  add_reuse(checks, q);
  add_approval(checks, q);
}

} // namespace clampwright::substitute
