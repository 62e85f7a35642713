// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/chart_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "cli/json/chart_json.hpp"
#include "cli/json/values_json.hpp"
#include "core/report/chart_report.hpp"
#include "core/report/html_writer.hpp"
#include "core/report/text_writer.hpp"
#include "core/text/plain_text.hpp"
#include "core/version/version.hpp"
#include "specdb/files/chart_csv.hpp"
#include "specdb/files/write_file.hpp"
#include "specdb/question/chart_question.hpp"

namespace clampwright::cli {

namespace {

constexpr const char* k_like = "chart --class 8.8,10.9 --from M6 --to M16 --surfaces oiled";
constexpr int k_file_width = 100; // a file has no terminal to ask

enum class Format { text, csv, html };

Result<Format> read_format(const std::optional<std::string>& text) {
  if (!text || text::equal_fold(*text, "text")) return Format::text;
  if (text::equal_fold(*text, "csv")) return Format::csv;
  if (text::equal_fold(*text, "html")) return Format::html;
  return not_understood("not-understood", "no format that is written here", *text, "write --format text, csv or html",
                        "--format");
}

std::string written(const tightening::Chart& chart, const report::Document& document, const report::Made& made,
                    Format format) {
  switch (format) {
  case Format::csv:
    return specdb::write_csv(specdb::chart_table(chart, made));
  case Format::html:
    return report::write_html(document);
  case Format::text:
    break;
  }
  return report::write_text(document, k_file_width);
}

} // namespace

std::string_view ChartCommand::summary() const { return "a torque chart with its basis on it"; }
std::string_view ChartCommand::usage() const {
  return "chart --class C,... [--from THREAD] [--to THREAD] [--surfaces NAME] [options]";
}
std::vector<Example> ChartCommand::examples() const {
  return {{k_like, "for 75 % of the proof load, if nothing else is said"},
          {"chart --class \"SAE 5,SAE 8\" --from 1/4 --to 1/2 --series UNF --units imperial", "inch threads"},
          {"chart --class A2-70 --to M12 --yield-fraction 70% --surfaces stainless-lubricated",
           "stainless steel has no proof load, so a share of yield"},
          {"chart --class 8.8 --surfaces oiled --format html", "a page to print; csv goes to a spreadsheet"}};
}
std::vector<std::pair<std::string, std::string>> ChartCommand::lists() const {
  auto lists = CaseOptions::lists();
  lists.emplace_back("SERIES", "metric: coarse, fine, all; inch: UNC, UNF, UNEF, coarse, fine, all");
  return lists;
}

void ChartCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--class", classes_, "strength classes with commas between: 8.8,10.9")->type_name("C,...");
  app.add_option("--from", from_, "smallest size: M6, 1/4")->type_name("THREAD");
  app.add_option("--to", to_, "greatest size")->type_name("THREAD");
  app.add_option("--series", series_, "coarse, or UNC and UNF, if not said")->type_name("NAME");
  app.add_option("--proof-fraction", proof_fraction_, "share of the proof load; 75% if not said")->type_name("X");
  app.add_option("--yield-fraction", yield_fraction_, "share of yield, at the lowest friction")->type_name("X");
  options_.declare(app, CaseOptions::Sizes::many);
  app.add_option("--format", format_, "text, csv or html (a page to print)")->type_name("F");
  app.add_option("--output", output_, "write to this file instead of standard output")->type_name("FILE");
  app.add_flag("--replace", replace_, "write over that file if it is there");
}

Json ChartCommand::echo() const {
  Json input = Json::object();
  put_text(input, "class", classes_);
  put_text(input, "from", from_);
  put_text(input, "to", to_);
  put_text(input, "series", series_);
  put_text(input, "proof_fraction", proof_fraction_);
  put_text(input, "yield_fraction", yield_fraction_);
  input.update(options_.echo());
  put_text(input, "format", format_);
  put_text(input, "output", output_);
  return input;
}

Result<Outcome> ChartCommand::run(const Context& context) {
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "chart takes no words", words_.front(),
                  fmt::format("name the sizes with --from and --to, like clampwright {}", k_like));
  if (!classes_)
    return refuse(Trouble::usage, "missing", "the class is missing: a chart without one rests on nothing", {},
                  fmt::format("write clampwright {}", k_like), "--class");
  const auto format = read_format(format_);
  if (!format) return Refusal(format.error());
  if (replace_ && !output_)
    return refuse(Trouble::usage, "missing", "--replace is for a file, and none is named", {}, "add --output FILE",
                  "--replace");
  if (output_ && output_->empty())
    return refuse(Trouble::usage, "missing", "the name of the file is empty", {}, "write --output chart.html",
                  "--output");
  if (context.json && format_ && !output_)
    return refuse(Trouble::usage, "surplus", "standard output can be JSON or another format, not both", *format_,
                  "leave out --json, or name a file for the other with --output", "--format");
  const specdb::Catalogue catalogue;
  const auto chart = specdb::chart_for(
      catalogue, {*classes_, from_, to_, series_, options_.question(), proof_fraction_, yield_fraction_});
  if (!chart) return Refusal(chart.error());

  const report::Made made{fmt::format("clampwright {}", k_version), catalogue.data_version(), context.today};
  Outcome out;
  out.input = std::make_shared<Json>(echo());
  out.result = std::make_shared<Json>(chart_json(*chart, made.data_version));
  out.findings = specdb::findings_of(*chart);
  out.document = report::chart_report(*chart, made, context.units);
  out.sources = out.document.sources;
  out.working = out.document.working;
  if (!context.explain) out.document.working.clear();
  for (const auto& row : chart->rows)
    if (tightening::is_not_to_be_set(row)) out.exit = ExitCode::check_failed;
  if (output_) {
    const auto done = specdb::write_file(*output_, written(*chart, out.document, made, *format),
                                         replace_ ? specdb::IfThere::replace : specdb::IfThere::refuse);
    if (!done) return Refusal(done.error());
    out.page = "";
    out.hints.push_back(fmt::format("{} rows written to {}", chart->rows.size(), text::quotable(*output_)));
  } else if (*format != Format::text) {
    out.page = written(*chart, out.document, made, *format);
  }
  return out;
}

} // namespace clampwright::cli
