// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/surfaces_question.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/locking/refit.hpp"
#include "core/quantity/read.hpp"
#include "core/tightening/clamp.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/reductions.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/as_fitted.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/question/short_source.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using finding::Finding;
using finding::Severity;

constexpr const char* k_example = "write surfaces --stated dry --fitted oiled --torque 25Nm";

void add_source(std::vector<Source>& sources, const Source& source) {
  if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
}

// By name, or by a nut factor that was measured.
Result<friction::Surfaces> surfaces_of(const Catalogue& catalogue, const std::optional<std::string>& name,
                                       const std::optional<std::string>& nut_factor, const char* option,
                                       const char* nut_factor_option) {
  if (name && nut_factor)
    return refuse(Trouble::usage, "exclude-each-other",
                  fmt::format("{} and {} say the same thing in two ways", option, nut_factor_option), {},
                  "leave one of them away", option);
  if (name) {
    auto surfaces = find_surfaces(catalogue, *name);
    if (!surfaces) return in_field(surfaces.error(), option);
    return surfaces;
  }
  if (!nut_factor)
    return refuse(Trouble::usage, "missing", fmt::format("the surfaces are missing: {}", option), {}, k_example,
                  option);
  const auto k = friction::read_nut_factor_band(*nut_factor);
  if (!k) return in_field(k.error(), nut_factor_option);
  const auto mu = friction::FrictionCoefficient::try_make(0.0).value(); // nobody asks for it
  return friction::Surfaces{fmt::format("K {}", *nut_factor), "nut factor as given", {mu, mu, mu}, *k, false, {}};
}

Result<quantity::Reading> torque_of(const std::optional<std::string>& text, const char* option) {
  if (!text) return refuse(Trouble::usage, "missing", "the torque is missing", {}, k_example, option);
  auto torque = quantity::read_quantity(*text, quantity::Kind::torque);
  if (!torque) return in_field(torque.error(), option);
  return torque;
}

Result<std::vector<friction::Lock>> locks_of(const Catalogue& catalogue, const std::vector<std::string>& names) {
  std::vector<friction::Lock> locks;
  for (const std::string& name : names) {
    auto lock = find_lock(catalogue, name);
    if (!lock) return in_field(lock.error(), "--lock");
    locks.push_back(std::move(*lock));
  }
  return locks;
}

// The fastener on one of the two states of the surfaces.
Result<tightening::ClampAnswer> clamp_on(const Catalogue& catalogue, const SurfacesQuestion& q, bool fitted,
                                         quantity::Torque torque) {
  CaseQuestion question;
  question.thread = *q.thread;
  question.strength_class = q.strength_class;
  question.surfaces = fitted ? q.fitted : q.stated;
  question.nut_factor = fitted ? q.fitted_nut_factor : q.stated_nut_factor;
  question.running_torque = q.running_torque;
  question.locks = q.locks;
  question.kind = q.kind;
  const auto resolved = resolve(catalogue, question);
  if (!resolved) return Refusal(resolved.error());
  auto answer = tightening::clamp(resolved->asked, torque, resolved->accuracy);
  if (!answer) return in_field(answer.error(), "--torque");
  return answer;
}

Result<locking::RefitPlace> place_of(const Catalogue& catalogue, const SurfacesQuestion& q) {
  locking::RefitPlace place;
  place.taper = q.taper;
  if (q.kind) {
    const auto kind = read_joint_kind(*q.kind);
    if (!kind) return in_field(kind.error(), "--kind");
    place.plug = *kind == tightening::JointKind::plug;
  }
  const auto locks = locks_of(catalogue, q.locks);
  if (!locks) return Refusal(locks.error());
  place.compound = std::ranges::find(*locks, friction::LockFamily::compound, &friction::Lock::family) != locks->end();
  return place;
}

Result<void> add_clamps(const Catalogue& catalogue, const SurfacesQuestion& q, SurfacesReply& reply) {
  const auto put = [&](std::optional<tightening::ClampAnswer>& into, bool fitted,
                       quantity::Torque torque) -> Result<void> {
    auto answer = clamp_on(catalogue, q, fitted, torque);
    if (!answer) return Refusal(answer.error());
    into = std::move(*answer);
    return {};
  };
  if (auto done = put(reply.as_stated, false, reply.torque); !done) return done;
  if (!reply.differs) return {};
  if (auto done = put(reply.uncorrected, true, reply.torque); !done) return done;
  if (reply.corrected) return put(reply.as_corrected, true, *reply.corrected);
  return {};
}

void add_published(const Catalogue& catalogue, const std::optional<strength::PartMaterial>& part,
                   SurfacesReply& reply) {
  const auto put = [&](std::vector<RivalReduction>& into, std::vector<friction::Reduction> rules) {
    for (friction::Reduction& rule : rules) {
      add_source(reply.sources, rule.source);
      const quantity::Torque torque = locking::refitted(reply.torque, reply.running, rule.factor);
      into.push_back({std::move(rule), torque});
    }
  };
  if (reply.differs) put(reply.published, reductions_between(catalogue, reply.stated.name, reply.fitted.name));
  if (part) put(reply.for_part, reductions_for_part(catalogue, part->family));
}

