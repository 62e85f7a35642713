// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/band_picture.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include <QCoreApplication>
#include <QPainter>

#include "gui/drawings/axis.hpp"
#include "gui/drawings/strokes.hpp"
#include "gui/look/utf8.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("BandPicture", english); }

using Loads = quantity::Band<double>; // in the unit of the axis

struct Bar {
  QString name;
  Loads loads;
  bool solid; // thread friction is filled, the nut factor hatched: apart in grey too
};

struct Limit {
  QString name;
  double load;
};

struct BandContent {
  std::vector<Bar> bars;
  std::vector<Limit> limits;
  const quantity::Unit* unit;
  double end = 0; // of the axis
};

constexpr double k_width = 640;
constexpr double k_left = 16;
constexpr double k_right = 24;
constexpr double k_limits = 40; // room above the bars for the names of the limits
constexpr double k_bar = 20;
constexpr double k_row = 44; // a bar and its name
constexpr double k_axis = 44;

double height_of(const BandContent& content) {
  return k_limits + k_row * static_cast<double>(content.bars.size()) + k_axis;
}

QString load_text(double load, const quantity::Unit& unit) {
  return from_utf8(quantity::write_rounded(load)) + QStringLiteral(" ") + from_utf8(unit.symbol);
}

void paint_bar(QPainter& painter, const Inks& inks, const Bar& bar, double top, const Axis& axis) {
  const QColor ink = bar.solid ? inks.friction.ink : inks.factor.ink;
  const double low = axis.at(bar.loads.low);
  const double high = axis.at(bar.loads.high);
  const QRectF area(low, top, std::max(high - low, 2.0), k_bar);
  if (!bar.solid) hatch(painter, area, ink);
  painter.setPen(QPen(ink, 1.5));
  painter.setBrush(bar.solid ? QBrush(ink) : QBrush(Qt::NoBrush));
  painter.drawRect(area);
  const double likely = axis.at(bar.loads.likely);
  painter.setPen(QPen(inks.page.ground, 6));
  painter.drawLine(QPointF(likely, top), QPointF(likely, top + k_bar + 4));
  painter.setPen(QPen(inks.limit.ink, 3));
  painter.drawLine(QPointF(likely, top), QPointF(likely, top + k_bar + 4));
}

void paint_name(QPainter& painter, const Inks& inks, const Bar& bar, double top, const quantity::Unit& unit) {
  painter.setPen(inks.page.ink);
  painter.drawText(QRectF(k_left, top, k_width - k_left - k_right, k_row - k_bar - 6), Qt::AlignLeft | Qt::AlignBottom,
                   tr("%1: %2, likely %3, to %4")
                       .arg(bar.name, from_utf8(quantity::write_rounded(bar.loads.low)),
                            from_utf8(quantity::write_rounded(bar.loads.likely)), load_text(bar.loads.high, unit)));
}

// Names of limits stand above one another where they would touch, and cover the lines of others.
void paint_limits(QPainter& painter, const Inks& inks, const BandContent& content, const Axis& axis, double bottom) {
  constexpr double k_lower = 17;
  double taken_to = -1;
  bool upper = true;
  std::vector<std::pair<QRectF, QString>> names;
  painter.setPen(QPen(inks.limit.ink, 2));
  for (const Limit& limit : content.limits) {
    const double x = axis.at(limit.load);
    const QString words = QStringLiteral("%1 %2").arg(limit.name, load_text(limit.load, *content.unit));
    const double width = painter.fontMetrics().horizontalAdvance(words) + 2;
    const double left = std::clamp(x - width / 2, k_left, k_width - k_right - width);
    upper = left > taken_to ? true : !upper;
    taken_to = std::max(taken_to, left + width + 6);
    const double top = upper ? 0 : k_lower;
    painter.drawLine(QPointF(x, top + k_lower - 1), QPointF(x, bottom));
    names.emplace_back(QRectF(left, top - 1, width, k_lower), words);
  }
  for (const auto& [place, words] : names) {
    painter.fillRect(place, inks.limit.ground);
    painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter, words);
  }
}

void paint(QPainter& painter, const Inks& inks, const BandContent& content) {
  const Axis axis{0, content.end, k_left, k_width - k_right};
  const double bottom = height_of(content) - k_axis;
  double top = k_limits;
  for (const Bar& bar : content.bars) {
    paint_name(painter, inks, bar, top, *content.unit);
    paint_bar(painter, inks, bar, top + k_row - k_bar - 4, axis);
    top += k_row;
  }
  paint_limits(painter, inks, content, axis, bottom);
  paint_axis(painter, inks, axis, bottom + 6, tr("clamp load, %1").arg(from_utf8(content.unit->symbol)));
}

QString in_words(const BandContent& content) {
  QStringList parts;
  for (const Bar& bar : content.bars)
    parts << tr("%1 %2 to %3, likely %4")
                 .arg(bar.name, from_utf8(quantity::write_rounded(bar.loads.low)),
                      load_text(bar.loads.high, *content.unit), load_text(bar.loads.likely, *content.unit));
  for (const Limit& limit : content.limits)
    parts << QStringLiteral("%1 %2").arg(limit.name, load_text(limit.load, *content.unit));
  if (content.limits.empty()) parts << tr("no proof or yield load is known");
  return tr("Clamp load: %1.").arg(parts.join(QStringLiteral("; ")));
}

} // namespace

std::optional<Drawing> band_picture(const tightening::ClampAnswer& answer, const quantity::DisplayUnits& units) {
  BandContent content;
  content.unit = units.force;
  const auto value = [&](quantity::Force force) {
    return quantity::from_si(quantity::in_newtons(force), *units.force);
  };
  const auto add = [&](const QString& name, const quantity::Band<quantity::Force>& band, bool solid) {
    content.bars.push_back({name, quantity::map(band, value), solid});
  };
  if (answer.thread_friction) add(tr("by thread friction"), answer.thread_friction->preload, true);
  if (answer.nut_factor) add(tr("by nut factor"), answer.nut_factor->preload, false);
  if (content.bars.empty()) return std::nullopt;
  const strength::Strength& strength = answer.asked.strength;
  if (strength.proof_load) content.limits.push_back({tr("proof"), value(*strength.proof_load)});
  if (strength.yield_load) content.limits.push_back({tr("yield"), value(*strength.yield_load)});
  for (const Bar& bar : content.bars)
    content.end = std::max(content.end, bar.loads.high);
  for (const Limit& limit : content.limits)
    content.end = std::max(content.end, limit.load);
  content.end *= 1.04;
  Drawing drawing;
  drawing.name = tr("Clamp load as bands");
  drawing.in_words = in_words(content);
  drawing.size = QSizeF(k_width, height_of(content));
  drawing.paint = [content](QPainter& painter, const Inks& inks) { paint(painter, inks, content); };
  return drawing;
}

} // namespace clampwright::desk
