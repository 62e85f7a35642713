// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/chart_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/tightening_json.hpp"
#include "cli/json/values_json.hpp"

namespace clampwright::cli {

namespace {

Json row_json(const tightening::ChartRow& row) {
  Json out{{"thread", row.thread.designation},
           {"class", row.class_name},
           {"d_mm", quantity::in_millimetres(row.thread.diameter)},
           {"pitch_mm", quantity::in_millimetres(row.thread.pitch)}};
  if (row.answer) {
    out.update(torque_json_without_thread(*row.answer));
    out["no_torque_because"] = nullptr;
    out["findings"] = findings_json(row.answer->clamp.findings);
    return out;
  }
  for (const char* key : {"preload_N", "set_torque_N_m", "torque_N_m", "wrench_accuracy", "kind", "surfaces", "face",
                          "lock", "strength", "nut_factor", "thread_friction"})
    out[key] = nullptr;
  out["verdict"] = tightening::verdict_name(tightening::Verdict::not_known);
  out["governed_by"] = nullptr;
  out["no_torque_because"] = row.none_because;
  out["findings"] = Json::array();
  return out;
}

} // namespace

Json chart_json(const tightening::Chart& chart, const std::string& data_version) {
  const bool of_proof = chart.wanted.aim == tightening::Aim::proof_share;
  Json rows = Json::array();
  for (const auto& row : chart.rows)
    rows.push_back(row_json(row));
  Json left_out = Json::array();
  for (const auto& gap : chart.gaps)
    left_out.push_back({{"class", gap.class_name}, {"threads", gap.threads}});
  return {{"proof_fraction", of_proof ? Json(chart.wanted.share) : Json(nullptr)},
          {"yield_fraction", of_proof ? Json(nullptr) : Json(chart.wanted.share)},
          {"surfaces", chart.common.surfaces.empty() ? Json(nullptr) : Json(chart.common.surfaces)},
          {"classes", chart.classes},
          {"rows", std::move(rows)},
          {"left_out", std::move(left_out)},
          {"data_version", data_version}};
}

} // namespace clampwright::cli
