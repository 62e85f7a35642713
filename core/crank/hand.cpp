// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/hand.hpp"

namespace clampwright::crank {

using finding::Code;
using finding::Severity;

HandAnswer hand_for(const HandCase& asked) {
  HandAnswer out;
  out.asked = asked;
  out.hand = hand_tightened_by(asked.drive);
  out.drag = thread::turn_to_tighten(out.hand);
  out.hub_creep_tightens = hand_tightened_by_creep(hub_creeps(asked.drive.shaft_turn));
  out.pin_creep_tightens = hand_tightened_by_creep(pin_creeps(asked.drive.shaft_turn));
  if (asked.fit) {
    out.hub_turns = hub_creep(*asked.fit);
    out.pin_turns = pin_creep(*asked.fit);
  }
  out.findings.push_back({Code::look_at_thread, Severity::mind, {}});
  if (asked.fitted && *asked.fitted != out.hand)
    out.findings.push_back({Code::hand_doubt, Severity::mind, {std::string(thread::hand_name(*asked.fitted))}});
  if (asked.fitted == thread::Hand::left) out.findings.push_back({Code::left_hand, Severity::mind, {}});
  out.findings.push_back({Code::maker_first, Severity::note, {}});
  finding::put_in_order(out.findings);
  return out;
}

} // namespace clampwright::crank
