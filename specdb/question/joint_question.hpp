// SPDX-License-Identifier: GPL-3.0-or-later
//
// From the records of a joint to what the core computes with.
#pragma once

#include <optional>
#include <string_view>

#include "core/crank/piston_stop.hpp"
#include "core/joint/surroundings.hpp"
#include "core/problem/problem.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// The joint with the surfaces, friction and angle of that figure.
[[nodiscard]] CaseQuestion question_of(const JointRecord& joint, const FigureRecord& figure);

// A number of the figure's page as a torque; nothing where the page has none.
[[nodiscard]] std::optional<quantity::Torque> torque_of(const std::optional<double>& value, const FigureRecord& figure);

[[nodiscard]] std::optional<crank::SliderCrank> crank_of(const MachineRecord& machine);

// The nut of a class on that thread. Fails with no-such for a class that is not in the tables.
[[nodiscard]] Result<joint::Nut> nut_of(const Catalogue& catalogue, std::string_view nut_class,
                                        const thread::Thread& thread);

// What the joint works in, as far as it is recorded. Fails with no-such where a material or nut class is not in the
// tables, with not-understood where a length cannot be read.
[[nodiscard]] Result<joint::Surroundings> surroundings_of(const Catalogue& catalogue, const JointRecord& joint,
                                                          const ResolvedCase& resolved);

} // namespace clampwright::specdb
