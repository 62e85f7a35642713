// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/tightening/sequence.hpp"

namespace clampwright::report {

// "6 bolts in a circle".
[[nodiscard]] std::string bolts_words(const tightening::Sequence& sequence);

// "1 4 2 5 3 6".
[[nodiscard]] std::string order_words(const std::vector<int>& order);

// "clockwise from the top": how the positions are counted.
[[nodiscard]] std::string positions_words(tightening::Pattern pattern);

// "12, 18, 24 N·m"; "50 %, 75 %, 100 %" where no torque is known.
[[nodiscard]] std::string then_words(const tightening::Sequence& sequence);
[[nodiscard]] std::string rounds_words(const tightening::Sequence& sequence);

// How to go on once all stand at the final torque.
[[nodiscard]] std::string last_round_words(tightening::Pattern pattern);

// What a sheet in the shop needs: order, rounds, last round, and loosening. `heading` is the joint's name, or "".
// `page_words` is what the joint's own page says of the order, or "".
[[nodiscard]] Document sequence_report(const tightening::Sequence& sequence, std::string_view heading,
                                       std::string_view seen_from, std::string_view page_words,
                                       const quantity::DisplayUnits& units);

} // namespace clampwright::report
