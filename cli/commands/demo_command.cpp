// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/demo_command.hpp"

#include <filesystem>

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "cli/json/joint_json.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/demo/demo_workshop.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/sql/error.hpp"
#include "specdb/workshop/joints.hpp"

namespace clampwright::cli {

namespace {

Refusal not_the_demo(const std::filesystem::path& path, const std::string& why) {
  return refuse(Trouble::cannot_create, "cannot-create",
                fmt::format("another file has that name ({}); it was left alone", why), path.string(),
                "give the demo a file of its own: clampwright --workshop demo.clampwright demo");
}

} // namespace

std::string_view DemoCommand::summary() const { return "make the invented demo workshop, show its first joint"; }
std::string_view DemoCommand::usage() const { return "demo"; }
std::vector<Example> DemoCommand::examples() const { return {{"demo", "the first joint of the demo"}}; }

void DemoCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> DemoCommand::run(const Context& context) {
  try {
    return made_or_shown(context);
  } catch (const specdb::DatabaseError& error) {
    if (error.trouble() != Trouble::not_understood) throw;
    return not_the_demo(context.workshop, fmt::format("damaged: {}", error.what()));
  }
}

Result<Outcome> DemoCommand::made_or_shown(const Context& context) const {
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "demo takes no words", words_.front(),
                  "write clampwright demo, then clampwright find WORDS");
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  std::error_code error;
  const bool made = !std::filesystem::exists(std::filesystem::symlink_status(*file, error));
  if (made)
    if (auto created = specdb::make_demo_workshop(*file, context.today); !created) return Refusal(created.error());
  const auto workshop = specdb::Workshop::open(*file);
  if (!workshop) {
    if (workshop.error().trouble == Trouble::busy) return Refusal(workshop.error());
    return not_the_demo(*file, workshop.error().message);
  }
  if (!workshop->is_invented()) return not_the_demo(*file, "a workshop, but not the demo");
  const auto slugs = specdb::joint_slugs(*workshop);
  if (slugs.empty()) return not_the_demo(*file, "a demo without joints");
  const specdb::Catalogue catalogue;
  const auto joint = specdb::joint_of_slug(*workshop, slugs.front());
  if (!joint) return not_the_demo(*file, "damaged: its first joint is not there");
  const auto answer = specdb::answer_for(catalogue, *joint);
  if (!answer) return Refusal(answer.error());
  Outcome out = joint_outcome(*answer, context, true);
  out.input = std::make_shared<Json>(Json{{"workshop", file->string()}, {"made", made}});
  if (made) out.hints.push_back(fmt::format("made the demo workshop in {}", text::quotable(file->string())));
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  out.hints.emplace_back("next: clampwright find nuts; clampwright show pump/head-nuts");
  return out;
}

} // namespace clampwright::cli
