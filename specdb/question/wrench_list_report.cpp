// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/wrench_list_report.hpp"

#include <fmt/format.h>

#include "core/calendar/moment.hpp"
#include "core/report/tightening_report.hpp"
#include "specdb/question/joint_report.hpp"
#include "specdb/question/wrench_words.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using std::chrono::year_month_day;
using tightening::Upkeep;

std::string due_day_words(const Upkeep& upkeep) {
  const auto day = tightening::due_day(upkeep);
  return day ? calendar::write_day(*day) : "not known";
}

std::string due_words(const Upkeep& upkeep) {
  std::string words = due_day_words(upkeep);
  if (upkeep.cycles > 0) words += fmt::format(" or {} pulls", tightening::cycles_left(upkeep));
  return words;
}

// Where the day of the next calibration comes from.
std::string due_basis(const Upkeep& upkeep) {
  const auto day = tightening::due_day(upkeep);
  if (!day) return "no calibration is on record";
  if (upkeep.due == day) return "as its sheet says";
  return upkeep.months ? fmt::format("{} months after {}", *upkeep.months, calendar::write_day(*upkeep.calibrated))
                       : fmt::format("{} months after {}, where the shop rules nothing else (ISO 6789)",
                                     tightening::k_default_months, calendar::write_day(*upkeep.calibrated));
}

std::string pulls_words(const Upkeep& upkeep, year_month_day today) {
  std::string words = fmt::format("{} logged since its calibration; due after {}{}", upkeep.cycles,
                                  upkeep.cycle_limit.value_or(tightening::k_default_cycles),
                                  upkeep.cycle_limit ? "" : ", where the shop rules nothing else (ISO 6789)");
  const auto next = tightening::next_due(upkeep, today, pulls_a_day(upkeep, today));
  if (next && next->by_cycles)
    words += fmt::format("; as it has been used so far, on about {}", calendar::write_day(next->day));
  return words;
}

std::string scale_of(const tightening::Wrench& wrench) {
  return fmt::format("{} to {}", quantity::write_number(wrench.low, 6),
                     quantity::write_value(wrench.high, *wrench.unit, 6));
}

} // namespace

std::string use_words(const Upkeep& upkeep, year_month_day today) {
  const auto findings = tightening::upkeep_findings("", upkeep, today);
  if (findings.empty()) return "yes";
  switch (findings.front().code) {
  case Code::wrench_retired:
    return "no: retired";
  case Code::wrench_dropped:
    return upkeep.mishap->what == tightening::Mishap::drop ? "no: dropped" : "no: overloaded";
  case Code::wrench_overdue:
    return "no: overdue";
  default:
    return "not known";
  }
}

double pulls_a_day(const Upkeep& upkeep, year_month_day today) {
  if (!upkeep.calibrated || upkeep.cycles == 0) return 0;
  const auto days = (std::chrono::sys_days(today) - std::chrono::sys_days(*upkeep.calibrated)).count();
  return days > 0 ? static_cast<double>(upkeep.cycles) / static_cast<double>(days) : 0;
}

report::Document wrench_list_report(const std::vector<WrenchRecord>& wrenches, year_month_day today, bool invented) {
  report::Document document;
  document.title = wrenches.empty() ? "No torque wrench is recorded" : "Torque wrenches of the workshop";
  if (invented) document.banner = k_invented;
  if (wrenches.empty()) return document;
  report::Table table;
  table.columns = {{"", "Wrench", false, true}, {"", "Scale", false}, {"", "Marks"},
                   {"", "Turns", false},        {"", "Off by"},       {"", "Due", false},
                   {"", "Pulls left"},          {"", "To use", false}};
  for (const WrenchRecord& record : wrenches) {
    const tightening::Wrench wrench = registered_wrench(record);
    const Upkeep& upkeep = *wrench.upkeep;
    table.rows.push_back({record.slug, scale_of(wrench), wrench.step ? quantity::write_number(*wrench.step, 6) : "-",
                          record.turns == "both" ? "both ways" : record.turns,
                          quantity::write_share(wrench.accuracy.share), due_day_words(upkeep),
                          upkeep.cycles > 0 ? fmt::format("{}", tightening::cycles_left(upkeep)) : "-",
                          use_words(upkeep, today)});
  }
  document.sections.push_back({"", {}, std::move(table)});
  return document;
}

report::Document wrench_record_report(const WrenchRecord& record, const std::string& title,
                                      const quantity::DisplayUnits& units, year_month_day today, bool invented) {
  const tightening::Wrench wrench = registered_wrench(record);
  report::Document document;
  document.title = title;
  if (invented) document.banner = k_invented;
  report::Section section{"", {}};
  section.rows = {
      {"Wrench", record.name == record.slug ? record.name : fmt::format("{} [{}]", record.name, record.slug)},
      {"Scale", scale_words(wrench)},
      {"Turns", "calibrated " + direction_words(wrench)},
      {"Off by", fmt::format("± {} at the most ({}){}", quantity::write_share(wrench.accuracy.share),
                             wrench.accuracy.basis, record.accuracy_class ? ", class " + *record.accuracy_class : "")},
      {"Arm", wrench.arm
                  ? fmt::format("{} from the middle of the grip to the drive", quantity::write(*wrench.arm, units, 4))
                  : "not recorded; an adaptor needs it"},
      {"Due", fmt::format("{}: {}", due_words(*wrench.upkeep), due_basis(*wrench.upkeep))},
      {"Pulls", pulls_words(*wrench.upkeep, today)},
      {"To use", use_words(*wrench.upkeep, today)}};
  document.sections.push_back(std::move(section));
  if (!record.events.empty()) {
    report::Section log{"Log", {}};
    for (const EventRecord& event : record.events)
      log.rows.push_back(
          {event.on_date, fmt::format("{}{}{}", event.kind, event.cycles ? fmt::format(" {} times", *event.cycles) : "",
                                      event.words.empty() ? "" : ": " + event.words)});
    document.sections.push_back(std::move(log));
  }
  document.remarks = report::remarks_of(tightening::upkeep_findings(record.name, *wrench.upkeep, today), units);
  return document;
}

} // namespace clampwright::specdb
