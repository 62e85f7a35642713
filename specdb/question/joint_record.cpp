// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/joint_record.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/quantity/unit.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/turning.hpp"
#include "specdb/catalogue/faces.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/nuts.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/question/kept_changes.hpp"
#include "specdb/question/kept_words.hpp"
#include "specdb/question/record_lines.hpp"

namespace clampwright::specdb {

namespace {

using Words = JointWords;

constexpr const char* k_like = "write --assembly clutch --called \"clutch hub\" --thread M14x1.5-LH";
constexpr int k_most_bolts = 1000;
constexpr std::array<std::string_view, 3> k_turned{"head", "nut", "part"};
constexpr std::array<std::string_view, 2> k_duties{"dry", "wet"};
constexpr std::array<std::string_view, 2> k_patterns{"circle", "row"};
constexpr std::array<std::string_view, 2> k_drivers{"shaft", "part"};
constexpr std::array<std::string_view, 2> k_yes_no{"yes", "no"};

constexpr std::array k_fields{WordField<Words>{&Words::assembly, "--assembly"},
                              WordField<Words>{&Words::called, "--called"},
                              WordField<Words>{&Words::kind, "--kind"},
                              WordField<Words>{&Words::quantity, "--quantity"},
                              WordField<Words>{&Words::thread, "--thread"},
                              WordField<Words>{&Words::strength_class, "--class"},
                              WordField<Words>{&Words::nut, "--nut"},
                              WordField<Words>{&Words::turned, "--turned"},
                              WordField<Words>{&Words::head, "--head"},
                              WordField<Words>{&Words::washer, "--washer"},
                              WordField<Words>{&Words::face_outer, "--face-outer"},
                              WordField<Words>{&Words::face_inner, "--face-inner"},
                              WordField<Words>{&Words::seat_words, "--seat-words"},
                              WordField<Words>{&Words::seat, "--seat"},
                              WordField<Words>{&Words::soft, "--soft"},
                              WordField<Words>{&Words::taper, "--taper"},
                              WordField<Words>{&Words::mating_part, "--mating-part"},
                              WordField<Words>{&Words::mating, "--mating"},
                              WordField<Words>{&Words::engagement, "--engagement"},
                              WordField<Words>{&Words::bolt_length, "--bolt-length"},
                              WordField<Words>{&Words::grip, "--grip"},
                              WordField<Words>{&Words::hole_depth, "--hole-depth"},
                              WordField<Words>{&Words::duty, "--duty"},
                              WordField<Words>{&Words::pattern, "--pattern"},
                              WordField<Words>{&Words::must_clamp, "--must-clamp"},
                              WordField<Words>{&Words::must_clamp_because, "--must-clamp-because"},
                              WordField<Words>{&Words::running_torque, "--running-torque"},
                              WordField<Words>{&Words::drive, "--drive"},
                              WordField<Words>{&Words::on_crank, "--on-crank"},
                              WordField<Words>{&Words::shaft_turn, "--shaft-turn"},
                              WordField<Words>{&Words::driver, "--driver"},
                              WordField<Words>{&Words::seen_from, "--seen-from"},
                              WordField<Words>{&Words::holding, "--holding"},
                              WordField<Words>{&Words::words, "--words"}};

// A quantity that is kept as it was written, once it is known to be one.
auto written(const char* unit) {
  return [unit](const std::string& text) {
    return number_in(text, quantity::unit_named(unit)).map([&](double) { return text::plain_spaces(text); });
  };
}

Result<std::string> washer_text(const std::string& text) {
  return quantity::read_length_pair(text).map([&](const auto&) { return text::plain_spaces(text); });
}

Result<std::string> taper_text(const std::string& text) {
  const std::string plain = text::plain_spaces(text);
  const std::size_t colon = plain.find(':');
  const auto is_number = [](const std::string& part) {
    const auto number = quantity::read_number(part);
    return number && *number > 0;
  };
  if (colon == std::string::npos || !is_number(plain.substr(0, colon)) || !is_number(plain.substr(colon + 1)))
    return not_understood("not-understood", "a taper is how much its diameter grows over its length", text,
                          "write it like 1:5");
  return plain;
}

auto material_of(const Catalogue& catalogue) {
  return [&](const std::string& text) {
    return find_material(catalogue, text).map([](const strength::PartMaterial& found) { return found.name; });
  };
}

// The name of a head or nut as the tables write it. Whether it has that size is asked with the whole joint.
auto head_of(const Catalogue& catalogue, const JointRecord& joint) {
  return [&](const std::string& text) -> Result<std::string> {
    const auto names = face_names(catalogue, joint.turned == "nut" ? Part::nut : Part::head);
    for (const std::string& name : names)
      if (name_key(name) == name_key(text)) return name;
    return no_such_name("head", text, names);
  };
}

Result<void> put_fastener(const Catalogue& catalogue, JointRecord& j, const JointWords& words) {
  const auto kind = [](const std::string& text) {
    return read_joint_kind(text::plain_spaces(text)).map([](tightening::JointKind read) {
      return std::string(tightening::joint_kind_name(read));
    });
  };
  const auto strength = [&](const std::string& text) -> Result<std::string> {
    const auto thread = find_thread(catalogue, j.thread);
    if (!thread) return in_field(thread.error(), "--thread");
    return find_strength(catalogue, text, thread->thread).map([](const strength::Strength& found) {
      return found.class_name;
    });
  };
  const auto nut = [&](const std::string& text) {
    return find_nut_pairing(catalogue, text).map([](const NutPairing& found) { return found.nut_class; });
  };
  const auto bolts = [](const std::string& text) { return quantity::read_count(text, 1, k_most_bolts); };
  const auto thread = [&](const std::string& text) { return thread_words(catalogue, text); };
  // In this order: a class belongs to a thread.
  return first_refusal({put_needed(j.kind, words.kind, "--kind", "write --kind bolt", kind),
                        put_needed(j.quantity, words.quantity, "--quantity", "write --quantity 4", bolts),
                        put_needed(j.thread, words.thread, "--thread", "write --thread M10x1.25", thread),
                        put_needed(j.strength_class, words.strength_class, "--class",
                                   "write --class unknown where nobody knows it", strength),
                        put(j.nut_class, words.nut, "--nut", nut)});
}

Result<void> put_face(const Catalogue& catalogue, JointRecord& j, const JointWords& words) {
  return first_refusal({put_needed(j.turned, words.turned, "--turned", "write --turned head", word_of(k_turned)),
                        put(j.head, words.head, "--head", head_of(catalogue, j)),
                        put(j.washer, words.washer, "--washer", washer_text),
                        put(j.face_outer, words.face_outer, "--face-outer", written("mm")),
                        put(j.face_inner, words.face_inner, "--face-inner", written("mm")),
                        put_text(j.seat, words.seat_words, "--seat-words"),
                        put(j.seat_material, words.seat, "--seat", material_of(catalogue)),
                        put(j.soft_material, words.soft, "--soft", material_of(catalogue)),
                        put(j.taper, words.taper, "--taper", taper_text)});
}

Result<void> put_place(const Catalogue& catalogue, JointRecord& j, const JointWords& words) {
  return first_refusal({put_text(j.mating_part, words.mating_part, "--mating-part"),
                        put(j.mating_material, words.mating, "--mating", material_of(catalogue)),
                        put(j.engagement, words.engagement, "--engagement", written("mm")),
                        put(j.bolt_length, words.bolt_length, "--bolt-length", written("mm")),
                        put(j.grip, words.grip, "--grip", written("mm")),
                        put(j.hole_depth, words.hole_depth, "--hole-depth", written("mm")),
                        put(j.duty, words.duty, "--duty", word_of(k_duties)),
                        put(j.pattern, words.pattern, "--pattern", word_of(k_patterns)),
                        put(j.must_clamp, words.must_clamp, "--must-clamp", written("N")),
                        put_text(j.must_clamp_because, words.must_clamp_because, "--must-clamp-because"),
                        put(j.running_torque, words.running_torque, "--running-torque", written("N.m"))});
}

Result<void> put_service(JointRecord& j, const JointWords& words) {
  const auto turn = [](const std::string& text) {
    return thread::read_turn(text).map([](thread::Turn read) { return std::string(thread::turn_name(read)); });
  };
  const auto yes = [](const std::string& text) {
    return one_of(text, k_yes_no).map([](const std::string& word) { return word == "yes"; });
  };
  MaybeText other_words = j.words.empty() ? std::nullopt : MaybeText(j.words);
  auto done = first_refusal(
      {put_text(j.drive, words.drive, "--drive"),
       put_needed(j.on_crank, words.on_crank, "--on-crank", "write --on-crank yes or no", yes),
       put(j.shaft_turn, words.shaft_turn, "--shaft-turn", turn),
       put(j.driver, words.driver, "--driver", word_of(k_drivers)),
       put_needed_text(j.seen_from, words.seen_from, "--seen-from", "write --seen-from \"looking at the bolt head\""),
       put_text(j.holding, words.holding, "--holding"), put_text(other_words, words.words, "--words")});
  j.words = other_words.value_or("");
  return done;
}

Result<void> put_locks(const Catalogue& catalogue, JointRecord& j, const JointWords& words) {
  if (!words.locks) return {};
  j.locks.clear();
  for (const LockRecord& said : *words.locks) {
    const auto lock = find_lock(catalogue, said.lock);
    if (!lock) return in_field(lock.error(), "--lock");
    if (std::ranges::find(j.locks, lock->name, &LockRecord::lock) != j.locks.end())
      return refuse(Trouble::usage, "surplus", "the same lock is named twice", said.lock,
                    "say of each lock once that it is there", "--lock");
    LockRecord record{lock->name, {}};
    if (auto note = put_text(record.note, said.note, "--lock"); !note) return note;
    j.locks.push_back(std::move(record));
  }
  return {};
}

Result<void> put_neighbours(JointRecord& j, const JointWords& words) {
  if (!words.neighbours) return {};
  j.neighbours.clear();
  const auto degrees = [](const std::string& text) { return number_in(text, quantity::unit_named("degC")); };
  constexpr const char* k_neighbour =
      "name the part and what it bears or how hot it runs: \"crank oil seal\", 120 degC";
  for (const NeighbourWords& said : *words.neighbours) {
    NeighbourRecord record;
    if (auto done = first_refusal({put_needed_text(record.name, said.name, "--neighbour", k_neighbour),
                                   put(record.bears_degC, said.bears, "--neighbour", degrees),
                                   put(record.runs_at_degC, said.runs_at, "--neighbour", degrees)});
        !done)
      return done;
    if (!record.bears_degC && !record.runs_at_degC)
      return refuse(Trouble::usage, "missing", "what the part near it bears, or how hot it runs, is missing", said.name,
                    k_neighbour, "--neighbour");
    if (std::ranges::find(j.neighbours, record.name, &NeighbourRecord::name) != j.neighbours.end())
      return refuse(Trouble::usage, "surplus", "the same part is named twice", said.name,
                    "give both temperatures of a part together", "--neighbour");
    j.neighbours.push_back(std::move(record));
  }
  // As they are read from the file.
  std::ranges::sort(j.neighbours, {}, &NeighbourRecord::name);
  return {};
}

// What says nothing without the other.
struct Pair {
  MaybeText JointRecord::*one;
  MaybeText JointRecord::*other;
  const char* option_of_one;
  const char* option_of_other;
  const char* like;
};
constexpr std::array k_pairs{
    Pair{&JointRecord::face_outer, &JointRecord::face_inner, "--face-outer", "--face-inner",
         "write --face-outer 30mm --face-inner 15mm"},
    Pair{&JointRecord::must_clamp, &JointRecord::must_clamp_because, "--must-clamp", "--must-clamp-because",
         "write --must-clamp 9kN --must-clamp-because \"the hub must not slip\""},
    Pair{&JointRecord::shaft_turn, &JointRecord::driver, "--shaft-turn", "--driver",
         "write --shaft-turn clockwise --driver shaft"},
};

Result<void> check_pairs(const JointRecord& j) {
  for (const Pair& pair : k_pairs) {
    const bool one = (j.*(pair.one)).has_value();
    if (one == (j.*(pair.other)).has_value()) continue;
    const char* missing = one ? pair.option_of_other : pair.option_of_one;
    return refuse(Trouble::usage, "missing",
                  fmt::format("{} says nothing without {}", one ? pair.option_of_one : pair.option_of_other, missing),
                  {}, fmt::format("{}, or take both away with none", pair.like), missing);
  }
  return {};
}

std::vector<NeighbourWords> neighbour_words(const JointRecord& j) {
  std::vector<NeighbourWords> out;
  for (const NeighbourRecord& n : j.neighbours)
    out.push_back({n.name, maybe_words(n.bears_degC, "degC"), maybe_words(n.runs_at_degC, "degC")});
  return out;
}

} // namespace

std::span<const WordField<JointWords>> joint_fields() { return k_fields; }

JointWords words_of(const JointRecord& j) {
  return {.assembly = j.assembly,
          .called = j.name,
          .kind = j.kind,
          .quantity = fmt::format("{}", j.quantity),
          .thread = j.thread,
          .strength_class = j.strength_class,
          .nut = j.nut_class,
          .turned = j.turned,
          .head = j.head,
          .washer = j.washer,
          .face_outer = j.face_outer,
          .face_inner = j.face_inner,
          .seat_words = j.seat,
          .seat = j.seat_material,
          .soft = j.soft_material,
          .taper = j.taper,
          .mating_part = j.mating_part,
          .mating = j.mating_material,
          .engagement = j.engagement,
          .bolt_length = j.bolt_length,
          .grip = j.grip,
          .hole_depth = j.hole_depth,
          .duty = j.duty,
          .pattern = j.pattern,
          .must_clamp = j.must_clamp,
          .must_clamp_because = j.must_clamp_because,
          .locks = j.locks,
          .running_torque = j.running_torque,
          .drive = j.drive,
          .neighbours = neighbour_words(j),
          .on_crank = j.on_crank ? "yes" : "no",
          .shaft_turn = j.shaft_turn,
          .driver = j.driver,
          .seen_from = j.seen_from,
          .holding = j.holding,
          .words = j.words.empty() ? std::nullopt : MaybeText(j.words)};
}

Result<JointRecord> with_words(const Catalogue& catalogue, JointRecord j, const JointWords& words) {
  if (auto done =
          first_refusal({put_needed_text(j.assembly, words.assembly, "--assembly", k_like),
                         put_needed_text(j.name, words.called, "--called", k_like), put_fastener(catalogue, j, words),
                         put_face(catalogue, j, words), put_place(catalogue, j, words), put_service(j, words),
                         put_locks(catalogue, j, words), put_neighbours(j, words), check_pairs(j)});
      !done)
    return Refusal(done.error());
  return j;
}

Result<JointRecord> new_joint(const Catalogue& catalogue, const MachineRecord& machine, const JointWords& words) {
  const auto missing = [](const char* what, const char* option) {
    return refuse(Trouble::usage, "missing", fmt::format("{} is missing", what), {}, k_like, option);
  };
  if (!words.assembly) return missing("the assembly of the machine that it belongs to", "--assembly");
  if (!words.called) return missing("the name of the joint", "--called");
  if (!words.thread) return missing("its thread", "--thread");
  auto joint = with_words(catalogue, {}, words);
  if (!joint) return joint;
  if (!words.turned && (joint->kind == "hub" || joint->kind == "plug")) joint->turned = "part";
  if (!words.seen_from)
    joint->seen_from = fmt::format("looking at the {}", joint->turned == "head" ? "bolt head" : joint->turned);
  std::string short_name = short_name_of(joint->name, "joint");
  if (words.short_name) {
    auto name = read_short_name(*words.short_name);
    if (!name) return Refusal(name.error());
    short_name = std::move(*name);
  }
  joint->slug = fmt::format("{}/{}", machine.slug, short_name);
  joint->machine = machine;
  return joint;
}

std::vector<std::string> differences(const JointRecord& was, const JointRecord& is) {
  std::vector<std::string> out = differences_of(words_of(was), words_of(is), k_fields);
  if (locks_line(was.locks) != locks_line(is.locks))
    out.push_back(change_words("--lock", locks_line(was.locks), locks_line(is.locks)));
  const MaybeText near_was = neighbours_line(neighbour_words(was));
  const MaybeText near_is = neighbours_line(neighbour_words(is));
  if (near_was != near_is) out.push_back(change_words("--neighbour", near_was, near_is));
  return out;
}

} // namespace clampwright::specdb
