// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/stack_question.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/report/stack_report.hpp"
#include "core/report/tightening_report.hpp"
#include "core/text/plain_text.hpp"
#include "core/tightening/clamp.hpp"
#include "core/tightening/wrench.hpp"
#include "specdb/catalogue/materials.hpp"

namespace clampwright::specdb {

namespace {

using joint::Modulus;
using joint::Stack;
using quantity::in_millimetres;
using quantity::Length;
using quantity::millimetres;

Result<std::optional<Length>> read_maybe(const std::optional<std::string>& text, const char* field) {
  if (!text) return std::optional<Length>();
  const auto length = quantity::read_length(*text);
  if (!length) return in_field(length.error(), field);
  return std::optional<Length>(*length);
}

Refusal do_not_fit(std::string message, std::string_view input, std::string hint, const char* field) {
  return not_understood("out-of-range", std::move(message), input, std::move(hint), field);
}

// Everything that is missing at once, so that nobody is asked thrice.
Result<void> check_pieces(const StackQuestion& q, const tightening::Case& asked) {
  std::vector<std::string> missing;
  if (!q.grip && !(q.shank_length && q.thread_length))
    missing.emplace_back("the grip (--grip, or --shank-length with --thread-length)");
  if (!q.part_material && !q.part_modulus)
    missing.emplace_back("what the parts are made of (--part-material, or --part-modulus)");
  if (!asked.face) missing.emplace_back("the face on the parts (--face-outer with --face-inner, or --head)");
  if (missing.empty()) return {};
  return refuse(Trouble::usage, "missing", fmt::format("of the stack is missing: {}", fmt::join(missing, "; ")), {},
                "add for example --grip 30mm --part-material cast-aluminium");
}

Modulus modulus_from(const strength::Elastic& elastic) {
  return {elastic.modulus_least, elastic.modulus_most, elastic.description, {elastic.source}};
}

Result<Modulus> given_modulus(const std::string& text, const char* field) {
  const auto stress = quantity::read_quantity(text, quantity::Kind::stress);
  if (!stress) return in_field(stress.error(), field);
  const auto modulus = quantity::pascals(stress->si());
  if (modulus < quantity::megapascals(1000) || modulus > quantity::megapascals(1e6))
    return do_not_fit(fmt::format("a modulus of {:g} GPa was understood", quantity::in_megapascals(modulus) / 1000),
                      text, "write the modulus of elasticity, like 70GPa for aluminium", field);
  return Modulus{modulus, modulus, "as given", {}};
}

Result<Modulus> bolt_modulus(const Catalogue& catalogue, const StackQuestion& q, const tightening::Case& asked) {
  if (q.bolt_modulus) return given_modulus(*q.bolt_modulus, "--bolt-modulus");
  const auto elastic = find_elastic(catalogue, asked.strength.stainless ? "stainless-304" : "steel-bolt");
  if (!elastic) return Refusal(elastic.error());
  return modulus_from(*elastic);
}

Result<Modulus> part_modulus(const Catalogue& catalogue, const StackQuestion& q) {
  if (q.part_modulus && q.part_material)
    return refuse(Trouble::usage, "surplus", "the parts are given by material and by modulus", {},
                  "give --part-material or --part-modulus", "--part-modulus");
  if (q.part_modulus) return given_modulus(*q.part_modulus, "--part-modulus");
  const auto elastic = find_elastic(catalogue, *q.part_material);
  if (!elastic) return in_field(elastic.error(), "--part-material");
  return modulus_from(*elastic);
}

// Of the thread on a bolt of the standard what is in the nut, and two turns that stand out, is not in the grip.
Length usual_free_thread(const thread::Thread& thread, Length grip, bool into_part) {
  const Length engaged = into_part ? 1.5 * thread.diameter : 0.8 * thread.diameter + 2.0 * thread.pitch;
  const Length free = joint::thread_on_bolt(thread, grip + engaged) - engaged;
  return std::clamp(free, Length(), grip);
}

// Of which bolts the length of the thread is known; "" for British ones.
std::string_view thread_standard(const thread::Thread& thread) {
  if (thread.form == thread::Form::metric) return "ISO 4014";
  return thread.form == thread::Form::unified ? "ASME B18.2.1" : "";
}

// From none to all of the grip.
void add_unknown_thread(Stack& stack) {
  const std::string_view standard = thread_standard(stack.thread);
  const Length likely =
      standard.empty() ? stack.grip / 2.0 : usual_free_thread(stack.thread, stack.grip, stack.into_part);
  stack.free_thread = {Length(), likely, stack.grip};
  stack.free_thread_basis = fmt::format("not told: from none to all of the grip, likely {}",
                                        standard.empty() ? "half" : fmt::format("that of a bolt of {}", standard));
}

Result<void> add_told_lengths(const StackQuestion& q, std::optional<Length> grip, std::optional<Length> shank,
                              std::optional<Length> free, Stack& stack) {
  if (grip && shank && free) {
    const Length gap = *grip - *shank - *free;
    const Length slip = millimetres(0.05);
    if (gap > slip || gap < -slip)
      return do_not_fit(fmt::format("a shank of {:g} mm and {:g} mm of thread make no grip of {:g} mm",
                                    in_millimetres(*shank), in_millimetres(*free), in_millimetres(*grip)),
                        *q.grip, "leave one of the three out: it follows from the others", "--grip");
  }
  if (grip && (free ? *free > *grip : *shank > *grip))
    return do_not_fit(fmt::format("{} is longer than the grip of {:g} mm", free ? "the free thread" : "the shank",
                                  in_millimetres(*grip)),
                      free ? *q.thread_length : *q.shank_length, "give what of it lies within the grip",
                      free ? "--thread-length" : "--shank-length");
  if (!grip && !(shank && free))
    return refuse(Trouble::usage, "missing", "the grip is missing", {}, "add --grip, or the other of the two lengths");
  stack.grip = grip ? *grip : *shank + *free;
  const Length told = free ? *free : *grip - *shank;
  stack.free_thread = {told, told, told};
  stack.free_thread_basis = "as given";
  return {};
}

// The bolt's length tells the thread of a standard bolt; a screw may have it up to the head.
Result<void> add_length(const StackQuestion& q, Length bolt_length, Stack& stack) {
  if (bolt_length <= stack.grip)
    return do_not_fit(fmt::format("a bolt of {:g} mm does not reach through a grip of {:g} mm",
                                  in_millimetres(bolt_length), in_millimetres(stack.grip)),
                      *q.bolt_length, "give the length under the head", "--bolt-length");
  if (thread_standard(stack.thread).empty()) {
    add_unknown_thread(stack);
    return {};
  }
  const Length shank = bolt_length - joint::thread_on_bolt(stack.thread, bolt_length);
  const Length free = std::clamp(stack.grip - shank, Length(), stack.grip);
  stack.free_thread = {free, free, stack.grip};
  stack.free_thread_basis = fmt::format("thread of {}; at the most up to the head", thread_standard(stack.thread));
  return {};
}

Result<void> add_lengths(const StackQuestion& q, Stack& stack) {
  const auto grip = read_maybe(q.grip, "--grip");
  if (!grip) return Refusal(grip.error());
  const auto shank = read_maybe(q.shank_length, "--shank-length");
  if (!shank) return Refusal(shank.error());
  const auto free = read_maybe(q.thread_length, "--thread-length");
  if (!free) return Refusal(free.error());
  const auto bolt = read_maybe(q.bolt_length, "--bolt-length");
  if (!bolt) return Refusal(bolt.error());
  if (*shank || *free) return add_told_lengths(q, *grip, *shank, *free, stack);
  stack.grip = **grip;
  if (*bolt) return add_length(q, **bolt, stack);
  add_unknown_thread(stack);
  return {};
}

// The ring on which the parts are pressed, and how wide they are round it.
Result<void> add_widths(const StackQuestion& q, const tightening::Case& asked, Stack& stack) {
  stack.face = asked.face->outer;
  stack.hole = asked.face->inner;
  const auto hole = read_maybe(q.hole, "--hole");
  if (!hole) return Refusal(hole.error());
  if (*hole) {
    if (**hole < asked.thread.diameter || **hole >= stack.face)
      return do_not_fit(fmt::format("a hole of {:g} mm does not lie between the thread and the face of {:g} mm",
                                    in_millimetres(**hole), in_millimetres(stack.face)),
                        *q.hole, "give the hole in the parts, like 9mm for M8", "--hole");
    stack.hole = **hole;
  }
  const auto outer = read_maybe(q.part_outer, "--part-outer");
  if (!outer) return Refusal(outer.error());
  if (*outer && **outer <= stack.hole)
    return do_not_fit(fmt::format("parts {:g} mm wide leave nothing round a hole of {:g} mm", in_millimetres(**outer),
                                  in_millimetres(stack.hole)),
                      *q.part_outer, "give how wide the parts are round the bolt, like 30mm", "--part-outer");
  stack.outer = *outer;
  return {};
}

bool is_socket(const std::optional<std::string>& head) { return head && text::to_lower(*head).starts_with("socket"); }

void add_sources(std::vector<Source>& into, const std::vector<Source>& more) {
  for (const Source& source : more)
    if (std::ranges::find(into, source) == into.end()) into.push_back(source);
}

struct ToldTorque {
  quantity::Torque torque;
  bool mass_as_force = false;
};

Result<ToldTorque> read_some_torque(const std::string& text, const char* field) {
  const auto reading = quantity::read_quantity(text, quantity::Kind::torque);
  if (!reading) return in_field(reading.error(), field);
  const ToldTorque told{quantity::newton_metres(reading->si()), reading->mass_as_force};
  if (!(told.torque > quantity::Torque()))
    return do_not_fit("a torque of nothing was understood", text, "write it like 24Nm", field);
  return told;
}

// Answers whether a mass stood for a force.
Result<bool> add_range(const SlotQuestion& q, joint::SlotCase& asked) {
  if (q.torque && (q.low || q.high))
    return refuse(Trouble::usage, "surplus", "the torque is given as one value and as a range", {},
                  "give --low and --high, or --torque", "--torque");
  if (!q.torque && !(q.low && q.high))
    return refuse(Trouble::usage, "missing",
                  q.low || q.high ? fmt::format("{} is missing", q.low ? "--high" : "--low") : "the torque is missing",
                  {}, "give the range of the page with --low 40Nm --high 50Nm, or one value with --torque 45Nm");
  const auto low = read_some_torque(q.torque ? *q.torque : *q.low, q.torque ? "--torque" : "--low");
  if (!low) return Refusal(low.error());
  const auto high = q.torque ? low : read_some_torque(*q.high, "--high");
  if (!high) return Refusal(high.error());
  if (high->torque < low->torque)
    return do_not_fit("the high end of the torque lies below the low one", *q.high, "give --low 40Nm --high 50Nm",
                      "--high");
  asked.low = q.torque ? (1.0 - tightening::k_usual_tolerance) * low->torque : low->torque;
  asked.high = q.torque ? (1.0 + tightening::k_usual_tolerance) * high->torque : high->torque;
  asked.range_basis = q.torque ? "10 % either way, as published where a page gives no range" : "as given";
  return low->mass_as_force || high->mass_as_force;
}

constexpr const char* k_like_angle =
    "write clampwright angle M10 --class 10.9 --snug 20Nm --angle 60deg --surfaces oiled --grip 30mm "
    "--part-material steel";

Result<int> counted(const std::string& text, int least, int most, const char* field) {
  const auto count = quantity::read_count(text, least, most);
  if (!count) return in_field(count.error(), field);
  return *count;
}

} // namespace

Result<Stack> stack_of(const Catalogue& catalogue, const StackQuestion& q, const CaseQuestion& fastener,
                       const tightening::Case& asked) {
  if (const auto pieces = check_pieces(q, asked); !pieces) return Refusal(pieces.error());
  Stack stack;
  stack.thread = asked.thread;
  stack.waist = asked.shank;
  stack.bore = asked.bore;
  stack.into_part = q.into_part;
  if (is_socket(fastener.head) && !(fastener.turned && text::equal_fold(*fastener.turned, "nut")))
    stack.head_gives = joint::k_socket_head_gives;
  if (const auto lengths = add_lengths(q, stack); !lengths) return Refusal(lengths.error());
  if (const auto widths = add_widths(q, asked, stack); !widths) return Refusal(widths.error());
  auto bolt = bolt_modulus(catalogue, q, asked);
  if (!bolt) return Refusal(bolt.error());
  stack.bolt = std::move(*bolt);
  auto part = part_modulus(catalogue, q);
  if (!part) return Refusal(part.error());
  stack.part = std::move(*part);
  return stack;
}

Result<AngleReply> answer_angle(const Catalogue& catalogue, const AngleQuestion& q) {
  if (!q.snug || !q.angle)
    return refuse(Trouble::usage, "missing", fmt::format("{} is missing", q.snug ? "--angle" : "--snug"), {},
                  k_like_angle, q.snug ? "--angle" : "--snug");
  CaseQuestion fastener = q.fastener;
  fastener.angle_follows = true;
  auto resolved = resolve(catalogue, fastener);
  if (!resolved) return Refusal(resolved.error());
  const auto snug = read_some_torque(*q.snug, "--snug");
  if (!snug) return Refusal(snug.error());
  const auto angle = quantity::read_angle(*q.angle);
  if (!angle) return in_field(angle.error(), "--angle");
  if (!(*angle > quantity::Angle()) || *angle > quantity::one_turn())
    return do_not_fit(fmt::format("an angle of {:g}° was understood", quantity::in_degrees(*angle)), *q.angle,
                      "write the angle after the snug torque, above 0 and at most 360°, like 60deg", "--angle");
  const auto stack = stack_of(catalogue, q.stack, fastener, resolved->asked);
  if (!stack) return Refusal(stack.error());
  resolved->asked.mass_as_force = resolved->asked.mass_as_force || snug->mass_as_force;
  const auto clamp = tightening::clamp(resolved->asked, snug->torque, resolved->accuracy);
  if (!clamp) return Refusal(clamp.error());
  AngleReply reply{std::move(resolved->thread), joint::add_angle(*clamp, *angle, *stack), {}};
  add_sources(reply.sources, report::sources_of(*clamp));
  add_sources(reply.sources, joint::sources_of(*stack));
  return reply;
}

Result<SlotReply> answer_slot(const Catalogue& catalogue, const SlotQuestion& q) {
  joint::SlotCase asked;
  const auto mass_as_force = add_range(q, asked);
  if (!mass_as_force) return Refusal(mass_as_force.error());
  const auto slots = q.slot_count ? counted(*q.slot_count, 2, 24, "--slots") : Result<int>(asked.slot_count);
  if (!slots) return Refusal(slots.error());
  if (*slots % 2 == 1)
    return do_not_fit("the pin goes through two slots that face each other, so their number is even", *q.slot_count,
                      "write --slots 6", "--slots");
  asked.slot_count = *slots;
  const auto holes = q.pin_holes ? counted(*q.pin_holes, 1, 4, "--pin-holes") : Result<int>(asked.pin_holes);
  if (!holes) return Refusal(holes.error());
  asked.pin_holes = *holes;
  auto resolved = resolve(catalogue, q.fastener);
  if (!resolved) return Refusal(resolved.error());
  resolved->asked.mass_as_force = resolved->asked.mass_as_force || *mass_as_force;
  const auto stack = stack_of(catalogue, q.stack, q.fastener, resolved->asked);
  if (!stack) return Refusal(stack.error());
  const auto clamp = tightening::clamp(resolved->asked, asked.low, resolved->accuracy);
  if (!clamp) return Refusal(clamp.error());
  const auto at_high = tightening::clamp(resolved->asked, asked.high, resolved->accuracy);
  if (!at_high) return Refusal(at_high.error());
  SlotReply reply{std::move(resolved->thread), joint::slot_window(asked, *clamp, *at_high, *stack), {}};
  reply.sources.push_back({"FAA Advisory Circular AC 43.13-1B, Acceptable Methods, Techniques, and Practices - "
                           "Aircraft Inspection and Repair",
                           "1998", "7-40f, 7-124 to 7-126", Known::second_hand});
  if (q.torque)
    reply.sources.push_back(
        {"TB 9-2320-279-13&P-2, torque limits", "", "tolerance where none is given", Known::second_hand});
  add_sources(reply.sources, report::sources_of(*clamp));
  add_sources(reply.sources, joint::sources_of(*stack));
  return reply;
}

report::Document angle_document(const AngleReply& reply, const quantity::DisplayUnits& units) {
  report::Document document = report::angle_report(reply.answer, units);
  document.sources = reply.sources;
  return document;
}

report::Document slot_document(const SlotReply& reply, const quantity::DisplayUnits& units) {
  report::Document document = report::slot_report(reply.answer, units);
  document.sources = reply.sources;
  return document;
}

CaseQuestion with_castle_nut(CaseQuestion fastener) {
  if (!fastener.turned && !fastener.face_outer) fastener.turned = "nut";
  return fastener;
}

} // namespace clampwright::specdb
