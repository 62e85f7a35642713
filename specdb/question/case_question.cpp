// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/case_question.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/catalogue/faces.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/surfaces.hpp"

namespace clampwright::specdb {

namespace {

using tightening::Case;
using tightening::Face;
using tightening::JointKind;

Refusal usage(std::string code, std::string message, std::string hint) {
  return refuse(Trouble::usage, std::move(code), std::move(message), {}, std::move(hint));
}

Refusal out_of_range(std::string message, std::string_view input, std::string hint, std::string field) {
  return not_understood("out-of-range", std::move(message), input, std::move(hint), std::move(field));
}

Result<void> check_exclusions(const CaseQuestion& q) {
  const bool pair = q.mu_thread || q.mu_head;
  if (q.surfaces && (q.mu || pair))
    return usage("surplus", "surfaces and a friction coefficient are both given",
                 "give --surfaces, or --mu, or --mu-thread with --mu-head");
  if (q.mu && pair)
    return usage("surplus", "--mu already stands for thread and head", "give --mu, or --mu-thread with --mu-head");
  if (q.mu_thread.has_value() != q.mu_head.has_value())
    return usage("missing", fmt::format("{} is missing", q.mu_thread ? "--mu-head" : "--mu-thread"),
                 "give --mu-thread and --mu-head together, or --mu for both");
  if (q.face_outer.has_value() != q.face_inner.has_value())
    return usage("missing", fmt::format("{} is missing", q.face_outer ? "--face-inner" : "--face-outer"),
                 "give --face-outer and --face-inner together");
  if (q.face_outer && (q.head || q.washer))
    return usage("surplus", fmt::format("the face is given and {} as well", q.head ? "--head" : "--washer"),
                 "give the face by its diameters, or by --head and --washer");
  return {};
}

Result<void> resolve_friction(const Catalogue& catalogue, const CaseQuestion& q, Case& asked) {
  if (q.nut_factor) {
    const auto k = friction::read_nut_factor_band(*q.nut_factor);
    if (!k) return in_field(k.error(), "--nut-factor");
    asked.nut_factor = *k;
    asked.friction_stated = true;
  }
  if (q.mu || q.mu_thread) {
    const auto thread = friction::read_friction_band(q.mu ? *q.mu : *q.mu_thread);
    if (!thread) return in_field(thread.error(), q.mu ? "--mu" : "--mu-thread");
    const auto head = friction::read_friction_band(q.mu ? *q.mu : *q.mu_head);
    if (!head) return in_field(head.error(), "--mu-head");
    asked.mu_thread = *thread;
    asked.mu_head = *head;
    asked.friction_stated = true;
    return {};
  }
  if (q.nut_factor && !q.surfaces) return {};
  const auto surfaces = find_surfaces(catalogue, q.surfaces.value_or("not-stated"));
  if (!surfaces) return in_field(surfaces.error(), "--surfaces");
  asked.surfaces = surfaces->name;
  asked.wet_compound = surfaces->wet_compound;
  asked.electroplated = surfaces->electroplated;
  asked.mu_thread = surfaces->mu;
  asked.mu_head = surfaces->mu;
  if (!asked.nut_factor) asked.nut_factor = surfaces->k;
  asked.friction_sources = surfaces->sources;
  asked.friction_stated = asked.friction_stated || surfaces->name != "not-stated";
  return {};
}

Result<void> resolve_measured_face(const CaseQuestion& q, Case& asked) {
  const auto outer = quantity::read_length(*q.face_outer);
  if (!outer) return in_field(outer.error(), "--face-outer");
  const auto inner = quantity::read_length(*q.face_inner);
  if (!inner) return in_field(inner.error(), "--face-inner");
  if (*outer <= *inner)
    return out_of_range("the outer diameter of the face is not greater than the inner", *q.face_outer,
                        "write --face-outer 30mm --face-inner 15mm", "--face-outer");
  // The thread goes through the face; a hundredth is for diameters that were measured.
  if (*inner < 0.99 * asked.thread.diameter)
    return out_of_range(fmt::format("a face of {:g} mm inner diameter does not go round {}",
                                    quantity::in_millimetres(*inner), asked.thread.designation),
                        *q.face_inner, "give the hole or the inner edge of the face that rubs", "--face-inner");
  asked.face = Face{*outer, *inner, "as given", {}};
  return {};
}

// ISO 10642, ISO 7380-1 and -2: heads or recesses that bear less than the thread.
bool has_weak_head(std::string_view head) {
  constexpr std::array<std::string_view, 3> k_weak{"button", "button-flange", "countersunk"};
  return std::ranges::any_of(k_weak, [&](std::string_view name) { return text::equal_fold(head, name); });
}

// The face of a standard head or nut over a standard hole, or over a washer. Hubs, plugs and unions have none unless it
// is named.
Result<void> resolve_standard_face(const Catalogue& catalogue, const CaseQuestion& q, Part part, Case& asked) {
  std::optional<StandardDiameter> outer;
  if (q.head || asked.kind == JointKind::bolt) {
    const auto found = find_face(catalogue, q.head.value_or("hex"), part, asked.thread);
    if (!found) return in_field(found.error(), "--head");
    outer = *found;
    if (!outer && q.head) asked.no_face_because = why_no_face(catalogue, *q.head, part);
    asked.weak_head =
        q.head && part == Part::head && has_weak_head(*q.head) && asked.thread.form == thread::Form::metric;
  }
  std::optional<quantity::LengthPair> washer;
  if (q.washer) {
    const auto pair = quantity::read_length_pair(*q.washer);
    if (!pair) return in_field(pair.error(), "--washer");
    if (pair->first <= pair->second || pair->second < asked.thread.diameter)
      return out_of_range(fmt::format("a washer {:g} x {:g} mm does not go round {}",
                                      quantity::in_millimetres(pair->first), quantity::in_millimetres(pair->second),
                                      asked.thread.designation),
                          *q.washer, "write outer by inner diameter, like 24x13mm", "--washer");
    washer = *pair;
  }
  if (!outer) return {};
  if (washer) {
    const quantity::Length smaller = std::min(outer->diameter, washer->first);
    if (smaller <= washer->second)
      return out_of_range("the washer's hole is as wide as the face that presses on it", *q.washer,
                          "check the washer, or give --face-outer and --face-inner", "--washer");
    asked.face = Face{
        smaller, washer->second, fmt::format("smaller of {} and washer; washer hole", outer->words), {outer->source}};
    return {};
  }
  const auto hole = find_hole(catalogue, asked.thread);
  if (!hole || outer->diameter <= hole->diameter) return {};
  asked.face = Face{
      outer->diameter, hole->diameter, fmt::format("{}, {}", outer->words, hole->words), {outer->source, hole->source}};
  return {};
}

Result<void> resolve_length(const std::optional<std::string>& text, const char* field,
                            std::optional<quantity::Length>& into) {
  if (!text) return {};
  const auto length = quantity::read_length(*text);
  if (!length) return in_field(length.error(), field);
  into = *length;
  return {};
}

Result<void> resolve_partners(const Catalogue& catalogue, const CaseQuestion& q, Case& asked) {
  asked.angle_follows = q.angle_follows;
  if (q.mating_material) {
    const auto material = find_material(catalogue, *q.mating_material);
    if (!material) return Refusal(material.error());
    asked.mates_with_stainless = material->metal == strength::Metal::stainless;
  }
  if (q.soft_material) {
    const auto material = find_material(catalogue, *q.soft_material);
    if (!material) return Refusal(material.error());
    asked.soft_part = text::without_hyphens(material->name);
  }
  return {};
}

Result<void> resolve_rest(const Catalogue& catalogue, const CaseQuestion& q, ResolvedCase& out) {
  if (q.running_torque) {
    const auto running = quantity::read_quantity(*q.running_torque, quantity::Kind::torque);
    if (!running) return in_field(running.error(), "--running-torque");
    out.asked.running_torque = quantity::newton_metres(running->si());
    out.asked.mass_as_force = running->mass_as_force;
  }
  for (const std::string& name : q.locks) {
    const auto lock = find_lock(catalogue, name);
    if (!lock) return in_field(lock.error(), "--lock");
    out.asked.locks.push_back(*lock);
  }
  if (q.wrench_accuracy) {
    const auto share = quantity::read_share(*q.wrench_accuracy);
    if (!share) return in_field(share.error(), "--wrench-accuracy");
    if (*share >= 1.0)
      return out_of_range(fmt::format("{} was understood", quantity::write_share(*share)), *q.wrench_accuracy,
                          "write the accuracy of the wrench like 4%", "--wrench-accuracy");
    out.accuracy = tightening::WrenchAccuracy{*share, "as given"};
  }
  if (auto shank = resolve_length(q.shank, "--shank", out.asked.shank); !shank) return shank;
  return resolve_length(q.bore, "--bore", out.asked.bore);
}

} // namespace

Result<Part> read_turned(std::string_view text) {
  if (text::equal_fold(text, "head")) return Part::head;
  if (text::equal_fold(text, "nut")) return Part::nut;
  return not_understood("not-understood", "neither head nor nut", text, "write --turned head or --turned nut",
                        "--turned");
}

Result<JointKind> read_joint_kind(std::string_view text) {
  constexpr std::array k_kinds{JointKind::bolt, JointKind::hub, JointKind::plug, JointKind::stud_set,
                               JointKind::union_nut};
  for (const JointKind kind : k_kinds)
    if (text::equal_fold(text, tightening::joint_kind_name(kind))) return kind;
  return not_understood("not-understood", "no kind of joint that is known here", text,
                        "write --kind bolt, hub, plug, stud-set or union", "--kind");
}

Result<ResolvedCase> resolve(const Catalogue& catalogue, const CaseQuestion& q) {
  if (auto exclusions = check_exclusions(q); !exclusions) return Refusal(exclusions.error());
  auto thread = q.any_pitch ? find_thread_of_any_pitch(catalogue, q.thread) : find_thread(catalogue, q.thread);
  if (!thread) return Refusal(thread.error());
  ResolvedCase out;
  out.thread = std::move(*thread);
  out.asked.thread = out.thread.thread;
  if (q.kind) {
    const auto kind = read_joint_kind(*q.kind);
    if (!kind) return Refusal(kind.error());
    out.asked.kind = *kind;
  }
  if (q.strength_class) {
    auto strength = find_strength(catalogue, *q.strength_class, out.asked.thread);
    if (!strength) return in_field(strength.error(), "--class");
    out.asked.strength = std::move(*strength);
  }
  if (auto friction = resolve_friction(catalogue, q, out.asked); !friction) return Refusal(friction.error());
  const auto part = q.turned ? read_turned(*q.turned) : Result<Part>(Part::head);
  if (!part) return Refusal(part.error());
  auto face =
      q.face_outer ? resolve_measured_face(q, out.asked) : resolve_standard_face(catalogue, q, *part, out.asked);
  if (!face) return Refusal(face.error());
  if (auto partners = resolve_partners(catalogue, q, out.asked); !partners) return Refusal(partners.error());
  if (auto rest = resolve_rest(catalogue, q, out); !rest) return Refusal(rest.error());
  if (auto section = tightening::check_section(out.asked); !section) {
    Problem problem = section.error();
    problem.input = text::quotable((problem.field == "--shank" ? q.shank : q.bore).value_or(""));
    return Refusal(std::move(problem));
  }
  return out;
}

} // namespace clampwright::specdb
