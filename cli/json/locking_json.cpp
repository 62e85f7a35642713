// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/locking_json.hpp"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "core/thread/designation.hpp"

namespace clampwright::cli {

namespace {

constexpr double k_minutes_of_hour = 60;

Json hours(const std::optional<double>& minutes) {
  return minutes ? Json(*minutes / k_minutes_of_hour) : Json(nullptr);
}
Json celsius(const std::optional<quantity::Temperature>& temperature) {
  return temperature ? Json(quantity::in_degrees_celsius(*temperature)) : Json(nullptr);
}
Json torque(const std::optional<quantity::Torque>& value) {
  return value ? Json(quantity::in_newton_metres(*value)) : Json(nullptr);
}
Json moment(const std::optional<calendar::Moment>& value) {
  return value ? Json(calendar::write_moment(*value)) : Json(nullptr);
}
Json text(const std::string& words) { return words.empty() ? Json(nullptr) : Json(words); }

const char* activity_name(locking::Activity activity) {
  switch (activity) {
  case locking::Activity::active:
    return "active";
  case locking::Activity::inactive:
    return "inactive";
  case locking::Activity::not_known:
    return "not-known";
  case locking::Activity::never:
    return "never";
  }
  return "";
}

const char* course_name(locking::Course course) {
  switch (course) {
  case locking::Course::cures:
    return "by-itself";
  case locking::Course::wants_primer:
    return "wants-primer";
  case locking::Course::wants_heat:
    return "wants-heat";
  case locking::Course::heat_cures:
    return "by-heat";
  case locking::Course::too_hot:
    return "too-hot";
  case locking::Course::not_here:
    return "not-here";
  }
  return "";
}

const char* together_name(specdb::Together verdict) {
  switch (verdict) {
  case specdb::Together::ok:
    return "ok";
  case specdb::Together::mind:
    return "mind";
  case specdb::Together::no:
    return "no";
  }
  return "";
}

const char* family_name(friction::LockFamily family) {
  switch (family) {
  case friction::LockFamily::none:
    return "none";
  case friction::LockFamily::compound:
    return "compound";
  case friction::LockFamily::running_torque:
    return "running-torque";
  case friction::LockFamily::positive:
    return "positive";
  case friction::LockFamily::washer:
    return "washer";
  }
  return "";
}

const char* check_name(specdb::CheckByTurning check) {
  switch (check) {
  case specdb::CheckByTurning::yes:
    return "yes";
  case specdb::CheckByTurning::with_lock_off:
    return "with-lock-off";
  case specdb::CheckByTurning::no:
    return "no";
  }
  return "";
}

Json reuse_json(const std::optional<locking::Reuse>& reuse) {
  if (!reuse) return nullptr;
  switch (*reuse) {
  case locking::Reuse::ok:
    return "ok";
  case locking::Reuse::drags_too_little:
  case locking::Reuse::drags_too_much:
    return "no";
  case locking::Reuse::tables_differ:
    return "tables-differ";
  case locking::Reuse::not_known:
    return "not-known";
  }
  return nullptr;
}

Json one_lock_json(const friction::Lock& lock) {
  return {{"name", lock.name},
          {"description", lock.description},
          {"family", family_name(lock.family)},
          {"single_use", lock.single_use},
          {"heat_limit_degC", celsius(lock.heat_limit)},
          {"parts_from_degC", celsius(lock.parts_from)},
          {"parts_to_degC", celsius(lock.parts_to)},
          {"check_by_turning", check_name(specdb::check_by_turning(lock))},
          {"breakaway_torque_N_m", nullptr},
          {"note", text(lock.note)}};
}

Json limits_json(const std::vector<locking::RunningLimit>& limits, const std::optional<quantity::Torque>& measured) {
  Json rows = Json::array();
  for (const locking::RunningLimit& limit : limits) {
    Json row{{"kind", limit.kind},
             {"nut", limit.nut},
             {"torque_N_m", torque(limit.torque)},
             {"printed", text(limit.printed)},
             {"note", text(limit.note)},
             {"source", source_json(limit.source)}};
    if (measured) {
      const auto verdict = locking::judge(limit, *measured);
      row["verdict"] = verdict == locking::RunningVerdict::ok   ? Json("ok")
                       : verdict == locking::RunningVerdict::no ? Json("no")
                                                                : Json(nullptr);
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

Json clamp_or_null(const std::optional<tightening::ClampAnswer>& clamp) {
  if (!clamp) return nullptr;
  const auto load = tightening::leading_preload(*clamp);
  const auto in_newtons = [](quantity::Force force) { return quantity::in_newtons(force); };
  return {{"torque_N_m", quantity::in_newton_metres(clamp->torque)},
          {"preload_N", load ? band_json(quantity::map(*load, in_newtons)) : Json(nullptr)},
          {"verdict", tightening::verdict_name(clamp->verdict)},
          {"governed_by", text(std::string(tightening::governs_name(clamp->governed_by)))}};
}

Json surfaces_state_json(const friction::Surfaces& surfaces) {
  const auto value = [](auto coefficient) { return coefficient.value(); };
  return {{"name", surfaces.name},
          {"description", surfaces.description},
          {"k", band_json(quantity::map(surfaces.k, value))}};
}

} // namespace

Json cure_json(const locking::CureAnswer& answer) {
  Json surfaces = Json::array();
  for (const locking::CureSurface& surface : answer.asked.surfaces)
    surfaces.push_back(
        {{"name", surface.name}, {"description", surface.description}, {"activity", activity_name(surface.activity)}});
  Json heat = Json::array();
  for (const locking::CureTime& line : answer.heat_cures)
    heat.push_back({{"temperature_degC", celsius(line.from)}, {"time_min", *line.least_min}});
  return {{"lock", answer.asked.compound.name},
          {"temperature_degC", celsius(answer.asked.temperature)},
          {"surfaces", std::move(surfaces)},
          {"activity", activity_name(answer.activity)},
          {"course", course_name(answer.course)},
          {"set_least_h", hours(answer.set_least_min)},
          {"set_most_h", hours(answer.set_most_min)},
          {"full_strength_h", hours(answer.full_min)},
          {"not_known_because", text(answer.not_known_because)},
          {"set_from", moment(answer.set_from)},
          {"set_by", moment(answer.set_by)},
          {"ready_at", moment(answer.full_at)},
          {"heat_cures", std::move(heat)},
          {"heat_limit_degC", celsius(answer.asked.compound.heat_limit)}};
}

Json lock_json(const specdb::LockReply& reply) {
  Json out = one_lock_json(reply.lock);
  Json rules = Json::array();
  for (const specdb::LockRule& rule : reply.rules)
    rules.push_back(
        {{"topic", rule.topic}, {"rule", rule.rule}, {"note", text(rule.note)}, {"source", source_json(rule.source)}});
  out["rules"] = std::move(rules);
  Json together = Json::array();
  for (const specdb::LockTogether& one : reply.together)
    together.push_back({{"with", one.other.name},
                        {"verdict", together_name(one.pair.verdict)},
                        {"why", one.pair.why},
                        {"note", text(one.pair.note)},
                        {"source", source_json(one.pair.source)}});
  out["together"] = std::move(together);
  out["thread"] = reply.thread ? Json(thread::write_designation(reply.thread->thread)) : Json(nullptr);
  out["strips"] = reply.strips ? Json(*reply.strips) : Json(nullptr);
  out["running"] = limits_json(reply.running, std::nullopt);
  out["temperature_degC"] = celsius(reply.temperature);
  out["bears_temperature"] = reply.bears_temperature ? Json(*reply.bears_temperature) : Json(nullptr);
  Json surfaces = Json::array();
  for (const locking::CureSurface& surface : reply.surfaces)
    surfaces.push_back({{"name", surface.name}, {"activity", activity_name(surface.activity)}});
  out["surfaces"] = std::move(surfaces);
  out["verdict"] = together_name(reply.verdict);
  return out;
}

Json locks_json(const std::vector<friction::Lock>& locks) {
  Json rows = Json::array();
  for (const friction::Lock& lock : locks)
    rows.push_back(one_lock_json(lock));
  return {{"locks", std::move(rows)}};
}

Json running_json(const specdb::RunningReply& reply) {
  Json rules = Json::array();
  for (const locking::RunningRule& rule : reply.rules) {
    const auto answered =
        std::ranges::find_if(reply.adding, [&](const locking::RuleAnswer& one) { return one.rule.name == rule.name; });
    const bool known = answered != reply.adding.end();
    rules.push_back({{"rule", rule.name},
                     {"words", rule.words},
                     {"from_share", number_or_null(rule.from_share)},
                     {"adds", known ? Json(answered->adds) : Json(nullptr)},
                     {"set_torque_N_m", known ? Json(quantity::in_newton_metres(answered->set)) : Json(nullptr)},
                     {"source", source_json(rule.source)}});
  }
  const bool both = reply.torque && reply.measured;
  return {{"thread", thread::write_designation(reply.thread.thread)},
          {"limits", limits_json(reply.limits, reply.measured)},
          {"measured_N_m", torque(reply.measured)},
          {"torque_N_m", torque(reply.torque)},
          {"share", both ? Json(double(*reply.measured / *reply.torque)) : Json(nullptr)},
          {"reuse", reuse_json(reply.reuse)},
          {"rules", std::move(rules)}};
}

Json published_json(const std::vector<specdb::RivalReduction>& rivals) {
  Json rows = Json::array();
  for (const specdb::RivalReduction& rival : rivals)
    rows.push_back({{"rule", rival.published.rule},
                    {"factor", rival.published.factor},
                    {"torque_N_m", quantity::in_newton_metres(rival.torque)},
                    {"source", source_json(rival.published.source)}});
  return rows;
}

Json surfaces_json(const specdb::SurfacesReply& reply) {
  return {{"stated", surfaces_state_json(reply.stated)},
          {"fitted", surfaces_state_json(reply.fitted)},
          {"torque_N_m", quantity::in_newton_metres(reply.torque)},
          {"running_torque_N_m", quantity::in_newton_metres(reply.running)},
          {"differs", reply.differs},
          {"factor", reply.corrected ? Json(reply.ratio.likely) : Json(nullptr)},
          {"ratio", band_json(reply.ratio)},
          {"corrected_torque_N_m", torque(reply.corrected)},
          {"thread_friction_torque_N_m", torque(reply.by_thread_friction)},
          {"no_correction_because", text(reply.no_correction_because)},
          {"published", published_json(reply.published)},
          {"published_for_part", published_json(reply.for_part)},
          {"clamp_stated", clamp_or_null(reply.as_stated)},
          {"clamp_uncorrected", clamp_or_null(reply.uncorrected)},
          {"clamp_corrected", clamp_or_null(reply.as_corrected)}};
}

Json all_surfaces_json(const std::vector<friction::Surfaces>& surfaces) {
  const auto value = [](auto coefficient) { return coefficient.value(); };
  Json rows = Json::array();
  for (const friction::Surfaces& one : surfaces) {
    Json row = surfaces_state_json(one);
    row["mu"] = band_json(quantity::map(one.mu, value));
    row["wet_compound"] = one.wet_compound;
    row["electroplated"] = one.electroplated;
    rows.push_back(std::move(row));
  }
  return {{"surfaces", std::move(rows)}};
}

} // namespace clampwright::cli
