// SPDX-License-Identifier: GPL-3.0-or-later
//
// From what stands on a head, a nut or a stud to what it may stand for. A mark that several standards use gives all its
// readings; one that nobody lists gives none, and never the nearest.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/head_marks.hpp"

namespace clampwright::specdb {

struct HeadMarkAnswer {
  std::string reading;                   // what was understood: "8.8 and L"
  std::optional<std::string> maker_mark; // letters beside a mark that is listed
  std::optional<std::string> not_read;   // figures and signs beside it that nobody lists
  std::optional<std::string> part;       // as said, or the only one on which the mark stands
  std::vector<HeadMark> readings;        // their `verdict` is that of this answer; empty: nobody lists the mark
  std::optional<thread::Hand> hand;      // left where a mark says so; nothing where none does
  std::vector<std::string> look_alikes;  // "08.8: the zero takes …"
  finding::Findings findings;
};

// `part` is "bolt", "screw", "stud", "nut", or nothing where it was not said; the text may say it as well. Fails with
// not-understood for text that cannot be a mark, for an unknown part, and for two that contradict each other.
[[nodiscard]] Result<HeadMarkAnswer> read_head_mark(const Catalogue& catalogue, std::string_view text,
                                                    const std::optional<std::string>& part);

// The refusal of a part that no mark stands on.
[[nodiscard]] Refusal no_such_part(std::string_view text);

} // namespace clampwright::specdb
