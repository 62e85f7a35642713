// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace clampwright::strength {

// Is a bolt of `bolt_class` stronger than `highest_bolt_class`, the highest that a nut is made for? Then the nut may
// strip before the bolt breaks. Metric classes are compared by their two figures, tensile strength first; a leading
// zero (08.8) does not count, for a bolt of weak head has the thread of its full class. Nothing where one of the two is
// no metric class.
[[nodiscard]] std::optional<bool> nut_is_weaker(std::string_view bolt_class, std::string_view highest_bolt_class);

} // namespace clampwright::strength
