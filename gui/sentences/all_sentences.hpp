// SPDX-License-Identifier: GPL-3.0-or-later
//
// Each file of this folder that defines sentences gives them by one function of this list.
#pragma once

#include "gui/sentences/sentence.hpp"

namespace clampwright::desk {

[[nodiscard]] std::vector<Sentence> all_sentences();

// In the order of the list.
[[nodiscard]] std::vector<Sentence> tightening_sentences(); // clamp, torque

} // namespace clampwright::desk
