// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/axis.hpp"

#include <cmath>

#include <QPainter>

#include "core/quantity/write.hpp"
#include "gui/look/utf8.hpp"

namespace clampwright::desk {

std::vector<double> round_values(double begin, double end, int most) {
  if (!(end > begin) || most < 1) return {};
  const double least_step = (end - begin) / most;
  const double power = std::pow(10.0, std::floor(std::log10(least_step)));
  double step = 10 * power;
  for (const double factor : {1.0, 2.0, 5.0})
    if (factor * power >= least_step) {
      step = factor * power;
      break;
    }
  std::vector<double> values;
  // By whole numbers of steps, or the rounding of many sums would show.
  for (double n = std::ceil(begin / step - 1e-9); n * step <= end + 1e-9 * step; n += 1)
    values.push_back(n * step);
  return values;
}

void paint_axis(QPainter& painter, const Inks& inks, const Axis& axis, double top, const QString& title) {
  painter.setPen(QPen(inks.rule.ink, 1.5));
  painter.drawLine(QPointF(axis.left, top), QPointF(axis.right, top));
  const double line = painter.fontMetrics().height();
  for (const double value : round_values(axis.begin, axis.end, 8)) {
    const double x = axis.at(value);
    painter.setPen(QPen(inks.rule.ink, 1.5));
    painter.drawLine(QPointF(x, top), QPointF(x, top + 5));
    painter.setPen(inks.page.ink);
    painter.drawText(QRectF(x - 40, top + 6, 80, line), Qt::AlignHCenter | Qt::AlignTop,
                     from_utf8(quantity::write_number(value, 6)));
  }
  painter.drawText(QRectF(axis.left, top + 6 + line, axis.right - axis.left, line), Qt::AlignRight | Qt::AlignTop,
                   title);
}

} // namespace clampwright::desk
