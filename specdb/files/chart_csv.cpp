// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/files/chart_csv.hpp"

#include <fmt/format.h>

#include "core/report/tightening_report.hpp"
#include "core/report/wording.hpp"

namespace clampwright::specdb {

namespace {

using quantity::Band;
using tightening::ChartRow;
using tightening::ClampAnswer;

// The cells of one row with the names of their columns; every row names the same ones.
class Cells {
 public:
  void text(const char* name, std::string value) {
    table_.header.emplace_back(name);
    fields_.push_back(std::move(value));
  }
  void number(const char* name, const std::optional<double>& value) {
    text(name, value ? fmt::format("{}", *value) : std::string());
  }
  // "preload_at_set" and "_N" become preload_at_set_low_N, …
  template<class T, class In>
  void band(const char* name, const char* unit, const std::optional<Band<T>>& values, In in) {
    const auto put = [&](const char* end, T Band<T>::*member) {
      text(fmt::format("{}_{}{}", name, end, unit).c_str(),
           values ? fmt::format("{}", in((*values).*member)) : std::string());
    };
    put("low", &Band<T>::low);
    put("likely", &Band<T>::likely);
    put("high", &Band<T>::high);
  }
  [[nodiscard]] std::vector<std::string> take_fields() { return std::move(fields_); }
  [[nodiscard]] std::vector<std::string> take_header() { return std::move(table_.header); }

 private:
  CsvTable table_;
  std::vector<std::string> fields_;
};

constexpr auto k_share = [](double share) { return share; };
constexpr auto k_value = [](auto coefficient) { return coefficient.value(); };

// A member of a part that may not be there; the member is a band that may not be there either.
template<class Part, class T>
std::optional<Band<T>> of(const std::optional<Part>* part, std::optional<Band<T>> Part::*member) {
  if (part == nullptr || !*part) return std::nullopt;
  return (**part).*member;
}

std::string sources_text(const ChartRow& row) {
  std::string text;
  if (row.answer)
    for (const Source& source : report::sources_of(row.answer->clamp))
      text += (text.empty() ? "" : "; ") + report::full_source(source);
  return text;
}

std::string finding_codes(const ChartRow& row) {
  std::string text(finding::code_name(finding::Code::size_chart));
  if (row.answer)
    for (const auto& finding : row.answer->clamp.findings)
      text += fmt::format(" {}", finding::code_name(finding.code));
  return text;
}

std::string caution(const ChartRow& row) {
  return tightening::is_not_to_be_set(row)
             ? fmt::format("DO NOT SET: {}. {}", report::verdict_text(row.answer->clamp), report::chart_caution())
             : std::string(report::chart_caution());
}

void put_figures(Cells& cells, const ChartRow& row) {
  const ClampAnswer* clamp = row.answer ? &row.answer->clamp : nullptr;
  const auto* friction = clamp ? &clamp->thread_friction : nullptr;
  const auto* nut_factor = clamp ? &clamp->nut_factor : nullptr;
  const auto& torque = quantity::in_newton_metres;
  const auto& force = quantity::in_newtons;
  cells.number("set_torque_N_m", clamp ? std::optional(torque(clamp->torque)) : std::nullopt);
  cells.number("preload_N", clamp ? std::optional(force(row.answer->preload)) : std::nullopt);
  cells.band("torque_by_friction", "_N_m", of(friction, &tightening::ThreadFrictionPart::torque), torque);
  cells.band("torque_by_nut_factor", "_N_m", of(nut_factor, &tightening::NutFactorPart::torque), torque);
  cells.band("preload_at_set", "_N",
             clamp ? tightening::leading_preload(*clamp) : std::optional<Band<quantity::Force>>(), force);
  cells.band("use_of_yield", "", of(friction, &tightening::ThreadFrictionPart::use_of_yield), k_share);
  cells.text("verdict", clamp ? std::string(tightening::verdict_name(clamp->verdict)) : "");
  cells.text("governed_by", clamp ? std::string(tightening::governs_name(clamp->governed_by)) : "");
  cells.text("no_torque_because", row.none_because);
}

void put_basis(Cells& cells, const tightening::Chart& chart, const ChartRow& row, const report::Made& made) {
  const ClampAnswer* clamp = row.answer ? &row.answer->clamp : nullptr;
  const tightening::Case& asked = clamp ? clamp->asked : chart.common;
  const auto face = clamp ? asked.face : std::optional<tightening::Face>();
  const auto mm = [](quantity::Length length) { return quantity::in_millimetres(length); };
  std::string basis = report::chart_purpose(chart.wanted);
  if (clamp)
    basis += clamp->thread_friction ? "; set by thread friction T = F*(d2/2*tan(phi + rho') + mu*D_m/2)"
                                    : "; set by nut factor T = K*F*d";
  cells.text("basis", std::move(basis));
  cells.number("proof_load_N", clamp && asked.strength.proof_load
                                   ? std::optional(quantity::in_newtons(*asked.strength.proof_load))
                                   : std::nullopt);
  cells.text("proof_load_basis", clamp && asked.strength.proof_load_basis
                                     ? std::string(strength::load_basis_name(*asked.strength.proof_load_basis))
                                     : "");
  cells.text("surfaces", asked.surfaces);
  cells.band("mu_thread", "", asked.mu_thread, k_value);
  cells.band("mu_head", "", asked.mu_head, k_value);
  cells.band("k", "", asked.nut_factor, k_value);
  cells.number("face_outer_mm", face ? std::optional(mm(face->outer)) : std::nullopt);
  cells.number("face_inner_mm", face ? std::optional(mm(face->inner)) : std::nullopt);
  cells.text("face_basis", face ? face->basis : "");
  cells.number("wrench_accuracy", clamp ? std::optional(clamp->accuracy.share) : std::nullopt);
  cells.text("wrench_basis", clamp ? clamp->accuracy.basis : "");
  cells.text("findings", finding_codes(row));
  cells.text("caution", caution(row));
  cells.text("sources", sources_text(row));
  cells.text("program", made.program);
  cells.text("data_version", made.data_version);
}

} // namespace

CsvTable chart_table(const tightening::Chart& chart, const report::Made& made) {
  CsvTable table;
  for (const ChartRow& row : chart.rows) {
    Cells cells;
    cells.text("thread", row.thread.designation);
    cells.text("class", row.class_name);
    put_figures(cells, row);
    put_basis(cells, chart, row, made);
    table.rows.push_back({table.rows.size() + 2, cells.take_fields()});
    table.header = cells.take_header();
  }
  return table;
}

} // namespace clampwright::specdb
