// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/hold_curve.hpp"

#include <algorithm>
#include <vector>

#include <QCoreApplication>

#include "gui/look/utf8.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("HoldCurve", english); }

// Past this a piston hardly moves, and no stop meets it.
constexpr double k_last = 150;
constexpr double k_most_over_least = 6; // where the curve begins, unless the angle asked about is nearer to the top
constexpr double k_far_above = 1.5;     // of the greatest force that is shown

// Close together where the curve is steep.
double step_from(double degrees) { return degrees < 10 ? 1 : degrees < 30 ? 2 : 5; }

QString name_of(crank::StopLimit limit, const QString& angle) {
  switch (limit) {
  case crank::StopLimit::tip_pressure:
    return tr("limit: pressure under the tip");
  case crank::StopLimit::plug_thread:
    return tr("limit: plug thread");
  case crank::StopLimit::rod:
    return tr("limit: rod, at %1").arg(angle); // what the rod bears depends on how far it leans
  case crank::StopLimit::stop:
    return tr("limit: stop");
  }
  return {};
}

// Whole degrees from where the curve begins to where it ends, and the angle of the answer among them.
std::vector<double> angles_of(const crank::StopAnswer& stop) {
  const double chosen = quantity::in_degrees(stop.asked.before_top);
  const auto over_least = [&](double degrees) {
    return crank::stop_force(stop.asked.crank, quantity::degrees(degrees), stop.fitting.torque) / stop.least;
  };
  double first = 1;
  while (first + 1 < chosen && over_least(first) > k_most_over_least)
    first += 1;
  first = std::min(first, chosen);
  double last = k_last;
  while (last - 1 > chosen && over_least(last) > k_most_over_least)
    last -= 1;
  last = std::max(last, chosen);
  std::vector<double> angles{first};
  for (double at = first < 1 ? 1 : first + step_from(first); at < last; at += step_from(at))
    angles.push_back(at);
  angles.push_back(last);
  angles.push_back(chosen);
  std::ranges::sort(angles);
  const auto same = std::ranges::unique(angles, [](double one, double other) { return other - one < 1e-9; });
  angles.erase(same.begin(), same.end());
  return angles;
}

} // namespace

std::optional<PlotCurve> hold_curve(const crank::HoldAnswer& answer, const quantity::DisplayUnits& units) {
  if (!answer.stop) return std::nullopt;
  const crank::StopAnswer& stop = *answer.stop;
  const auto written = [&](quantity::Force force) {
    return from_utf8(quantity::write_si_rounded(quantity::in_newtons(force), *units.force));
  };
  const auto shown = [&](quantity::Force force) {
    return quantity::from_si(quantity::in_newtons(force), *units.force);
  };
  const auto in_unit = [&](quantity::Angle angle) {
    return quantity::from_si(quantity::in_radians(angle), *units.angle);
  };
  const std::vector<double> angles = angles_of(stop);
  const auto add = [&](const QString& name, const crank::StopLoads& loads, PlotCurve& curve) {
    CurveBand band{tr("%1, %2").arg(name, from_utf8(quantity::write(loads.torque, units))), {}};
    for (const double degrees : angles) {
      const quantity::Angle at = quantity::degrees(degrees);
      const double force = shown(crank::stop_force(stop.asked.crank, at, loads.torque));
      band.points.push_back({in_unit(at), force, force, force});
    }
    curve.bands.push_back(std::move(band));
  };
  PlotCurve curve;
  add(tr("to tighten"), stop.fitting, curve);
  if (stop.undoing) add(tr("to undo"), *stop.undoing, curve);
  const QString chosen = from_utf8(quantity::write_si(quantity::in_radians(stop.asked.before_top), *units.angle));
  double top = 0;
  for (const CurveBand& band : curve.bands)
    for (const CurvePoint& point : band.points)
      top = std::max(top, point.high);
  QString far_above;
  for (const crank::LimitTorque& limit : stop.limits) {
    const quantity::Force force = crank::stop_force(stop.asked.crank, stop.asked.before_top, limit.torque);
    // A level far above would press the curve flat; it is said in words.
    if (shown(force) <= k_far_above * top)
      curve.levels.push_back({name_of(limit.limit, chosen), shown(force)});
    else
      far_above += QStringLiteral(" ") + tr("Far above, at %1: %2.").arg(written(force), name_of(limit.limit, chosen));
  }
  curve.name = tr("Force on the stop against crank angle");
  curve.x_title = tr("before top dead centre, %1").arg(from_utf8(units.angle->symbol));
  curve.y_title = tr("force on crown and stop, %1").arg(from_utf8(units.force->symbol));
  curve.x_from = curve.bands.front().points.front().x;
  curve.chosen_x = in_unit(stop.asked.before_top);
  curve.chosen_name = chosen;
  curve.falls = true;
  curve.in_words =
      tr("Force on crown and stop against crank angle: %1 at %2 before top dead centre, least %3 at %4, and without "
         "limit towards both dead centres.")
          .arg(written(stop.fitting.forces.piston), chosen, written(stop.least),
               from_utf8(quantity::write_si(quantity::in_radians(stop.least_at), *units.angle))) +
      far_above;
  return curve;
}

} // namespace clampwright::desk
