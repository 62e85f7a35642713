// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/friction/reduction.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/substitute/chain.hpp"

namespace clampwright::report {

// May the other go in? First the answer and the link that made it, then the whole chain. `published` are rules for such
// a change of the surfaces; there may be none.
[[nodiscard]] Document substitute_report(const substitute::Question& question, const substitute::Answer& answer,
                                         const std::vector<friction::Reduction>& published,
                                         const quantity::DisplayUnits& units);

// Everything that the comparison rests on, each source once.
[[nodiscard]] std::vector<Source> substitute_sources(const substitute::Question& question);

} // namespace clampwright::report
