// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/clamp_curve.hpp"

#include <QCoreApplication>

#include "core/tightening/clamp.hpp"
#include "gui/look/utf8.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("ClampCurve", english); }

} // namespace

std::optional<PlotCurve> clamp_curve(const tightening::ClampAnswer& answer, const quantity::DisplayUnits& units) {
  constexpr int k_points = 16;
  constexpr double k_beyond = 1.6; // of the torque asked about
  const auto force = [&](quantity::Force load) { return quantity::from_si(quantity::in_newtons(load), *units.force); };
  const auto torque = [&](quantity::Torque one) {
    return quantity::from_si(quantity::in_newton_metres(one), *units.torque);
  };
  CurveBand friction{tr("by thread friction"), {}};
  CurveBand factor{tr("by nut factor"), {}};
  for (int i = 1; i <= k_points; ++i) {
    const quantity::Torque at = answer.torque * (k_beyond * i / k_points);
    // A running torque that the wrench does not reach clamps nothing, and has no point.
    const auto there = tightening::clamp(answer.asked, at, answer.accuracy);
    if (!there) continue;
    const auto add = [&](CurveBand& band, const quantity::Band<quantity::Force>& load) {
      band.points.push_back({torque(at), force(load.low), force(load.likely), force(load.high)});
    };
    if (there->thread_friction) add(friction, there->thread_friction->preload);
    if (there->nut_factor) add(factor, there->nut_factor->preload);
  }
  PlotCurve curve;
  for (CurveBand* band : {&friction, &factor})
    if (!band->points.empty()) curve.bands.push_back(std::move(*band));
  if (curve.bands.empty()) return std::nullopt;
  const strength::Strength& strength = answer.asked.strength;
  if (strength.proof_load) curve.levels.push_back({tr("proof"), force(*strength.proof_load)});
  if (strength.yield_load) curve.levels.push_back({tr("yield"), force(*strength.yield_load)});
  curve.name = tr("Clamp load against torque");
  curve.x_title = tr("torque, %1").arg(from_utf8(units.torque->symbol));
  curve.y_title = tr("clamp load, %1").arg(from_utf8(units.force->symbol));
  curve.chosen_x = torque(answer.torque);
  curve.chosen_name = from_utf8(quantity::write(answer.torque, units));
  curve.in_words =
      tr("Clamp load against torque, up to %1.").arg(from_utf8(quantity::write(answer.torque * k_beyond, units)));
  return curve;
}

} // namespace clampwright::desk
