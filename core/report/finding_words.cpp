// SPDX-License-Identifier: GPL-3.0-or-later
//
// The English of the findings: what a fitter must know, and on what it rests.
#include "core/report/wording.hpp"

#include <array>

#include <fmt/format.h>

#include "core/report/crank_words.hpp"

namespace clampwright::report {

namespace {

using finding::Code;
using finding::Finding;
using finding::Severity;
using quantity::DisplayUnits;

struct Wording {
  Code code;
  std::string_view text; // {0}, {1}: the facts
  std::string_view basis;
};

constexpr std::array k_wordings{
    Wording{Code::left_hand,
            "Left-hand thread: it tightens anticlockwise and undoes clockwise, looking at the part that is turned.",
            "the designation says LH (ISO 965-1), or the mark on the part does"},
    Wording{
        Code::thread_not_listed,
        "No table here has {0}: no limits of size and no printed load are known, and its dimensions follow from "
        "the form of {1} alone. Measure diameter and pitch again before you rely on it, and try the part that it "
        "goes with.",
        "the tables of ISO 261, ASME B1.1 (UNC, UNF, UNEF), BS 84, BS 93 and BS 811; ASME B1.1 has more series (UN) "
        "than are held here"},
    Wording{Code::locking_compound,
            "Wet locking compound changes the friction, and whether it eases or drags depends on its grade: clean and "
            "degrease, "
            "use one grade only, tighten before it sets, then leave it for its cure time. Not beside lock wire or on a "
            "locking nut.",
            "ISO 10964 and ASTM D5363 test lubricity by grade; TM 10-3930-643-20, para 2-12"},
    Wording{
        Code::holding_unknown,
        "How to hold the shaft is not recorded for this joint. Find the maker's way before a stop or a rope is used.",
        "the workshop file has no entry"},
    Wording{Code::over_proof, "By {2} the clamp load {4} the proof load: likely {0} of it, at the most {1}.",
            "ISO 898-1, SAE J429: proof load"},
    Wording{Code::over_yield, "By {2} tightening {4} yield: likely {0} of it, at the most {1}.",
            "VDI 2230-1 since 2001: tension and torsion by von Mises over the least yield"},
    Wording{Code::near_limit, "Likely {0} of the limit: little is left for scatter of friction or tool.",
            "the project's limit of 92 %; VDI 2230-1 designs for 90 %"},
    Wording{Code::low_preload,
            "Likely {0} of the proof load: under half. A joint that is worked sideways may slip and come loose.",
            "the project's limit of 50 %; the textbook aim is 75 % (Shigley, ch. 8)"},
    Wording{Code::models_disagree,
            "The two models disagree: likely {0} by nut factor, {1} by thread friction. The face or the friction is "
            "unusual; "
            "trust the one whose inputs you know.",
            "bands apart, or the likely value of one outside the band of the other"},
    Wording{Code::surfaces_not_stated,
            "Nobody said whether thread and face are dry, oiled or plated: the band covers all of these. "
            "A torque belongs to its surfaces; name them.",
            "friction classes B and C of VDI 2230-1 table A5; textbook nut factor"},
    Wording{Code::class_unknown,
            "The strength class is not known, so nothing can be said about proof or yield. Do not guess "
            "it: without a mark it stays unknown.",
            "ISO 898-1: a fastener without a mark has no class"},
    Wording{Code::face_not_stated,
            "The face under the turned part is not known{0}, so the thread-friction model is left out. Give it with "
            "--face-outer and --face-inner.",
            "no head or hole of that size in the tables, and none given"},
    Wording{
        Code::running_torque_added,
        "Of the torque set, {0} only runs the nut; the rest clamps. Some handbooks add the running torque to a printed "
        "value always, others only from a third of it on: see what yours says.",
        "AC 43.13-1B, para 7-40 (always); TM 5-2330-325-13&P (from a third)"},
    Wording{
        Code::running_torque_missing,
        "A {0} drags before anything is clamped, and its running torque was not given: the clamp load is lower than "
        "shown. Measure it on the free nut; clamp takes it with --running-torque.",
        "ISO 2320: prevailing torque; AC 43.13-1B, para 7-40"},
    Wording{Code::mass_as_force,
            "A unit of mass stands in the torque; it was read as the force of that mass (1 kg: 9.80665 N; 1 lb: "
            "4.44822 N).",
            "standard gravity, CGPM 1901; pound and inch of 1959"},
    Wording{Code::seating_torque,
            "This seats a stud; it does not clamp. The load shown is only what the thread would pull, and no share of "
            "proof "
            "is given.",
            "a stud set to its shoulder or in its hole carries its load when the nut is tightened"},
    Wording{Code::not_a_bolt,
            "A {0} is not judged by the proof load of a bolt: its limit is the seat, the thread in the part, or what "
            "it must hold.",
            "ISO 898-1 covers bolts, screws and studs"},
    Wording{
        Code::no_maker_value,
        "The maker gives no torque here (\"{0}\"). None is filled in: ask the maker, or work one up and mark it so.",
        "the sheet as recorded"},
    Wording{Code::value_from_memory,
            "The strength of class {0} is held from memory; check it against the standard before you rely on it.",
            "the reference table marks it as memory"},
    Wording{
        Code::mark_proves_nothing,
        "A mark is what somebody stamped: it does not prove the strength, and counterfeits carry it too. Where much "
        "hangs on the part, go by its supply papers or a test.",
        "common practice"},
    Wording{Code::hand_doubt,
            "The steady load would undo this {0}-hand thread; the drive calls for the other hand. Look at the thread "
            "itself, and at its lock. Braking and kick-back turn the rule round.",
            "a load drags the part backwards against its shaft; Michigan Administrative Code R 408.10115"},
    Wording{Code::lock_conflict,
            "Locking compound and {0} do not go together: use one lock, the one that the figure's page names.",
            "TM 10-3930-643-20, para 2-12 (lock wire, washers, plates); locking nuts by common practice"},
    Wording{Code::heat_limit, "The {0} runs at {1}; {2} bears {3} at the most.",
            "limit of the lock as its table names it; temperature as recorded"},
    Wording{Code::surfaces_differ, "", "T = K·F·d: the ratio of the likely nut factors, applied once"},
    Wording{Code::reduced_head,
            "Mark {0}: the head bears only {1} of the full class, and all shares of proof and yield are of these "
            "reduced loads.",
            "ISO 898-1 (leading zero); ISO 10642, ISO 7380-1: 80 %"},
    Wording{
        Code::embrittlement,
        "Do not fit an electroplated bolt as hard as class {0} unless its maker vouches for the plating: it may break "
        "without warning hours or days after it is tightened (hydrogen).",
        "ISO 4042; SAE J1648: above 390 HV (40 HRC)"},
    Wording{Code::galling, "", "J. Failure Anal. Prev. 5 (2005) 72-78: austenitic steel on itself"},
    Wording{Code::approved_data,
            "A bolt of the {0} family is aircraft hardware: the part's approved data and the person entitled decide "
            "its torque and where it may be fitted. What is shown here is no approved data.",
            "14 CFR 43.13; AC 43.13-1B"},
    Wording{Code::strip_governs,
            "The thread in the {0} gives first, at {1}: this torque {4} likely {2}, at the most {3}. The bolt's shares "
            "of proof and yield do not show how near that is.",
            "FED-STD-H28/2 areas at least material, shear strength of the part"},
    Wording{
        Code::long_engagement,
        "For the bolt to break first {0} would have to be engaged, more than two diameters of {1}. Beyond about 1.5 "
        "to 2 diameters more length adds little, for the first turns carry most: an insert of larger outer thread "
        "or a lower torque is the surer way.",
        "how the turns share the load (from memory)"},
    Wording{Code::seat_pressure,
            "Under the turned part the pressure {4} what {0} bears ({1}): likely {2}, at the most {3}. A hard washer "
            "spreads the load; more torque does not help.",
            "VDI 2230-1 table A9 (2003): limiting surface pressure"},
    Wording{Code::nut_too_weak,
            "A nut of class {0} goes with bolts up to {1}; on a {2} bolt its thread strips first. Fit the nut of the "
            "bolt's class.",
            "ISO 898-2, table 2"},
    Wording{
        Code::soft_part,
        "The {0} sets the limit, not the bolt: never above the figure. Where it has come loose, recheck as the page "
        "says; more torque only crushes it.",
        "a wooden-propeller maker's service bulletin (1999); common practice"},
    Wording{
        Code::creep,
        "The {0} gives way slowly above about {1}: a joint that runs hotter loses its clamp load. Tighten cold, and "
        "recheck as the maker says.",
        "data sheets of the alloy; the maker's limit ranks above it"},
    Wording{Code::unit_slip, "", "likely share of proof by every known model; the project's limits of 20 and 100 %"},
    Wording{
        Code::below_tool_range,
        "The scale of {0} begins at {1}: {2} lies below it. Some rules leave out the lowest fifth or quarter of the "
        "scale as well.",
        "ISO 6789-1:2017: the lowest mark; TM 1-1500-204-23-9, para 8-3: 20 %"},
    Wording{Code::above_tool_range, "The scale of {0} ends at {1}: {2} lies above it.", "the wrench's own scale"},
    Wording{Code::wrench_direction, "{0} is not calibrated for turning {1}, and this joint tightens {1}.",
            "ISO 6789: each direction of operation"},
    Wording{Code::wrench_overdue, "{0}: its calibration was due on {1}. Have it calibrated before you rely on it.",
            "as recorded; ISO 6789:2003: 12 months or 5000 cycles unless the shop rules otherwise"},
    Wording{Code::single_use, "Single use: {0}.", "TB 43-0218, section III; the figure's page where it says so"},
    Wording{Code::angle_final,
            "The torque only snugs; the angle makes the clamp load, for this stack of parts alone. What is shown is "
            "the snug load. After an interruption do not turn the angle again: start anew as the maker says.",
            "F = angle/360°·P/(δS + δP): it depends on the stack"},
    Wording{Code::measured_only,
            "A measurement gives the size, not the hand and not the strength class. Hold it upright: a right-hand "
            "thread rises to the right on the side that you see. The class is known from a mark only. Pipe threads are "
            "not in these tables. Before you rely on it, turn a known part of that thread in by hand, without force, "
            "over the whole length, or use a thread gauge.",
            "common practice"},
    Wording{Code::look_alikes,
            "This measurement cannot tell {0} from {1}. Their order goes by the misfit and by what is common, which "
            "proves nothing: tell them apart before you fit a part or take a figure.",
            "limits of size beside the doubt of the measurement"},
    Wording{Code::pitch_not_measured,
            "By the diameter alone many threads are possible. Measure the pitch too, over ten turns.",
            "common practice"},
    Wording{Code::limits_assumed,
            "The tables hold no limits for Whitworth, BA and cycle threads: their crests are taken to lie as close to "
            "the basic size as those of an ISO metric thread of the same pitch, {0}.",
            "formulas of ISO 965-1 for grade 6, in the place of BS 84, BS 93 and BS 811"},
    Wording{Code::sources_conflict, "", "as recorded: neither takes the place of the other"},
    Wording{
        Code::size_chart,
        "A chart by size is no maker's figure, and fills no empty line of a manual. It reckons with the bolt alone: "
        "whole steel bolts, in steel parts and nuts that bear more than the bolt. Not for castings, light metal, "
        "wood, plastic, gaskets, tapers, plugs or hubs: there something else gives first.",
        "TM 1-1500-204-23-9, para 8-4: the task's own value first, then the manual's table, a standard table last"},
    Wording{Code::maker_first,
            "The maker's current instruction ranks above this figure; local rules and licensed practice decide who may "
            "do the work.",
            "14 CFR 43.13; common practice"},
};

const Wording& wording_of(Code code) {
  for (const Wording& wording : k_wordings)
    if (wording.code == code) return wording;
  return k_wordings.back();
}

// What is filled in where a sentence differs by how grave the finding is.
std::string_view verb_of(const Finding& finding) {
  const bool likely = finding.severity == Severity::stop;
  switch (finding.code) {
  case Code::over_proof:
    return likely ? "is likely past" : "may pass";
  case Code::over_yield:
    return likely ? "likely brings the bolt past" : "may bring the bolt past";
  case Code::strip_governs:
    return likely ? "passes that, with" : "loads it with";
  case Code::seat_pressure:
    return likely ? "likely passes" : "may pass";
  default:
    return "";
  }
}

// What is not stated cannot be said to differ.
std::string surfaces_words(std::string_view stated, std::string_view fitted) {
  constexpr std::string_view k_not_stated = "not-stated";
  if (stated == k_not_stated)
    return fmt::format("The figure does not say for which surfaces it is, and {} is fitted: it may not hold. ", fitted);
  if (fitted == k_not_stated)
    return fmt::format("The figure is for {} surfaces and what is fitted is not stated: it may not hold. ", stated);
  return fmt::format("The figure is for {} surfaces and {} is fitted: it is no longer the figure. ", stated, fitted);
}

// Facts: stated, fitted, printed torque, likely and greatest load at it; the corrected torque where one can be given.
std::string surfaces_differ_text(const std::vector<std::string>& facts) {
  std::string text = surfaces_words(facts[0], facts[1]);
  if (facts.size() > 3) text += fmt::format("{} would clamp likely {}, at the most {}. ", facts[2], facts[3], facts[4]);
  text += facts.size() > 5 ? fmt::format("By nut factor {} clamps about the same; the maker's word for these "
                                         "surfaces ranks above it.",
                                         facts.back())
                           : "No correction can be given.";
  return text;
}

// Facts: the figure as printed, its likely share of proof, then unit and torque in turn.
std::string unit_slip_text(const std::vector<std::string>& facts) {
  std::string text =
      fmt::format("\"{}\" cannot be meant as printed: likely {} of the proof load. ", facts[0], facts[1]);
  std::string fits;
  for (std::size_t i = 2; i + 1 < facts.size(); i += 2)
    fits += fmt::format("{}{} ({})", fits.empty() ? "" : ", ", facts[i], facts[i + 1]);
  text += fmt::format("The same number would make sense in {}. Which was meant cannot be told from the number: ask "
                      "the maker; nothing was changed.",
                      fits);
  return text;
}

std::string galling_text(const Finding& finding, const std::vector<std::string>& facts) {
  return fmt::format("{} Lubricate, turn slowly, stop if it drags.",
                     finding.severity == Severity::note
                         ? fmt::format("{} seizes on stainless steel: what it screws into is not recorded.", facts[0])
                         : fmt::format("{} on stainless steel may seize while it is tightened.", facts[0]));
}

// A length that was worked out: nobody measures the rest of its digits.
std::string measurable(const finding::Fact& fact, const DisplayUnits& units) {
  return quantity::write_si_rounded(quantity::in_metres(std::get<quantity::Length>(fact)), *units.length);
}

// Without a torque, facts: which thread, its load, the break of the strongest bolt, the length needed.
std::string strip_governs_text(const std::vector<std::string>& facts, const std::string& needed) {
  return fmt::format(
      "The {} gives first, at {}; a bolt of this class may bear up to {}. For the bolt to break first {} "
      "must be engaged. The cure is more engagement, an insert in a soft part, or a lower torque, never "
      "a higher one.",
      facts[0], facts[1], facts[2], needed);
}

// The page's own words may end with a full stop.
std::string single_use_text(std::string words) {
  while (words.ends_with('.') || words.ends_with(' '))
    words.pop_back();
  return fmt::format(fmt::runtime(wording_of(Code::single_use).text), words);
}

std::string sources_conflict_text(const std::vector<std::string>& facts) {
  std::string text = "Sources in force differ: ";
  for (const std::string& fact : facts)
    text += (&fact == &facts.front() ? "" : "; ") + fact;
  return text + ". None is chosen here: ask the maker which holds.";
}

} // namespace

std::string fact_text(const finding::Fact& fact, const DisplayUnits& units) {
  struct Writer {
    const DisplayUnits& units;
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(double share) const { return quantity::write_share(share); }
    std::string operator()(quantity::Torque torque) const { return quantity::write(torque, units); }
    std::string operator()(quantity::Force force) const {
      return quantity::write_si_rounded(quantity::in_newtons(force), *units.force);
    }
    std::string operator()(quantity::Length length) const { return quantity::write(length, units); }
    std::string operator()(quantity::Stress stress) const {
      return quantity::write_si_rounded(quantity::in_pascals(stress), *units.stress);
    }
    std::string operator()(quantity::Temperature temperature) const {
      return quantity::write_si(temperature.value(), quantity::unit_named("degC"));
    }
    std::string operator()(quantity::Angle angle) const {
      return quantity::write_si(quantity::in_radians(angle), *units.angle);
    }
  };
  return std::visit(Writer{units}, fact);
}

std::string finding_text(const Finding& finding, const DisplayUnits& units) {
  std::vector<std::string> facts;
  for (const finding::Fact& fact : finding.facts)
    facts.push_back(fact_text(fact, units));
  if (auto text = crank_finding_text(finding, facts, units)) return std::move(*text);
  switch (finding.code) {
  case Code::reduced_head:
    if (finding.severity == Severity::mind)
      return fmt::format(
          "Heads of this kind are made to bear 80 % only and carry a leading zero (0{0}): a plain {0} on "
          "one is of an older edition. The shares shown are those of the full class; reckon with 0{0}.",
          facts[0]);
    break;
  case Code::surfaces_not_stated:
    if (!facts.empty())
      return fmt::format("Nobody said whether thread and face are dry or lubricated. The band shown is that of plain "
                         "steel: {} may be far above it when dry (friction of 0.3 to 0.5). Name the surfaces.",
                         facts[0]);
    break;
  case Code::surfaces_differ:
    return surfaces_differ_text(facts);
  case Code::unit_slip:
    return unit_slip_text(facts);
  case Code::galling:
    return galling_text(finding, facts);
  case Code::sources_conflict:
    return sources_conflict_text(facts);
  case Code::single_use:
    return single_use_text(facts[0]);
  case Code::strip_governs:
    if (std::holds_alternative<quantity::Length>(finding.facts.back()))
      return strip_governs_text(facts, measurable(finding.facts.back(), units));
    break;
  case Code::long_engagement:
    facts[0] = measurable(finding.facts[0], units);
    break;
  case Code::value_from_memory:
    // A figure other than the strength of a class: its name and value.
    if (facts.size() == 2)
      return fmt::format("Held from memory: {}, {}. Check it against the standard before you rely on it.", facts[0],
                         facts[1]);
    break;
  case Code::face_not_stated:
    if (!facts.empty()) facts[0] = fmt::format(" ({})", facts[0]);
    break;
  default:
    break;
  }
  facts.resize(4);
  return fmt::format(fmt::runtime(wording_of(finding.code).text), facts[0], facts[1], facts[2], facts[3],
                     verb_of(finding));
}

std::string finding_brief(const Finding& finding, const DisplayUnits& units) {
  const std::string text = finding_text(finding, units);
  if (finding.code == Code::unit_slip) return text.substr(0, text.find(" Which was meant"));
  const std::size_t end = text.find(". ");
  return end == std::string::npos ? text : text.substr(0, end + 1);
}

std::string_view finding_basis(Code code) {
  const std::string_view of_crank = crank_finding_basis(code);
  return of_crank.empty() ? wording_of(code).basis : of_crank;
}

} // namespace clampwright::report
