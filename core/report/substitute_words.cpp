// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/substitute_words.hpp"

#include <array>

#include <fmt/format.h>

#include "core/report/wording.hpp"

namespace clampwright::report {

namespace {

using substitute::Check;
using substitute::Link;
using substitute::Reason;

struct Wording {
  Reason reason;
  std::string_view text; // {0}, {1}: the facts
  std::string_view basis;
};

constexpr std::string_view k_practice = "common practice";
constexpr std::string_view k_loads =
    "least loads of ISO 898-1, SAE J429 and others; stress × area where none is printed";
constexpr std::string_view k_strip =
    "FED-STD-H28/2 areas at least material, less the turns that do not bear, shear strength of the part";
constexpr std::string_view k_reach = "length under the head less what is clamped; common practice";
constexpr std::string_view k_hydrogen = "ISO 4042:2018, 4.4: 360 and 390 HV; SAE J1648: 40 HRC";
constexpr std::string_view k_noble = "galvanic pairs: MIL-STD-889 (from memory)";

constexpr std::array k_wordings{
    Wording{Reason::like_for_like, "Like for like: the same thread and class.", "designation and class as told"},
    Wording{Reason::classes_known, "Both classes are known.", "designation and class as told"},
    Wording{Reason::offered_unknown,
            "The class of what is offered is not known. Without a mark it stays unknown; it is not guessed.",
            "ISO 898-1: a fastener without a mark has no class"},
    Wording{Reason::original_unknown, "What class stood there is not known, so nothing says what the other must bear.",
            "ISO 898-1: a fastener without a mark has no class"},
    Wording{Reason::same_form, "The same form of thread.", "designation as told"},
    Wording{Reason::other_form, "Another form of thread: {1} does not go into {0}.", "designation as told"},
    Wording{
        Reason::starts_on_it,
        "Another form of thread. {1} starts on {0} and then jams or strips it: that it goes in by hand says nothing.",
        "diameter within 6 %, pitch within 7 %"},
    Wording{Reason::same_diameter, "The same diameter.", "designation as told"},
    Wording{Reason::other_diameter, "Another diameter.", "designation as told"},
    Wording{Reason::same_pitch, "The same pitch.", "designation as told"},
    Wording{Reason::other_pitch, "Another pitch: it binds after a turn or two and strips.", "designation as told"},
    Wording{Reason::same_hand, "The same hand.", "designation as told"},
    Wording{Reason::other_hand, "The other hand of thread: it does not go in.", "designation as told"},
    Wording{
        Reason::length_not_told,
        "Length was not compared. Hold the two side by side: a screw that bottoms clamps nothing, a short one strips.",
        k_practice},
    Wording{Reason::same_length, "The same length.", "lengths as told"},
    Wording{Reason::reaches_and_clears, "It engages {0} and does not bottom.", k_reach},
    Wording{Reason::bottoms, "It bottoms: {0} of it would stand in a hole with {1} of thread, and nothing is clamped.",
            k_reach},
    Wording{Reason::does_not_reach, "It does not reach the thread: {0} long, and {1} is clamped.", k_reach},
    Wording{Reason::engages_less, "It engages {0} of thread, the original {1}.",
            "engagement as of the original: common practice"},
    Wording{Reason::longer_depth_not_told,
            "It reaches {0} further than is known to be free: it may bottom. Measure the hole.", k_reach},
    Wording{Reason::shorter_grip_not_told,
            "It is {0} shorter, and so much less may be engaged. Measure what is clamped and the hole.", k_reach},
    Wording{Reason::bears_as_much, "It bears {0} of the original.", k_loads},
    Wording{Reason::bears_less, "It bears only {0} of the original.", k_loads},
    Wording{
        Reason::no_proof_stress,
        "Stainless steel has no stress under proof load ({0}): the two are compared by their yield, Rp0.2 with Rp0.2.",
        "ISO 3506-1; ISO 898-1"},
    Wording{Reason::not_judged_as_bolt,
            "A {0} is not judged by the strength of a bolt: its limit is the seat, the thread in the part, or what it "
            "must hold.",
            "ISO 898-1 covers bolts, screws and studs"},
    Wording{Reason::strength_not_known, "Not known on one side, so it is not compared.", k_loads},
    Wording{Reason::nut_not_told,
            "The nut, or the part that it screws into, was not told. A stronger bolt wants a nut of its own class, or "
            "the nut strips first.",
            "ISO 898-2, table 2"},
    Wording{Reason::nut_goes_with_it, "A nut of class {0} goes with bolts up to {1}.", "ISO 898-2, table 2; SAE J995"},
    Wording{
        Reason::nut_too_weak,
        "A nut of class {0} goes with bolts up to {1}: under a {2} bolt its thread strips before the bolt shows it.",
        "ISO 898-2, table 2; SAE J995: proof load of the nut against tensile strength of the bolt"},
    Wording{
        Reason::nut_too_weak_before,
        "A nut of class {0} goes with bolts up to {1}: it was too weak for the {3} already, and under a {2} bolt its "
        "thread strips before the bolt shows it.",
        "ISO 898-2, table 2; SAE J995: proof load of the nut against tensile strength of the bolt"},
    Wording{Reason::nut_thin, "A thin nut ({0}) strips before any bolt breaks: what it bears here is not known.",
            "ISO 898-2: nuts of 04 and 05"},
    Wording{Reason::nut_not_comparable, "Whether a nut of class {0} goes with a {2} bolt is not in the tables.",
            "ISO 898-2, table 2; SAE J995"},
    Wording{Reason::part_length_not_told, "How much thread it engages in the {0} was not told.", k_strip},
    Wording{Reason::part_may_give,
            "The thread in the {0} strips at {1}, and may: likely {2}, at the most {3}. More engagement or an insert "
            "helps, never more torque.",
            k_strip},
    Wording{Reason::part_may_give_as_before,
            "The thread in the {0} strips at {1}, and may: likely {2}, at the most {3}. With the original it was so as "
            "well.",
            k_strip},
    Wording{Reason::part_holds, "The thread in the {0} strips at {1}; this loads it with likely {2}, at the most {3}.",
            k_strip},
    Wording{Reason::part_gives, "The thread in the {0} strips at {1}: likely {2}, at the most {3}, is more than that.",
            k_strip},
    Wording{
        Reason::part_gives_before_bolt,
        "The thread in the {0} strips at {1}, before this bolt reaches its proof load of {2}. A stronger bolt makes "
        "that thread no stronger.",
        k_strip},
    Wording{Reason::part_strength_not_known, "What a thread in {0} bears is not known.", k_strip},
    Wording{Reason::part_torque_not_told,
            "The thread in the {0} strips at {1}; without a torque no load is set against it.", k_strip},
    Wording{Reason::seat_not_told, "What it presses on, its face or the torque was not told, so no pressure is judged.",
            "VDI 2230-1 table A9: limiting surface pressure"},
    Wording{Reason::seat_bears, "The pressure on {0} stays under {1}: at the most {3}.",
            "VDI 2230-1 table A9: limiting surface pressure"},
    Wording{Reason::seat_may_give,
            "The pressure on {0} may pass {1}: likely {2}, at the most {3}. A hard washer helps.",
            "VDI 2230-1 table A9: limiting surface pressure"},
    Wording{Reason::seat_gives, "The pressure on {0} likely passes {1}: {2}, at the most {3}.",
            "VDI 2230-1 table A9: limiting surface pressure"},
    Wording{Reason::seat_not_known, "What {0} bears under a head is not known.", "no figure was read"},
    Wording{Reason::head_not_told,
            "The heads were not told. A smaller face presses harder, and another height or drive may not fit.",
            k_practice},
    Wording{Reason::same_face, "The same face under the head.", "faces of the heads' standards"},
    Wording{Reason::larger_face, "A larger face under the head.", "faces of the heads' standards"},
    Wording{Reason::smaller_face,
            "The face is only {0} of the original's and presses harder; what the seat bears was not told.",
            "faces of the heads' standards"},
    Wording{Reason::smaller_face_on_known_seat,
            "The face is only {0} of the original's; the pressure above counts it in.",
            "faces of the heads' standards"},
    Wording{Reason::face_not_known, "The face under one of the heads is in no table.", "faces of the heads' standards"},
    Wording{Reason::soft_enough, "Hydrogen from plating does not crack class {0}.", k_hydrogen},
    Wording{Reason::hard_plated,
            "Electroplated and as hard as {0}: it may break without warning hours or days after it is tightened.",
            k_hydrogen},
    Wording{Reason::hard_coating_not_told,
            "{0} is hard enough to crack from hydrogen, and its coating was not told. Electroplated it must not go in.",
            k_hydrogen},
    Wording{Reason::hard_not_plated,
            "{0} is hard enough to crack from hydrogen; this finish is made without a bath. Never replate it or clean "
            "it in acid.",
            k_hydrogen},
    Wording{Reason::midway_plated, "At the hardness of {0} electroplating wants a verified process: ask for it.",
            k_hydrogen},
    Wording{Reason::midway, "At the hardness of {0} a plated bolt would want a verified process.", k_hydrogen},
    Wording{Reason::hardness_not_known, "Without a class its hardness is not known, nor whether a coating may harm it.",
            k_hydrogen},
    Wording{Reason::temperature_not_told, "The temperature of the joint was not told.",
            "ISO 898-1: its figures hold at room temperature, its bolts from -50 to 150 °C"},
    Wording{Reason::temperature_hot_neighbour,
            "The {0} beside it runs at {1}; how hot the joint itself gets was not told.",
            "as recorded; service range of the class's standard"},
    Wording{Reason::temperature_borne, "{0} lies within {1} to {2}, for which the class is made.",
            "service range of the class's standard"},
    Wording{Reason::temperature_not_borne, "{0} lies outside {1} to {2}, for which the class is made.",
            "service range of the class's standard"},
    Wording{Reason::temperature_range_not_known, "Whether the class is made for {0} is not in the tables.",
            "service range of the class's standard"},
    Wording{
        Reason::finish_not_told,
        "The finish was not told on both sides. A torque belongs to its surfaces: another finish, another clamp load.",
        "T = K·F·d"},
    Wording{Reason::same_finish, "Its finish ({1}) takes about the same torque.",
            "T = K·F·d: ratio of the likely nut factors"},
    Wording{Reason::other_finish, "Its finish differs ({0}, now {1}): one clamp load takes {2} of the torque.",
            "T = K·F·d: ratio of the likely nut factors"},
    Wording{Reason::finish_forbidden, "This finish must not be here: {0}.", k_practice},
    Wording{Reason::finish_wants_more_on_soft,
            "With {1} it would take more torque, and the {0} sets the limit: never above the figure.",
            "a wooden-propeller maker's service bulletin (1999); as a rule"},
    Wording{Reason::torque_unusable, "No torque of the joint can be used: {0}.", "as recorded"},
    Wording{Reason::torque_not_told, "No torque was told.", k_practice},
    Wording{Reason::keep_torque, "", "the figure belongs to the joint"},
    Wording{Reason::keep_torque_of_lower_class, "",
            "TB 9-2320-279-13&P-2, caution: a higher grade keeps the torque of the original"},
    Wording{Reason::other_torque, "", "T = K·F·d: ratio of the likely nut factors, applied once"},
    Wording{Reason::torque_too_high, "{0} likely brings it past yield.",
            "VDI 2230-1 since 2001: tension and torsion by von Mises over the least yield"},
    Wording{Reason::same_metal, "The same kind of metal as before.", k_noble},
    Wording{Reason::stainless_in_other_metal_dry, "Stainless steel in {1} is borne where it stays dry.", k_noble},
    Wording{Reason::stainless_in_other_metal_wet,
            "In the wet the {1} round stainless steel rusts the faster; it is large beside the bolt, so it is borne "
            "with paint or grease on it.",
            k_noble},
    Wording{Reason::stainless_in_light_metal_wet,
            "In the wet stainless steel eats {1} unless a barrier parts them; whether there is one is not known.",
            k_noble},
    Wording{Reason::stainless_in_light_metal_duty_not_told,
            "In the wet stainless steel eats {1}; whether this joint gets wet was not told.", k_noble},
    Wording{Reason::stainless_in_magnesium_wet, "In the wet stainless steel eats {1}, and magnesium fastest.", k_noble},
    Wording{Reason::stainless_mating_not_told, "{0} is stainless, and what it would touch was not told.", k_noble},
    Wording{Reason::loses_stainless_dry, "The original is stainless, {0} is not: it rusts where it gets wet.",
            k_practice},
    Wording{Reason::loses_stainless_wet, "The original is stainless, {0} is not, and this joint gets wet.", k_practice},
    Wording{Reason::loses_stainless_duty_not_told,
            "The original is stainless, {0} is not; whether this joint gets wet was not told.", k_practice},
    Wording{Reason::hard_in_the_wet, "{0} may crack in the wet even unplated: rust and zinc both make hydrogen.",
            "ISO 898-1, note on class 12.9 (from memory)"},
    Wording{Reason::does_not_gall, "No stainless thread on stainless steel: it does not gall.",
            "J. Failure Anal. Prev. 5 (2005) 72-78: austenitic steel on itself"},
    Wording{Reason::galls_dry, "{0} on stainless steel seizes dry: it wants a lubricant, and the torque for that.",
            "J. Failure Anal. Prev. 5 (2005) 72-78: austenitic steel on itself"},
    Wording{Reason::galls_lubricated,
            "{0} on stainless steel: lubricated as told, turn it slowly and stop if it drags.",
            "J. Failure Anal. Prev. 5 (2005) 72-78: austenitic steel on itself"},
    Wording{Reason::galls_not_told, "{0} on stainless steel seizes dry, and whether it is lubricated was not told.",
            "J. Failure Anal. Prev. 5 (2005) 72-78: austenitic steel on itself"},
    Wording{Reason::galls_mating_not_told, "{0} seizes on stainless steel, and what it screws into was not told.",
            "J. Failure Anal. Prev. 5 (2005) 72-78: austenitic steel on itself"},
    Wording{Reason::fatigue_same, "The same class stands alternating load as before, at the same clamp load.",
            "VDI 2230-1 (from memory): endurance of a rolled thread"},
    Wording{Reason::fatigue_no_better,
            "At the same torque another class stands alternating load no better: size and clamp load make that.",
            "VDI 2230-1 (from memory): endurance of a rolled thread is one for 8.8 to 12.9"},
    Wording{
        Reason::reuse_not_told,
        "New or used? A used one is looked at for stretch, worn thread and bend first; what the page calls single use "
        "is new each time.",
        k_practice},
    Wording{Reason::reuse_new, "A new one.", "as told"},
    Wording{Reason::reuse_used, "Used: measure its length, look at thread, shank and head; discard it in doubt.",
            k_practice},
    Wording{Reason::reuse_never, "New each time by the page ({0}).", "the figure's page"},
    Wording{Reason::approval_prompt,
            "If the machine is certified or under rules, its approved data decide, not this comparison.",
            "14 CFR 43.13(b); common practice"},
    Wording{Reason::approval_needed, "Here approved data and the person entitled decide: no verdict is offered.",
            "14 CFR 43.13(b)"},
};

const Wording& wording_of(Reason reason) {
  for (const Wording& wording : k_wordings)
    if (wording.reason == reason) return wording;
  return k_wordings.front();
}

// Facts: the two classes, then the clamp load where a torque was told.
std::string keep_text(const Check& check, const std::vector<std::string>& facts) {
  const std::string_view what = check.reason == Reason::keep_torque_of_lower_class
                                    ? "A higher class keeps the torque of the original: thread, seat and part have not "
                                      "become stronger"
                                    : "Keep the torque";
  if (facts.size() < 5) return fmt::format("{}.", what);
  return fmt::format("{}. It clamps {} / {} / {}.", what, facts[2], facts[3], facts[4]);
}

// Facts: the torque told, the clamp load that it would make, the torque for the original's, and that by thread
// friction.
std::string other_torque_text(const std::vector<std::string>& facts) {
  std::string text = fmt::format("At {} it would clamp {} / {} / {}. For the clamp load of the original: {}", facts[0],
                                 facts[1], facts[2], facts[3], facts[4]);
  if (facts.size() > 5) text += fmt::format(" by nut factor, {} by thread friction", facts[5]);
  return text + "; the maker's word for this finish ranks above it.";
}

} // namespace

std::string_view link_words(Link link) {
  switch (link) {
  case Link::identity:
    return "identity and mark";
  case Link::form:
    return "form of thread";
  case Link::diameter:
    return "diameter";
  case Link::pitch:
    return "pitch";
  case Link::hand:
    return "hand";
  case Link::length:
    return "length";
  case Link::proof:
    return "proof load";
  case Link::yield:
    return "yield";
  case Link::tensile:
    return "tensile";
  case Link::nut:
    return "nut";
  case Link::part_thread:
    return "thread in the part";
  case Link::seat:
    return "seat";
  case Link::head:
    return "head";
  case Link::brittleness:
    return "brittleness";
  case Link::temperature:
    return "temperature";
  case Link::friction:
    return "finish and friction";
  case Link::torque:
    return "torque";
  case Link::corrosion:
    return "corrosion";
  case Link::galling:
    return "galling";
  case Link::fatigue:
    return "fatigue";
  case Link::reuse:
    return "new or used";
  case Link::approval:
    return "approved data";
  }
  return "";
}

std::string side_text(const std::vector<finding::Fact>& facts, const quantity::DisplayUnits& units) {
  std::string text;
  for (const finding::Fact& fact : facts)
    text += text.empty() ? fact_text(fact, units) : fmt::format(" ({})", fact_text(fact, units));
  return text;
}

std::string check_text(const Check& check, const quantity::DisplayUnits& units) {
  std::vector<std::string> facts;
  for (const finding::Fact& fact : check.facts)
    facts.push_back(fact_text(fact, units));
  if (check.reason == Reason::keep_torque || check.reason == Reason::keep_torque_of_lower_class)
    return keep_text(check, facts);
  if (check.reason == Reason::other_torque) return other_torque_text(facts);
  facts.resize(5);
  return fmt::format(fmt::runtime(wording_of(check.reason).text), facts[0], facts[1], facts[2], facts[3], facts[4]);
}

std::string_view check_basis(Reason reason) { return wording_of(reason).basis; }

std::string verdict_text(const substitute::Answer& answer) {
  const std::string_view link = answer.governed_by ? link_words(*answer.governed_by) : "";
  switch (answer.verdict) {
  case substitute::Verdict::adequate:
    return "adequate by every link that could be compared";
  case substitute::Verdict::adequate_at_other_torque:
    return "adequate, but not at the torque of the original: its finish differs";
  case substitute::Verdict::not_adequate:
    return fmt::format("not adequate: {}", link);
  case substitute::Verdict::not_known:
    return fmt::format("not known: {}", link);
  }
  return "";
}

} // namespace clampwright::report
