// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/locking/refit.hpp"

#include <fmt/format.h>

namespace clampwright::locking {

namespace {

constexpr std::string_view k_not_stated = "not-stated";

bool is_for_stainless(const friction::Surfaces& surfaces) { return surfaces.name.starts_with("stainless"); }

} // namespace

quantity::Band<double> ratio_of(const friction::NutFactorBand& stated, const friction::NutFactorBand& fitted) {
  return {fitted.low.value() / stated.high.value(), fitted.likely.value() / stated.likely.value(),
          fitted.high.value() / stated.low.value()};
}

quantity::Torque refitted(quantity::Torque stated, quantity::Torque running, double factor) {
  return running + factor * (stated - running);
}

std::string why_not_these_surfaces(const RefitPlace& place, const friction::Surfaces& fitted) {
  if (place.stainless == false && is_for_stainless(fitted)) return "these surfaces are those of stainless fasteners";
  if (place.stainless == true && fitted.electroplated) return "a stainless fastener is not zinc-plated";
  return {};
}

std::string why_nothing_slippery(const RefitPlace& place, const friction::Surfaces& fitted) {
  if (fitted.wet_compound) return {};
  if (place.taper) return "the taper holds by friction alone: keep it clean and dry, as the figure wants it";
  if (place.plug) return "plugs are tightened dry: their makers advise against lubricant";
  if (place.compound) return "locking compound holds on clean, degreased threads only";
  return {};
}

std::string why_not_corrected(const RefitPlace& place, const friction::Surfaces& stated,
                              const friction::Surfaces& fitted) {
  if (stated.name == k_not_stated) return "nobody said which surfaces the figure is for";
  if (fitted.name == k_not_stated) return "what is fitted is not stated";
  if (fitted.name == "stainless-dry") return "stainless steel seizes dry: lubricate it";
  if (std::string why = why_not_these_surfaces(place, fitted); !why.empty()) return why;
  const double factor = ratio_of(stated.k, fitted.k).likely;
  if (factor < 1.0) return why_nothing_slippery(place, fitted);
  if (factor > 1.0 && !place.soft_part.empty())
    return fmt::format("the {} sets the limit: never above the figure", place.soft_part);
  return {};
}

} // namespace clampwright::locking
