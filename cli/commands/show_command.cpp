// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/show_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/joint_json.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/wrenches.hpp"

namespace clampwright::cli {

std::string_view ShowCommand::summary() const { return "one joint at a glance"; }
std::string_view ShowCommand::usage() const { return "show JOINT [--wrench NAME] [--wrenches] [--as-fitted SURFACES]"; }
std::vector<Example> ShowCommand::examples() const {
  return {{"show pump/clutch-hub", "by its name"},
          {"show head nuts", "by words that fit one joint"},
          {"show pump/clutch-hub --unit lbf.ft", "in the unit of your wrench"},
          {"show pump/head-nuts --wrench A", "with a wrench of the workshop: its setting, or why not"},
          {"show pump/head-nuts --wrenches", "which wrenches of the workshop suit, and why the others do not"},
          {"show exhaust nuts --as-fitted anti-seize", "on other surfaces than the figure is for"}};
}

void ShowCommand::declare(CLI::App& app) {
  app.add_option("--wrench", wrench_, "a torque wrench of the workshop")->type_name("NAME");
  app.add_flag("--wrenches", wrenches_, "which wrenches of the workshop suit, and why the others do not");
  app.add_option("--as-fitted", as_fitted_, "surfaces on the bench, where they are not the figure's")
      ->type_name("SURFACES");
  declare_words(app);
}

Result<Outcome> ShowCommand::run(const Context& context) {
  if (words_.empty())
    return refuse(Trouble::usage, "missing", "the joint is missing", {},
                  "write clampwright show pump/clutch-hub, or find it with clampwright find WORDS");
  const std::string words = fmt::format("{}", fmt::join(words_, " "));
  const auto workshop = open_workshop(context);
  if (!workshop) return Refusal(workshop.error());
  const auto joint = specdb::find_joint(*workshop, words);
  if (!joint) return Refusal(joint.error());
  specdb::JointRequest request{{}, as_fitted_, context.today};
  if (wrenches_) request.wrenches = specdb::all_wrenches(*workshop);
  if (wrench_) {
    auto wrench = specdb::find_wrench(*workshop, *wrench_);
    if (!wrench) return in_field(wrench.error(), "--wrench");
    request.wrench = std::move(*wrench);
  }
  const specdb::Catalogue catalogue;
  const auto answer = specdb::answer_for(catalogue, *joint, request);
  if (!answer) return Refusal(answer.error());
  Outcome out = joint_outcome(*answer, context, workshop->is_invented());
  Json input{{"joint", words}};
  if (wrench_) input["wrench"] = *wrench_;
  if (wrenches_) input["wrenches"] = true;
  if (as_fitted_) input["as_fitted"] = *as_fitted_;
  out.input = std::make_shared<Json>(std::move(input));
  if (!answer->figure.torque)
    out.hints.push_back(fmt::format("next: `clampwright workup {}` works an estimate up; it takes no maker's place",
                                    answer->joint.slug));
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  return out;
}

} // namespace clampwright::cli
