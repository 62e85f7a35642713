// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/size_report.hpp"

#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/thread/geometry.hpp"

namespace clampwright::specdb {

namespace {

using quantity::DisplayUnits;
using quantity::Length;
using quantity::write;
using Rows = std::vector<report::Row>;

// The first row of a kind carries its label.
class Labelled {
 public:
  Labelled(Rows& rows, std::string label) : rows_(rows), label_(std::move(label)) {}
  void add(std::string value) { rows_.push_back({std::exchange(label_, {}), std::move(value)}); }

 private:
  Rows& rows_;
  std::string label_;
};

void add_holes(Rows& rows, const thread::Thread& thread, const ClearanceHoles& holes, const DisplayUnits& units) {
  if (const auto tap = thread::tapping_hole(thread))
    rows.push_back({"Tapping hole", fmt::format("{} (diameter less pitch, common practice)", write(*tap, units))});
  if (holes.fine && holes.medium && holes.coarse)
    rows.push_back({"Clearance hole",
                    fmt::format("{} {}, {} {}, {} {}", write(*holes.fine, units),
                                thread.form == thread::Form::metric ? "fine" : "close", write(*holes.medium, units),
                                thread.form == thread::Form::metric ? "medium" : "normal", write(*holes.coarse, units),
                                thread.form == thread::Form::metric ? "coarse" : "loose")});
}

// One row for each width, so that two hexagons of one standard's width are seen to take the same spanner.
void add_tools(Rows& rows, const std::vector<ToolSize>& tools, bool keys, const DisplayUnits& units) {
  std::vector<std::pair<std::string, std::string>> by_width;
  for (const ToolSize& tool : tools) {
    if (tool.is_key != keys) continue;
    std::string width = write(tool.width, units);
    if (!tool.marking.empty()) width += fmt::format(" (marked {})", tool.marking);
    const std::string words = fmt::format("{} {}", tool.fastener, tool.standard);
    bool found = false;
    for (auto& [known, list] : by_width)
      if (known == width) {
        list += ", " + words;
        found = true;
      }
    if (!found) by_width.emplace_back(std::move(width), words);
  }
  Labelled labelled(rows, keys ? "Hexagon key" : "Spanner");
  for (const auto& [width, list] : by_width)
    labelled.add(fmt::format("{}: {}", width, list));
}

void add_nuts(Rows& rows, const std::vector<NutSize>& nuts, const DisplayUnits& units) {
  Labelled labelled(rows, "Nut");
  for (const NutSize& nut : nuts)
    labelled.add(
        fmt::format("{} high{}, {} across flats: {} {}", write(nut.height, units),
                    nut.thread_height ? fmt::format(" (thread at least {})", write(*nut.thread_height, units)) : "",
                    write(nut.across_flats, units), nut.kind, nut.standard));
}

void add_washers(Rows& rows, const std::vector<WasherSize>& washers, const DisplayUnits& units) {
  Labelled labelled(rows, "Washer");
  for (const WasherSize& washer : washers)
    labelled.add(fmt::format("{} outside, {} inside, {} thick: {}, {}", write(washer.outer, units),
                             write(washer.inner, units), write(washer.thickness, units), washer.kind, washer.standard));
}

} // namespace

report::Section size_section(const thread::Thread& thread, const SizeFacts& facts, const DisplayUnits& units) {
  report::Section section{"Goes with it", {}};
  if (const auto area = thread::section_by_analogy(thread)) {
    const double mm2 = quantity::in_square_millimetres(*area);
    section.rows.push_back(
        {"Section", fmt::format("{} mm² = {} in², by analogy: no standard gives one; mean of pitch "
                                "and minor diameter",
                                quantity::write_number(mm2, 4), quantity::write_number(mm2 / 645.16, 4))});
  }
  add_holes(section.rows, thread, facts.holes, units);
  add_tools(section.rows, facts.tools, false, units);
  add_tools(section.rows, facts.tools, true, units);
  add_nuts(section.rows, facts.nuts, units);
  add_washers(section.rows, facts.washers, units);
  return section;
}

} // namespace clampwright::specdb
