// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/unit_slip.hpp"

#include <algorithm>
#include <optional>

#include "core/tightening/clamp.hpp"

namespace clampwright::tightening {

namespace {

std::vector<quantity::Band<double>> uses_of(const ClampAnswer& answer) {
  std::vector<quantity::Band<double>> uses;
  if (answer.thread_friction && answer.thread_friction->use_of_proof)
    uses.push_back(*answer.thread_friction->use_of_proof);
  if (answer.nut_factor && answer.nut_factor->use_of_proof) uses.push_back(*answer.nut_factor->use_of_proof);
  return uses;
}

// By every model that is known.
bool is_beyond_sense(const std::vector<quantity::Band<double>>& uses) {
  return !uses.empty() && (std::ranges::all_of(uses, [](const auto& use) { return use.low > 1.0; }) ||
                           std::ranges::all_of(uses, [](const auto& use) { return use.high < k_senselessly_low; }));
}

std::optional<double> sensible_share(const ClampAnswer& answer) {
  const auto uses = uses_of(answer);
  const bool fits = std::ranges::all_of(
      uses, [](const auto& use) { return use.likely >= k_sensible_from && use.likely <= k_sensible_to; });
  if (uses.empty() || !fits) return std::nullopt;
  return uses.front().likely;
}

// So near each other in size that friction and the choice of a torque hide which of the two was meant.
bool are_near(const quantity::Unit& one, const quantity::Unit& other) {
  const double ratio = quantity::convert(1.0, one, other);
  return ratio < k_near_units && ratio * k_near_units > 1.0;
}

} // namespace

std::vector<UnitFit> units_that_fit(const ClampAnswer& answer, double value, const quantity::Unit& printed) {
  std::vector<UnitFit> fits;
  const Case& asked = answer.asked;
  if (asked.angle_follows || !asked.soft_part.empty() || !is_beyond_sense(uses_of(answer))) return fits;
  for (const quantity::Unit& unit : quantity::all_units()) {
    if (unit.kind != quantity::Kind::torque || are_near(unit, printed)) continue;
    const auto torque = quantity::newton_metres(quantity::to_si(value, unit));
    const auto meant = clamp(asked, torque, answer.accuracy);
    if (!meant) continue;
    if (const auto share = sensible_share(*meant)) fits.push_back({&unit, torque, *share});
  }
  return fits;
}

} // namespace clampwright::tightening
