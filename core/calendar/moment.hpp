// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

#include "core/problem/problem.hpp"

namespace clampwright::calendar {

// Day and time of the clock on the wall, to the minute. It knows no time zone: a night in which the clocks are put
// forward or back is an hour off.
struct Moment {
  std::chrono::year_month_day day;
  int minute = 0; // since midnight

  friend bool operator==(const Moment&, const Moment&) = default;
};

// "2026-11-26 09:30", or with a T between. Years 1900 to 2999. Fails with not-understood, and for days that no calendar
// has.
[[nodiscard]] Result<Moment> read_moment(std::string_view text);

// "2026-11-26". Fails as read_moment does.
[[nodiscard]] Result<std::chrono::year_month_day> read_day(std::string_view text);

// A day as a file holds it; nothing where the text is none.
[[nodiscard]] std::optional<std::chrono::year_month_day> stored_day(std::string_view text);

// So many minutes later; parts of a minute are rounded up.
[[nodiscard]] Moment later(const Moment& moment, double minutes);

// "2026-11-26"
[[nodiscard]] std::string write_day(std::chrono::year_month_day day);

// "2026-11-26 09:30"
[[nodiscard]] std::string write_moment(const Moment& moment);

} // namespace clampwright::calendar
