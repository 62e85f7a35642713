// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/word_field.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// What is said of a machine, as text; each field is named like its option (`port_depth` is --port-depth). Lengths and
// pressures carry their unit. With a revision, "none" takes any field away but `called` and `kind`.
struct MachineWords {
  MaybeText short_name = {}; // for `add`; made from its name where it is not said
  MaybeText called = {};
  MaybeText kind = {}; // in words: "flood pump, two-stroke single"
  MaybeText serial_from = {};
  MaybeText serial_to = {};
  MaybeText crank_turn = {};      // in service: clockwise or anticlockwise, with crank_seen_from
  MaybeText crank_seen_from = {}; // in words: "looking at the clutch"
  MaybeText stroke = {};
  MaybeText rod = {};        // centre to centre; longer than half the stroke
  MaybeText port_depth = {}; // the crown's way down until the highest port opens
  MaybeText plug_reach = {};
  MaybeText regulated_by = {};
  MaybeText crown_depth = {}; // from the plug's seat to the crown at its top position
  MaybeText stop_length = {}; // from the plug's seat to the tip
  MaybeText tip_diameter = {};
  MaybeText tip_limit = {}; // the pressure that the owner allows on the crown
  MaybeText plug_thread = {};
  MaybeText plug_material = {}; // of the head
};

// The fields of the words, all but its short name, in the order of the record.
[[nodiscard]] std::span<const WordField<MachineWords>> machine_fields();

// The words that enter the record again as it is: with_words changes nothing by them. What is not recorded is not said.
[[nodiscard]] MachineWords words_of(const MachineRecord& record);

// The record of a new machine; its slug is its short name, or made from its name. Fails with usage where its name or
// kind is missing, and like with_words.
[[nodiscard]] Result<MachineRecord> new_machine(const Catalogue& catalogue, const MachineWords& words);

// The record with what the words say of it put in. Fails with not-understood where a text is not, or a length cannot be
// beside the others; with no-such for a thread or material that the tables do not have; with usage where one of two
// that go together is missing.
[[nodiscard]] Result<MachineRecord> with_words(const Catalogue& catalogue, MachineRecord record,
                                               const MachineWords& words);

// What differs, field by field: "stroke: 50 mm -> 52 mm".
[[nodiscard]] std::vector<std::string> differences(const MachineRecord& was, const MachineRecord& is);

} // namespace clampwright::specdb
