// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/wrench_words.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/calendar/moment.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

namespace {

using tightening::Mishap;

// More than any wrench sees; twice as many are still a whole number.
constexpr int k_many_cycles = 1'000'000'000;

Refusal no_range(std::string_view text) {
  return not_understood("not-understood", "the two ends of a scale are wanted, lower first", text,
                        "write them with two points and the unit, like 10..60Nm");
}

// An event counts if it is later than the last calibration; on the same day, if it was entered behind it.
bool is_later(const EventRecord& event, const std::string& day) { return event.on_date >= day; }

} // namespace

Result<ScaleRange> read_scale_range(std::string_view text) {
  const std::size_t dots = text.find("..");
  if (dots == std::string_view::npos) return no_range(text);
  const auto high = quantity::read_quantity(text.substr(dots + 2), quantity::Kind::torque);
  if (!high) return Refusal(high.error());
  const std::string_view first = text.substr(0, dots);
  double low = 0;
  if (const auto bare = quantity::read_number(first)) {
    low = *bare;
  } else {
    const auto reading = quantity::read_quantity(first, quantity::Kind::torque);
    if (!reading) return Refusal(reading.error());
    if (reading->unit != high->unit)
      return not_understood("two-units",
                            fmt::format("one end is in {}, the other in {}", reading->unit->name, high->unit->name),
                            text, "write both ends as they stand on the scale, like 10..60Nm");
    low = reading->value;
  }
  if (!(low > 0 && low < high->value))
    return not_understood("out-of-range",
                          fmt::format("a scale from {:.6g} to {:.6g} {} was understood; it begins above nothing and "
                                      "rises",
                                      low, high->value, high->unit->name),
                          text, "write the lowest mark first, like 10..60Nm");
  return ScaleRange{low, high->value, high->unit};
}

Result<double> read_scale_step(std::string_view text, const quantity::Unit& unit) {
  const auto step = quantity::read_quantity(text, quantity::Kind::torque);
  if (!step) return Refusal(step.error());
  if (step->unit != &unit)
    return not_understood("two-units",
                          fmt::format("the marks are in {} and the scale is in {}", step->unit->name, unit.name), text,
                          fmt::format("write what stands on the scale, like 0.5{}", unit.name));
  if (!(step->value > 0))
    return not_understood("out-of-range", "marks on top of each other were understood", text,
                          "write the distance of two marks, like 0.5Nm");
  return step->value;
}

Result<double> read_accuracy(std::string_view text) {
  const auto share = quantity::read_share(text);
  if (!share) return share;
  if (!(*share > 0 && *share < 1))
    return not_understood(
        "out-of-range",
        fmt::format("{} was understood; above nothing and under one is wanted", quantity::write_share(*share)), text,
        "write a share, like 4%");
  return share;
}

Result<std::chrono::year_month_day> read_past_day(std::string_view text, std::chrono::year_month_day today) {
  auto day = calendar::read_day(text);
  if (day && *day > today)
    return not_understood("out-of-range", "a day still to come was understood", text,
                          fmt::format("write a day up to today, {}", calendar::write_day(today)));
  return day;
}

tightening::Upkeep upkeep_of(const WrenchRecord& record) {
  tightening::Upkeep upkeep;
  std::string since = record.calibrated_on.value_or("");
  std::size_t first = 0;
  for (std::size_t i = 0; i < record.events.size(); ++i)
    if (record.events[i].kind == "calibrated" && is_later(record.events[i], since)) {
      since = record.events[i].on_date;
      first = i + 1;
    }
  upkeep.calibrated = calendar::stored_day(since);
  upkeep.months = record.calibration_months;
  upkeep.cycle_limit = record.calibration_cycles;
  if (record.due_on) upkeep.due = calendar::stored_day(*record.due_on);
  for (std::size_t i = 0; i < record.events.size(); ++i) {
    const EventRecord& event = record.events[i];
    if (event.on_date < since || (event.on_date == since && i < first)) continue;
    if (event.kind == "used") upkeep.cycles = std::min(k_many_cycles, upkeep.cycles + event.cycles.value_or(0));
    const bool drop = event.kind == "drop";
    const auto day = calendar::stored_day(event.on_date);
    if ((drop || event.kind == "overload") && day && (!upkeep.mishap || *day < upkeep.mishap->day))
      upkeep.mishap = tightening::MishapOn{drop ? Mishap::drop : Mishap::overload, *day};
  }
  if (record.retired_on)
    if (const auto day = calendar::stored_day(*record.retired_on))
      upkeep.retired = tightening::Retired{*day, record.retired_because.value_or("no reason is on record")};
  return upkeep;
}

tightening::Wrench registered_wrench(const WrenchRecord& record) {
  std::optional<quantity::Length> arm;
  if (record.arm_mm) arm = quantity::millimetres(*record.arm_mm);
  return {record.name,
          record.low,
          record.high,
          &quantity::unit_named(record.unit),
          record.step,
          {record.accuracy, record.accuracy_basis},
          record.turns != "anticlockwise",
          record.turns != "clockwise",
          upkeep_of(record),
          arm};
}

std::string scale_words(const tightening::Wrench& wrench) {
  const std::string marks = wrench.step ? fmt::format("marks {} apart", quantity::write_number(*wrench.step, 6))
                                        : "the distance of its marks not said";
  if (!(wrench.high < tightening::k_no_end))
    return fmt::format("in {}, its ends not said, {}", wrench.unit->symbol, marks);
  return fmt::format("{} to {}, {}", quantity::write_number(wrench.low, 6),
                     quantity::write_value(wrench.high, *wrench.unit, 6), marks);
}

std::string direction_words(const tightening::Wrench& wrench) {
  if (wrench.turns_clockwise && wrench.turns_anticlockwise) return "both ways";
  return wrench.turns_clockwise ? "clockwise only" : "anticlockwise only";
}

} // namespace clampwright::specdb
