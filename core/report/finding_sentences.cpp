// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/finding_sentences.hpp"

#include <array>

namespace clampwright::report {

namespace {

using finding::Code;

constexpr std::array k_sentences{
    Sentence{Code::left_hand,
             "Left-hand thread: it tightens anticlockwise and undoes clockwise, looking at the part that is turned.",
             "the designation says LH (ISO 965-1), or the mark on the part does"},
    Sentence{
        Code::thread_not_listed,
        "No table here has {0}: no limits of size and no printed load are known, and its dimensions follow from "
        "the form of {1} alone. Measure diameter and pitch again before you rely on it, and try the part that it "
        "goes with.",
        "the tables of ISO 261, ASME B1.1 (UNC, UNF, UNEF), BS 84, BS 93 and BS 811; ASME B1.1 has more series (UN) "
        "than are held here"},
    Sentence{
        Code::locking_compound,
        "Wet locking compound changes the friction, and whether it eases or drags depends on its grade: clean and "
        "degrease, "
        "use one grade only, tighten before it sets, then leave it for its cure time. Not beside lock wire or on a "
        "locking nut.",
        "ISO 10964 and ASTM D5363 test lubricity by grade; TM 10-3930-643-20, para 2-12"},
    Sentence{
        Code::holding_unknown,
        "How to hold the shaft is not recorded for this joint. Find the maker's way before a stop or a rope is used.",
        "the workshop file has no entry"},
    Sentence{Code::over_proof, "By {2} the clamp load {4} the proof load: likely {0} of it, at the most {1}.",
             "ISO 898-1, SAE J429: proof load"},
    Sentence{Code::over_yield, "By {2} tightening {4} yield: likely {0} of it, at the most {1}.",
             "VDI 2230-1 since 2001: tension and torsion by von Mises over the least yield"},
    Sentence{Code::near_limit, "Likely {0} of the limit: little is left for scatter of friction or tool.",
             "the project's limit of 92 %; VDI 2230-1 designs for 90 %"},
    Sentence{Code::low_preload,
             "Likely {0} of the proof load: under half. A joint that is worked sideways may slip and come loose.",
             "the project's limit of 50 %; the textbook aim is 75 % (Shigley, ch. 8)"},
    Sentence{Code::models_disagree,
             "The two models disagree: likely {0} by nut factor, {1} by thread friction. The face or the friction is "
             "unusual; "
             "trust the one whose inputs you know.",
             "bands apart, or the likely value of one outside the band of the other"},
    Sentence{Code::surfaces_not_stated,
             "Nobody said whether thread and face are dry, oiled or plated: the band covers all of these. "
             "A torque belongs to its surfaces; name them.",
             "friction classes B and C of VDI 2230-1 table A5; textbook nut factor"},
    Sentence{Code::class_unknown,
             "The strength class is not known, so nothing can be said about proof or yield. Do not guess "
             "it: without a mark it stays unknown.",
             "ISO 898-1: a fastener without a mark has no class"},
    Sentence{Code::face_not_stated,
             "The face under the turned part is not known{0}, so the thread-friction model is left out. Where it is "
             "known, clamp and torque take it with --face-outer and --face-inner.",
             "no head or hole of that size in the tables, and none given"},
    Sentence{
        Code::running_torque_added,
        "Of the torque set, {0} only runs the nut; the rest clamps. Some handbooks add the running torque to a printed "
        "value always, others only from a third of it on: see what yours says.",
        "AC 43.13-1B, para 7-40 (always); TM 5-2330-325-13&P (from a third)"},
    Sentence{
        Code::running_torque_missing,
        "A {0} drags before anything is clamped, and its running torque was not given: the clamp load is lower than "
        "shown. Measure it on the free nut; clamp takes it with --running-torque.",
        "ISO 2320: prevailing torque; AC 43.13-1B, para 7-40"},
    Sentence{Code::no_compound_here, "No locking compound on {0}: {1}.",
             "TM 10-3930-643-20, para 2-12; plastic from memory"},
    Sentence{
        Code::primer_needed,
        "A primer is wanted because of {0}: without it the compound may cure late or too weak to hold. Which primer, "
        "and how long, the sheet of the compound says.",
        "TM 5-3820-256-24-5, introduction (cold); Hunter and Hess 2012 (stainless, plated)"},
    Sentence{Code::cure_by_heat_only, "At {0} it cures by heat alone, with primer or without: warm the part.",
             "TM 5-3820-256-24-5, introduction"},
    Sentence{Code::cure_not_known,
             "No public text has a time for what was told. Do not run the joint on a guess: the sheet of the compound "
             "has it.",
             "published are times for active surfaces at 10 °C and above, and heat cures"},
    Sentence{Code::breakaway_not_known,
             "What breaks a cured thread loose is not known by grade: it grows with thread area times radius, and low, "
             "medium and high are no test values. The sheet of the compound has it for one test nut.",
             "ASTM D5363 classifies and is not for design; ISO 10964 tests nuts that press on nothing"},
    Sentence{Code::compound_expired, "\"{0}\" expired on {1}: what it still holds is not known. Take a fresh one.",
             "the date on its label, as recorded"},
    Sentence{Code::running_torque_low,
             "{0} is less than a used locking nut or insert must still drag by {1}: by those it is scrap.",
             "the tables named, side by side"},
    Sentence{Code::running_torque_high,
             "{0} is more than even a new one may drag by {1}: it or the thread is damaged, dirty or galling. Take it "
             "off, look at both threads, and take a new one.",
             "the greatest values of the tables named; what may drag so common practice"},
    Sentence{Code::mass_as_force,
             "A unit of mass stands in the torque; it was read as the force of that mass (1 kg: 9.80665 N; 1 lb: "
             "4.44822 N).",
             "standard gravity, CGPM 1901; pound and inch of 1959"},
    Sentence{Code::seating_torque,
             "This seats a stud; it does not clamp. The load shown is only what the thread would pull, and no share of "
             "proof "
             "is given.",
             "a stud set to its shoulder or in its hole carries its load when the nut is tightened"},
    Sentence{Code::not_a_bolt,
             "A {0} is not judged by the proof load of a bolt: its limit is the seat, the thread in the part, or what "
             "it must hold.",
             "ISO 898-1 covers bolts, screws and studs"},
    Sentence{Code::not_looked_at,
             "Not looked at, because nobody told it: {0}. It may bear less than what was looked at; tell it before the "
             "torque is used.",
             "what is not known is not filled in"},
    Sentence{
        Code::derived_torque,
        "Worked up, not the maker's: an estimate from what was told, with the spread shown. It is no specification "
        "and takes the place of none; ask the maker before the joint carries anything that can hurt someone.",
        "weakest part against what the joint must carry; textbook and VDI 2230-1 limits as shown"},
    Sentence{
        Code::no_maker_value,
        "The maker gives no torque here (\"{0}\"). None is filled in: ask the maker, or work one up and mark it so.",
        "the sheet as recorded"},
    Sentence{Code::value_from_memory,
             "The strength of class {0} is held from memory; check it against the standard before you rely on it.",
             "the reference table marks it as memory"},
    Sentence{
        Code::mark_proves_nothing,
        "A mark is what somebody stamped: it does not prove the strength, and counterfeits carry it too. Where much "
        "hangs on the part, go by its supply papers or a test.",
        "common practice"},
    Sentence{Code::hand_doubt,
             "The steady load would undo this {0}-hand thread; the drive calls for the other hand. Look at the thread "
             "itself, and at its lock. Braking and kick-back turn the rule round.",
             "a load drags the part backwards against its shaft; Michigan Administrative Code R 408.10115"},
    Sentence{Code::lock_conflict,
             "Locking compound and {0} do not go together: use one lock, the one that the figure's page names.",
             "TM 10-3930-643-20, para 2-12 (lock wire, washers, plates); locking nuts by common practice"},
    Sentence{Code::heat_limit, "The {0} runs at {1}; {2} bears {3} at the most.",
             "limit of the lock as its table names it; temperature as recorded"},
    Sentence{Code::surfaces_differ, "", "T = K·F·d: the ratio of the likely nut factors, applied once"},
    Sentence{Code::reduced_head,
             "Mark {0}: the head bears only {1} of the full class, and all shares of proof and yield are of these "
             "reduced loads.",
             "ISO 898-1 (leading zero); ISO 10642, ISO 7380-1: 80 %"},
    Sentence{
        Code::embrittlement,
        "Do not fit an electroplated bolt as hard as class {0} unless its maker vouches for the plating: it may break "
        "without warning hours or days after it is tightened (hydrogen).",
        "ISO 4042; SAE J1648: above 390 HV (40 HRC)"},
    Sentence{Code::galling, "", "J. Failure Anal. Prev. 5 (2005) 72-78: austenitic steel on itself"},
    Sentence{Code::approved_data,
             "A bolt of the {0} family is aircraft hardware: the part's approved data and the person entitled decide "
             "its torque and where it may be fitted. What is shown here is no approved data.",
             "14 CFR 43.13; AC 43.13-1B"},
    Sentence{
        Code::strip_governs,
        "The thread in the {0} gives first, at {1}: this torque {4} likely {2}, at the most {3}. The bolt's shares "
        "of proof and yield do not show how near that is.",
        "FED-STD-H28/2 areas at least material, shear strength of the part"},
    Sentence{
        Code::long_engagement,
        "For the bolt to break first {0} would have to be engaged, more than two diameters of {1}. Beyond about 1.5 "
        "to 2 diameters more length adds little, for the first turns carry most: an insert of larger outer thread "
        "or a lower torque is the surer way.",
        "how the turns share the load (from memory)"},
    Sentence{Code::seat_pressure,
             "Under the turned part the pressure {4} what {0} bears ({1}): likely {2}, at the most {3}. A hard washer "
             "spreads the load; more torque does not help.",
             "VDI 2230-1 table A9 (2003): limiting surface pressure"},
    Sentence{Code::nut_too_weak,
             "A nut of class {0} goes with bolts up to {1}; on a {2} bolt its thread strips first. Fit the nut of the "
             "bolt's class.",
             "ISO 898-2, table 2"},
    Sentence{
        Code::soft_part,
        "The {0} sets the limit, not the bolt: never above the figure. Where it has come loose, recheck as the page "
        "says; more torque only crushes it.",
        "a wooden-propeller maker's service bulletin (1999); common practice"},
    Sentence{
        Code::creep,
        "The {0} gives way slowly above about {1}: a joint that runs hotter loses its clamp load. Tighten cold, and "
        "recheck as the maker says.",
        "data sheets of the alloy; the maker's limit ranks above it"},
    Sentence{Code::unit_slip, "", "likely share of proof by every known model; the project's limits of 20 and 100 %"},
    Sentence{
        Code::below_tool_range,
        "The scale of {0} begins at {1}: {2} lies below it. Some rules leave out the lowest fifth or quarter of the "
        "scale as well.",
        "ISO 6789-1:2017: the lowest mark; TM 1-1500-204-23-9, para 8-3: 20 %"},
    Sentence{Code::above_tool_range, "The scale of {0} ends at {1}: {2} lies above it.", "the wrench's own scale"},
    Sentence{Code::wrench_direction, "{0} is not calibrated for turning {1}, and this joint tightens {1}.",
             "ISO 6789: each direction of operation"},
    Sentence{Code::wrench_overdue, "{0}: its calibration was due on {1}. Have it calibrated before you rely on it.",
             "as recorded; ISO 6789:2003: 12 months or 5000 cycles unless the shop rules otherwise"},
    Sentence{Code::wrench_dropped, "{0} was {1} on {2}. Have it calibrated before it is used again.",
             "AC 43.13-1B, para 7-40; ISO 6789: after an overload of a quarter or more, a drop or abuse"},
    Sentence{Code::wrench_retired, "{0} was taken out of use on {1}: {2}.", "as recorded"},
    Sentence{Code::calibration_unknown,
             "No calibration of {0} is on record, so nobody can say that it is in date. Enter it: wrench log NAME "
             "--calibrated DAY.",
             "ISO 6789: calibrated, and again after 12 months or 5000 cycles unless the shop rules otherwise"},
    Sentence{
        Code::no_mark, "No mark of {0} lies from {1} to {2}, which is all that its scale and the figure allow.",
        "the step of the scale; the limits of the figure, through the adaptor where there is one; 10 % either side "
        "where it names none (TB 9-2320-279-13&P-2)"},
    Sentence{
        Code::wrench_wider_than_limits,
        "{0} may be off by {1}, which is more than the {2} that the figure allows: even well set it may miss. Take a "
        "closer wrench.",
        "accuracy of the wrench as stated, limits of the figure"},
    Sentence{Code::coarse_scale, "The marks of {0} lie {1} apart: more than a tenth of {2}, too coarse to set it well.",
             "TM 1-1500-204-23-9, para 8-3: a division of 10 % of the value at the most"},
    Sentence{Code::single_use, "Single use: {0}.", "TB 43-0218, section III; the figure's page where it says so"},
    Sentence{Code::angle_final,
             "The torque only snugs; the angle makes the clamp load, for this stack of parts alone. What is shown is "
             "the snug load. After an interruption do not turn the angle again: go on to the end mark, or without "
             "marks start "
             "anew as the maker says.",
             "F = angle/360°·P/(δS + δP): it depends on the stack"},
    Sentence{
        Code::beyond_elastic,
        "By the elastic line torque and angle bring the bolt to likely {0} of {2}, at the most {1}: past it the line "
        "ends and the load is no longer known from it. Tightening by angle may mean to yield the bolt; only its "
        "maker can say so, and then it is used once.",
        "von Mises over the least yield; elastic resilience of the stack"},
    Sentence{Code::slot_may_miss,
             "Between {0} and {1} there may be no slot before the hole: from one to the next is {2}. Start at the low "
             "side, never pass the high one, never loosen to align; a washer thicker or thinner by {3} moves the slots "
             "by half their distance, or take another nut.",
             "AC 43.13-1B, 7-40f and 7-124 to 7-126"},
    Sentence{
        Code::measured_only,
        "A measurement gives the size, not the hand and not the strength class. Hold it upright: a right-hand "
        "thread rises to the right on the side that you see. The class is known from a mark only. Pipe threads are "
        "not in these tables. Before you rely on it, turn a known part of that thread in by hand, without force, "
        "over the whole length, or use a thread gauge.",
        "common practice"},
    Sentence{Code::look_alikes,
             "This measurement cannot tell {0} from {1}. Their order goes by the misfit and by what is common, which "
             "proves nothing: tell them apart before you fit a part or take a figure.",
             "limits of size beside the doubt of the measurement"},
    Sentence{Code::pitch_not_measured,
             "By the diameter alone many threads are possible. Measure the pitch too, over ten turns.",
             "common practice"},
    Sentence{Code::limits_assumed,
             "The tables hold no limits for Whitworth, BA and cycle threads: their crests are taken to lie as close to "
             "the basic size as those of an ISO metric thread of the same pitch, {0}.",
             "formulas of ISO 965-1 for grade 6, in the place of BS 84, BS 93 and BS 811"},
    Sentence{Code::sources_conflict, "", "as recorded: neither takes the place of the other"},
    Sentence{
        Code::size_chart,
        "A chart by size is no maker's figure, and fills no empty line of a manual. It reckons with the bolt alone: "
        "whole steel bolts, in steel parts and nuts that bear more than the bolt. Not for castings, light metal, "
        "wood, plastic, gaskets, tapers, plugs or hubs: there something else gives first.",
        "TM 1-1500-204-23-9, para 8-4: the task's own value first, then the manual's table, a standard table last"},
    Sentence{
        Code::maker_first,
        "The maker's current instruction ranks above this figure; local rules and licensed practice decide who may "
        "do the work.",
        "14 CFR 43.13; common practice"},
};

} // namespace

const Sentence& sentence_of(Code code) {
  for (const Sentence& sentence : k_sentences)
    if (sentence.code == code) return sentence;
  return k_sentences.back();
}

} // namespace clampwright::report
