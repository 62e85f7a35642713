// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/hand_report.hpp"

#include <fmt/format.h>

#include "core/quantity/write.hpp"
#include "core/report/tightening_report.hpp"

namespace clampwright::report {

namespace {

using crank::Driver;
using crank::HandAnswer;
using thread::Hand;

std::string turns_of(Hand hand) {
  return fmt::format("tighten {}, undo {}, looking at the free end of the thread",
                     thread::turn_name(thread::turn_to_tighten(hand)), thread::turn_name(thread::turn_to_undo(hand)));
}

std::string why(const HandAnswer& answer) {
  const bool driven = answer.asked.drive.driver == Driver::shaft;
  return fmt::format("{}: so the part is pushed {} on its thread, seen from the free end",
                     driven ? "the load drags the part backwards against the shaft that drives it"
                            : "the part pushes forward against the shaft that it drives",
                     thread::turn_name(answer.drag));
}

std::string creep_words(thread::Turn creep, Hand tightened, const HandAnswer& answer) {
  return fmt::format("creeps {}: tightens a {}-hand thread, {} the drive", thread::turn_name(creep),
                     thread::hand_name(tightened), tightened == answer.hand ? "as" : "AGAINST");
}

Section precession_section(const HandAnswer& answer) {
  const thread::Turn turn = answer.asked.drive.shaft_turn;
  Section section{"Precession: a radial load that stands still while the shaft turns (belt, gear, weight)", {}};
  section.rows.push_back({"hub on the shaft", creep_words(crank::hub_creeps(turn), answer.hub_creep_tightens, answer)});
  if (answer.hub_turns)
    section.rows.push_back({"", fmt::format("at most {} of a turn for each turn of the shaft: (D - d)/D",
                                            quantity::write_rounded(*answer.hub_turns, 3))});
  section.rows.push_back({"pin in a bore", creep_words(crank::pin_creeps(turn), answer.pin_creep_tightens, answer)});
  if (answer.pin_turns)
    section.rows.push_back({"", fmt::format("at most {} of a turn for each turn of the shaft: (D - d)/d",
                                            quantity::write_rounded(*answer.pin_turns, 3))});
  section.rows.push_back({"none",
                          "under a load that turns with the shaft (imbalance), and where nothing frets; elastic "
                          "clearance is enough for it"});
  return section;
}

} // namespace

std::vector<Reversal> reversals() {
  return {
      {"braking", "the engine brakes what it drove, or is stopped suddenly"},
      {"kick-back", "it kicks back while it is started"},
      {"single-cylinder", "in a single-cylinder engine the torque at the hub turns round in every turn of the crank"},
      {"resonance", "torsional vibration swings it past zero"}};
}

Document hand_report(const HandAnswer& answer) {
  const crank::Drive& drive = answer.asked.drive;
  Document document;
  const bool agrees = !answer.asked.fitted || *answer.asked.fitted == answer.hand;
  document.title =
      agrees ? fmt::format("The steady load tightens a {}-hand thread: look at the thread itself",
                           thread::hand_name(answer.hand))
             : fmt::format("The steady load would UNDO the {}-hand thread on record: look at the thread itself",
                           thread::hand_name(*answer.asked.fitted));
  Section first{"", {}};
  first.rows.push_back(
      {"Shaft", fmt::format("turns {}, looking at the free end of the thread; {}", thread::turn_name(drive.shaft_turn),
                            drive.driver == Driver::shaft ? "it drives the part" : "the part drives it")});
  first.rows.push_back({"Expected", fmt::format("{}-hand: {}", thread::hand_name(answer.hand), turns_of(answer.hand))});
  if (answer.asked.fitted)
    first.rows.push_back({"On record", fmt::format("{}-hand: {}", thread::hand_name(*answer.asked.fitted),
                                                   turns_of(*answer.asked.fitted))});
  first.rows.push_back({"Why", why(answer)});
  document.sections.push_back(std::move(first));
  Section reverse{"What turns it round, so that clamp load and lock must hold the part all the same", {}};
  for (const Reversal& reversal : reversals())
    reverse.rows.push_back({std::string(reversal.name), std::string(reversal.words)});
  document.sections.push_back(std::move(reverse));
  document.sections.push_back(precession_section(answer));
  if (agrees)
    document.sections.push_back(
        {"", {{"Undoing", "a part that tightens itself in service may need far more than its torque to come off"}}});
  document.remarks = remarks_of(answer.findings, {});
  document.has_foot = true;
  return document;
}

} // namespace clampwright::report
