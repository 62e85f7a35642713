// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/show_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/json/joint_json.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/workshop/joints.hpp"

namespace clampwright::cli {

std::string_view ShowCommand::summary() const { return "one joint at a glance"; }
std::string_view ShowCommand::usage() const { return "show JOINT"; }
std::vector<Example> ShowCommand::examples() const {
  return {{"show pump/clutch-hub", "by its name"},
          {"show head nuts", "by words that fit one joint"},
          {"show pump/clutch-hub --unit lbf.ft", "in the unit of your wrench"}};
}

void ShowCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> ShowCommand::run(const Context& context) {
  if (words_.empty())
    return refuse(Trouble::usage, "missing", "the joint is missing", {},
                  "write clampwright show pump/clutch-hub, or find it with clampwright find WORDS");
  const std::string words = fmt::format("{}", fmt::join(words_, " "));
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  const auto workshop = specdb::Workshop::open(*file);
  if (!workshop) return Refusal(workshop.error());
  const auto joint = specdb::find_joint(*workshop, words);
  if (!joint) return Refusal(joint.error());
  const specdb::Catalogue catalogue;
  const auto answer = specdb::answer_for(catalogue, *joint);
  if (!answer) return Refusal(answer.error());
  Outcome out = joint_outcome(*answer, context, workshop->is_invented());
  out.input = std::make_shared<Json>(Json{{"joint", words}});
  return out;
}

} // namespace clampwright::cli
