// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/joint/strip.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/tightening/answer.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/question/text_field.hpp"

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

// Without the fastener.
inline constexpr std::array k_strip_fields{
    TextField<StripQuestion>{"--material", &StripQuestion::material},
    TextField<StripQuestion>{"--length", &StripQuestion::length},
    TextField<StripQuestion>{"--incomplete", &StripQuestion::incomplete},
    TextField<StripQuestion>{"--insert", &StripQuestion::insert},
    TextField<StripQuestion>{"--outer-thread", &StripQuestion::outer_thread},
    TextField<StripQuestion>{"--torque", &StripQuestion::torque},
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

[[nodiscard]] report::Document strip_document(const StripReply& reply, const quantity::DisplayUnits& units);

// What does not bear of a length engaged: "2" is two turns, 20 at the most, "2.5mm" a length, "0" none.
struct Incomplete {
  std::optional<double> turns;
  std::optional<quantity::Length> length;
};
[[nodiscard]] Result<Incomplete> read_incomplete(std::string_view text);

// "wire" or "keyed", in any case.
[[nodiscard]] Result<joint::InsertKind> read_insert_kind(std::string_view text);

} // namespace clampwright::specdb
