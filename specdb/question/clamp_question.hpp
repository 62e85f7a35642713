// SPDX-License-Identifier: GPL-3.0-or-later
//
// From words to the two answers at the heart of it: what a torque clamps, and what torque a clamp load wants.
#pragma once

#include <optional>
#include <string>

#include "core/problem/problem.hpp"
#include "core/tightening/answer.hpp"
#include "specdb/question/case_question.hpp"

namespace clampwright::specdb {

struct ClampQuestion {
  CaseQuestion fastener;
  std::optional<std::string> torque; // as set on the wrench
};

struct ClampReply {
  ThreadEntry thread;
  tightening::ClampAnswer answer;
};

// Fails like `resolve`, and with usage where the torque is missing.
[[nodiscard]] Result<ClampReply> answer_clamp(const Catalogue& catalogue, const ClampQuestion& question);

// One of the three says what the torque is for.
struct TorqueQuestion {
  CaseQuestion fastener;
  std::optional<std::string> preload;
  std::optional<std::string> proof_fraction;
  std::optional<std::string> yield_fraction; // at the lowest friction
};

struct TorqueReply {
  ThreadEntry thread;
  tightening::TorqueAnswer answer;
};

// Fails like `resolve`; with usage where nothing or more than one thing is wanted, with out-of-range for what no torque
// can do.
[[nodiscard]] Result<TorqueReply> answer_torque(const Catalogue& catalogue, const TorqueQuestion& question);

} // namespace clampwright::specdb
