// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/crank_words.hpp"

#include <fmt/format.h>

namespace clampwright::report {

namespace {

using crank::Way;
using finding::Code;
using finding::Finding;
using finding::Severity;
using quantity::DisplayUnits;

// A length or angle that was worked out: nobody measures the rest of its digits.
std::string length(const finding::Fact& fact, const DisplayUnits& units) {
  return quantity::write_si_rounded(quantity::in_metres(std::get<quantity::Length>(fact)), *units.length);
}

// Without facts in general, with angle and force for an example, with the way below the top for a stop that is known.
std::string crank_reaction(const Finding& finding, const std::vector<std::string>& facts, const DisplayUnits& units) {
  constexpr std::string_view k_text = "The torque tries to turn the crank.{} Hold the part itself or the same shaft "
                                      "end; no impact tool against a stop.";
  if (facts.empty())
    return fmt::format(k_text,
                       " A piston stop near top dead centre would bear many times the force that it bears lower down.");
  if (facts.size() == 2)
    return fmt::format(
        k_text,
        fmt::format(" A piston stop, for example one that meets the rising piston {} before top dead centre, would "
                    "bear {}, and more without limit nearer to it; undoing may take far more than tightening.",
                    facts[0], facts[1]));
  return fmt::format(
      k_text, fmt::format(" A piston stop that meets the rising piston {} before top dead centre, {} below its top "
                          "position, bears {}; undoing may take far more than tightening.",
                          facts[0], length(finding.facts[2], units), facts[1]));
}

// Facts: how far down, force, least force, its angle, "top" or "bottom".
std::string near_dead_centre(const Finding& finding, const std::vector<std::string>& facts, const DisplayUnits& units) {
  const double times = std::get<quantity::Force>(finding.facts[1]) / std::get<quantity::Force>(finding.facts[2]);
  std::string text = fmt::format(
      "At {} below its top position the piston is near {} dead centre: crown and stop bear {}, {} times "
      "the {} that the same torque makes at {}. Towards dead centre the force has no limit.",
      length(finding.facts[0], units), facts[4], facts[1], quantity::write_rounded(times, 2), facts[2], facts[3]);
  if (finding.severity == Severity::stop)
    text += fmt::format(" Half a millimetre decides whether this stop holds at all: use a {} one.",
                        facts[4] == "top" ? "longer" : "shorter");
  return text;
}

} // namespace

WayWords way_words(Way way) {
  switch (way) {
  case Way::same_end:
    return {"the part itself, or the same end of the shaft", "wrench, part, holder",
            "nothing passes through the crank; use flats, holes or the holder that the maker names"};
  case Way::strap:
    return {"strap or pin holder round the part", "wrench, part, its rim or holes, holder",
            "nothing passes through the crank, but rim, fins or holes bear the whole force; round a part on the other "
            "end it counts as far end"};
  case Way::gear:
    return {"gear of the crank locked", "wrench, shaft, one pair of teeth, case",
            "one pair of teeth and its shafts bear it all, at one spot"};
  case Way::stop:
    return {"stop under the piston", "wrench, shaft, web, crank pin, rod, crown, stop, plug thread",
            "half of the crank, rod, crown and plug thread bear it, and near a dead centre the force has no limit"};
  case Way::far_end:
    return {"far end of the crank", "wrench, shaft, web, press fit, crank pin, press fit, web, shaft",
            "all of it passes the press fits of a pressed-up crank: once the pin turns in a web, the crank is out of "
            "true"};
  }
  return {};
}

std::optional<std::string> crank_finding_text(const Finding& finding, const std::vector<std::string>& facts,
                                              const DisplayUnits& units) {
  switch (finding.code) {
  case Code::crank_reaction:
    return crank_reaction(finding, facts, units);
  case Code::near_dead_centre:
    return near_dead_centre(finding, facts, units);
  case Code::stop_over_limit:
    return fmt::format(
        "{}{} is more than this stop may take: {}, by the stated limit of the {}. Do not pull it against "
        "this stop; hold the part itself.",
        facts[0], facts[3].empty() ? "" : " for " + facts[3], facts[1], facts[2]);
  case Code::plug_strips:
    return fmt::format("At {} the stop presses with {}, and the thread in the plug hole strips at {}.", facts[0],
                       facts[1], facts[2]);
  case Code::port_open:
    return fmt::format("The crown stands {} below its top position, and the highest port opens at {}: a rope or a soft "
                       "stop may get into the port. Meet the piston higher up.",
                       length(finding.facts[0], units), length(finding.facts[1], units));
  case Code::stop_limit_not_stated:
    return "Nobody said what crown, rod, plug thread or stop may bear, so the most that may be pulled is not known. "
           "None "
           "is assumed: what a seat under a bolt bears says nothing of a thin crown. State a limit with --tip-limit, "
           "--plug-margin, --rod-limit or --stop-limit.";
  case Code::press_fit_slips:
    return fmt::format(
        "With the far end held, the crank pin {} in its web by {}: it slips at {} (low), {} (likely), {} "
        "(high). Hold the part itself or the same end.",
        finding.severity == Severity::stop ? "likely turns" : "may turn", facts[0], facts[1], facts[2], facts[3]);
  case Code::look_at_thread:
    return "This is what the drive calls for, not what is fitted. Look at the thread itself before you turn it: held "
           "upright, a right-hand thread rises to the right on the side that you see, a left-hand one to the left. "
           "Where it cannot be seen, ask the maker.";
  default:
    return std::nullopt;
  }
}

std::string_view crank_finding_basis(Code code) {
  switch (code) {
  case Code::crank_reaction:
    return "slider-crank statics without friction; common practice for the holding";
  case Code::near_dead_centre:
  case Code::stop_over_limit:
    return "slider-crank statics without offset and friction; limits as stated";
  case Code::plug_strips:
    return "FED-STD-H28/2 areas at least material, all of the length given bearing; shear strength of the head";
  case Code::port_open:
    return "as given: the crown's way down until the highest port opens";
  case Code::stop_limit_not_stated:
    return "no published limit for the contact of a piston stop was found";
  case Code::press_fit_slips:
    return "interference fit, elementary (from memory), with the stated friction and pressure";
  case Code::look_at_thread:
    return "common practice; the drive gives the expected hand only";
  default:
    return "";
  }
}

} // namespace clampwright::report
