// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/values_json.hpp"

#include <nlohmann/json.hpp>

#include "core/quantity/unit.hpp"
#include "core/report/wording.hpp"
#include "core/thread/designation.hpp"
#include "core/thread/geometry.hpp"

namespace clampwright::cli {

using quantity::in_millimetres;
using quantity::in_square_millimetres;

namespace {

// The spelling of files and JSON for a symbol that people read: "N.m" for "N·m".
std::string unit_name(const std::string& symbol) {
  for (const quantity::Unit& unit : quantity::all_units())
    if (unit.symbol == symbol) return std::string(unit.name);
  if (symbol == "mm²") return "mm2";
  if (symbol == "mm³") return "mm3";
  return symbol;
}

} // namespace

Json number_or_null(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }
Json text_or_null(const std::optional<std::string>& value) { return value ? Json(*value) : Json(nullptr); }
void put_text(Json& object, const char* key, const std::optional<std::string>& value) {
  if (value) object[key] = *value;
}

Json band_json(const quantity::Band<double>& band) {
  return {{"low", band.low}, {"likely", band.likely}, {"high", band.high}};
}

Json source_json(const Source& source) {
  const auto known_or_null = [](const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); };
  return {{"title", source.title},
          {"edition", known_or_null(source.edition)},
          {"where", known_or_null(source.where)},
          {"known", known_name(source.known)}};
}

Json sources_json(const std::vector<Source>& sources) {
  Json out = Json::array();
  for (const Source& source : sources)
    out.push_back(source_json(source));
  return out;
}

Json working_json(const Working& working) {
  Json out = Json::array();
  for (const Step& step : working)
    out.push_back({{"symbol", step.symbol},
                   {"meaning", step.meaning},
                   {"formula", step.formula},
                   {"value", step.value},
                   {"unit", unit_name(step.unit)},
                   {"source", step.source}});
  return out;
}

Json findings_json(const finding::Findings& findings) {
  Json out = Json::array();
  for (const auto& finding : findings)
    out.push_back({{"code", finding::code_name(finding.code)},
                   {"severity", finding::severity_name(finding.severity)},
                   {"text", report::finding_text(finding, {})},
                   {"basis", report::finding_basis(finding.code)}});
  return out;
}

Json thread_json(const thread::Thread& thread, std::optional<quantity::Area> stress_area_table,
                 const std::optional<thread::Limits>& limits) {
  const thread::Geometry geometry = thread::geometry_of(thread);
  const auto area = [](const std::optional<quantity::Area>& a) {
    return a ? Json(in_square_millimetres(*a)) : Json(nullptr);
  };
  Json out;
  out["designation"] = thread::write_designation(thread);
  out["form"] = thread::form_name(thread.form);
  out["d_mm"] = in_millimetres(thread.diameter);
  out["pitch_mm"] = in_millimetres(thread.pitch);
  out["pitch_diameter_mm"] = in_millimetres(geometry.pitch_diameter);
  out["minor_diameter_mm"] = in_millimetres(geometry.minor_diameter);
  out["root_diameter_mm"] = in_millimetres(geometry.root_diameter);
  out["stress_area_mm2"] = area(geometry.stress_area);
  out["stress_area_table_mm2"] = area(stress_area_table);
  out["flank_angle_deg"] = quantity::in_degrees(geometry.flank_angle);
  out["hand"] = thread::hand_name(thread.hand);
  out["series"] = thread.listed ? Json(thread.series) : Json(nullptr);
  out["tpi"] = number_or_null(thread.tpi);
  if (!limits) {
    out["limits"] = nullptr;
    return out;
  }
  out["limits"] = {{"external",
                    {{"class", limits->external_class},
                     {"d_max_mm", in_millimetres(limits->d_max)},
                     {"d_min_mm", in_millimetres(limits->d_min)},
                     {"pitch_diameter_max_mm", in_millimetres(limits->d2_max)},
                     {"pitch_diameter_min_mm", in_millimetres(limits->d2_min)},
                     {"root_diameter_max_mm", in_millimetres(limits->d3_max)}}},
                   {"internal",
                    {{"class", limits->internal_class},
                     {"d_min_mm", in_millimetres(limits->D_min)},
                     {"pitch_diameter_max_mm", in_millimetres(limits->D2_max)},
                     {"pitch_diameter_min_mm", in_millimetres(limits->D2_min)},
                     {"minor_diameter_max_mm", in_millimetres(limits->D1_max)},
                     {"minor_diameter_min_mm", in_millimetres(limits->D1_min)}}}};
  return out;
}

} // namespace clampwright::cli
