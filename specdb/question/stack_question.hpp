// SPDX-License-Identifier: GPL-3.0-or-later
//
// From words to the stack that a bolt clamps: its grip, what of the bolt in it is thread, and what the parts are made
// of.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/joint/angle_turn.hpp"
#include "core/joint/resilience.hpp"
#include "core/joint/slot.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::specdb {

// Every entry as text, as it was typed or stored. What is empty was not said.
struct StackQuestion {
  std::optional<std::string> grip;
  std::optional<std::string> bolt_length;   // under the head
  std::optional<std::string> shank_length;  // in the grip
  std::optional<std::string> thread_length; // in the grip
  std::optional<std::string> part_material; // a name of the tables of materials
  std::optional<std::string> part_modulus;
  std::optional<std::string> bolt_modulus;
  std::optional<std::string> part_outer; // how wide the parts are round the bolt
  std::optional<std::string> hole;
  bool into_part = false; // it screws into the part, without a nut
};

// Without --into-part, which is said or not said.
inline constexpr std::array k_stack_fields{
    TextField<StackQuestion>{"--grip", &StackQuestion::grip},
    TextField<StackQuestion>{"--bolt-length", &StackQuestion::bolt_length},
    TextField<StackQuestion>{"--shank-length", &StackQuestion::shank_length},
    TextField<StackQuestion>{"--thread-length", &StackQuestion::thread_length},
    TextField<StackQuestion>{"--part-material", &StackQuestion::part_material},
    TextField<StackQuestion>{"--part-modulus", &StackQuestion::part_modulus},
    TextField<StackQuestion>{"--bolt-modulus", &StackQuestion::bolt_modulus},
    TextField<StackQuestion>{"--part-outer", &StackQuestion::part_outer},
    TextField<StackQuestion>{"--hole", &StackQuestion::hole},
};

// The stack round that fastener. Nothing is assumed in silence: how much of the grip is thread is a band where it was
// not told, with its reason. Fails with usage, naming every piece that is missing: the grip, the material, the face;
// with not-understood for texts, and for pieces that do not fit each other; with no-such for a material.
[[nodiscard]] Result<joint::Stack> stack_of(const Catalogue& catalogue, const StackQuestion& question,
                                            const CaseQuestion& fastener, const tightening::Case& asked);

struct AngleQuestion {
  CaseQuestion fastener;
  StackQuestion stack;
  std::optional<std::string> snug;
  std::optional<std::string> angle;
};

inline constexpr std::array k_angle_fields{
    TextField<AngleQuestion>{"--snug", &AngleQuestion::snug},
    TextField<AngleQuestion>{"--angle", &AngleQuestion::angle},
};

struct AngleReply {
  ThreadEntry thread;
  joint::AngleAnswer answer;
  std::vector<Source> sources;
};

[[nodiscard]] Result<AngleReply> answer_angle(const Catalogue& catalogue, const AngleQuestion& question);

[[nodiscard]] report::Document angle_document(const AngleReply& reply, const quantity::DisplayUnits& units);

struct SlotQuestion {
  CaseQuestion fastener;
  StackQuestion stack;
  std::optional<std::string> slot_count;
  std::optional<std::string> pin_holes;
  std::optional<std::string> torque; // with the range that is published where none is given, or
  std::optional<std::string> low;    // the range itself
  std::optional<std::string> high;
};

inline constexpr std::array k_slot_fields{
    TextField<SlotQuestion>{"--low", &SlotQuestion::low},
    TextField<SlotQuestion>{"--high", &SlotQuestion::high},
    TextField<SlotQuestion>{"--torque", &SlotQuestion::torque},
    TextField<SlotQuestion>{"--slots", &SlotQuestion::slot_count},
    TextField<SlotQuestion>{"--pin-holes", &SlotQuestion::pin_holes},
};

struct SlotReply {
  ThreadEntry thread;
  joint::SlotAnswer answer;
  std::vector<Source> sources;
};

[[nodiscard]] Result<SlotReply> answer_slot(const Catalogue& catalogue, const SlotQuestion& question);

[[nodiscard]] report::Document slot_document(const SlotReply& reply, const quantity::DisplayUnits& units);

// The castle nut is what is turned and pressed on the parts, unless something else was said.
[[nodiscard]] CaseQuestion with_castle_nut(CaseQuestion fastener);

} // namespace clampwright::specdb
