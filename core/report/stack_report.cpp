// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/stack_report.hpp"

#include <fmt/format.h>

#include "core/report/tightening_report.hpp"
#include "core/report/wording.hpp"
#include "core/thread/designation.hpp"

namespace clampwright::report {

namespace {

using joint::AngleAnswer;
using joint::Meets;
using joint::SlotAnswer;
using joint::Stack;
using quantity::DisplayUnits;
using quantity::write;
using quantity::write_number;
using tightening::Verdict;

std::string bolt_words(const tightening::Case& asked) {
  return fmt::format("{}, {}", thread::write_designation(asked.thread),
                     asked.strength.class_name == "unknown" ? "class not known" : "class " + asked.strength.class_name);
}

std::string degrees_words(quantity::Angle angle) {
  return fmt::format("{}°", write_number(quantity::in_degrees(angle), 3));
}

std::string modulus_words(const joint::Modulus& modulus) {
  const auto gigapascals = [](quantity::Stress stress) {
    return write_number(quantity::in_megapascals(stress) / 1000.0, 4);
  };
  const std::string value = modulus.most > modulus.least
                                ? fmt::format("{} to {}", gigapascals(modulus.least), gigapascals(modulus.most))
                                : gigapascals(modulus.least);
  return fmt::format("{} GPa ({})", value, modulus.words);
}

std::string free_thread_words(const Stack& stack, const DisplayUnits& units) {
  const auto& free = stack.free_thread;
  std::string words = write(free.likely, units, 3);
  if (free.low < free.high) words += fmt::format(" ({} to {})", write(free.low, units, 3), write(free.high, units, 3));
  return fmt::format("{}: {}", words, stack.free_thread_basis);
}

std::string micrometres_per_kilonewton(const quantity::Band<quantity::Resilience>& band) {
  const auto text = [](quantity::Resilience one) {
    return quantity::write_rounded(quantity::in_millimetres_per_newton(one) * 1e6);
  };
  return band.low < band.high
             ? fmt::format("{} ({} to {}) µm per kN", text(band.likely), text(band.low), text(band.high))
             : fmt::format("{} µm per kN", text(band.likely));
}

Section stack_section(const Stack& stack, const joint::StackResilience& resilience, const DisplayUnits& units) {
  Section section{"Stack", {}};
  section.rows.push_back({"Grip", fmt::format("{}, {}", write(stack.grip, units, 4),
                                              stack.into_part ? "screwed into the part" : "with a nut")});
  section.rows.push_back({"Free thread", free_thread_words(stack, units)});
  section.rows.push_back({"Bolt", modulus_words(stack.bolt)});
  section.rows.push_back({"Parts", fmt::format("{}, {}", modulus_words(stack.part),
                                               stack.outer ? write(*stack.outer, units, 4) + " wide round the bolt"
                                                           : "wide round the bolt (not told)")});
  section.rows.push_back(
      {"Face", fmt::format("{} outside, hole {}", write(stack.face, units, 4), write(stack.hole, units, 4))});
  section.rows.push_back({"Gives, bolt", micrometres_per_kilonewton(resilience.bolt)});
  section.rows.push_back(
      {"Gives, parts",
       micrometres_per_kilonewton(resilience.parts) +
           (resilience.parts.low < resilience.parts.high ? ": cone of 2003 and cylinder of 1986 as ends" : "")});
  return section;
}

std::string turn_verdict(const AngleAnswer& answer) {
  const std::string limit =
      answer.governed_by == tightening::Governs::yield ? "yield (tension and torsion)" : "the proof load";
  const auto& use = answer.use_of_yield ? answer.use_of_yield : answer.use_of_proof;
  const std::string shares = use ? fmt::format("likely {}, at the most {} of {}", quantity::write_share(use->likely),
                                               quantity::write_share(use->high), limit)
                                 : "";
  if (answer.beyond_elastic)
    return fmt::format("not known: {}; beyond it the elastic line ends. It may be meant so", shares);
  switch (answer.verdict) {
  case Verdict::near_limit:
    return "near the limit: " + shares;
  case Verdict::within:
    return "within: " + shares;
  default:
    return "not known: nothing to hold it against (class, friction or face)";
  }
}

Section turn_section(const AngleAnswer& answer, const DisplayUnits& units) {
  Section section{"Clamp load (low / likely / high)", {}};
  if (answer.snug_load) section.rows.push_back({"after snug", write(*answer.snug_load, units) + ", hangs on friction"});
  section.rows.push_back(
      {fmt::format("{} adds", degrees_words(answer.angle)), write(answer.added, units) + ", hangs on the stack alone"});
  if (answer.preload)
    section.rows.push_back(
        {"together", write(*answer.preload, units) + (answer.beyond_elastic ? ", if nothing yielded" : "")});
  if (answer.use_of_proof)
    section.rows.push_back({"  of the proof load", quantity::write_shares(*answer.use_of_proof)});
  if (answer.use_of_yield) section.rows.push_back({"  of yield", quantity::write_shares(*answer.use_of_yield)});
  section.rows.push_back({"Verdict", turn_verdict(answer)});
  section.rows.push_back(
      {"Settles",
       fmt::format("about {} later, where surfaces settle {} µm (thread and faces, Rz 10 to 40 µm; paint and "
                   "soft parts far more)",
                   load_words(answer.settling_loss, units),
                   write_number(quantity::in_millimetres(answer.settling) * 1000.0, 2))});
  return section;
}

// What the line gives beyond yield is no clamp load, so it does not stand at the top.
std::string title_words(const AngleAnswer& answer, const DisplayUnits& units) {
  if (answer.beyond_elastic) {
    const auto& use = answer.use_of_yield ? answer.use_of_yield : answer.use_of_proof;
    return fmt::format("{} {}, so the clamp load is not known", use->likely > 1.0 ? "likely passes" : "may pass",
                       answer.use_of_yield ? "yield" : "the proof load");
  }
  return answer.preload ? "clamps " + load_words(*answer.preload, units) : "adds " + load_words(answer.added, units);
}

Section before_section() {
  return {"Before",
          {{"Start mark", "when snug: a line across the bolt and the part, and one on the part where the turn ends"},
           {"Snug first", "all bolts of the joint, in order; then turn the angle, in the same order"}}};
}

Section after_section(const AngleAnswer& answer) {
  Section section{"If interrupted", interruption_rows()};
  section.rows.push_back(
      {"Use again",
       answer.beyond_elastic
           ? "no, unless the maker says so: a bolt that was turned past yield stays longer, and is new each time"
           : "as the maker says; one that has stayed longer, or is necked, never"});
  return section;
}

std::string meets_words(const SlotAnswer& answer) {
  switch (answer.meets) {
  case Meets::surely:
    return "the range surely holds a slot";
  case Meets::likely:
    return "the range likely holds a slot";
  case Meets::by_chance:
    return fmt::format("the range holds a slot by chance only, about {} of the time",
                       quantity::write_share(answer.chance));
  }
  return "";
}

Section slot_rows(const SlotAnswer& answer, const DisplayUnits& units) {
  Section section{"From one slot to the next", {}};
  section.rows.push_back(
      {"Turn",
       fmt::format("{}: {} slots, {} across the bolt", degrees_words(answer.angle), answer.asked.slot_count,
                   answer.asked.pin_holes == 1 ? "one hole" : fmt::format("{} holes", answer.asked.pin_holes))});
  section.rows.push_back({"Clamp load", "+ " + load_words(answer.gain, units)});
  section.rows.push_back({"Torque", "+ " + write(answer.more, units) + " (low / likely / high)"});
  return section;
}

Section window_rows(const SlotAnswer& answer, const DisplayUnits& units) {
  Section section{"Window", {}};
  section.rows.push_back({"Torque", fmt::format("{} to {} ({})", write(answer.asked.low, units),
                                                write(answer.asked.high, units), answer.asked.range_basis)});
  section.rows.push_back(
      {"Turns", fmt::format("{} / {} / {}", degrees_words(answer.window.low), degrees_words(answer.window.likely),
                            degrees_words(answer.window.high))});
  section.rows.push_back({"Slot", meets_words(answer)});
  section.rows.push_back({"Just missed", fmt::format("the next would take {}, the most is {}",
                                                     write(answer.next, units), write(answer.asked.high, units))});
  if (answer.preload_at_low)
    section.rows.push_back({"Load at low", write(*answer.preload_at_low, units) + " (low / likely / high)"});
  if (const auto load = tightening::leading_preload(answer.at_high)) {
    const auto use = tightening::leading_use_of_proof(answer.at_high);
    section.rows.push_back({"Load at high", fmt::format("{}{}", write(*load, units),
                                                        use ? ", " + quantity::write_shares(*use) + " of the proof load"
                                                            : std::string())});
  }
  if (answer.preload_at_next) {
    std::string words = write(*answer.preload_at_next, units);
    if (const auto& use = answer.use_of_proof_at_next)
      words += fmt::format(", {} of the proof load{}", quantity::write_shares(*use),
                           answer.next_is_too_much() ? "; no such bolt bears that" : "");
    section.rows.push_back({"Load at next", words});
  }
  return section;
}

Section slot_steps(const SlotAnswer& answer, const DisplayUnits& units) {
  return {"How",
          {{"Start", fmt::format("at the low side, {}; if a slot stands before the hole, put the pin in",
                                 write(answer.asked.low, units))},
           {"Go on", fmt::format("to the next slot, never past {}", write(answer.asked.high, units))},
           {"Missed", fmt::format("another washer or nut: {} thicker or thinner moves the slots by half their distance",
                                  quantity::write_si_rounded(quantity::in_metres(answer.half_a_slot), *units.length))},
           {"Never", "loosen to align; file the nut; leave the pin out. The pin is new each time"}}};
}

} // namespace

std::string load_words(const quantity::Band<quantity::Force>& band, const DisplayUnits& units) {
  const auto text = [&](quantity::Force force) {
    return quantity::write_rounded(quantity::from_si(quantity::in_newtons(force), *units.force));
  };
  std::string words = quantity::write_si_rounded(quantity::in_newtons(band.likely), *units.force);
  if (band.low < band.high) words += fmt::format(" ({} to {})", text(band.low), text(band.high));
  return words;
}

std::vector<Row> interruption_rows() {
  return {{"Never", "turn the angle again, nor the rest of it by guess: nobody sees how far it went"},
          {"With a mark", "turn on to the end mark, no further"},
          {"Without one", "loosen it; with new bolts, or the old where the maker allows that, start again from snug"}};
}

Document angle_report(const AngleAnswer& answer, const DisplayUnits& units) {
  Document document;
  document.title =
      fmt::format("{}, {} and then {}: {}", bolt_words(answer.snug.asked), write(answer.snug.torque, units),
                  degrees_words(answer.angle), title_words(answer, units));
  Section input{"", {}};
  input.rows.push_back({"Surfaces", surfaces_words(answer.snug.asked)});
  input.rows.push_back({"Wrench", fmt::format("± {} ({})", quantity::write_share(answer.snug.accuracy.share),
                                              answer.snug.accuracy.basis)});
  document.sections.push_back(std::move(input));
  document.sections.push_back(stack_section(answer.stack, answer.resilience, units));
  document.sections.push_back(turn_section(answer, units));
  document.sections.push_back(before_section());
  document.sections.push_back(after_section(answer));
  document.remarks = remarks_of(answer.findings, units);
  document.working = answer.working;
  document.has_foot = true;
  return document;
}

Document slot_report(const SlotAnswer& answer, const DisplayUnits& units) {
  Document document;
  const std::string more = answer.next_is_too_much() ? "with one just missed no such bolt bears the next"
                                                     : fmt::format("likely {} more", write(answer.gain.likely, units));
  document.title = fmt::format("{}, castle nut: {} to the next slot, {}", bolt_words(answer.at_low.asked),
                               degrees_words(answer.angle), more);
  document.sections.push_back({"", {{"Surfaces", surfaces_words(answer.at_low.asked)}}});
  document.sections.push_back(window_rows(answer, units));
  document.sections.push_back(slot_rows(answer, units));
  document.sections.push_back(slot_steps(answer, units));
  document.sections.push_back(stack_section(answer.stack, answer.resilience, units));
  document.remarks = remarks_of(answer.findings, units);
  document.working = answer.working;
  document.has_foot = true;
  return document;
}

} // namespace clampwright::report
