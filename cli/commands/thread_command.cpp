// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/thread_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "core/report/thread_report.hpp"
#include "core/thread/geometry.hpp"
#include "specdb/catalogue/threads.hpp"

namespace clampwright::cli {

std::string_view ThreadCommand::summary() const { return "the dimensions of a thread"; }
std::string_view ThreadCommand::usage() const { return "thread THREAD"; }
std::vector<Example> ThreadCommand::examples() const {
  return {{"thread M10x1.25", "a metric fine thread"},
          {"thread \"1/4-28 UNF\"", "a Unified thread"},
          {"thread M14x1.5-LH", "a left-hand thread"}};
}

void ThreadCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> ThreadCommand::run(const Context& context) {
  const auto text = only_word("a thread", "thread \"1/4-28 UNF\"");
  if (!text) return Refusal(text.error());
  const specdb::Catalogue catalogue;
  const auto found = specdb::find_thread(catalogue, *text);
  if (!found) return Refusal(found.error());
  Outcome out;
  out.input = std::make_shared<Json>(Json{{"thread", *text}});
  out.result = std::make_shared<Json>(thread_json(found->thread, found->stress_area_table, found->limits));
  if (found->thread.hand == thread::Hand::left)
    out.findings.push_back({finding::Code::left_hand, finding::Severity::mind, {}});
  out.working = thread::geometry_working(found->thread);
  out.document =
      report::thread_report(found->thread, found->stress_area_table, found->limits, found->sources, context.units);
  out.sources = out.document.sources;
  return out;
}

} // namespace clampwright::cli
