// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/word_field.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// A part near the joint, as text: what it bears where heat would harm it, or how hot it runs.
struct NeighbourWords {
  std::string name = {};
  MaybeText bears = {};   // "120 degC"
  MaybeText runs_at = {}; // "300 degC"
};

// What is said of a joint, as text; each field is named like its option (`hole_depth` is --hole-depth), those of
// records that other commands ask for like the options of those. Lengths, forces and torques carry their unit and are
// kept as they are written. With a revision, "none" takes a field away; assembly, called, kind, quantity, thread,
// class, turned, on_crank and seen_from cannot be taken away.
struct JointWords {
  // For `add`: what stands behind the machine's, "clutch-hub"; made from its name if not said.
  MaybeText short_name = {};
  MaybeText assembly = {};
  MaybeText called = {};
  MaybeText kind = {};     // bolt, hub, plug, stud-set, union; bolt if not said
  MaybeText quantity = {}; // 1 if not said
  MaybeText thread = {};
  MaybeText strength_class = {}; // --class; unknown if not said
  MaybeText nut = {};            // class of the nut
  MaybeText turned = {};         // head, nut, part; head if not said, part of a hub or plug
  MaybeText head = {};
  MaybeText washer = {}; // "24x13mm"
  MaybeText face_outer = {};
  MaybeText face_inner = {};
  MaybeText seat_words = {};
  MaybeText seat = {};        // material that the turned part presses on
  MaybeText soft = {};        // the weakest of what is clamped, where that is wood, plastic or a gasket
  MaybeText taper = {};       // "1:5"
  MaybeText mating_part = {}; // in words: "crankcase"
  MaybeText mating = {};      // material that it screws into
  MaybeText engagement = {};  // length of thread that bears
  MaybeText bolt_length = {};
  MaybeText grip = {};
  MaybeText hole_depth = {};
  MaybeText duty = {};       // dry, wet
  MaybeText pattern = {};    // circle, row
  MaybeText must_clamp = {}; // force on each bolt, with must_clamp_because
  MaybeText must_clamp_because = {};
  std::optional<std::vector<LockRecord>> locks = {}; // --lock; takes the place of all that are recorded
  MaybeText running_torque = {};
  MaybeText drive = {};
  std::optional<std::vector<NeighbourWords>> neighbours = {}; // --neighbour; takes the place of all that are recorded
  MaybeText on_crank = {};                                    // yes, no; no if not said
  MaybeText shaft_turn = {};
  MaybeText driver = {};    // shaft, part
  MaybeText seen_from = {}; // in words; looking at what is turned, if not said
  MaybeText holding = {};
  MaybeText words = {}; // what else a person may call it
};

// The fields of the words, all but its short name, locks and neighbours, in the order of the record.
[[nodiscard]] std::span<const WordField<JointWords>> joint_fields();

// The words that enter the record again as it is: with_words changes nothing by them. What is not recorded is not said.
[[nodiscard]] JointWords words_of(const JointRecord& record);

// The record of a new joint of that machine, without a figure; its slug is that of the machine and its short name.
// Fails with usage where its assembly, name or thread is missing, and like with_words.
[[nodiscard]] Result<JointRecord> new_joint(const Catalogue& catalogue, const MachineRecord& machine,
                                            const JointWords& words);

// The record with what the words say of it put in. Fails with not-understood where a text is not, with no-such for a
// thread, class, head, lock or material that the tables do not have, with usage where one of two that go together is
// missing.
[[nodiscard]] Result<JointRecord> with_words(const Catalogue& catalogue, JointRecord record, const JointWords& words);

// What differs, field by field: "class: 8.8 -> 10.9". Figures do not count.
[[nodiscard]] std::vector<std::string> differences(const JointRecord& was, const JointRecord& is);

} // namespace clampwright::specdb
