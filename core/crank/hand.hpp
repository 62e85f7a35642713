// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which hand of thread a drive calls for, what turns that round, and what precession adds.
#pragma once

#include <optional>
#include <string>

#include "core/crank/precession.hpp"
#include "core/crank/thread_hand.hpp"
#include "core/finding/finding.hpp"

namespace clampwright::crank {

struct HandCase {
  Drive drive;                        // seen from the free end
  std::optional<LooseFit> fit;        // for the bound of the creep
  std::optional<thread::Hand> fitted; // of a joint whose thread is known
};

struct HandAnswer {
  HandCase asked;
  thread::Hand hand = thread::Hand::right;     // that the steady load tightens
  thread::Turn drag = thread::Turn::clockwise; // of the part on its thread, looking at the free end
  thread::Hand hub_creep_tightens = thread::Hand::right;
  thread::Hand pin_creep_tightens = thread::Hand::right;
  std::optional<double> hub_turns; // at most, for each turn of the shaft
  std::optional<double> pin_turns;
  finding::Findings findings;
};

// Findings: look-at-thread always; hand-doubt where the fitted thread is of the other hand; left-hand where the one
// fitted is left.
[[nodiscard]] HandAnswer hand_for(const HandCase& asked);

} // namespace clampwright::crank
