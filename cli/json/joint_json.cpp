// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/joint_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/tightening_json.hpp"
#include "cli/json/values_json.hpp"
#include "core/quantity/unit.hpp"
#include "core/thread/designation.hpp"
#include "core/thread/turning.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::cli {

namespace {

Json torque_json(const specdb::JointAnswer& answer) {
  const specdb::FigureRecord& figure = answer.joint.figure;
  const auto newton_metres = [](const std::optional<quantity::Torque>& t) {
    return t ? Json(quantity::in_newton_metres(*t)) : Json(nullptr);
  };
  return {{"printed", figure.printed},
          {"value", number_or_null(figure.value)},
          {"unit", text_or_null(figure.unit)},
          {"tolerance", text_or_null(figure.tolerance)},
          {"angle_deg", number_or_null(figure.angle_deg)},
          {"low_N_m", newton_metres(answer.low)},
          {"nominal_N_m", newton_metres(answer.torque)},
          {"high_N_m", newton_metres(answer.high)},
          {"reading", text_or_null(figure.reading)}};
}

} // namespace

Json joint_json(const specdb::JointAnswer& answer, bool invented) {
  const specdb::JointRecord& joint = answer.joint;
  const specdb::FigureRecord& figure = joint.figure;
  return {{"joint", joint.slug},
          {"machine", joint.machine},
          {"assembly", joint.assembly},
          {"name", joint.name},
          {"invented", invented},
          {"kind", joint.kind},
          {"count", joint.quantity},
          {"thread", thread::write_designation(answer.thread.thread)},
          {"class", joint.strength_class},
          {"seat", text_or_null(joint.seat)},
          {"torque", torque_json(answer)},
          {"turn_to_tighten", thread::turn_name(answer.tighten)},
          {"turn_to_undo", thread::turn_name(answer.undo)},
          {"seen_from", joint.seen_from},
          {"holding", text_or_null(joint.holding)},
          {"surfaces", figure.surfaces},
          {"condition", text_or_null(figure.condition)},
          {"lock", joint.lock},
          {"sequence", text_or_null(figure.sequence)},
          {"recheck", text_or_null(figure.recheck)},
          {"source", source_json(figure.source)},
          {"status", figure.status},
          {"clamp", answer.clamp ? clamp_json(*answer.clamp, answer.thread) : Json(nullptr)},
          {"wrench", nullptr}};
}

Outcome joint_outcome(const specdb::JointAnswer& answer, const Context& context, bool invented) {
  Outcome out;
  out.result = std::make_shared<Json>(joint_json(answer, invented));
  out.findings = answer.findings;
  out.document = specdb::joint_report(answer, context.units, invented);
  out.working = out.document.working;
  out.sources.push_back(answer.joint.figure.source);
  out.sources.insert(out.sources.end(), out.document.sources.begin(), out.document.sources.end());
  return out;
}

} // namespace clampwright::cli
