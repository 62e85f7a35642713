// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/tightening_report.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/report/wording.hpp"
#include "core/thread/designation.hpp"
#include "core/thread/turning.hpp"

namespace clampwright::report {

namespace {

using quantity::DisplayUnits;
using quantity::write;
using quantity::write_number;
using tightening::Case;
using tightening::ClampAnswer;

template<class Coefficient>
std::string coefficients(const quantity::Band<Coefficient>& band) {
  const auto text = [](Coefficient c) { return write_number(c.value(), 3); };
  if (!(band.low < band.high)) return text(band.likely);
  return fmt::format("{} / {} / {}", text(band.low), text(band.likely), text(band.high));
}

std::string bolt_words(const Case& asked) {
  std::string words = thread::write_designation(asked.thread);
  if (asked.kind != tightening::JointKind::bolt) words += fmt::format(" {}", tightening::joint_kind_name(asked.kind));
  words += asked.strength.class_name == "unknown" ? ", class not known"
                                                  : fmt::format(", class {}", asked.strength.class_name);
  return words;
}

std::vector<Row> input_rows(const ClampAnswer& answer, const DisplayUnits& units) {
  const Case& asked = answer.asked;
  std::vector<Row> rows;
  rows.push_back({"Fastener", bolt_words(asked)});
  if (asked.thread.hand == thread::Hand::left)
    rows.push_back({"Tighten", "anticlockwise, looking at the part that is turned (left-hand)"});
  rows.push_back({"Surfaces", surfaces_words(asked)});
  if (asked.face && asked.mu_thread)
    rows.push_back({"Face", fmt::format("{} outside, {} inside ({})", write(asked.face->outer, units, 4),
                                        write(asked.face->inner, units, 4), asked.face->basis)});
  for (const friction::Lock& lock : asked.locks)
    rows.push_back({"Lock", fmt::format("{}: {}", lock.name, lock.description)});
  if (asked.running_torque) rows.push_back({"Running torque", write(*asked.running_torque, units)});
  if (asked.shank) rows.push_back({"Shank", fmt::format("waisted to {}", write(*asked.shank, units))});
  if (asked.bore) rows.push_back({"Bore", write(*asked.bore, units)});
  rows.push_back(
      {"Wrench", fmt::format("± {} ({})", quantity::write_share(answer.accuracy.share), answer.accuracy.basis)});
  return rows;
}

void add_unique(std::vector<Source>& into, const std::vector<Source>& more) {
  for (const Source& source : more)
    if (std::ranges::find(into, source) == into.end()) into.push_back(source);
}

// A torque is shown with enough digits to set a wrench by, not more.
std::string torque_twice(quantity::Torque torque, const DisplayUnits& units) {
  const double si = quantity::in_newton_metres(torque);
  const quantity::Unit& metric = *DisplayUnits{}.torque;
  const quantity::Unit& other = units.torque == &metric ? *DisplayUnits::imperial().torque : metric;
  return fmt::format("{} = {}", quantity::write_si_rounded(si, *units.torque), quantity::write_si_rounded(si, other));
}

} // namespace

std::string surfaces_words(const Case& asked) {
  std::vector<std::string> parts;
  if (!asked.surfaces.empty()) parts.push_back(asked.surfaces);
  if (asked.mu_thread && asked.mu_head) {
    const std::string in_thread = coefficients(*asked.mu_thread);
    const std::string in_head = coefficients(*asked.mu_head);
    parts.push_back(in_thread == in_head ? fmt::format("μ {}", in_thread)
                                         : fmt::format("μ thread {}, μ head {}", in_thread, in_head));
  }
  if (asked.nut_factor) parts.push_back(fmt::format("K {}", coefficients(*asked.nut_factor)));
  std::string words;
  for (const std::string& part : parts)
    words += (words.empty() ? "" : "; ") + part;
  return words;
}

std::vector<Remark> remarks_of(const finding::Findings& findings, const DisplayUnits& units) {
  std::vector<Remark> remarks;
  for (const auto& finding : findings)
    if (finding.code != finding::Code::maker_first)
      remarks.push_back(
          {finding.severity, std::string(finding::code_name(finding.code)), finding_text(finding, units)});
  return remarks;
}

std::vector<Source> sources_of(const ClampAnswer& answer) {
  std::vector<Source> sources;
  add_unique(sources, answer.asked.strength.sources);
  if (answer.asked.face && answer.thread_friction) add_unique(sources, answer.asked.face->sources);
  add_unique(sources, answer.asked.friction_sources);
  return sources;
}

Section clamp_section(const ClampAnswer& answer, const DisplayUnits& units) {
  Section section{"Clamp load (low / likely / high)", {}};
  if (const auto& part = answer.thread_friction) {
    section.rows.push_back({"by thread friction", write(part->preload, units)});
    if (part->use_of_proof)
      section.rows.push_back({"  of the proof load", quantity::write_shares(*part->use_of_proof)});
    if (part->use_of_yield) section.rows.push_back({"  of yield", quantity::write_shares(*part->use_of_yield)});
  } else {
    section.rows.push_back({"by thread friction", answer.asked.mu_thread ? "not known: no face"
                                                                         : "not known: no friction coefficient given"});
  }
  if (const auto& part = answer.nut_factor) {
    section.rows.push_back({"by nut factor", write(part->preload, units)});
    if (part->use_of_proof)
      section.rows.push_back({"  of the proof load", quantity::write_shares(*part->use_of_proof)});
  } else {
    section.rows.push_back({"by nut factor", "not known: no nut factor given"});
  }
  if (answer.thread_friction && answer.thread_friction->mu_at_yield && answer.thread_friction->use_of_yield) {
    const std::string mu = write_number(*answer.thread_friction->mu_at_yield, 2);
    section.rows.push_back({"Yield", answer.thread_friction->use_of_yield->likely > 1.0
                                         ? fmt::format("passed already, unless friction is above {}", mu)
                                         : fmt::format("reached if friction were as low as {}", mu)});
  }
  if (answer.thread_friction) {
    const auto& share = answer.thread_friction->share;
    section.rows.push_back(
        {"Torque goes",
         fmt::format("{} lifts, {} rubs in the thread, {} under the turned part", quantity::write_share(share.lift),
                     quantity::write_share(share.thread), quantity::write_share(share.head))});
  }
  section.rows.push_back({"Verdict", verdict_text(answer)});
  return section;
}

Document clamp_report(const ClampAnswer& answer, const DisplayUnits& units) {
  Document document;
  document.title = fmt::format("{} at {}", bolt_words(answer.asked), torque_twice(answer.torque, units));
  document.sections.push_back({"", input_rows(answer, units)});
  document.sections.push_back(clamp_section(answer, units));
  document.remarks = remarks_of(answer.findings, units);
  document.working = answer.working;
  document.sources = sources_of(answer);
  document.has_foot = true;
  return document;
}

Document torque_report(const tightening::TorqueAnswer& answer, const DisplayUnits& units) {
  Document document = clamp_report(answer.clamp, units);
  const std::string load = write(answer.preload, units);
  const std::string purpose =
      answer.wanted.aim == tightening::Aim::proof_share
          ? fmt::format("{} of proof, {}", quantity::write_share(answer.wanted.share), load)
      : answer.wanted.aim == tightening::Aim::yield_share
          ? fmt::format("{} of yield at the lowest friction, {}", quantity::write_share(answer.wanted.share), load)
          : load;
  const std::string torque = torque_twice(answer.clamp.torque, units);
  document.title = answer.clamp.verdict == tightening::Verdict::over_limit
                       ? fmt::format("{} for {}: DO NOT SET {}: {}", bolt_words(answer.clamp.asked), purpose, torque,
                                     verdict_text(answer.clamp))
                       : fmt::format("{} for {}: set {}", bolt_words(answer.clamp.asked), purpose, torque);
  Section wanted{"Torque for that load (low / likely / high friction)", {}};
  if (answer.clamp.thread_friction && answer.clamp.thread_friction->torque)
    wanted.rows.push_back({"by thread friction", write(*answer.clamp.thread_friction->torque, units)});
  if (answer.clamp.nut_factor && answer.clamp.nut_factor->torque)
    wanted.rows.push_back({"by nut factor", write(*answer.clamp.nut_factor->torque, units)});
  document.sections.insert(document.sections.begin() + 1, std::move(wanted));
  document.sections.back().heading = "Clamp load at the torque to set (low / likely / high)";
  return document;
}

} // namespace clampwright::report
