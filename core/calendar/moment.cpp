// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/moment.hpp"

#include <cmath>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"

namespace clampwright::calendar {

namespace {

constexpr int k_minutes_of_day = 24 * 60;
constexpr int k_first_year = 1900;
constexpr int k_last_year = 2999;
// 0 stands for a digit, a blank for a blank or a T.
constexpr std::string_view k_day_form = "0000-00-00";
constexpr std::string_view k_form = "0000-00-00 00:00";

bool has_form(std::string_view text, std::string_view form) {
  if (text.size() != form.size()) return false;
  for (std::size_t i = 0; i < form.size(); ++i) {
    const bool fits = form[i] == '0'   ? text::is_digit(text[i])
                      : form[i] == ' ' ? text[i] == ' ' || text[i] == 'T'
                                       : text[i] == form[i];
    if (!fits) return false;
  }
  return true;
}

int number(std::string_view digits) {
  int value = 0;
  for (const char c : digits)
    value = 10 * value + (c - '0');
  return value;
}

// Precondition: the text begins in the form of a day.
std::chrono::year_month_day day_in(std::string_view text) {
  return {std::chrono::year(number(text.substr(0, 4))),
          std::chrono::month(static_cast<unsigned>(number(text.substr(5, 2)))),
          std::chrono::day(static_cast<unsigned>(number(text.substr(8, 2))))};
}

bool is_in_calendar(std::chrono::year_month_day day) {
  return day.ok() && static_cast<int>(day.year()) >= k_first_year && static_cast<int>(day.year()) <= k_last_year;
}

Refusal refused(const char* why, std::string_view text, const char* hint) {
  return not_understood("not-understood", why, text, hint);
}

} // namespace

Result<std::chrono::year_month_day> read_day(std::string_view text) {
  constexpr const char* hint = "write a day like 2026-11-26";
  const std::string plain = text::plain_spaces(text);
  if (!has_form(plain, k_day_form)) return refused("no day", text, hint);
  const auto day = day_in(plain);
  if (!is_in_calendar(day)) return refused("the calendar has no such day", text, hint);
  return day;
}

Result<Moment> read_moment(std::string_view text) {
  constexpr const char* hint = "write day and time like 2026-11-26 09:30";
  const std::string plain = text::plain_spaces(text);
  if (!has_form(plain, k_form)) return refused("no day and time", text, hint);
  const std::string_view digits = plain;
  const auto day = day_in(digits);
  const int hours = number(digits.substr(11, 2));
  const int minutes = number(digits.substr(14, 2));
  if (!is_in_calendar(day)) return refused("the calendar has no such day", text, hint);
  if (hours > 23 || minutes > 59) return refused("the clock has no such time", text, hint);
  return Moment{day, hours * 60 + minutes};
}

Moment later(const Moment& moment, double minutes) {
  const long long all = moment.minute + static_cast<long long>(std::ceil(minutes - 1e-6));
  const auto days = std::chrono::local_days(moment.day) + std::chrono::days(all / k_minutes_of_day);
  return {std::chrono::year_month_day(days), static_cast<int>(all % k_minutes_of_day)};
}

std::optional<std::chrono::year_month_day> stored_day(std::string_view text) {
  const auto day = read_day(text);
  return day ? std::optional(*day) : std::nullopt;
}

std::string write_day(std::chrono::year_month_day day) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                     static_cast<unsigned>(day.day()));
}

std::string write_moment(const Moment& moment) {
  return fmt::format("{} {:02}:{:02}", write_day(moment.day), moment.minute / 60, moment.minute % 60);
}

} // namespace clampwright::calendar
