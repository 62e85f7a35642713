// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/hand_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/hold_json.hpp"
#include "cli/json/values_json.hpp"
#include "core/report/hand_report.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::cli {

std::string_view HandCommand::summary() const { return "which hand of thread the drive calls for"; }
std::string_view HandCommand::usage() const {
  return "hand --rotation clockwise|anticlockwise --seen-from free-end|engine-side --driver shaft|part [options]";
}
std::vector<Example> HandCommand::examples() const {
  return {{"hand --rotation clockwise --seen-from free-end --driver shaft", "a clutch on a crank"},
          {"hand --rotation ccw --seen-from engine-side --driver part", "a starter dog, seen from the engine"},
          {"hand --rotation clockwise --seen-from free-end --driver shaft --bore 20.02mm --shaft 20mm",
           "with the most that it may creep"}};
}

void HandCommand::declare(CLI::App& app) {
  auto& q = question_;
  app.add_option("--rotation", q.rotation, "of the shaft in service: clockwise or anticlockwise (cw, ccw, acw)")
      ->type_name("TURN");
  app.add_option("--seen-from", q.seen_from, "free-end (where the spanner goes) or engine-side")->type_name("SIDE");
  app.add_option("--driver", q.driver, "which turns the other in service: shaft or part")->type_name("WHO");
  app.add_option("--bore", q.bore, "bore of the outer part, for the bound of its creep; with --shaft")->type_name("Q");
  app.add_option("--shaft", q.shaft, "shaft or pin that runs in it")->type_name("Q");
  app.add_option("--joint", joint_, "a joint of the workshop: what is on record for it")->type_name("NAME");
}

Result<Outcome> HandCommand::run(const Context& context) {
  Outcome out;
  specdb::HandQuestion question = question_;
  std::optional<specdb::JointRecord> joint;
  bool invented = false;
  if (joint_) {
    auto named = named_joint(context, *joint_, "--joint");
    if (!named) return Refusal(named.error());
    const specdb::Catalogue catalogue;
    const auto thread = specdb::find_thread(catalogue, named->record.thread);
    if (!thread) return Refusal(thread.error());
    question = specdb::hand_for_joint(named->record, thread->thread.hand, std::move(question));
    joint = std::move(named->record);
    invented = named->invented;
    out.hints = std::move(named->hints);
  }
  const auto reply = specdb::answer_hand(question);
  if (!reply) return Refusal(reply.error());
  Json input = Json::object();
  put_text(input, "joint", joint_);
  put_text(input, "rotation", question_.rotation);
  put_text(input, "seen_from", question_.seen_from);
  put_text(input, "driver", question_.driver);
  put_text(input, "bore", question_.bore);
  put_text(input, "shaft", question_.shaft);
  out.input = std::make_shared<Json>(std::move(input));
  Json result = hand_json(reply->answer);
  result["joint"] = joint ? Json(joint->slug) : Json(nullptr);
  result["seen_from"] = joint ? Json(joint->seen_from) : Json(nullptr);
  result["invented"] = joint ? Json(invented) : Json(nullptr);
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = reply->answer.findings;
  out.document = report::hand_report(reply->answer);
  out.document.sources = reply->sources;
  if (joint) out.document.title += " [" + joint->slug + "]";
  if (invented) out.document.banner = specdb::k_invented;
  out.sources = reply->sources;
  return out;
}

} // namespace clampwright::cli
