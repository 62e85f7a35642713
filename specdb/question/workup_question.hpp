// SPDX-License-Identifier: GPL-3.0-or-later
//
// From words to values, for a torque that is worked up where the maker gives none.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/workup/workup.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/question/text_field.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// Every entry as text. What is empty was not said; with a joint the workshop knows it, and what is said ranks above.
struct WorkupQuestion {
  CaseQuestion how; // thread, class, surfaces, friction, head …
  std::optional<JointRecord> joint;
  std::optional<std::string> material;   // that it screws into
  std::optional<std::string> engagement; // length engaged in it, with the two turns that do not bear
  std::optional<std::string> nut;        // class
  std::optional<std::string> seat;       // material under the turned part
  std::optional<std::string> soft;       // wood, plastic, a gasket between the parts
  std::optional<std::string> soft_limit; // pressure that it bears
  std::optional<std::string> must_clamp; // clamp load that each bolt must keep
  std::optional<std::string> pull;       // along each bolt, in service
  std::optional<std::string> carry;      // torque that the clamped faces carry by friction
  std::optional<std::string> radius;     // at which they rub
  std::optional<std::string> slip;       // force across the bolts that they carry
  std::optional<std::string> friction;   // of those faces, the least
  std::optional<std::string> faces;      // that would have to slip
  std::optional<std::string> pressure;   // inside
  std::optional<std::string> sealed;     // the diameter that it works on
  std::optional<std::string> bolts;      // that share torque, force and pressure
  std::optional<std::string> loss;       // share of the clamp load that goes after tightening
  std::optional<std::string> proof_share;
  std::optional<std::string> yield_share;
  std::optional<std::string> thread_margin; // load that strips a thread over the one allowed
};

// Without the joint and the fastener itself.
inline constexpr std::array k_workup_fields{
    TextField<WorkupQuestion>{"--material", &WorkupQuestion::material},
    TextField<WorkupQuestion>{"--engagement", &WorkupQuestion::engagement},
    TextField<WorkupQuestion>{"--nut", &WorkupQuestion::nut},
    TextField<WorkupQuestion>{"--seat", &WorkupQuestion::seat},
    TextField<WorkupQuestion>{"--soft", &WorkupQuestion::soft},
    TextField<WorkupQuestion>{"--soft-limit", &WorkupQuestion::soft_limit},
    TextField<WorkupQuestion>{"--must-clamp", &WorkupQuestion::must_clamp},
    TextField<WorkupQuestion>{"--pull", &WorkupQuestion::pull},
    TextField<WorkupQuestion>{"--carry", &WorkupQuestion::carry},
    TextField<WorkupQuestion>{"--radius", &WorkupQuestion::radius},
    TextField<WorkupQuestion>{"--slip", &WorkupQuestion::slip},
    TextField<WorkupQuestion>{"--face-friction", &WorkupQuestion::friction},
    TextField<WorkupQuestion>{"--faces", &WorkupQuestion::faces},
    TextField<WorkupQuestion>{"--pressure", &WorkupQuestion::pressure},
    TextField<WorkupQuestion>{"--sealed-diameter", &WorkupQuestion::sealed},
    TextField<WorkupQuestion>{"--bolts", &WorkupQuestion::bolts},
    TextField<WorkupQuestion>{"--loss", &WorkupQuestion::loss},
    TextField<WorkupQuestion>{"--proof-share", &WorkupQuestion::proof_share},
    TextField<WorkupQuestion>{"--yield-share", &WorkupQuestion::yield_share},
    TextField<WorkupQuestion>{"--thread-margin", &WorkupQuestion::thread_margin},
};

struct WorkupReply {
  ThreadEntry thread;
  workup::Answer answer;
  std::string part; // what it screws into, in words; empty: not told
  bool loss_told = false;
  std::string must_clamp_because;           // the record's reason; may be empty
  std::optional<std::string> makers_figure; // as printed: the joint has one
  std::string figure_words;                 // whether it stands
  std::vector<Source> sources;
};

// The share of the clamp load that is taken to go after tightening where nothing was told: embedding of 5 to 10 % in
// the first day, read in a piping reference page; its upper end.
inline constexpr double k_usual_loss = 0.10;

// Fails like `resolve`; with usage where an entry needs another one (a torque its radius, a pressure its diameter),
// with not-understood for what cannot be meant.
[[nodiscard]] Result<WorkupReply> answer_workup(const Catalogue& catalogue, const WorkupQuestion& question);

} // namespace clampwright::specdb
