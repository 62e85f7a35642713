// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/substitute_question.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/joint/strip.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/unit.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/reductions.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/catalogue/temperatures.hpp"
#include "specdb/question/as_fitted.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/question/joint_question.hpp"

namespace clampwright::specdb {

namespace {

using substitute::Coating;
using substitute::Fastener;
using substitute::Place;

constexpr const char* k_like = "substitute \"M10 8.8\" --with \"M10 10.9\"";

struct CoatingName {
  std::string_view name;
  Coating coating;
};

// Hot-dip zinc is put on after a bath in acid, which brings hydrogen as electroplating does.
constexpr std::array k_coatings{
    CoatingName{"plain", Coating::without_bath}, CoatingName{"electroplated", Coating::electroplated},
    CoatingName{"hot-dip", Coating::electroplated}, CoatingName{"zinc-flake", Coating::without_bath},
    CoatingName{"phosphate", Coating::without_bath}};

// Surfaces that say how the metal was coated; oil or paste on something says nothing of what is below.
Coating coating_of(const friction::Surfaces& surfaces) {
  constexpr std::array<std::string_view, 4> k_without_bath{"dry", "oiled", "zinc-flake", "phosphate-oiled"};
  if (surfaces.electroplated) return Coating::electroplated;
  return std::ranges::find(k_without_bath, surfaces.name) != k_without_bath.end() ? Coating::without_bath
                                                                                  : Coating::not_told;
}

template<class Reader, class Value>
Result<void> read_into(const std::optional<std::string>& text, const char* field, Reader reader,
                       std::optional<Value>& into) {
  if (!text) return {};
  auto value = reader(*text);
  if (!value) return in_field(value.error(), field);
  into = std::move(*value);
  return {};
}

Result<quantity::Temperature> read_temperature(const std::string& text) {
  const auto reading = quantity::read_quantity(text, quantity::Kind::temperature);
  if (!reading) return Refusal(reading.error());
  return quantity::Temperature::from_value(reading->si());
}

// The first of the two that says something.
std::optional<std::string> either(const std::optional<std::string>& told, const std::optional<std::string>& recorded) {
  return told ? told : recorded;
}

Result<void> read_lengths(const SubstituteQuestion& q, SubstituteAnswer& out) {
  const JointRecord* joint = q.joint ? &*q.joint : nullptr;
  Place& place = out.question.place;
  const struct {
    std::optional<std::string> text;
    const char* field;
    std::optional<quantity::Length>& into;
  } lengths[] = {
      {q.length, "--length", out.question.offered.length},
      {either(q.original_length, joint ? joint->bolt_length : std::nullopt), "--original-length",
       out.question.original.length},
      {either(q.grip, joint ? joint->grip : std::nullopt), "--grip", place.grip},
      {either(q.hole_depth, joint ? joint->hole_depth : std::nullopt), "--hole-depth", place.hole_depth},
  };
  for (const auto& length : lengths)
    if (auto read = read_into(length.text, length.field, quantity::read_length, length.into); !read) return read;
  return {};
}

// The thread in the part, where both its material and the length engaged are known.
Result<void> read_part(const Catalogue& catalogue, const SubstituteQuestion& q, SubstituteAnswer& out) {
  Place& place = out.question.place;
  if (q.mating) {
    auto material = find_material(catalogue, *q.mating);
    if (!material) return in_field(material.error(), "--mating");
    place.mating = std::move(*material);
  }
  std::optional<quantity::Length> engagement;
  const auto text = either(q.engagement, q.joint ? q.joint->engagement : std::nullopt);
  if (auto read = read_into(text, "--engagement", quantity::read_length, engagement); !read) return read;
  if (!place.mating || place.around.nut || !out.original.limits) return {};
  substitute::TappedThread tapped{q.joint && q.joint->mating_part ? *q.joint->mating_part : "part", *place.mating,
                                  *out.original.limits, engagement, joint::usual_incomplete(out.original.thread)};
  // The length that a joint has on record is thread that bears.
  if (!q.engagement && q.joint && q.joint->engagement) tapped.incomplete = quantity::Length{};
  if (!tapped.engagement) tapped.engagement = substitute::engaged_by_lengths(out.question.original, place);
  place.tapped = std::move(tapped);
  return {};
}

// What the joint's record knows of the place; what is told ranks above.
Result<void> read_place(const Catalogue& catalogue, const SubstituteQuestion& q, const ResolvedCase& original,
                        SubstituteAnswer& out) {
  Place& place = out.question.place;
  place.approval_needed = q.approval_needed;
  place.accuracy = original.accuracy;
  if (q.joint) {
    auto around = surroundings_of(catalogue, *q.joint, original);
    if (!around) return Refusal(around.error());
    place.around = std::move(*around);
    place.around.tapped.reset();
    place.approval_needed = place.approval_needed || q.joint->machine.regulated_by.has_value();
    if (q.joint->mating_material) {
      auto material = find_material(catalogue, *q.joint->mating_material);
      if (!material) return Refusal(material.error());
      place.mating = std::move(*material);
    }
  }
  const auto nut = either(q.nut, q.joint ? q.joint->nut_class : std::nullopt);
  if (nut) {
    auto found = nut_of(catalogue, *nut, out.original.thread);
    if (!found) return in_field(found.error(), "--nut");
    place.around.nut = std::move(*found);
  }
  if (q.seat) {
    auto material = find_material(catalogue, *q.seat);
    if (!material) return in_field(material.error(), "--seat");
    place.around.seat = std::move(*material);
  }
  if (auto read = read_lengths(q, out); !read) return read;
  if (auto read = read_part(catalogue, q, out); !read) return read;
  const auto duty = either(q.duty, q.joint ? q.joint->duty : std::nullopt);
  if (auto read = read_into(duty, "--duty", read_duty, place.duty); !read) return read;
  if (auto read = read_into(q.temperature, "--temperature", read_temperature, place.runs_at); !read) return read;
  return read_into(q.condition, "--condition", read_used, place.used);
}

// The torque told, or the joint's figure as it is set on the wrench.
Result<void> read_torque(const Catalogue& catalogue, const SubstituteQuestion& q, SubstituteAnswer& out) {
  Place& place = out.question.place;
  if (q.torque) {
    const auto reading = quantity::read_quantity(*q.torque, quantity::Kind::torque);
    if (!reading) return in_field(reading.error(), "--torque");
    out.mass_as_force = reading->mass_as_force;
    place.torque = quantity::newton_metres(reading->si());
    return {};
  }
  if (!q.joint) return {};
  const auto answer = answer_for(catalogue, *q.joint);
  if (!answer) return Refusal(answer.error());
  if (!answer->not_to_be_used_because.empty())
    place.no_torque_because = answer->not_to_be_used_because;
  else if (answer->figure.figure.angle_deg)
    place.no_torque_because = "an angle follows the torque, and the angle makes the clamp load";
  else
    place.torque = answer->figure.set;
  // What stops the joint's own figure stops it here too.
  for (const finding::Finding& finding : answer->findings)
    for (const auto code : {finding::Code::unit_slip, finding::Code::sources_conflict, finding::Code::no_maker_value,
                            finding::Code::angle_final})
      if (finding.code == code) out.of_the_joint.push_back(finding);
  return {};
}

CaseQuestion offered_question(const SubstituteQuestion& q, const CaseQuestion& original, std::string thread,
                              std::string strength_class) {
  CaseQuestion out = original;
  out.thread = std::move(thread);
  out.strength_class = std::move(strength_class);
  out.surfaces = q.with_surfaces;
  out.mu = q.with_mu;
  out.nut_factor = q.with_nut_factor;
  out.mu_thread.reset();
  out.mu_head.reset();
  if (q.with_head) {
    out.head = q.with_head;
    out.face_outer.reset();
    out.face_inner.reset();
  }
  return out;
}

Refusal with_prefix(Problem problem) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 4> k_options{
      {{"--surfaces", "--with-surfaces"},
       {"--mu", "--with-mu"},
       {"--nut-factor", "--with-nut-factor"},
       {"--head", "--with-head"}}};
  for (const auto& [of_clamp, of_offered] : k_options)
    if (problem.field == of_clamp) problem.field = of_offered;
  if (problem.field == "--class") problem.field = "--with";
  return Refusal(std::move(problem));
}

// The joint's own case, or the one that the options describe.
Result<CaseQuestion> original_question(const Catalogue& catalogue, const SubstituteQuestion& q) {
  if (!q.joint) {
    auto fastener = read_fastener(catalogue, q.original, q.how.any_pitch);
    if (!fastener) return Refusal(fastener.error());
    CaseQuestion out = q.how;
    out.thread = std::move(fastener->first);
    out.strength_class = std::move(fastener->second);
    return out;
  }
  CaseQuestion out = question_of(*q.joint, q.joint->figure);
  if (q.original.empty()) return out;
  const auto fastener = read_fastener(catalogue, q.original, q.how.any_pitch);
  if (!fastener) return Refusal(fastener.error());
  const auto told = find_thread(catalogue, fastener->first);
  const auto recorded = find_thread(catalogue, q.joint->thread);
  if (told && recorded && told->thread.designation == recorded->thread.designation &&
      told->thread.hand == recorded->thread.hand && class_key(fastener->second) == class_key(q.joint->strength_class))
    return out;
  return refuse(Trouble::usage, "surplus",
                fmt::format("{} is recorded with {} {}", q.joint->slug, q.joint->thread, q.joint->strength_class),
                q.original, "leave the first fastener out: the joint knows it");
}

Result<void> resolve_offered(const Catalogue& catalogue, const SubstituteQuestion& q, const CaseQuestion& original,
                             SubstituteAnswer& out) {
  const auto fastener = read_fastener(catalogue, q.offered, q.how.any_pitch);
  if (!fastener) return in_field(fastener.error(), "--with");
  auto resolved = resolve(catalogue, offered_question(q, original, fastener->first, fastener->second));
  if (!resolved) return with_prefix(resolved.error());
  out.offered = resolved->thread;
  Fastener& offered = out.question.offered;
  offered.as = std::move(resolved->asked);
  offered.head_told = q.with_head.has_value();
  if (q.with_surfaces)
    if (const auto surfaces = find_surfaces(catalogue, *q.with_surfaces)) offered.coating = coating_of(*surfaces);
  if (q.coating) {
    const auto coating = read_coating(*q.coating);
    if (!coating) return Refusal(coating.error());
    if (offered.coating != Coating::not_told && *coating != offered.coating)
      return refuse(Trouble::usage, "surplus", "the surfaces and the coating contradict each other", *q.coating,
                    fmt::format("{} surfaces say how it is coated; leave --coating out", *q.with_surfaces),
                    "--coating");
    offered.coating = *coating;
  }
  offered.as.electroplated = offered.coating == Coating::electroplated;
  return {};
}

// For which temperatures the class is made.
std::optional<substitute::ServiceRange> service_range(const Catalogue& catalogue, const Fastener& fastener) {
  const auto known = class_temperature(catalogue, fastener.as.strength.class_name);
  if (!known) return std::nullopt;
  return substitute::ServiceRange{known->low, known->high, known->source};
}

std::optional<friction::Surfaces> maybe_surfaces(const Catalogue& catalogue, const std::string& name) {
  if (name.empty()) return std::nullopt;
  auto surfaces = find_surfaces(catalogue, name);
  if (!surfaces) return std::nullopt;
  return std::move(*surfaces);
}

std::string stated(const Fastener& fastener) {
  return fastener.as.friction_stated ? fastener.as.surfaces : std::string();
}

} // namespace

