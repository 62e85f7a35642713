// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/chart_table.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include <fmt/format.h>

namespace clampwright::report {

namespace {

using quantity::DisplayUnits;
using quantity::write_rounded;
using quantity::write_share;
using tightening::Chart;
using tightening::ChartRow;
using tightening::SharedFinding;

constexpr const char* k_none = "—";
constexpr const char* k_over = "over";

std::string note_of(std::size_t row, const Chart& chart, const std::vector<Mark>& marks) {
  std::string note;
  if (tightening::is_not_to_be_set(chart.rows[row])) note = k_over;
  for (const Mark& mark : marks)
    if (std::ranges::binary_search(mark.shared->rows, row)) note += (note.empty() ? "" : " ") + mark.letter;
  return note;
}

// One class: what the columns are follows from what is known.
class ClassTable {
 public:
  ClassTable(const Chart& chart, const std::vector<Mark>& marks, const DisplayUnits& units)
      : chart_(chart),
        marks_(marks),
        units_(units),
        friction_(std::ranges::any_of(chart.rows, by_friction)),
        nut_factor_(std::ranges::any_of(chart.rows, by_nut_factor)) {
    for (std::size_t r = 0; r < chart.rows.size(); ++r)
      notes_ = notes_ || !note_of(r, chart, marks).empty();
  }

  [[nodiscard]] Table of(const std::string& class_name) const {
    Table table{columns(), {}, {}, {}};
    for (std::size_t r = 0; r < chart_.rows.size(); ++r)
      if (chart_.rows[r].class_name == class_name) table.rows.push_back(cells(r));
    return table;
  }

 private:
  [[nodiscard]] std::vector<Column> columns() const {
    const std::string torque(units_.torque->symbol);
    const std::string force(units_.force->symbol);
    std::vector<Column> out{{"", "Thread", false}, {"", fmt::format("Set {}", torque), true, true}};
    if (friction_)
      for (const char* heading : {"low μ", "high μ"})
        out.push_back({fmt::format("by friction, {}", torque), heading});
    if (nut_factor_)
      for (const char* heading : {"low K", "likely", "high K"})
        out.push_back({fmt::format("by nut factor, {}", torque), heading});
    for (const char* heading : {"low", "likely", "high"})
      out.push_back({fmt::format("Set clamps, {}", force), heading});
    if (friction_) out.push_back({"", "yield at most"});
    if (notes_) out.push_back({"", "Note", false});
    return out;
  }

  [[nodiscard]] std::vector<std::string> cells(std::size_t r) const {
    const ChartRow& row = chart_.rows[r];
    std::vector<std::string> out{row.thread.designation};
    const auto band = [&](const auto& values, const auto& text, bool middle) {
      out.push_back(values ? text(values->low) : k_none);
      if (middle) out.push_back(values ? text(values->likely) : k_none);
      out.push_back(values ? text(values->high) : k_none);
    };
    const auto torque = [&](quantity::Torque t) {
      return write_rounded(quantity::from_si(quantity::in_newton_metres(t), *units_.torque));
    };
    const auto force = [&](quantity::Force f) {
      return write_rounded(quantity::from_si(quantity::in_newtons(f), *units_.force));
    };
    const tightening::ClampAnswer* clamp = row.answer ? &row.answer->clamp : nullptr;
    using Torques = std::optional<quantity::Band<quantity::Torque>>;
    out.push_back(clamp && !tightening::is_not_to_be_set(row) ? torque(clamp->torque) : k_none);
    if (friction_) band(clamp && clamp->thread_friction ? clamp->thread_friction->torque : Torques(), torque, false);
    if (nut_factor_) band(clamp && clamp->nut_factor ? clamp->nut_factor->torque : Torques(), torque, true);
    band(clamp ? tightening::leading_preload(*clamp) : std::optional<quantity::Band<quantity::Force>>(), force, true);
    if (friction_)
      out.push_back(clamp && clamp->thread_friction && clamp->thread_friction->use_of_yield
                        ? write_share(clamp->thread_friction->use_of_yield->high)
                        : k_none);
    if (notes_) out.push_back(note_of(r, chart_, marks_));
    return out;
  }

  const Chart& chart_;
  const std::vector<Mark>& marks_;
  const DisplayUnits& units_;
  bool friction_;
  bool nut_factor_;
  bool notes_ = false;
};

} // namespace

bool by_friction(const ChartRow& row) { return row.answer && row.answer->clamp.thread_friction; }
bool by_nut_factor(const ChartRow& row) { return row.answer && row.answer->clamp.nut_factor; }

std::vector<Mark> marks_of(const Chart& chart, const std::vector<SharedFinding>& shared) {
  const auto answered = std::ranges::count_if(chart.rows, [](const ChartRow& row) { return row.answer.has_value(); });
  std::vector<Mark> marks;
  for (const SharedFinding& one : shared) {
    const bool everywhere = one.rows.empty() || std::cmp_equal(one.rows.size(), answered);
    if (!everywhere) marks.push_back({std::string(1, static_cast<char>('a' + marks.size())), &one});
  }
  return marks;
}

Table class_table(const Chart& chart, const std::string& class_name, const std::vector<Mark>& marks,
                  const DisplayUnits& units) {
  return ClassTable(chart, marks, units).of(class_name);
}

} // namespace clampwright::report
