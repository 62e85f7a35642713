// SPDX-License-Identifier: GPL-3.0-or-later
//
// From the wrench to the clamp load, what is not known exactly: relative standard uncertainties add as squares (GUM,
// law of propagation for a product, F = T/(K·d)). The shares of the variance say where care pays.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "core/tightening/case.hpp"

namespace clampwright::tightening {

// How a share is meant: `limits` are never passed and everything between them is as likely (standard uncertainty: a
// √3rd of them); `standard` is a standard uncertainty already.
enum class Spread { limits, standard };

// One thing that is not known exactly. `share` is of the torque or of the load.
struct Influence {
  std::string name; // wrench, adaptor, operator, friction
  double share;
  Spread spread;
  std::string basis;
};

struct BudgetLine {
  Influence influence;
  double standard;    // standard uncertainty, as a share
  double of_variance; // its share of the variance of the clamp load; all add to 1
};

struct Budget {
  std::vector<BudgetLine> lines; // friction last
  double torque;                 // standard uncertainty of the torque at the fastener: all but friction
  double load;                   // and of the clamp load
};

// Twice the standard uncertainty holds about 95 of 100 (GUM, coverage factor).
inline constexpr double k_coverage = 2.0;

// The shares that stand in where nobody says another: assumptions, and named as such wherever they are used.
inline constexpr double k_assumed_operator = 0.01;
inline constexpr double k_assumed_lever = 0.01;
inline constexpr double k_assumed_nut_factor = 0.10;

// The wrench by its limits.
[[nodiscard]] Influence wrench_influence(const WrenchAccuracy& accuracy);

// `of_torque` are independent of each other and of `friction`. Where no share is above nothing, all shares of the
// variance are 0.
[[nodiscard]] Budget budget_of(std::vector<Influence> of_torque, Influence friction);

// What a published rule takes for the whole spread of clamp load when tightening by torque, either side of nominal.
struct PublishedSpread {
  double share;
  std::string_view surfaces;
};

// NASA-STD-5020 as quoted in J. Failure Anal. Prev. 19 (2019): unless tested.
inline constexpr std::array<PublishedSpread, 2> k_published_spreads{
    {{0.35, "unlubricated"}, {0.25, "lubricated"}},
};

} // namespace clampwright::tightening
