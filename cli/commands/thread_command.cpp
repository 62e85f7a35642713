// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/thread_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/commands/any_pitch.hpp"
#include "cli/json/size_json.hpp"
#include "cli/json/values_json.hpp"
#include "specdb/question/thread_question.hpp"

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
  const auto reply = specdb::answer_thread(catalogue, {*text, any_pitch_});
  if (!reply) return Refusal(reply.error());
  Outcome out;
  Json input{{"thread", *text}};
  if (any_pitch_) input["any_pitch"] = true;
  out.input = std::make_shared<Json>(std::move(input));
  const specdb::ThreadEntry& entry = reply->entry;
  Json result = thread_json(entry.thread, entry.stress_area_table, entry.limits);
  result.update(size_json(entry.thread, reply->facts));
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = reply->findings;
  out.document = specdb::thread_document(*reply, context.units);
  out.working = out.document.working;
  out.sources = out.document.sources;
  return out;
}

} // namespace clampwright::cli
