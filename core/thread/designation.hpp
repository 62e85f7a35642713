// SPDX-License-Identifier: GPL-3.0-or-later
//
// Thread designations as text: ISO metric (ISO 965-1), Unified (ASME B1.1), Whitworth (BS 84), BA (BS 93) and British
// standard cycle. This file knows how they are written; which sizes, pitches and series exist is in the tables.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/problem/problem.hpp"
#include "core/thread/thread.hpp"

namespace clampwright::thread {

// What a designation says, before the tables are asked. Of pitch, tpi and series any may be missing: "M10" means the
// coarse pitch, "1/4 UNF" the pitch of that series. `form` is unified for every inch size without a British series.
struct Designation {
  Form form = Form::metric;
  std::string size;               // "M10", "1/4", "1 1/4", "#10", "2"
  double diameter_mm = 0;         // metric only
  std::optional<double> pitch_mm; // metric only
  std::optional<double> tpi;      // inch only
  std::string series;             // "UNF", "BSW", … as written, in capitals; empty if not written
  std::string tolerance;          // "6g", "2A"
  Hand hand = Hand::right;

  // False for an inch size alone: which thread it is, nobody can tell.
  [[nodiscard]] bool is_complete() const { return form == Form::metric || tpi || !series.empty(); }
};

// Reads "M10", "M10x1.25", "M14x1.5-LH", "M8x1.25-6g", "1/4-20", "1/4-28 UNF-2A-LH", "1/4 UNF", "10-32 UNF", "#10-32",
// "5/16 BSW", "2 BA"; x, X and × alike, any case. Fails with a sentence that says how far the text was understood.
[[nodiscard]] Result<Designation> read_designation(std::string_view text);

// The same, but an inch size alone passes, incomplete: for a caller that can name the choices.
[[nodiscard]] Result<Designation> read_designation_or_size(std::string_view text);

// The thread with its hand: "M10", "M14x1.5-LH", "1/4-28 UNF-LH". The tolerance class is not part of it.
[[nodiscard]] std::string write_designation(const Thread& thread);

} // namespace clampwright::thread
