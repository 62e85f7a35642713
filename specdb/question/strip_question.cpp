// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/strip_question.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/joint/surroundings.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/report/strip_report.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/stripping.hpp"
#include "core/tightening/clamp.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/question/known_limits.hpp"

namespace clampwright::specdb {

namespace {

using joint::Insert;
using joint::InsertKind;
using joint::StripCase;
using quantity::Length;

constexpr const char* k_example = "clampwright strip M8 --class 8.8 --material cast-aluminium --length 16mm";

std::string mm(Length length) { return quantity::write_number(quantity::in_millimetres(length), 4) + " mm"; }

Result<std::optional<Length>> read_engaged(const std::optional<std::string>& text, Length incomplete) {
  if (!text) return std::optional<Length>();
  const auto length = quantity::read_length(*text);
  if (!length) return in_field(length.error(), "--length");
  if (*length <= incomplete)
    return not_understood(
        "out-of-range", fmt::format("of {} engaged {} do not bear, so nothing is left", mm(*length), mm(incomplete)),
        *text, "give the whole length engaged, or say with --incomplete what of it does not bear", "--length");
  return std::optional(*length);
}

Result<Insert> keyed_insert(const Catalogue& catalogue, const StripQuestion& q, const thread::Thread& bolt) {
  if (!q.outer_thread)
    return refuse(
        Trouble::usage, "missing", "--outer-thread is missing", {},
        "a keyed insert has the outer thread that its maker names, like --insert keyed --outer-thread M12x1.25",
        "--outer-thread");
  const auto outer = find_thread(catalogue, *q.outer_thread);
  if (!outer) return in_field(outer.error(), "--outer-thread");
  const auto limits = known_limits(*outer, *q.outer_thread, "--outer-thread");
  if (!limits) return Refusal(limits.error());
  // The wall of the sleeve lies between them.
  if (limits->d3_max <= bolt.diameter)
    return not_understood(
        "out-of-range",
        fmt::format("an insert for {} has no wall with {} outside", bolt.designation, outer->thread.designation),
        *q.outer_thread, "give the outer thread of the insert, the one that is cut in the part", "--outer-thread");
  return Insert{InsertKind::keyed, outer->thread, *limits};
}

Result<std::optional<Insert>> read_insert(const Catalogue& catalogue, const StripQuestion& q,
                                          const thread::Thread& bolt, const thread::Limits& limits) {
  std::optional<InsertKind> kind;
  if (q.insert) {
    const auto read = read_insert_kind(*q.insert);
    if (!read) return Refusal(read.error());
    kind = *read;
  }
  if (q.outer_thread && kind != InsertKind::keyed)
    return refuse(Trouble::usage, "surplus", "--outer-thread goes with a keyed insert only", *q.outer_thread,
                  "write --insert keyed with it; that of a wire insert follows from the bolt's", "--outer-thread");
  if (!kind) return std::optional<Insert>();
  if (kind == InsertKind::wire)
    return std::optional(Insert{InsertKind::wire, bolt, thread::wire_insert_limits(bolt, limits)});
  auto insert = keyed_insert(catalogue, q, bolt);
  if (!insert) return Refusal(insert.error());
  return std::optional(std::move(*insert));
}

// Friction, head and the rest make a clamp load out of a torque; without one they would be passed over in silence.
bool has_friction(const CaseQuestion& q) {
  return q.surfaces || q.mu || q.mu_thread || q.mu_head || q.nut_factor || q.head || q.washer || q.running_torque;
}

Result<void> check(const StripQuestion& q) {
  const auto missing = [](const char* option, std::string hint) {
    return refuse(Trouble::usage, "missing", fmt::format("{} is missing", option), {}, std::move(hint), option);
  };
  if (!q.material) return missing("--material", fmt::format("say what the thread is cut in, like {}", k_example));
  if (q.torque && !q.length)
    return missing("--length", fmt::format("the load of a torque is held against a length engaged, like {} --torque "
                                           "24Nm --surfaces oiled",
                                           k_example));
  if (!q.torque && has_friction(q.fastener))
    return missing("--torque", "friction and face are for a torque; give it, or leave them out");
  return {};
}

bool has_kind(const finding::Findings& findings, const finding::Finding& wanted) {
  return std::ranges::any_of(findings, [&](const finding::Finding& one) {
    return one.code == wanted.code && one.facts.size() == wanted.facts.size();
  });
}

// What a torque does there, by the same rule as for a joint of the workshop; the thread bears by its factor.
Result<void> add_clamp(StripReply& reply, const tightening::Case& fastener, const std::string& text) {
  const auto torque = quantity::read_torque(text);
  if (!torque) return in_field(torque.error(), "--torque");
  auto clamp = tightening::clamp(fastener, *torque);
  if (!clamp) return Refusal(clamp.error());
  joint::StripAnswer& answer = reply.answer;
  joint::Surroundings around;
  around.tapped = joint::TappedPart{"part",
                                    answer.asked.part,
                                    *answer.bearing,
                                    answer.part_width,
                                    answer.asked.limits.d_min,
                                    answer.asked.limits.D2_max,
                                    answer.c3};
  finding::Findings findings = joint::findings_around(around, fastener, &*clamp);
  for (const auto* more : {&clamp->findings, &answer.findings})
    for (const finding::Finding& one : *more)
      if (!has_kind(findings, one)) findings.push_back(one);
  finding::put_in_order(findings);
  answer.findings = std::move(findings);
  reply.clamp = std::move(*clamp);
  return {};
}

void add_sources(StripReply& reply) {
  const auto add = [&](const Source& source) {
    if (std::ranges::find(reply.sources, source) == reply.sources.end()) reply.sources.push_back(source);
  };
  const StripCase& asked = reply.answer.asked;
  add({"FED-STD-H28/2, strip areas of screw threads", "", "", Known::memory});
  add({"VDI 2230-1, Systematic calculation of highly stressed bolted joints", "2003",
       "step R11: factors C2 and C3, strongest bolt, two turns that do not bear", Known::memory});
  add(asked.limits.source);
  if (asked.insert && asked.insert->kind == InsertKind::wire)
    add({"ASME B18.29.1, helical coil screw thread inserts", "", "thread of the hole: diameters larger by 3·√3/4·P",
         Known::memory});
  else if (asked.insert)
    add(asked.insert->outer_limits.source);
  std::ranges::for_each(asked.bolt.sources, add);
  if (asked.bolt_shear) add(asked.bolt_shear->source);
  if (asked.part.shear_strength) add(asked.part.sources.front());
  if (asked.part.shear_highest_source) add(*asked.part.shear_highest_source);
  if (asked.part.creep_source) add(*asked.part.creep_source);
  for (const auto& rule : reply.published)
    add(rule.source);
  if (!reply.clamp) return;
  std::ranges::for_each(reply.clamp->asked.friction_sources, add);
  if (reply.clamp->asked.face) std::ranges::for_each(reply.clamp->asked.face->sources, add);
}

} // namespace

Result<Incomplete> read_incomplete(std::string_view text) {
  const char* field = "--incomplete";
  if (const auto turns = quantity::read_number(text)) {
    if (*turns >= 0 && *turns <= 20) return Incomplete{*turns, {}};
    return not_understood("out-of-range", fmt::format("{} turns were understood", quantity::write_number(*turns, 6)),
                          text, "write the turns that do not bear, like --incomplete 2, or a length", field);
  }
  const auto length = quantity::read_length(text);
  if (!length) return in_field(length.error(), field);
  return Incomplete{{}, *length};
}

Result<InsertKind> read_insert_kind(std::string_view text) {
  if (text::equal_fold(text, "wire")) return InsertKind::wire;
  if (text::equal_fold(text, "keyed")) return InsertKind::keyed;
  return not_understood("not-understood", "neither wire nor keyed", text,
                        "write --insert wire, or --insert keyed with --outer-thread", "--insert");
}

Result<StripReply> answer_strip(const Catalogue& catalogue, const StripQuestion& q) {
  if (const auto fits = check(q); !fits) return Refusal(fits.error());
  auto fastener = resolve(catalogue, q.fastener);
  if (!fastener) return Refusal(fastener.error());
  const auto limits = known_limits(fastener->thread, q.fastener.thread, "");
  if (!limits) return Refusal(limits.error());
  const auto material = find_material(catalogue, *q.material);
  if (!material) return in_field(material.error(), "--material");
  StripCase asked;
  asked.thread = fastener->asked.thread;
  asked.limits = *limits;
  asked.part = *material;
  asked.bolt = fastener->asked.strength;
  if (asked.bolt.tensile) asked.bolt_shear = find_bolt_shear(catalogue, asked.bolt.class_name);
  const auto insert = read_insert(catalogue, q, asked.thread, asked.limits);
  if (!insert) return Refusal(insert.error());
  asked.insert = *insert;
  asked.incomplete = joint::usual_incomplete(asked.thread);
  if (q.incomplete) {
    const auto incomplete = read_incomplete(*q.incomplete);
    if (!incomplete) return Refusal(incomplete.error());
    asked.incomplete = incomplete->turns ? *incomplete->turns * asked.thread.pitch : *incomplete->length;
  }
  const auto length = read_engaged(q.length, asked.incomplete);
  if (!length) return Refusal(length.error());
  asked.length = *length;

  StripReply reply;
  reply.thread = std::move(fastener->thread);
  reply.answer = joint::strip(asked);
  reply.published = engagement_rules(catalogue, asked.part, asked.bolt.class_name, asked.thread);
  if (q.torque) {
    const auto clamp = add_clamp(reply, fastener->asked, *q.torque);
    if (!clamp) return Refusal(clamp.error());
  } else {
    reply.answer.findings.push_back({finding::Code::maker_first, finding::Severity::note, {}});
    finding::put_in_order(reply.answer.findings);
  }
  add_sources(reply);
  return reply;
}

report::Document strip_document(const StripReply& reply, const quantity::DisplayUnits& units) {
  report::Document document =
      report::strip_report(reply.answer, reply.published, reply.clamp ? &*reply.clamp : nullptr, units);
  document.sources = reply.sources;
  return document;
}

} // namespace clampwright::specdb
