// SPDX-License-Identifier: GPL-3.0-or-later
//
// Friction as a band. A coefficient without its spread is not a usable number: the clamp load of one torque differs by
// two or three to one between the ends of the band.
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"

namespace clampwright::friction {

// Friction between two faces, 0 to 1. Dry stainless steel reaches 0.5.
class FrictionCoefficient {
 public:
  [[nodiscard]] static Result<FrictionCoefficient> try_make(double value);
  [[nodiscard]] constexpr double value() const { return value_; }
  friend constexpr std::partial_ordering operator<=>(FrictionCoefficient one, FrictionCoefficient other) {
    return one.value_ <=> other.value_;
  }

 private:
  constexpr explicit FrictionCoefficient(double value) : value_(value) {}
  double value_;
};

// The nut factor K of T = K·F·d, above 0, at most 1.
class NutFactor {
 public:
  [[nodiscard]] static Result<NutFactor> try_make(double value);
  [[nodiscard]] constexpr double value() const { return value_; }
  friend constexpr std::partial_ordering operator<=>(NutFactor one, NutFactor other) {
    return one.value_ <=> other.value_;
  }

 private:
  constexpr explicit NutFactor(double value) : value_(value) {}
  double value_;
};

using FrictionBand = quantity::Band<FrictionCoefficient>;
using NutFactorBand = quantity::Band<NutFactor>;

// "0.12", "0.08..0.16" (likely is the mean) or "0.08..0.12..0.16". Refused if the numbers do not rise.
[[nodiscard]] Result<FrictionBand> read_friction_band(std::string_view text);
[[nodiscard]] Result<NutFactorBand> read_nut_factor_band(std::string_view text);

// A state of the threads and faces, with friction for both models.
struct Surfaces {
  std::string name;
  std::string description;
  FrictionBand mu;
  NutFactorBand k;
  bool wet_compound = false; // wet thread adhesive: friction is between oiled and dry, nobody knows where
  std::vector<Source> sources;
  bool electroplated = false; // made in a bath that can bring hydrogen into hard steel
};

// How a joint is kept from coming loose.
enum class LockFamily { none, compound, running_torque, positive, washer };

struct Lock {
  std::string name;
  std::string description;
  LockFamily family = LockFamily::none;
  bool single_use = false;
  std::optional<quantity::Temperature> heat_limit = std::nullopt; // up to which it holds in service
  std::string heat_limit_basis = {};                              // where that stands: title, place
  std::optional<quantity::Temperature> parts_from = std::nullopt; // heat that softens a cured compound
  std::optional<quantity::Temperature> parts_to = std::nullopt;
  std::string note = {};
  std::vector<Source> sources = {};
};

} // namespace clampwright::friction