void add_findings(SurfacesReply& reply) {
  // What the clamp load on the fitted surfaces says belongs to the torque that is used.
  const auto& clamp = reply.as_corrected ? reply.as_corrected : reply.differs ? reply.uncorrected : reply.as_stated;
  if (clamp) reply.findings.insert(reply.findings.end(), clamp->findings.begin(), clamp->findings.end());
  const auto has = [&](Code code) {
    return std::ranges::find(reply.findings, code, &Finding::code) != reply.findings.end();
  };
  if (reply.fitted.wet_compound && !has(Code::locking_compound))
    reply.findings.push_back({Code::locking_compound, Severity::mind, {}});
  if (reply.differs) {
    const bool breaks = reply.uncorrected && reply.uncorrected->verdict == tightening::Verdict::over_limit;
    Finding differ{Code::surfaces_differ,
                   breaks ? Severity::stop : Severity::mind,
                   {reply.stated.name, reply.fitted.name, reply.torque}};
    if (reply.uncorrected)
      if (const auto load = tightening::leading_preload(*reply.uncorrected)) {
        differ.facts.emplace_back(load->likely);
        differ.facts.emplace_back(load->high);
      }
    if (reply.corrected) differ.facts.emplace_back(*reply.corrected);
    reply.findings.push_back(std::move(differ));
  }
  Finding conflict{Code::sources_conflict, Severity::mind, {}};
  std::vector<double> seen;
  for (const RivalReduction& rival : reply.published) {
    const double factor = rival.published.factor;
    if (std::ranges::any_of(seen, [&](double one) { return one > factor - 1e-9 && one < factor + 1e-9; })) continue;
    seen.push_back(factor);
    conflict.facts.emplace_back(fmt::format("× {} ({})", factor, short_source(rival.published.source)));
  }
  if (conflict.facts.size() > 1) reply.findings.push_back(std::move(conflict));
  if (!has(Code::maker_first)) reply.findings.push_back({Code::maker_first, Severity::note, {}});
  finding::put_in_order(reply.findings);
}

} // namespace

std::vector<friction::Surfaces> all_surfaces(const Catalogue& catalogue) {
  std::vector<friction::Surfaces> out;
  for (const std::string& name : surfaces_names(catalogue))
    out.push_back(find_surfaces(catalogue, name).value());
  return out;
}

Result<SurfacesReply> answer_surfaces(const Catalogue& catalogue, const SurfacesQuestion& q) {
  auto stated = surfaces_of(catalogue, q.stated, q.stated_nut_factor, "--stated", "--stated-nut-factor");
  if (!stated) return Refusal(stated.error());
  auto fitted = surfaces_of(catalogue, q.fitted, q.fitted_nut_factor, "--fitted", "--fitted-nut-factor");
  if (!fitted) return Refusal(fitted.error());
  const auto torque_read = torque_of(q.torque, "--torque");
  if (!torque_read) return Refusal(torque_read.error());
  const quantity::Torque torque = quantity::newton_metres(torque_read->si());
  if (q.strength_class && !q.thread)
    return refuse(Trouble::usage, "missing", "a class without its thread says nothing", {},
                  "give the thread too: --thread M10 --class 8.8", "--class");
  auto place = place_of(catalogue, q);
  if (!place) return Refusal(place.error());
  SurfacesReply reply{.stated = std::move(*stated), .fitted = std::move(*fitted), .torque = torque};
  if (q.running_torque) {
    const auto running_read = torque_of(q.running_torque, "--running-torque");
    if (!running_read) return Refusal(running_read.error());
    reply.running = quantity::newton_metres(running_read->si());
    if (reply.running >= torque)
      return refuse(Trouble::not_understood, "out-of-range", "the torque does not exceed the running torque",
                    *q.running_torque, "the running torque is a part of the torque set", "--running-torque");
  }
  std::optional<strength::PartMaterial> part;
  if (q.into) {
    const auto material = find_material(catalogue, *q.into);
    if (!material) return in_field(material.error(), "--into");
    part = *material;
  }
  reply.differs = reply.stated.name != reply.fitted.name;
  if (q.thread) {
    const auto own = clamp_on(catalogue, q, false, torque);
    if (!own) return Refusal(own.error());
    if (own->asked.strength.class_name != "unknown") place->stainless = own->asked.strength.stainless;
  }
  if (!reply.differs) {
    reply.corrected = reply.torque;
  } else {
    reply.ratio = locking::ratio_of(reply.stated.k, reply.fitted.k);
    reply.no_correction_because = locking::why_not_corrected(*place, reply.stated, reply.fitted);
    if (reply.no_correction_because.empty())
      reply.corrected = locking::refitted(reply.torque, reply.running, reply.ratio.likely);
  }
  if (q.thread)
    if (auto done = add_clamps(catalogue, q, reply); !done) return Refusal(done.error());
  if (reply.differs && reply.corrected && reply.as_stated && reply.uncorrected)
    reply.by_thread_friction = tightening::same_load_by_thread_friction(*reply.as_stated, *reply.uncorrected);
  for (const friction::Surfaces* one : {&reply.stated, &reply.fitted})
    for (const Source& source : one->sources)
      add_source(reply.sources, source);
  add_published(catalogue, part, reply);
  if (torque_read->mass_as_force) reply.findings.push_back({Code::mass_as_force, Severity::note, {}});
  add_findings(reply);
  return reply;
}

} // namespace clampwright::specdb
