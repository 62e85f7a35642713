// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/strength.hpp"

namespace clampwright::strength {

namespace {

std::optional<quantity::Force> load(std::optional<quantity::Stress> stress, std::optional<quantity::Area> area) {
  if (!stress || !area) return std::nullopt;
  return *stress * *area;
}

void multiply(std::optional<quantity::Force>& force, double share) {
  if (force) *force *= share;
}

void multiply_loads(Strength& strength, double share) {
  multiply(strength.proof_load, share);
  multiply(strength.yield_load, share);
  multiply(strength.tensile_load, share);
}

} // namespace

std::string_view load_basis_name(LoadBasis basis) { return basis == LoadBasis::table ? "table" : "stress-area"; }

Strength unknown_strength() {
  Strength out;
  out.class_name = "unknown";
  return out;
}

Strength strength_of(const StrengthClass& strength_class, std::optional<quantity::Area> stress_area,
                     const PrintedLoads& printed) {
  Strength out;
  out.class_name = strength_class.name;
  out.proof_stress = strength_class.proof_stress;
  out.yield = strength_class.yield;
  out.yield_kind = strength_class.yield_kind;
  out.tensile = strength_class.tensile;
  out.from_memory = strength_class.source.known == Known::memory;
  out.hardest_HV = strength_class.hardest_HV;
  out.stainless = strength_class.stainless;
  out.approved_data = strength_class.approved_data;
  out.sources.push_back(strength_class.source);
  out.proof_load = load(out.proof_stress, stress_area);
  if (out.proof_load) out.proof_load_basis = LoadBasis::stress_area;
  out.yield_load = load(out.yield, stress_area);
  out.tensile_load = load(out.tensile, stress_area);
  if (printed.proof) {
    out.proof_load = printed.proof->load;
    out.proof_load_basis = LoadBasis::table;
    out.sources.push_back(printed.proof->source);
  }
  if (printed.tensile) {
    out.tensile_load = printed.tensile->load;
    out.sources.push_back(printed.tensile->source);
  }
  return out;
}

Strength reduced(Strength full, const ReducedClass& reduced_class, const std::optional<PrintedLoad>& printed_tensile) {
  full.class_name = reduced_class.name;
  full.loadability = reduced_class.share;
  full.sources.push_back(reduced_class.source);
  multiply_loads(full, reduced_class.share);
  if (printed_tensile) {
    full.tensile_load = printed_tensile->load;
    full.sources.push_back(printed_tensile->source);
  }
  return full;
}

Strength weakened(Strength strength, quantity::Area section) {
  strength.proof_load = load(strength.proof_stress, section);
  if (strength.proof_load) strength.proof_load_basis = LoadBasis::stress_area;
  strength.yield_load = load(strength.yield, section);
  strength.tensile_load = load(strength.tensile, section);
  multiply_loads(strength, strength.loadability);
  return strength;
}

} // namespace clampwright::strength
