// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/wording.hpp"

#include <array>

#include <fmt/format.h>

namespace clampwright::report {

namespace {

using finding::Code;
using quantity::DisplayUnits;

struct Wording {
  Code code;
  std::string_view text; // {0}, {1}: the facts
  std::string_view basis;
};

constexpr std::array k_wordings{
    Wording{Code::left_hand,
            "Left-hand thread: it tightens anticlockwise and undoes clockwise, looking at the part that is turned.",
            "the designation says LH; ISO 965-1"},
    Wording{Code::locking_compound,
            "Wet locking compound changes the friction, and whether it eases or drags depends on its grade: clean and "
            "degrease, "
            "use one grade only, tighten before it sets, then leave it for its cure time. Not beside lock wire or on a "
            "locking nut.",
            "ISO 10964 and ASTM D5363 test lubricity by grade; TM 10-3930-643-20, para 2-12"},
    Wording{Code::crank_reaction,
            "The torque tries to turn the crank.{0} Hold the part itself or the same shaft end; no impact tool against "
            "a stop.",
            "slider-crank statics without friction; common practice for the holding"},
    Wording{
        Code::holding_unknown,
        "How to hold the shaft is not recorded for this joint. Find the maker's way before a stop or a rope is used.",
        "the workshop file has no entry"},
    Wording{Code::over_proof, "By {2} the clamp load {3} the proof load: likely {0} of it, at the most {1}.",
            "ISO 898-1, SAE J429: proof load"},
    Wording{Code::over_yield, "By {2} tightening {3} yield: likely {0} of it, at the most {1}.",
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
            "The face under the turned part is not known, so the thread-friction model is left out. Give it with "
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
        "shown. Measure it on the free nut and give it with --running-torque.",
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

std::string fact_text(const finding::Fact& fact, const DisplayUnits& units) {
  struct Writer {
    const DisplayUnits& units;
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(double share) const { return quantity::write_share(share); }
    std::string operator()(quantity::Torque torque) const { return quantity::write(torque, units); }
    std::string operator()(quantity::Force force) const { return quantity::write(force, units); }
    std::string operator()(quantity::Length length) const { return quantity::write(length, units); }
    std::string operator()(quantity::Angle angle) const {
      return quantity::write_si(quantity::in_radians(angle), *units.angle);
    }
  };
  return std::visit(Writer{units}, fact);
}

} // namespace

std::string finding_text(const finding::Finding& finding, const DisplayUnits& units) {
  const auto fact = [&](std::size_t i) {
    return i < finding.facts.size() ? fact_text(finding.facts[i], units) : std::string();
  };
  if (finding.code == Code::crank_reaction) {
    const std::string stop =
        finding.facts.empty()
            ? " A piston stop near top dead centre would bear many times the force that it bears lower down."
            : fmt::format(
                  " A piston stop, for example one that bites {} before top dead centre, would bear {}, and more "
                  "without limit nearer to it; undoing may take far more than tightening.",
                  fact(0), fact(1));
    return fmt::format(fmt::runtime(wording_of(finding.code).text), stop);
  }
  if (finding.code == Code::over_proof || finding.code == Code::over_yield) {
    const bool likely = finding.severity == finding::Severity::stop;
    const std::string_view verb = finding.code == Code::over_proof
                                      ? (likely ? "is likely past" : "may pass")
                                      : (likely ? "likely brings the bolt past" : "may bring the bolt past");
    return fmt::format(fmt::runtime(wording_of(finding.code).text), fact(0), fact(1), fact(2), verb);
  }
  return fmt::format(fmt::runtime(wording_of(finding.code).text), fact(0), fact(1));
}

std::string_view finding_basis(Code code) { return wording_of(code).basis; }

std::string_view severity_word(finding::Severity severity) {
  switch (severity) {
  case finding::Severity::stop:
    return "Stop";
  case finding::Severity::mind:
    return "Mind";
  case finding::Severity::note:
    return "Note";
  }
  return "";
}

std::string verdict_text(const tightening::ClampAnswer& answer) {
  using tightening::Governs;
  using tightening::Verdict;
  const std::string_view limit =
      answer.governed_by == Governs::yield ? "yield (by thread friction)" : "proof (by nut factor)";
  const auto& use = answer.governed_by == Governs::yield   ? answer.thread_friction->use_of_yield
                    : answer.governed_by == Governs::proof ? answer.nut_factor->use_of_proof
                                                           : std::optional<quantity::Band<double>>();
  const std::string shares = use ? fmt::format("likely {}, at the most {}", quantity::write_share(use->likely),
                                               quantity::write_share(use->high))
                                 : "";
  switch (answer.verdict) {
  case Verdict::within:
    return fmt::format("within {}: {}", limit, shares);
  case Verdict::near_limit:
    return fmt::format("near {}: {}", limit, shares);
  case Verdict::may_exceed:
    return fmt::format("may exceed {}: {}", limit, shares);
  case Verdict::over_limit:
    return fmt::format("over {}: {}", limit, shares);
  case Verdict::not_known:
    break;
  }
  if (use) return fmt::format("not known: friction was not stated, and {} of {}", shares, limit);
  if (answer.asked.kind != tightening::JointKind::bolt)
    return fmt::format("not known: a {} is not judged by proof or yield",
                       tightening::joint_kind_name(answer.asked.kind));
  if (answer.asked.strength.class_name == "unknown") return "not known: the strength class is not known";
  return fmt::format("not known: class {} has no limit here that the known model can be held to",
                     answer.asked.strength.class_name);
}

std::string_view foot_line() {
  return "The maker's current instruction ranks above this figure. Local rules and licensed practice decide who may do "
         "the work.";
}

} // namespace clampwright::report
