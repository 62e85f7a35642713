// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/side_labels.hpp"

#include <algorithm>

#include <QPainter>

#include "gui/drawings/strokes.hpp"

namespace clampwright::desk {

namespace {

constexpr int k_strong = 16;
constexpr int k_plain = 13;
constexpr double k_lead = 16; // the level end of a leading line
constexpr double k_between = 6;

double height_of(const SideLabel& label) { return (label.strong ? k_strong : k_plain) + k_between; }

// As near to its part as the others leave room: down from the top, then up from the bottom.
std::vector<double> places(const std::vector<SideLabel>& labels, const LabelColumn& column) {
  std::vector<double> middles;
  double least = column.top;
  for (const SideLabel& label : labels) {
    const double half = height_of(label) / 2;
    middles.push_back(std::max(label.part.y(), least + half));
    least = middles.back() + half;
  }
  double most = column.bottom;
  for (std::size_t i = labels.size(); i-- > 0;) {
    const double half = height_of(labels[i]) / 2;
    middles[i] = std::min(middles[i], most - half);
    most = middles[i] - half;
  }
  return middles;
}

} // namespace

void paint_side_labels(QPainter& painter, const Inks& inks, std::vector<SideLabel> labels, const LabelColumn& column) {
  std::ranges::stable_sort(labels, {}, [](const SideLabel& label) { return label.part.y(); });
  const std::vector<double> middles = places(labels, column);
  const QFont own = painter.font();
  for (std::size_t i = 0; i < labels.size(); ++i) {
    const SideLabel& label = labels[i];
    painter.setPen(stroke(inks.quiet.ink, k_thin));
    const QPointF end(column.left - 4, middles[i]);
    painter.drawLine(label.part, end - QPointF(k_lead, 0));
    painter.drawLine(end - QPointF(k_lead, 0), end);
    painter.setBrush(inks.quiet.ink);
    painter.drawEllipse(label.part, 2, 2);
    painter.setPen(inks.page.ink);
    int size = label.strong ? k_strong : k_plain;
    const auto fits = [&] {
      painter.setFont(letters(painter, size, label.strong));
      return painter.fontMetrics().horizontalAdvance(label.words) <= column.right - column.left;
    };
    while (!fits() && size > 9)
      --size;
    write_line(painter, {column.left, middles[i]}, Qt::AlignLeft, label.words);
  }
  painter.setFont(own);
}

} // namespace clampwright::desk