Result<Coating> read_coating(std::string_view text) {
  std::vector<std::string> names;
  for (const CoatingName& known : k_coatings) {
    if (known.name == name_key(text)) return known.coating;
    names.emplace_back(known.name);
  }
  return in_field(no_such_name("coating", text, names).value(), "--coating");
}

Result<substitute::Duty> read_duty(std::string_view text) {
  if (text::equal_fold(text, "dry")) return substitute::Duty::dry;
  if (text::equal_fold(text, "wet")) return substitute::Duty::wet;
  return not_understood("not-understood", "neither dry nor wet", text, "write --duty dry or --duty wet", "--duty");
}

Result<bool> read_used(std::string_view text) {
  if (text::equal_fold(text, "used")) return true;
  if (text::equal_fold(text, "new")) return false;
  return not_understood("not-understood", "neither new nor used", text, "write --condition new or --condition used",
                        "--condition");
}

Result<std::pair<std::string, std::string>> read_fastener(const Catalogue& catalogue, std::string_view text,
                                                          bool any_pitch) {
  const std::string plain = text::plain_spaces(text);
  for (std::size_t end = plain.size(); end != std::string::npos; end = plain.rfind(' ', end - 1)) {
    if (end == 0) break;
    const std::string thread = plain.substr(0, end);
    if (!(any_pitch ? find_thread_of_any_pitch(catalogue, thread) : find_thread(catalogue, thread))) continue;
    std::string strength_class = end < plain.size() ? plain.substr(end + 1) : "unknown";
    return std::pair{thread, std::move(strength_class)};
  }
  const auto first = find_thread(catalogue, plain.substr(0, plain.find(' ')));
  Problem problem = first.error();
  if (problem.trouble == Trouble::not_understood) problem.hint = fmt::format("write thread and class, like {}", k_like);
  return Refusal(std::move(problem));
}

