// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/angle_turn.hpp"

#include <algorithm>

#include "core/tightening/clamp.hpp"
#include "core/tightening/clamp_findings.hpp"

namespace clampwright::joint {

namespace {

using finding::Code;
using finding::Severity;
using quantity::Band;
using quantity::Force;
using quantity::in_newtons;
using tightening::Governs;
using tightening::Verdict;

Band<Force> sum(const Band<Force>& one, const Band<Force>& other) {
  return {one.low + other.low, one.likely + other.likely, one.high + other.high};
}

bool is_judged(const AngleAnswer& out) { return out.snug.asked.kind == tightening::JointKind::bolt && out.preload; }

void add_uses(AngleAnswer& out) {
  if (!is_judged(out)) return;
  const tightening::Case& asked = out.snug.asked;
  if (asked.strength.proof_load)
    out.use_of_proof =
        quantity::map(*out.preload, [&](Force load) -> double { return load / *asked.strength.proof_load; });
  const auto& part = out.snug.thread_friction;
  if (!part || !part->use_of_yield) return;
  // The most load goes with the least friction, as it does while snugging.
  const double low = tightening::use_of_yield_at(asked, out.preload->low, part->mu_thread.high);
  const double likely = tightening::use_of_yield_at(asked, out.preload->likely, part->mu_thread.likely);
  const double high = tightening::use_of_yield_at(asked, out.preload->high, part->mu_thread.low);
  out.use_of_yield = Band<double>{std::min({low, likely, high}), likely, std::max({low, likely, high})};
}

void judge(AngleAnswer& out) {
  const auto& use = out.use_of_yield ? out.use_of_yield : out.use_of_proof;
  if (!use) return;
  out.governed_by = out.use_of_yield ? Governs::yield : Governs::proof;
  out.beyond_elastic = use->high > 1.0;
  if (out.beyond_elastic) return;
  out.verdict = use->likely > tightening::k_near_limit ? Verdict::near_limit : Verdict::within;
}

// What the snug torque says of itself holds; that of the angle takes the place of its general sentence.
void add_findings(AngleAnswer& out) {
  out.findings = out.snug.findings;
  std::erase_if(out.findings, [](const finding::Finding& finding) { return finding.code == Code::angle_final; });
  out.findings.push_back({Code::angle_final, Severity::mind, {out.added.likely}});
  const auto& use = out.use_of_yield ? out.use_of_yield : out.use_of_proof;
  if (out.beyond_elastic)
    out.findings.push_back({Code::beyond_elastic,
                            Severity::mind,
                            {use->likely, use->high, std::string(out.use_of_yield ? "yield" : "the proof load")}});
  else if (out.verdict == Verdict::near_limit)
    out.findings.push_back({Code::near_limit, Severity::mind, {use->likely}});
  finding::put_in_order(out.findings);
}

void add_working(AngleAnswer& out) {
  out.working = out.snug.working;
  const Working stack = stack_working(out.stack, out.resilience);
  out.working.insert(out.working.end(), stack.begin(), stack.end());
  const std::string source = "a turn of the nut is a shortening by its pitch";
  out.working.push_back({"θ", "angle", "as given", quantity::in_degrees(out.angle), "°", "as given"});
  out.working.push_back({"F_a", "what the angle adds, likely", "θ/360·P/δ", in_newtons(out.added.likely), "N", source});
  out.working.push_back({"F_a low", "at the least", "θ/360·P/δ high", in_newtons(out.added.low), "N", source});
  out.working.push_back({"F_a high", "at the most", "θ/360·P/δ low", in_newtons(out.added.high), "N", source});
  if (out.preload && out.snug.thread_friction)
    out.working.push_back({"F_M", "clamp load, likely", "F + F_a", in_newtons(out.preload->likely), "N", source});
  out.working.push_back({"f_Z", "what surfaces settle", "of the table", quantity::in_millimetres(out.settling), "mm",
                         "VDI 2230-1, table 5 (from memory)"});
  out.working.push_back({"F_Z", "what that takes away, likely", "f_Z/δ", in_newtons(out.settling_loss.likely), "N",
                         "VDI 2230-1, step R4 (from memory)"});
}

} // namespace

AngleAnswer add_angle(const tightening::ClampAnswer& snug, quantity::Angle angle, const Stack& stack) {
  AngleAnswer out;
  out.snug = snug;
  out.stack = stack;
  out.angle = angle;
  out.resilience = resilience_of(stack);
  const auto both = out.resilience.both();
  const auto over = [&](auto function) {
    return Band<Force>{function(both.high), function(both.likely), function(both.low)};
  };
  out.added = over([&](quantity::Resilience whole) { return load_of_turn(angle, stack.thread, whole); });
  out.settling = usual_settling(stack);
  out.settling_loss = over([&](quantity::Resilience whole) { return settling_loss(out.settling, whole); });
  out.snug_load = tightening::leading_preload(snug);
  if (out.snug_load) out.preload = sum(*out.snug_load, out.added);
  add_uses(out);
  judge(out);
  add_findings(out);
  add_working(out);
  return out;
}

} // namespace clampwright::joint
