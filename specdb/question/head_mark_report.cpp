// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/head_mark_report.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/report/tightening_report.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

namespace {

std::string_view verb(const HeadMark& row) {
  if (row.verdict == "means") return "means";
  return row.verdict == "may-mean" ? "may mean" : "says";
}

// A rule that was just told is not told again.
std::string sentence(const HeadMark& row, std::string_view told) {
  std::string text = fmt::format("On a {} it {}: {}", row.parts_in_words(), verb(row), row.meaning);
  if (row.system) text += fmt::format(" ({})", *row.system);
  text += row.rule == told ? "." : fmt::format("; {}.", row.rule);
  if (row.class_name && !row.in_tables) text += " Its strength is not in the tables here.";
  return text;
}

std::string not_listed(const HeadMarkAnswer& answer) {
  std::string text = answer.part ? fmt::format("No table here lists this mark on a {}.", *answer.part)
                                 : "No table here lists this mark.";
  if (std::ranges::none_of(answer.reading, text::is_digit)) text += " It may be a maker's alone.";
  return text;
}

bool is_bolt_class(const HeadMark& row) { return row.class_name && row.in_tables && row.part != "nut"; }

} // namespace

std::string head_mark_advice(const HeadMarkAnswer& answer) {
  constexpr const char* k_unknown = "Treat the class as unknown: take no torque or load that rests on a class, and "
                                    "write --class unknown.";
  if (answer.readings.empty() || answer.readings.front().verdict == "not-known") return k_unknown;
  std::vector<std::string> classes;
  for (const HeadMark& row : answer.readings)
    if (is_bolt_class(row) && std::ranges::find(classes, *row.class_name) == classes.end())
      classes.push_back(*row.class_name);
  const auto quoted = [](const std::string& name) {
    return name.find(' ') == std::string::npos ? name : "\"" + name + "\"";
  };
  if (classes.size() == 1) {
    const std::string name = quoted(classes.front());
    const bool sure = std::ranges::any_of(
        answer.readings, [](const HeadMark& row) { return is_bolt_class(row) && row.verdict == "means"; });
    return sure ? fmt::format("clamp and torque take it with --class {}.", name)
                : fmt::format("Make sure that it is that: then clamp and torque take --class {}, until then write "
                              "--class unknown.",
                              name);
  }
  if (classes.size() > 1)
    return "Find out which of these it is before you take a figure for a class; until then write --class unknown.";
  const bool nut = std::ranges::any_of(answer.readings, [](const HeadMark& row) { return row.part == "nut"; });
  if (nut) return "The bolt sets the torque: read its mark as well, and see that the nut is not of a lower class.";
  if (answer.hand) return "Tighten and undo it the other way round, and read the class as well.";
  return k_unknown;
}

report::Document head_mark_report(const HeadMarkAnswer& answer, std::string_view text) {
  report::Document document;
  document.title = text.empty() ? "No mark" : fmt::format("Mark \"{}\"", text::quotable(text));
  report::Section read{"", {{"Read as", answer.reading}}};
  if (answer.maker_mark)
    read.rows.push_back(
        {"Maker's mark", fmt::format("{}: it tells who made the part, not how strong it is", *answer.maker_mark)});
  if (answer.not_read) read.rows.push_back({"Not read", fmt::format("{}: nobody lists it", *answer.not_read)});
  if (answer.part) read.rows.push_back({"Part", *answer.part});
  document.sections.push_back(std::move(read));
  report::Section means{"What it stands for", {}};
  std::string_view told;
  for (const HeadMark& row : answer.readings) {
    means.rows.push_back({row.class_name.value_or("no class"), sentence(row, told)});
    told = row.rule;
  }
  if (answer.readings.empty()) means.rows.push_back({"not known", not_listed(answer)});
  document.sections.push_back(std::move(means));
  if (!answer.look_alikes.empty()) {
    report::Section alike{"Easily taken for it", {}};
    for (const std::string& item : answer.look_alikes)
      alike.rows.push_back({"", "– " + item});
    document.sections.push_back(std::move(alike));
  }
  document.sections.push_back({"What to do", {{"", head_mark_advice(answer)}}});
  for (const HeadMark& row : answer.readings)
    if (std::ranges::find(document.sources, row.source) == document.sources.end())
      document.sources.push_back(row.source);
  document.remarks = report::remarks_of(answer.findings, {});
  return document;
}

} // namespace clampwright::specdb
