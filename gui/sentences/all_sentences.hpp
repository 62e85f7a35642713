// SPDX-License-Identifier: GPL-3.0-or-later
//
// Each file of this folder that defines sentences gives them by one function of this list.
#pragma once

#include "gui/sentences/sentence.hpp"

namespace clampwright::desk {

[[nodiscard]] std::vector<Sentence> all_sentences();

// In the order of the list.
[[nodiscard]] std::vector<Sentence> tightening_sentences(); // clamp, torque
[[nodiscard]] std::vector<Sentence> wrench_sentences();     // wrench
[[nodiscard]] std::vector<Sentence> substitute_sentences(); // substitute
[[nodiscard]] std::vector<Sentence> strip_sentences();      // strip
[[nodiscard]] std::vector<Sentence> thread_sentences();     // thread, gauge, headmark
[[nodiscard]] std::vector<Sentence> crank_sentences();      // hold, hand
[[nodiscard]] std::vector<Sentence> turn_sentences();       // angle, slot
[[nodiscard]] std::vector<Sentence> sequence_sentences();   // sequence
[[nodiscard]] std::vector<Sentence> workup_sentences();     // workup
[[nodiscard]] std::vector<Sentence> chart_sentences();      // chart
[[nodiscard]] std::vector<Sentence> locking_sentences();    // surfaces, lock, cure, running
[[nodiscard]] std::vector<Sentence> convert_sentences();    // convert

} // namespace clampwright::desk
