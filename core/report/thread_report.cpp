// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/thread_report.hpp"

#include <fmt/format.h>

#include "core/thread/designation.hpp"
#include "core/thread/geometry.hpp"
#include "core/thread/turning.hpp"

namespace clampwright::report {

namespace {

using quantity::DisplayUnits;
using quantity::write;
using quantity::write_number;

std::string area_text(quantity::Area area, int digits) {
  const double mm2 = quantity::in_square_millimetres(area);
  return fmt::format("{} mm² = {} in²", write_number(mm2, digits), write_number(mm2 / 645.16, digits));
}

std::string pitch_text(const thread::Thread& thread, const DisplayUnits& units) {
  if (thread.tpi)
    return fmt::format("{} ({} threads per inch)", write(thread.pitch, units), write_number(*thread.tpi, 4));
  return write(thread.pitch, units);
}

Section limits_section(const thread::Limits& limits, const DisplayUnits& units) {
  const auto range = [&](quantity::Length low, quantity::Length high) {
    return fmt::format("{} to {}", write(low, units), write(high, units));
  };
  return {fmt::format("Limits of size ({} bolt, {} nut)", limits.external_class, limits.internal_class),
          {{"bolt major diameter", range(limits.d_min, limits.d_max)},
           {"bolt pitch diameter", range(limits.d2_min, limits.d2_max)},
           {"bolt root", fmt::format("at most {}", write(limits.d3_max, units))},
           {"nut minor diameter", range(limits.D1_min, limits.D1_max)},
           {"nut pitch diameter", range(limits.D2_min, limits.D2_max)},
           {"nut major diameter", fmt::format("at least {}", write(limits.D_min, units))}}};
}

} // namespace

std::string_view form_words(thread::Form form) {
  switch (form) {
  case thread::Form::metric:
    return "ISO metric";
  case thread::Form::unified:
    return "Unified";
  case thread::Form::whitworth:
    return "Whitworth";
  case thread::Form::ba:
    return "BA";
  case thread::Form::bsc:
    return "British standard cycle";
  }
  return "";
}

Document thread_report(const thread::Thread& thread, std::optional<quantity::Area> stress_area_table,
                       const std::optional<thread::Limits>& limits, const std::vector<Source>& sources,
                       const DisplayUnits& units) {
  const thread::Geometry geometry = thread::geometry_of(thread);
  Document document;
  document.title = fmt::format("{}, {} thread, {}-hand", thread::write_designation(thread), form_words(thread.form),
                               thread::hand_name(thread.hand));
  Section basic{"", {}};
  basic.rows.push_back({"Diameter", write(thread.diameter, units)});
  basic.rows.push_back({"Pitch", pitch_text(thread, units)});
  basic.rows.push_back({"Series", thread.listed ? thread.series : "none: not in the tables"});
  basic.rows.push_back({"Pitch diameter", write(geometry.pitch_diameter, units)});
  basic.rows.push_back({"Minor diameter", fmt::format("{} (nut, basic)", write(geometry.minor_diameter, units))});
  basic.rows.push_back({"Root diameter", fmt::format("{} (bolt)", write(geometry.root_diameter, units))});
  basic.rows.push_back({"Stress area", geometry.stress_area ? area_text(*geometry.stress_area, 4)
                                                            : "none is standardised for this form"});
  if (stress_area_table)
    basic.rows.push_back({"", fmt::format("{} as the standard prints it", area_text(*stress_area_table, 3))});
  basic.rows.push_back(
      {"Flank angle", fmt::format("{}°", write_number(quantity::in_degrees(geometry.flank_angle), 4))});
  basic.rows.push_back({"Tightens", fmt::format("{}, looking at the nut or head that is turned",
                                                thread::turn_name(thread::turn_to_tighten(thread.hand)))});
  document.sections.push_back(std::move(basic));
  if (limits) document.sections.push_back(limits_section(*limits, units));
  document.working = thread::geometry_working(thread);
  document.sources = sources;
  if (limits) document.sources.push_back(limits->source);
  return document;
}

} // namespace clampwright::report
