// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/thread_neighbours.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/write.hpp"
#include "core/thread/inch_size.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

using thread::Form;

struct Neighbour {
  std::string designation;
  bool same_form;
  double diameter_mm;
  double pitch_mm;
  double off_in_diameter; // shares
  double off_in_pitch;

  // A diameter is measured better than a pitch, so a miss in it counts more: by three is our choice.
  [[nodiscard]] double distance() const { return 3.0 * off_in_diameter + off_in_pitch; }
};

std::vector<Neighbour> all_by_distance(const Catalogue& catalogue, Form form, const StatedSize& size) {
  const double d = quantity::in_millimetres(size.diameter);
  const double p = quantity::in_millimetres(size.pitch);
  Query query(catalogue.connection(),
              "SELECT designation, form, CASE diameter_unit WHEN 'in' THEN diameter * 25.4 ELSE diameter END, "
              "coalesce(pitch, 25.4 / tpi) FROM threads");
  std::vector<Neighbour> all;
  while (query.next())
    all.push_back({query.text(0), query.text(1) == thread::form_name(form), query.real(2), query.real(3),
                   std::abs(query.real(2) / d - 1.0), std::abs(query.real(3) / p - 1.0)});
  std::ranges::stable_sort(all, {}, &Neighbour::distance);
  return all;
}

std::string words_of(const Neighbour& near) {
  return fmt::format("{} ({} x {} mm)", near.designation, quantity::write_number(near.diameter_mm, 4),
                     quantity::write_number(near.pitch_mm, 4));
}

} // namespace

std::optional<StatedSize> stated_size(const thread::Designation& asked) {
  if (asked.form == Form::metric) {
    if (!asked.pitch_mm) return std::nullopt;
    return StatedSize{quantity::millimetres(asked.diameter_mm), quantity::millimetres(*asked.pitch_mm)};
  }
  if (!asked.tpi || asked.form == Form::ba) return std::nullopt;
  const auto inches = thread::inch_size(asked.size);
  if (!inches || !(*inches > 0)) return std::nullopt;
  return StatedSize{quantity::inches(*inches), quantity::inches(1.0 / *asked.tpi)};
}

std::string neighbour_words(const Catalogue& catalogue, Form form, const StatedSize& size) {
  constexpr std::size_t k_own = 2;
  constexpr std::size_t k_others = 3;
  std::vector<std::string> own;
  std::vector<std::string> others;
  for (const Neighbour& near : all_by_distance(catalogue, form, size)) {
    if (near.same_form && own.size() < k_own) own.push_back(words_of(near));
    if (!near.same_form && others.size() < k_others && near.off_in_diameter < 0.05 && near.off_in_pitch < 0.15)
      others.push_back(words_of(near));
  }
  std::string words = fmt::format("nearest in diameter and pitch: {}", fmt::join(own, ", "));
  if (!others.empty()) words += fmt::format("; of other systems: {}", fmt::join(others, ", "));
  return words;
}

} // namespace clampwright::specdb
