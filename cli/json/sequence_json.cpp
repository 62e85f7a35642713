// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/sequence_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "core/report/sequence_report.hpp"

namespace clampwright::cli {

Json sequence_json(const specdb::SequenceReply& reply) {
  const tightening::Sequence& sequence = reply.sequence;
  Json in_newton_metres = nullptr;
  if (sequence.torque && !sequence.undo) {
    in_newton_metres = Json::array();
    for (const double pass : sequence.passes)
      in_newton_metres.push_back(pass * quantity::in_newton_metres(*sequence.torque));
  }
  Json published = Json::array();
  for (const tightening::PassRule& rule : tightening::published_passes())
    published.push_back({{"rule", rule.words}, {"passes", rule.passes}, {"source", source_json(rule.source)}});
  return {{"pattern", tightening::pattern_name(sequence.pattern)},
          {"bolts", sequence.bolts},
          {"undo", sequence.undo},
          {"order", sequence.order},
          {"undo_order", sequence.undo ? sequence.order : tightening::undoing_order(sequence.order)},
          {"positions", report::positions_words(sequence.pattern)},
          {"seen_from", reply.seen_from},
          {"passes", sequence.undo ? Json(nullptr) : Json(sequence.passes)},
          {"passes_because", sequence.undo ? Json(nullptr) : Json(sequence.passes_because)},
          {"torque_N_m",
           sequence.torque && !sequence.undo ? Json(quantity::in_newton_metres(*sequence.torque)) : Json(nullptr)},
          {"passes_N_m", std::move(in_newton_metres)},
          {"wrench_marks", sequence.marks.empty() ? Json(nullptr) : Json(sequence.marks)},
          {"wrench_unit", sequence.unit == nullptr ? Json(nullptr) : Json(sequence.unit->name)},
          {"last_rounds", sequence.undo ? Json(nullptr) : Json(report::last_round_words(sequence.pattern))},
          {"then_angle_deg", sequence.angle ? Json(quantity::in_degrees(*sequence.angle)) : Json(nullptr)},
          {"joint", reply.heading.empty() ? Json(nullptr) : Json(reply.heading)},
          {"page_says", reply.page_words.empty() ? Json(nullptr) : Json(reply.page_words)},
          {"published", std::move(published)}};
}

} // namespace clampwright::cli
