// SPDX-License-Identifier: GPL-3.0-or-later
//
// From words, or from the record of a joint, to the order in which its bolts are tightened.
#pragma once

#include <array>
#include <optional>
#include <string>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/tightening/sequence.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::specdb {

// Every entry as text, as it was typed. What is empty was not said.
struct SequenceQuestion {
  std::optional<std::string> bolts;
  std::optional<std::string> pattern;
  std::optional<std::string> passes;
  std::optional<std::string> torque;
  bool undo = false;
  const quantity::Unit* unit = nullptr; // of the wrench; without one that of the torque
};

inline constexpr std::array k_sequence_fields{
    TextField<SequenceQuestion>{"--bolts", &SequenceQuestion::bolts},
    TextField<SequenceQuestion>{"--pattern", &SequenceQuestion::pattern},
    TextField<SequenceQuestion>{"--passes", &SequenceQuestion::passes},
    TextField<SequenceQuestion>{"--torque", &SequenceQuestion::torque},
};

struct SequenceReply {
  tightening::Sequence sequence;
  std::string heading;    // the joint's name; may be empty
  std::string seen_from;  // "looking at the bolt heads"
  std::string page_words; // what the joint's page says of the order; may be empty
  finding::Findings findings;
};

// A circle and the usual passes where nothing else was said. `joint` gives what was not said: number, pattern, torque
// and passes of its page, unless its figure cannot be used. Fails with usage for what is missing or does not belong
// together, with not-understood for texts and ranges.
[[nodiscard]] Result<SequenceReply> answer_sequence(const SequenceQuestion& question, const JointAnswer* joint);

} // namespace clampwright::specdb
