// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a bolt of a strength class bears. Stresses are the least values of the standard; loads are the ones it prints
// where it prints the size, and stress × area elsewhere.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"

namespace clampwright::strength {

// One class in the size range that it holds for. Stainless steel has no proof stress: ISO 3506 knows none.
struct StrengthClass {
  std::string name;   // "8.8", "SAE 5", "A2-70", "ASTM A574", "125 ksi" (aircraft)
  std::string system; // "ISO 898-1", "SAE J429", …
  std::optional<quantity::Stress> proof_stress;
  std::optional<quantity::Stress> yield;
  std::string yield_kind; // "Rp0.2", "ReL" or "Rpf"
  std::optional<quantity::Stress> tensile;
  Source source;
  std::optional<double> hardest_HV = std::nullopt; // Vickers hardness that the class may reach
  bool stainless = false;
  bool approved_data = false; // aircraft hardware: its approved data decide, never a figure from here
};

// A mark with a leading zero: the material of the full class, but a head or recess that bears only a share of its
// loads.
struct ReducedClass {
  std::string name; // "08.8"
  double share = 1.0;
  Source source;
};

// A load that the standard prints for the very thread and class.
struct PrintedLoad {
  quantity::Force load;
  Source source;
};

struct PrintedLoads {
  std::optional<PrintedLoad> proof;
  std::optional<PrintedLoad> tensile;
};

enum class LoadBasis { table, stress_area };

struct Strength {
  std::string class_name; // "unknown" if no class was given
  std::optional<quantity::Stress> proof_stress;
  std::optional<quantity::Stress> yield;
  std::string yield_kind;
  std::optional<quantity::Stress> tensile;
  std::optional<quantity::Force> proof_load;
  std::optional<quantity::Force> yield_load;
  std::optional<quantity::Force> tensile_load;
  std::optional<LoadBasis> proof_load_basis;
  bool from_memory = false; // the class's stresses were recalled, not read
  std::optional<double> hardest_HV;
  bool stainless = false;
  bool approved_data = false; // as in StrengthClass
  double loadability = 1.0;   // what share of the class's loads the bolt bears: 0.8 with a leading zero
  std::vector<Source> sources;
};

// "table" or "stress-area".
[[nodiscard]] std::string_view load_basis_name(LoadBasis basis);

// Nothing is known of the bolt; every strength is empty.
[[nodiscard]] Strength unknown_strength();

// The strength of a bolt whose thread has that stress area. Without an area (Whitworth, BA) the loads stay empty.
[[nodiscard]] Strength strength_of(const StrengthClass& strength_class, std::optional<quantity::Area> stress_area,
                                   const PrintedLoads& printed);

// The bolt of a full class with the leading zero: stresses stay, loads are the share. A tensile load that is printed
// for the reduced class itself stands as printed.
[[nodiscard]] Strength reduced(Strength full, const ReducedClass& reduced_class,
                               const std::optional<PrintedLoad>& printed_tensile);

// The same bolt with a weaker section (waisted shank, bore): the printed loads hold for full bolts only, so its loads
// are stress × `section`. A reduced loadability is not forgotten: whether head or shank caused it is not known, so it
// counts beside the weaker section, which errs on the careful side.
[[nodiscard]] Strength weakened(Strength strength, quantity::Area section);

} // namespace clampwright::strength
