// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include "core/report/tightening_report.hpp"
#include "core/report/wording.hpp"
#include "specdb/question/short_source.hpp"
#include "specdb/question/surfaces_question.hpp"

namespace clampwright::specdb {

namespace {

using quantity::DisplayUnits;
using report::Section;

std::string ratio_words(const quantity::Band<double>& band) {
  if (band.high < band.low * 1.000001) return quantity::write_rounded(band.likely, 3);
  return fmt::format("{} / {} / {} (low / likely / high): nobody knows it closer", quantity::write_rounded(band.low, 2),
                     quantity::write_rounded(band.likely, 3), quantity::write_rounded(band.high, 2));
}

std::string k_words(const friction::Surfaces& surfaces) {
  if (surfaces.sources.empty()) return fmt::format("{}, as given", surfaces.name);
  return fmt::format("{}: {}; K {} / {} / {}", surfaces.name, surfaces.description, surfaces.k.low.value(),
                     surfaces.k.likely.value(), surfaces.k.high.value());
}

std::string load_words(const tightening::ClampAnswer& clamp, const DisplayUnits& units) {
  const auto load = tightening::leading_preload(clamp);
  return fmt::format("{}{}", load ? quantity::write(*load, units) + " (low / likely / high); " : "",
                     report::verdict_text(clamp));
}

void add_rivals(Section& section, const char* label, const std::vector<RivalReduction>& rivals,
                const DisplayUnits& units) {
  for (const RivalReduction& rival : rivals)
    section.rows.push_back({&rival == &rivals.front() ? label : "",
                            fmt::format("× {}: {} ({}; {})", quantity::write_number(rival.published.factor, 3),
                                        quantity::write(rival.torque, units), rival.published.rule,
                                        short_source(rival.published.source))});
}

} // namespace

report::Document surfaces_document(const SurfacesReply& reply, const DisplayUnits& units) {
  report::Document document;
  document.title =
      fmt::format("{} for {}, on {}", quantity::write(reply.torque, units, 4), reply.stated.name, reply.fitted.name);
  Section section;
  section.rows.push_back({"Stated for", k_words(reply.stated)});
  section.rows.push_back({"Fitted", k_words(reply.fitted)});
  if (reply.running > quantity::Torque())
    section.rows.push_back({"Running", fmt::format("{} of it only runs the nut and is not corrected",
                                                   quantity::write(reply.running, units))});
  if (!reply.differs)
    section.rows.push_back(
        {"Torque", fmt::format("{} as it stands: it is for these surfaces already, and nothing is taken off again",
                               quantity::write(reply.torque, units, 4))});
  else if (!reply.corrected)
    section.rows.push_back({"Torque", "no correction: " + reply.no_correction_because});
  else {
    section.rows.push_back(
        {"Torque", fmt::format("{}, corrected once, by the ratio of the likely nut factors: one rule "
                               "among others, and not the maker's",
                               quantity::write(*reply.corrected, units, 4))});
    if (reply.by_thread_friction)
      section.rows.push_back(
          {"", fmt::format("by the likely thread friction it would be {}; the lesser is the careful one",
                           quantity::write(*reply.by_thread_friction, units, 3))});
    else if (!reply.as_stated)
      section.rows.push_back({"", "by thread friction it is another torque: add --thread, like --thread M8"});
    section.rows.push_back({"Ratio", fmt::format("{}", ratio_words(reply.ratio))});
  }
  if (reply.as_stated) section.rows.push_back({"Stated clamps", load_words(*reply.as_stated, units)});
  if (reply.uncorrected) section.rows.push_back({"Uncorrected", load_words(*reply.uncorrected, units)});
  if (reply.as_corrected) section.rows.push_back({"Corrected", load_words(*reply.as_corrected, units)});
  document.sections.push_back(std::move(section));
  Section beside{"Published rules, beside", {}};
  add_rivals(beside, "surfaces", reply.published, units);
  if (reply.differs && reply.published.empty())
    beside.rows.push_back({"surfaces", "no factor for this change is in the tables"});
  add_rivals(beside, "part", reply.for_part, units);
  if (!beside.rows.empty()) document.sections.push_back(std::move(beside));
  document.sources = reply.sources;
  document.remarks = report::remarks_of(reply.findings, units);
  document.has_foot = true;
  return document;
}

report::Document all_surfaces_document(const std::vector<friction::Surfaces>& surfaces) {
  report::Document document;
  document.title = "Surfaces";
  report::Table table{
      {{"", "name", false}, {"μ", "low"}, {"μ", "likely"}, {"μ", "high"}, {"K", "low"}, {"K", "likely"}, {"K", "high"}},
      {},
      {},
      {}};
  for (const friction::Surfaces& one : surfaces) {
    std::vector<std::string> row{one.name};
    for (const double value : {one.mu.low.value(), one.mu.likely.value(), one.mu.high.value(), one.k.low.value(),
                               one.k.likely.value(), one.k.high.value()})
      row.push_back(fmt::format("{:.2f}", value));
    table.rows.push_back(std::move(row));
  }
  document.sections.push_back({"", {}, std::move(table)});
  return document;
}

} // namespace clampwright::specdb
