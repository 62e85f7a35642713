// SPDX-License-Identifier: GPL-3.0-or-later
//
// Everything here is invented: crew, machines, makers' sheets and figures. Each joint is there for something that a
// fitter meets; the numbers of the joints run through the three machines.
#pragma once

#include <vector>

#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// What the sources are called in the records.
inline constexpr const char* k_marrowfen = "MM";
inline constexpr const char* k_marrowfen_first = "MM1";
inline constexpr const char* k_marrowfen_bulletin = "B2";
inline constexpr const char* k_tallisk = "TH";
inline constexpr const char* k_notebook = "YN";
inline constexpr const char* k_ostrel = "OB";

[[nodiscard]] MachineRecord demo_pump();
[[nodiscard]] MachineRecord demo_winch();
[[nodiscard]] MachineRecord demo_boat();

[[nodiscard]] std::vector<JointRecord> pump_joints();
[[nodiscard]] std::vector<JointRecord> winch_joints();
[[nodiscard]] std::vector<JointRecord> boat_joints();

} // namespace clampwright::specdb
