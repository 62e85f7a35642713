// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/crank/hand.hpp"
#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "specdb/question/text_field.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// Which hand a drive calls for, as text. What is empty was not said.
struct HandQuestion {
  MaybeText rotation = {};  // of the shaft in service: clockwise, anticlockwise, cw, ccw, acw
  MaybeText seen_from = {}; // free-end, engine-side
  MaybeText driver = {};    // shaft, part
  MaybeText bore = {};
  MaybeText shaft = {};
  // Of a joint.
  std::optional<thread::Hand> fitted = {};
  std::string joint = {}; // whose record was asked for what was not typed; empty for none
};

inline constexpr std::array k_hand_fields{
    TextField<HandQuestion>{"--rotation", &HandQuestion::rotation},
    TextField<HandQuestion>{"--seen-from", &HandQuestion::seen_from},
    TextField<HandQuestion>{"--driver", &HandQuestion::driver},
    TextField<HandQuestion>{"--bore", &HandQuestion::bore},
    TextField<HandQuestion>{"--shaft", &HandQuestion::shaft},
};

struct HandReply {
  crank::HandAnswer answer;
  std::vector<Source> sources;
};

// Fails with usage for what is missing, naming it and what was understood (a rotation says nothing without the side it
// is seen from), with not-understood for another word or a bore that is smaller than its shaft.
[[nodiscard]] Result<HandReply> answer_hand(const HandQuestion& question);

// Is a turn seen from the engine's side: "engine-side" is true, "free-end" false.
[[nodiscard]] Result<bool> read_engine_side(std::string_view text);
// "shaft" or "part": which turns the other in service.
[[nodiscard]] Result<crank::Driver> read_driver(std::string_view text);

// The question with what the joint's record has, where nothing was typed. `fitted` is the hand of its thread.
[[nodiscard]] HandQuestion hand_for_joint(const JointRecord& joint, thread::Hand fitted, HandQuestion typed);

} // namespace clampwright::specdb
