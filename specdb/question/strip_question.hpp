// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/joint/strip.hpp"
#include "core/tightening/answer.hpp"
#include "specdb/question/case_question.hpp"

namespace clampwright::specdb {

// What a person asks about the thread in a part, as text. `fastener` carries the thread and class, and where a torque
// is given, the friction and the face.
struct StripQuestion {
  CaseQuestion fastener;
  std::optional<std::string> material;
  std::optional<std::string> length;
  std::optional<std::string> incomplete; // "2" (turns) or "2.5mm"
  std::optional<std::string> insert;     // "wire" or "keyed"
  std::optional<std::string> outer_thread;
  std::optional<std::string> torque;
};

struct StripReply {
  ThreadEntry thread;
  joint::StripAnswer answer; // its findings are joined by those of `clamp`
  std::vector<strength::EngagementRule> published;
  std::optional<tightening::ClampAnswer> clamp; // where a torque was given
  std::vector<Source> sources;
};

// Fails with usage for what is missing or does not belong together, with not-understood for texts and ranges, with
// no-such for a thread without limits of size: without them its strip areas are not known.
[[nodiscard]] Result<StripReply> answer_strip(const Catalogue& catalogue, const StripQuestion& question);

} // namespace clampwright::specdb
