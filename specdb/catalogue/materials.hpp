// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/strength/material.hpp"
#include "core/strength/shear_ratio.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// What a part is made of, by name in any case. Fails with no-such and the list.
[[nodiscard]] Result<strength::PartMaterial> find_material(const Catalogue& catalogue, std::string_view name);

[[nodiscard]] std::vector<std::string> material_names(const Catalogue& catalogue);

// Modulus and expansion, by the name of a part's material ("cast-aluminium") or of its own table ("aluminium-a380").
// Fails with no-such, also for a part whose material has none (wood).
[[nodiscard]] Result<strength::Elastic> find_elastic(const Catalogue& catalogue, std::string_view name);

// The names of parts' materials that have a modulus.
[[nodiscard]] std::vector<std::string> elastic_names(const Catalogue& catalogue);

// The published lengths of engagement for a bolt of that class in a part of that material, longest first; those for a
// class only where it is named and metric, those for a pitch only where the thread has it. A class of "unknown" gets
// the ones that hold for any.
[[nodiscard]] std::vector<strength::EngagementRule> engagement_rules(const Catalogue& catalogue,
                                                                     const strength::PartMaterial& material,
                                                                     std::string_view bolt_class,
                                                                     const thread::Thread& thread);

// What a bolt of that class bears in shear; the rule of thumb for classes that no table names. A leading zero (08.8)
// does not count: it is the head that is weak.
[[nodiscard]] strength::ShearRatio find_bolt_shear(const Catalogue& catalogue, std::string_view bolt_class);

} // namespace clampwright::specdb
