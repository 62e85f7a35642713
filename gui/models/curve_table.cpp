// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/models/curve_table.hpp"

#include "core/quantity/write.hpp"
#include "gui/look/utf8.hpp"

namespace clampwright::desk {

namespace {

constexpr int k_of_a_band = 3; // low, likely, high

} // namespace

void CurveTable::show(PlotCurve curve) {
  beginResetModel();
  curve_ = std::move(curve);
  endResetModel();
}

int CurveTable::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || curve_.bands.empty() ? 0 : static_cast<int>(curve_.bands.front().points.size());
}

int CurveTable::columnCount(const QModelIndex& parent) const {
  return parent.isValid() || curve_.bands.empty() ? 0 : 1 + k_of_a_band * static_cast<int>(curve_.bands.size());
}

QVariant CurveTable::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (role == Qt::TextAlignmentRole) return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  const auto row = static_cast<std::size_t>(index.row());
  if (index.column() == 0) return from_utf8(quantity::write_rounded(curve_.bands.front().points[row].x));
  const auto band = static_cast<std::size_t>((index.column() - 1) / k_of_a_band);
  const auto& points = curve_.bands[band].points;
  if (row >= points.size()) return {};
  const int part = (index.column() - 1) % k_of_a_band;
  return from_utf8(quantity::write_rounded(part == 0   ? points[row].low
                                           : part == 1 ? points[row].likely
                                                       : points[row].high));
}

QVariant CurveTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole || orientation == Qt::Vertical || section >= columnCount()) return {};
  if (section == 0) return curve_.x_title;
  const auto band = static_cast<std::size_t>((section - 1) / k_of_a_band);
  const int part = (section - 1) % k_of_a_band;
  const QString what = part == 0 ? tr("least") : part == 1 ? tr("likely") : tr("most");
  return QStringLiteral("%1\n%2").arg(curve_.bands[band].name, what);
}

} // namespace clampwright::desk
