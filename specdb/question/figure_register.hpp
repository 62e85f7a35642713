// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keeping the figures of a joint. None is ever overwritten: a revision is a new figure that takes the place of the old
// one and says why; the old one stays.
#pragma once

#include <chrono>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/figure_record.hpp"

namespace clampwright::specdb {

// The joint as it now stands, the figure that was entered, and what differs from the one before.
struct KeptFigure {
  JointRecord joint;
  FigureRecord figure;
  std::vector<std::string> changes; // "torque: 42 N.m -> 45 N.m", or "entered"
};

// Enters a figure beside those in force of the joint of that slug: another source for the same place. Fails with
// no-such where there is no such joint or source, and for its words as new_figure does.
[[nodiscard]] Result<KeptFigure> add_figure(const Catalogue& catalogue, const std::filesystem::path& file,
                                            std::string_view joint, const FigureWords& words,
                                            std::chrono::year_month_day today);

// Puts a figure in the place of the one with that id (FigureRecord::id): what the words do not say stays as it was.
// Fails with no-such where the joint has no such figure, with busy where another has taken its place since the caller
// looked, with usage where nothing would change or no reason is given, and for its words as with_words does.
[[nodiscard]] Result<KeptFigure> revise_figure(const Catalogue& catalogue, const std::filesystem::path& file,
                                               std::string_view joint, long long id, const FigureWords& words,
                                               const MaybeText& because, std::chrono::year_month_day today);

} // namespace clampwright::specdb
