// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/angle_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/json/stack_json.hpp"

namespace clampwright::cli {

std::string_view AngleCommand::summary() const { return "the clamp load that an angle adds to a snug torque"; }
std::string_view AngleCommand::usage() const {
  return "angle THREAD --snug Q --angle Q --grip Q --part-material NAME [options]";
}
std::vector<Example> AngleCommand::examples() const {
  return {
      {"angle M10 --class 10.9 --snug 20Nm --angle 60deg --surfaces oiled --grip 30mm --part-material cast-aluminium",
       "a bolt and nut through a casting"},
      {"angle M10 --class 10.9 --snug 20Nm --angle 60deg --surfaces oiled --grip 30mm --bolt-length 50mm "
       "--part-material cast-aluminium --part-outer 25mm",
       "the closer the stack is told, the narrower the band"},
      {"angle M8 --class 12.9 --head socket --snug 10Nm --angle 90deg --surfaces oiled --grip 20mm "
       "--bolt-length 35mm --part-material steel --into-part",
       "a socket screw into the part"}};
}

void AngleCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--snug", snug_, "torque before the angle, as set on the wrench")->type_name("Q");
  app.add_option("--angle", angle_, "the turn after it: 60deg, at most 360deg")->type_name("Q");
  stack_.declare(app);
  options_.declare(app);
}

std::vector<std::pair<std::string, std::string>> AngleCommand::lists() const {
  auto lists = StackOptions::lists();
  for (auto& list : CaseOptions::lists())
    lists.push_back(std::move(list));
  return lists;
}

Result<Outcome> AngleCommand::run(const Context& context) {
  const auto text = only_word("a thread", examples().front().line);
  if (!text) return Refusal(text.error());
  options_.question().thread = *text;
  const specdb::Catalogue catalogue;
  const auto reply = specdb::answer_angle(catalogue, {options_.question(), stack_.question(), snug_, angle_});
  if (!reply) return Refusal(reply.error());
  Outcome out;
  Json input = options_.echo();
  input["snug"] = *snug_;
  input["angle"] = *angle_;
  stack_.echo_into(input);
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(angle_json(*reply));
  out.findings = reply->answer.findings;
  out.working = reply->answer.working;
  out.document = specdb::angle_document(*reply, context.units);
  out.sources = reply->sources;
  return out;
}

} // namespace clampwright::cli
