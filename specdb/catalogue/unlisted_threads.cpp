// SPDX-License-Identifier: GPL-3.0-or-later
//
// Threads that no table lists: worn-out taps, repairs, makers' own pitches. Only the form is known of them.
#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"
#include "specdb/catalogue/thread_neighbours.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

using thread::Designation;
using thread::Form;

// Listed threads have pitches from a quarter of the diameter down to a forty-fifth; ISO 261 goes down to a
// seventy-fifth. Beyond these bounds, which are our choice, the text was meant otherwise. At a third the root still has
// 0.59 of the diameter, so no stress area comes near nothing.
constexpr double k_coarsest = 1.0 / 3.0;
constexpr double k_finest = 1.0 / 200.0;
// From the smallest screws of a watch to what is cut on a large lathe.
constexpr double k_smallest_mm = 0.3;
constexpr double k_largest_mm = 1000.0;

Result<void> check(const StatedSize& size, std::string_view text) {
  const double d = quantity::in_millimetres(size.diameter);
  const double p = quantity::in_millimetres(size.pitch);
  const auto number = [](double value) { return quantity::write_number(value, 4); };
  if (d < k_smallest_mm || d > k_largest_mm)
    return not_understood(
        "out-of-range", fmt::format("a diameter of {} mm was understood", number(d)), text,
        fmt::format("--any-pitch takes diameters from {} to {} mm", number(k_smallest_mm), number(k_largest_mm)));
  if (p > k_coarsest * d || p < k_finest * d)
    return not_understood("out-of-range",
                          fmt::format("a pitch of {} mm on a diameter of {} mm was understood", number(p), number(d)),
                          text,
                          fmt::format("for that diameter --any-pitch takes pitches from {} to {} mm",
                                      number(k_finest * d), number(k_coarsest * d)));
  return {};
}

// "M8x1.3", "5/16-20": without the series that a listed thread would carry, and with every figure that was said.
std::string designation_of(const Designation& asked) {
  constexpr int k_digits = 12;
  if (asked.form == Form::metric)
    return fmt::format("M{}x{}", quantity::write_number(asked.diameter_mm, k_digits),
                       quantity::write_number(*asked.pitch_mm, k_digits));
  return fmt::format("{}-{}", asked.size, quantity::write_number(*asked.tpi, k_digits));
}

Source source_of_form(const Catalogue& catalogue, Form form) {
  Query query(catalogue.connection(),
              "SELECT title, edition, 'form; dimensions by its formulas', 'computed' FROM "
              "sources WHERE id = ?",
              std::string_view(form == Form::metric ? "iso-68-1" : "asme-b1-1-2003"));
  if (!query.next()) throw DatabaseError("the source of a thread form is missing", Trouble::internal);
  return query.source(0);
}

// A number alone is a number size where there is one: 10-30 is #10. Whole inches of those figures are not threaded so.
Designation with_number_size(Designation asked) {
  constexpr std::array k_numbers{"0", "5", "6", "8", "10", "12"};
  if (asked.form == Form::unified && std::ranges::find(k_numbers, asked.size) != k_numbers.end())
    asked.size = "#" + asked.size;
  return asked;
}

} // namespace

Result<ThreadEntry> find_thread_of_any_pitch(const Catalogue& catalogue, std::string_view text) {
  auto listed = find_thread(catalogue, text);
  if (listed || listed.error().code != "no-such-thread") return listed;
  const Designation asked = with_number_size(*thread::read_designation(text));
  const auto size = stated_size(asked);
  if (!size || !asked.series.empty()) {
    Problem problem = listed.error();
    problem.message += size ? fmt::format("; --any-pitch takes no series, and {} is one", asked.series)
                            : "; for --any-pitch the pitch must be said";
    return Refusal(std::move(problem));
  }
  if (const auto sensible = check(*size, text); !sensible) return Refusal(sensible.error());
  ThreadEntry entry;
  entry.thread.designation = designation_of(asked);
  entry.thread.form = asked.form;
  entry.thread.diameter = size->diameter;
  entry.thread.pitch = size->pitch;
  entry.thread.tpi = asked.tpi;
  entry.thread.hand = asked.hand;
  entry.thread.tolerance = asked.tolerance;
  entry.thread.listed = false;
  entry.sources.push_back(translated([&] { return source_of_form(catalogue, asked.form); }));
  return entry;
}

} // namespace clampwright::specdb