Result<SubstituteAnswer> answer_for(const Catalogue& catalogue, const SubstituteQuestion& q) {
  SubstituteAnswer out;
  const auto question = original_question(catalogue, q);
  if (!question) return Refusal(question.error());
  auto original = resolve(catalogue, *question);
  if (!original) return Refusal(original.error());
  out.original = original->thread;
  out.question.original.as = original->asked;
  out.question.original.head_told = question->head.has_value() || question->face_outer.has_value();
  if (auto offered = resolve_offered(catalogue, q, *question, out); !offered) return Refusal(offered.error());
  if (auto place = read_place(catalogue, q, *original, out); !place) return Refusal(place.error());
  for (Fastener* fastener : {&out.question.original, &out.question.offered}) {
    fastener->bears = service_range(catalogue, *fastener);
    if (fastener->as.strength.tensile)
      fastener->thread_shear = find_bolt_shear(catalogue, fastener->as.strength.class_name);
    for (const auto& material : {out.question.place.mating, out.question.place.around.seat})
      if (material && material->soft) fastener->as.soft_part = text::without_hyphens(material->name);
    if (out.question.place.mating)
      fastener->as.mates_with_stainless = out.question.place.mating->metal == strength::Metal::stainless;
  }
  if (auto torque = read_torque(catalogue, q, out); !torque) return Refusal(torque.error());
  const std::string was = stated(out.question.original);
  const std::string comes = stated(out.question.offered);
  if (const auto fitted = maybe_surfaces(catalogue, comes)) {
    std::string& because = out.question.place.finish_forbidden;
    const auto place = place_of(q.joint ? *q.joint : JointRecord(), out.question.offered.as);
    because = locking::why_not_these_surfaces(place, *fitted);
    const auto before = maybe_surfaces(catalogue, was);
    if (because.empty() && q.joint && before && fitted->k.likely < before->k.likely)
      because = locking::why_nothing_slippery(place, *fitted);
    if (before) out.published = reductions_between(catalogue, was, comes);
  }
  auto answer = substitute::may_replace(out.question);
  if (!answer) return in_field(answer.error(), "--torque");
  out.answer = std::move(*answer);
  finding::Findings& findings = out.answer.findings;
  for (const finding::Finding& finding : out.of_the_joint)
    if (std::ranges::find(findings, finding.code, &finding::Finding::code) == findings.end())
      findings.push_back(finding);
  if (out.mass_as_force) findings.push_back({finding::Code::mass_as_force, finding::Severity::note, {}});
  finding::put_in_order(findings);
  return out;
}

} // namespace clampwright::specdb
