// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/thread_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/commands/any_pitch.hpp"
#include "cli/json/size_json.hpp"
#include "cli/json/values_json.hpp"
#include "core/report/thread_report.hpp"
#include "core/thread/geometry.hpp"
#include "specdb/catalogue/size_facts.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/size_report.hpp"

namespace clampwright::cli {

std::string_view ThreadCommand::summary() const { return "the dimensions of a thread"; }
std::string_view ThreadCommand::usage() const { return "thread THREAD [--any-pitch]"; }
std::vector<Example> ThreadCommand::examples() const {
  return {{"thread M10x1.25", "a metric fine thread"},
          {"thread \"1/4-28 UNF\"", "a Unified thread"},
          {"thread M14x1.5-LH", "a left-hand thread"},
          {"thread M8x1.3 --any-pitch", "a thread that no table lists"}};
}

void ThreadCommand::declare(CLI::App& app) {
  declare_words(app);
  declare_any_pitch(app, any_pitch_);
}

Result<Outcome> ThreadCommand::run(const Context& context) {
  const auto text = only_word("a thread", "thread \"1/4-28 UNF\"");
  if (!text) return Refusal(text.error());
  const specdb::Catalogue catalogue;
  const auto found =
      any_pitch_ ? specdb::find_thread_of_any_pitch(catalogue, *text) : specdb::find_thread(catalogue, *text);
  if (!found) return with_any_pitch(catalogue, *text, found.error());
  Outcome out;
  Json input{{"thread", *text}};
  if (any_pitch_) input["any_pitch"] = true;
  out.input = std::make_shared<Json>(std::move(input));
  const specdb::SizeFacts facts = specdb::size_facts(catalogue, found->thread);
  Json result = thread_json(found->thread, found->stress_area_table, found->limits);
  result.update(size_json(found->thread, facts));
  out.result = std::make_shared<Json>(std::move(result));
  if (found->thread.hand == thread::Hand::left)
    out.findings.push_back({finding::Code::left_hand, finding::Severity::mind, {}});
  if (!found->thread.listed)
    out.findings.push_back({finding::Code::thread_not_listed,
                            finding::Severity::mind,
                            {found->thread.designation, std::string(thread::form_standard(found->thread.form))}});
  out.working = thread::geometry_working(found->thread);
  out.document =
      report::thread_report(found->thread, found->stress_area_table, found->limits, found->sources, context.units);
  auto section = specdb::size_section(found->thread, facts, context.units);
  if (!section.rows.empty()) out.document.sections.push_back(std::move(section));
  for (const Source& source : facts.sources)
    out.document.sources.push_back(source);
  out.sources = out.document.sources;
  return out;
}

} // namespace clampwright::cli
