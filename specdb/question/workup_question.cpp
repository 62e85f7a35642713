// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/workup_question.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/joint/surroundings.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/nut_strengths.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/question/joint_question.hpp"

namespace clampwright::specdb {

namespace {

using Text = std::optional<std::string>;

Refusal missing(const char* option, std::string because) {
  return refuse(Trouble::usage, "missing", fmt::format("{} is missing", option), {}, std::move(because), option);
}

Text either(const Text& told, const Text& recorded) { return told ? told : recorded; }

// What is told of the fastener stands above what the joint has on record.
CaseQuestion merged(const CaseQuestion& told, CaseQuestion joint) {
  const auto over = [](Text& into, const Text& text) {
    if (text) into = text;
  };
  if (told.surfaces || told.mu || told.mu_thread || told.mu_head || told.nut_factor) {
    joint.surfaces = told.surfaces;
    joint.mu = told.mu;
    joint.mu_thread = told.mu_thread;
    joint.mu_head = told.mu_head;
    joint.nut_factor = told.nut_factor;
  }
  if (told.head || told.washer || told.face_outer || told.face_inner) {
    joint.head = told.head ? told.head : joint.head;
    joint.washer = told.washer;
    joint.face_outer = told.face_outer;
    joint.face_inner = told.face_inner;
  }
  over(joint.strength_class, told.strength_class);
  over(joint.turned, told.turned);
  over(joint.kind, told.kind);
  over(joint.wrench_accuracy, told.wrench_accuracy);
  over(joint.running_torque, told.running_torque);
  over(joint.shank, told.shank);
  over(joint.bore, told.bore);
  if (!told.locks.empty()) joint.locks = told.locks;
  joint.angle_follows = false;
  return joint;
}

template<class T>
Result<void> read_into(const Text& text, const char* field, Result<T> (*read)(std::string_view),
                       std::optional<T>& into) {
  if (!text) return {};
  const auto value = read(*text);
  if (!value) return in_field(value.error(), field);
  into = *value;
  return {};
}

// A share of one that leaves something on both sides.
Result<void> read_share_into(const Text& text, const char* field, double least, double most, double& into) {
  if (!text) return {};
  const auto share = quantity::read_share(*text);
  if (!share) return in_field(share.error(), field);
  if (*share < least || *share > most)
    return not_understood(
        "out-of-range", fmt::format("{} was understood", quantity::write_share(*share)), *text,
        fmt::format("write a share from {} to {}", quantity::write_share(least), quantity::write_share(most)), field);
  into = *share;
  return {};
}

Result<void> read_count_into(const Text& text, const char* field, int most, int& into) {
  if (!text) return {};
  const auto number = quantity::read_count(*text, 1, most);
  if (!number) return in_field(number.error(), field);
  into = *number;
  return {};
}

Result<void> read_friction(const WorkupQuestion& q, workup::Demand& demand) {
  if (!q.carry && !q.slip) {
    for (const auto& [text, option] :
         {std::pair{&q.radius, "--radius"}, std::pair{&q.friction, "--face-friction"}, std::pair{&q.faces, "--faces"}})
      if (*text)
        return refuse(Trouble::usage, "surplus", fmt::format("{} goes with --carry or --slip", option), **text,
                      "say what the faces must carry, like --carry 60Nm or --slip 2kN", option);
    return {};
  }
  if (q.carry && !q.radius)
    return missing("--radius", "a torque is carried at the radius at which the faces rub, like --carry 60Nm --radius "
                               "20mm --face-friction 0.12");
  if (!q.friction)
    return missing("--face-friction", "faces carry by their friction, and none is taken for granted: write the least "
                                      "to reckon with, like --face-friction 0.10 (dry steel 0.10 to 0.15, oiled less; "
                                      "from memory)");
  workup::ByFriction by;
  if (auto read = read_into(q.carry, "--carry", quantity::read_torque, by.torque); !read) return read;
  if (auto read = read_into(q.slip, "--slip", quantity::read_force, by.force); !read) return read;
  if (auto read = read_into(q.radius, "--radius", quantity::read_length, by.radius); !read) return read;
  const auto friction = quantity::read_number(*q.friction);
  if (!friction) return in_field(friction.error(), "--face-friction");
  if (*friction < 0.01 || *friction > 1.0)
    return not_understood("out-of-range", fmt::format("{} was understood", quantity::write_number(*friction, 6)),
                          *q.friction, "write a coefficient of friction from 0.01 to 1, like 0.10", "--face-friction");
  by.friction = *friction;
  if (auto read = read_count_into(q.faces, "--faces", 20, by.faces); !read) return read;
  demand.friction = by;
  return {};
}

Result<void> read_demand(const WorkupQuestion& q, WorkupReply& reply, workup::Demand& demand) {
  const Text must = either(q.must_clamp, q.joint ? q.joint->must_clamp : std::nullopt);
  if (!q.must_clamp && q.joint) reply.must_clamp_because = q.joint->must_clamp_because.value_or("");
  if (auto read = read_into(must, "--must-clamp", quantity::read_force, demand.clamp); !read) return read;
  if (auto read = read_into(q.pull, "--pull", quantity::read_force, demand.pull); !read) return read;
  if (auto read = read_friction(q, demand); !read) return read;
  if (q.pressure.has_value() != q.sealed.has_value())
    return missing(q.pressure ? "--sealed-diameter" : "--pressure",
                   "a pressure pulls by the area that it works on, like --pressure 4MPa --sealed-diameter 54mm");
  if (q.pressure) {
    const auto pressure = quantity::read_stress(*q.pressure);
    if (!pressure) return in_field(pressure.error(), "--pressure");
    const auto diameter = quantity::read_length(*q.sealed);
    if (!diameter) return in_field(diameter.error(), "--sealed-diameter");
    demand.sealed = workup::Sealed{*pressure, *diameter};
  }
  demand.bolts = q.joint ? q.joint->quantity : 1;
  if (auto read = read_count_into(q.bolts, "--bolts", 200, demand.bolts); !read) return read;
  demand.loss = k_usual_loss;
  reply.loss_told = q.loss.has_value();
  return read_share_into(q.loss, "--loss", 0.0, 0.9, demand.loss);
}

Result<void> read_threads(const Catalogue& catalogue, const WorkupQuestion& q, const ResolvedCase& fastener,
                          WorkupReply& reply, workup::Case& asked) {
  const Text material = either(q.material, q.joint ? q.joint->mating_material : std::nullopt);
  const Text engagement = either(q.engagement, q.joint ? q.joint->engagement : std::nullopt);
  if (q.engagement && !material)
    return missing("--material", "the length engaged is that in a part; say what it is made of");
  if (!material) return {};
  if (q.nut) // the nut was told now, the part is on record
    return refuse(Trouble::usage, "surplus", "a nut and a part with a thread were both told", *material,
                  "leave one of --nut and --material out", "--nut");
  const auto part = find_material(catalogue, *material);
  if (!part) return in_field(part.error(), "--material");
  asked.in_part = true;
  reply.part = part->description;
  reply.sources.insert(reply.sources.end(), part->sources.begin(), part->sources.end());
  if (!engagement || !fastener.thread.limits) return {};
  joint::StripCase strip;
  strip.thread = fastener.asked.thread;
  strip.limits = *fastener.thread.limits;
  strip.bolt = fastener.asked.strength;
  if (strip.bolt.tensile) strip.bolt_shear = find_bolt_shear(catalogue, strip.bolt.class_name);
  strip.part = *part;
  const auto length = quantity::read_length(*engagement);
  if (!length) return in_field(length.error(), "--engagement");
  strip.length = *length;
  // The length that a joint has on record is thread that bears.
  strip.incomplete = q.engagement ? joint::usual_incomplete(strip.thread) : quantity::Length();
  if (*length <= strip.incomplete)
    return not_understood("out-of-range", "of that length the two turns at its ends do not bear, so nothing is left",
                          *engagement, "give the whole length of thread engaged", "--engagement");
  reply.sources.push_back({"FED-STD-H28/2, strip areas of screw threads", "", "", Known::memory});
  reply.sources.push_back(strip.limits.source);
  asked.threads = std::move(strip);
  return {};
}

Result<void> read_around(const Catalogue& catalogue, const WorkupQuestion& q, WorkupReply& reply, workup::Case& asked) {
  const auto add = [&](const std::vector<Source>& more) {
    reply.sources.insert(reply.sources.end(), more.begin(), more.end());
  };
  if (const Text nut = either(q.nut, q.joint ? q.joint->nut_class : std::nullopt)) {
    auto found = find_nut_strength(catalogue, *nut, asked.fastener.thread);
    if (!found) return in_field(found.error(), "--nut");
    add(found->sources);
    asked.nut = std::move(*found);
    // A class that the pairing does not know (oversize, stainless) is judged by its load alone.
    if (const auto pair = nut_of(catalogue, *nut, asked.fastener.thread);
        pair && joint::nut_strips_first(*pair, asked.fastener.strength).value_or(false))
      asked.weak_nut_for = pair->highest_bolt_class;
  }
  if (const Text seat = either(q.seat, q.joint ? q.joint->seat_material : std::nullopt)) {
    auto found = find_material(catalogue, *seat);
    if (!found) return in_field(found.error(), "--seat");
    add(found->sources);
    asked.seat = std::move(*found);
  }
  const Text soft = either(q.soft, q.joint ? q.joint->soft_material : std::nullopt);
  if (q.soft_limit && !soft)
    return missing("--soft", "say what bears that pressure, like --soft wood --soft-limit 8MPa");
  if (soft) {
    workup::SoftPart part{text::without_hyphens(text::plain_spaces(*soft)), std::nullopt};
    if (auto read = read_into(q.soft_limit, "--soft-limit", quantity::read_stress, part.bears); !read) return read;
    asked.soft = std::move(part);
  }
  return {};
}

Result<void> read_shares(const WorkupQuestion& q, workup::Shares& shares) {
  if (auto read = read_share_into(q.proof_share, "--proof-share", 0.05, 1.0, shares.proof); !read) return read;
  if (q.proof_share) shares.nut = shares.proof;
  if (auto read = read_share_into(q.yield_share, "--yield-share", 0.05, 1.0, shares.yield); !read) return read;
  if (!q.thread_margin) return {};
  const auto margin = quantity::read_number(*q.thread_margin);
  if (!margin) return in_field(margin.error(), "--thread-margin");
  if (*margin < 1 || *margin > 20)
    return not_understood("out-of-range", fmt::format("{} was understood", quantity::write_number(*margin, 6)),
                          *q.thread_margin, "write how many times the allowed load strips the thread, from 1 to 20",
                          "--thread-margin");
  shares.thread = 1.0 / *margin;
  return {};
}

// What the figure on record is worth, and what forbids it: said of the joint wherever it is shown.
Result<void> add_figure(const Catalogue& catalogue, const JointRecord& joint, WorkupReply& reply) {
  if (!joint.figure.value) return {};
  reply.makers_figure = joint.figure.printed;
  const auto answer = answer_for(catalogue, joint);
  if (!answer) return Refusal(answer.error());
  for (const finding::Finding& one : answer->findings)
    if (one.severity == finding::Severity::stop &&
        std::ranges::find(reply.answer.findings, one.code, &finding::Finding::code) == reply.answer.findings.end())
      reply.answer.findings.push_back(one);
  finding::put_in_order(reply.answer.findings);
  const auto& highest = reply.answer.highest;
  if (!answer->not_to_be_used_because.empty())
    reply.figure_words = "NOT TO BE USED as it is: " + answer->not_to_be_used_because;
  else if (finding::has_stop(answer->findings))
    reply.figure_words = "a stop stands beside it, see below: ask the maker";
  else if (highest && answer->figure.set && *answer->figure.set > *highest)
    reply.figure_words = "it stands, and lies above what is worked up here: the maker knows more, or look again";
  else
    reply.figure_words = "it stands, and what is worked up here only stands beside it";
  return {};
}

} // namespace

Result<WorkupReply> answer_workup(const Catalogue& catalogue, const WorkupQuestion& q) {
  const CaseQuestion how = q.joint ? merged(q.how, question_of(*q.joint, q.joint->figure)) : q.how;
  auto fastener = resolve(catalogue, how);
  if (!fastener) return Refusal(fastener.error());
  WorkupReply reply;
  workup::Case asked;
  asked.fastener = fastener->asked;
  asked.accuracy = fastener->accuracy;
  if (auto read = read_threads(catalogue, q, *fastener, reply, asked); !read) return Refusal(read.error());
  if (auto read = read_around(catalogue, q, reply, asked); !read) return Refusal(read.error());
  if (auto read = read_demand(q, reply, asked.demand); !read) return Refusal(read.error());
  if (auto read = read_shares(q, asked.shares); !read) return Refusal(read.error());
  // Something soft that was told now is a soft part for the clamp load too.
  if (asked.soft && asked.fastener.soft_part.empty()) asked.fastener.soft_part = asked.soft->name;
  reply.thread = std::move(fastener->thread);
  reply.answer = workup::work_up(asked);
  if (q.joint)
    if (auto added = add_figure(catalogue, *q.joint, reply); !added) return Refusal(added.error());
  const auto& strength = asked.fastener.strength.sources;
  reply.sources.insert(reply.sources.end(), strength.begin(), strength.end());
  for (const Source& source : asked.fastener.friction_sources)
    reply.sources.push_back(source);
  std::vector<Source> once;
  for (const Source& source : reply.sources)
    if (!source.title.empty() && std::ranges::find(once, source) == once.end()) once.push_back(source);
  reply.sources = std::move(once);
  return reply;
}

} // namespace clampwright::specdb
