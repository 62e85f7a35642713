// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a joint must carry, as the clamp load that each of its bolts must keep.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/quantity/quantity.hpp"

namespace clampwright::workup {

// A torque, or a force across the bolts, that the clamped faces carry by their friction alone.
struct ByFriction {
  std::optional<quantity::Torque> torque;
  std::optional<quantity::Length> radius; // at which the faces rub, with the torque
  std::optional<quantity::Force> force;
  double friction = 0; // of the faces, the least to reckon with
  int faces = 1;       // that would have to slip
};

// A pressure inside that pushes the parts apart.
struct Sealed {
  quantity::Stress pressure;
  quantity::Length diameter;
};

// Of the whole joint, shared alike by its bolts; `clamp` and `pull` are of each bolt.
struct Demand {
  int bolts = 1;
  std::optional<quantity::Force> clamp; // told outright: by the maker of the part, by a drawing
  std::optional<quantity::Force> pull;  // along the bolt, in service
  std::optional<ByFriction> friction;
  std::optional<Sealed> sealed;
  double loss = 0; // share of the clamp load that goes after tightening; below 1
};

enum class NeedKind { clamp, friction_torque, friction_force, pull, pressure };

// "clamp", "friction-torque", "friction-force", "pull", "pressure".
[[nodiscard]] std::string_view need_name(NeedKind kind);

struct Need {
  NeedKind kind;
  quantity::Force load; // on each bolt
};

struct NeededLoad {
  std::vector<Need> needs;   // empty where nothing was told
  quantity::Force kept;      // that each bolt must keep in service
  quantity::Force tightened; // that each must have when it has been tightened: more, by the loss
};

// What grips (the greatest of clamp and friction) and what pulls (the sum of pull and pressure) add up: the whole of a
// pull is taken to unload the parts, which errs on the careful side (VDI 2230-1 takes the share 1 − Φ of it).
// Friction: F = T/(n·μ·r·i) and F = Q/(n·μ·i) for n bolts and i faces; pressure: F = p·π/4·D²/n.
// Preconditions: bolts and faces at least 1, friction above 0, a radius with a torque, 0 <= loss < 1.
[[nodiscard]] NeededLoad needed_load(const Demand& demand);

} // namespace clampwright::workup
