// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/headmark_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "specdb/question/head_mark_report.hpp"

namespace clampwright::cli {

namespace {

Json reading_json(const specdb::HeadMark& row) {
  return {{"class", text_or_null(row.class_name)},
          {"system", text_or_null(row.system)},
          {"verdict", row.verdict},
          {"mark", row.mark},
          {"part", row.part},
          {"meaning", row.meaning},
          {"rule", row.rule},
          {"in_tables", row.in_tables}};
}

Json answer_json(const specdb::HeadMarkAnswer& answer) {
  Json classes = Json::array();
  for (const specdb::HeadMark& row : answer.readings)
    classes.push_back(reading_json(row));
  if (classes.empty())
    classes.push_back({{"class", nullptr},
                       {"system", nullptr},
                       {"verdict", "not-known"},
                       {"mark", answer.reading},
                       {"part", text_or_null(answer.part)},
                       {"meaning", "nobody lists this mark"},
                       {"rule", nullptr},
                       {"in_tables", false}});
  return {{"reading", answer.reading},
          {"maker_mark", text_or_null(answer.maker_mark)},
          {"not_read", text_or_null(answer.not_read)},
          {"part", text_or_null(answer.part)},
          {"classes", std::move(classes)},
          {"hand", answer.hand ? Json(thread::hand_name(*answer.hand)) : Json(nullptr)},
          {"look_alikes", answer.look_alikes},
          {"advice", specdb::head_mark_advice(answer)}};
}

} // namespace

std::string_view HeadmarkCommand::summary() const { return "the class from a mark on a head or nut"; }
std::string_view HeadmarkCommand::usage() const { return "headmark TEXT [--part bolt|screw|stud|nut]"; }
std::vector<Example> HeadmarkCommand::examples() const {
  return {{"headmark \"XYZ 8.8\"", "figures beside a maker's mark"},
          {"headmark \"6 radial lines\"", "an inch bolt"},
          {"headmark 8 --part nut", "a nut"},
          {"headmark \"dot 12 bar 10\"", "the clock face of a nut"},
          {"headmark none", "a head without a mark"}};
}

void HeadmarkCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--part", part_, "where the mark stands: bolt, screw, stud or nut")->type_name("PART");
}

Result<Outcome> HeadmarkCommand::run(const Context&) {
  if (words_.empty())
    return refuse(Trouble::usage, "missing", "the mark is missing", {},
                  "write what stands on the head, like clampwright headmark 8.8, or clampwright headmark none");
  const std::string text = fmt::format("{}", fmt::join(words_, " "));
  const specdb::Catalogue catalogue;
  const auto answer = specdb::read_head_mark(catalogue, text, part_);
  if (!answer) return Refusal(answer.error());
  Outcome out;
  Json input{{"text", text}};
  if (part_) input["part"] = *part_;
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(answer_json(*answer));
  out.findings = answer->findings;
  out.document = specdb::head_mark_report(*answer, text);
  out.sources = out.document.sources;
  return out;
}

} // namespace clampwright::cli
