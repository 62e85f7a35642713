// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/wrench_set_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/values_json.hpp"
#include "cli/json/wrench_json.hpp"
#include "specdb/question/wrench_report.hpp"

namespace clampwright::cli {

namespace {

Json echo_of(const specdb::WrenchSetQuestion& q, const std::optional<std::string>& wrench,
             const std::optional<std::string>& joint) {
  Json input = Json::object();
  put_text(input, "joint", joint);
  put_text(input, "torque", q.torque);
  put_text(input, "tolerance", q.tolerance);
  put_text(input, "low", q.low);
  put_text(input, "high", q.high);
  put_text(input, "turn", q.turn);
  put_text(input, "wrench", wrench);
  put_text(input, "arm", q.arm);
  put_text(input, "adaptor", q.adaptor);
  put_text(input, "adaptor_angle", q.adaptor_angle);
  put_text(input, "range", q.range);
  put_text(input, "step", q.step);
  put_text(input, "wrench_accuracy", q.accuracy);
  put_text(input, "operator", q.operator_share);
  put_text(input, "lever_error", q.lever_share);
  put_text(input, "nut_factor_spread", q.nut_factor_spread);
  return input;
}

} // namespace

std::string_view WrenchSetCommand::summary() const { return "where to set a torque wrench, with an adaptor too"; }
std::string_view WrenchSetCommand::usage() const {
  return "wrench set (--torque Q | --joint NAME) (--arm Q | --wrench NAME) [--adaptor Q [--adaptor-angle Q]] [options]";
}
std::vector<Example> WrenchSetCommand::examples() const {
  return {{"wrench set --torque 25Nm --arm 300mm --adaptor 50mm", "an adaptor straight ahead"},
          {"wrench set --torque 25Nm --arm 300mm --adaptor 50mm --adaptor-angle 45deg --step 0.5Nm --range 10..60Nm",
           "at an angle, on a mark of the scale"},
          {"wrench set --torque \"40 lbf.ft\" --arm 12in --adaptor 4in --tolerance 5% --step 1lbf.ft",
           "within the limits of the figure"},
          {"wrench set --joint pump/head-nuts --wrench A", "a joint and a wrench of the workshop"}};
}

void WrenchSetCommand::declare(CLI::App& app) {
  declare_words(app);
  auto& q = question_;
  app.add_option("--torque", q.torque, "torque that is to reach the fastener")->type_name("Q");
  app.add_option("--tolerance", q.tolerance, "limits of the figure, either side: 10%")->type_name("X");
  app.add_option("--low", q.low, "or its lower limit")->type_name("Q");
  app.add_option("--high", q.high, "and its upper limit")->type_name("Q");
  app.add_option("--turn", q.turn, "which way it tightens: clockwise or anticlockwise")->type_name("TURN");
  app.add_option("--joint", joint_, "a joint of the workshop: its torque, limits and turn")->type_name("NAME");
  app.add_option("--arm", q.arm, "middle of the grip to the middle of the drive")->type_name("Q");
  app.add_option("--adaptor", q.adaptor, "drive to fastener; a straight extension bar needs none")->type_name("Q");
  app.add_option("--adaptor-angle", q.adaptor_angle, "0deg straight ahead (if not said), 180deg back over the handle")
      ->type_name("Q");
  app.add_option("--wrench", wrench_, "a wrench of the workshop: its scale, arm and accuracy")->type_name("NAME");
  app.add_option("--range", q.range, "ends of the scale: 10..60Nm")->type_name("A..B");
  app.add_option("--step", q.step, "distance of two marks: 0.5Nm")->type_name("Q");
  app.add_option("--wrench-accuracy", q.accuracy, "how far the wrench may be off; by ISO 6789 if not said")
      ->type_name("X");
  app.add_option("--operator", q.operator_share, "spread of the pull; 1% if not said")->type_name("X");
  app.add_option("--lever-error", q.lever_share, "how far the levers may be off; 1% if not said")->type_name("X");
  app.add_option("--nut-factor-spread", q.nut_factor_spread, "spread of the friction; 10% if not said")->type_name("X");
}

Result<Outcome> WrenchSetCommand::run(const Context& context) {
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "wrench set takes options only", words_.front(),
                  "write clampwright wrench set --torque 25Nm --arm 300mm");
  auto needed = workshop_where(wrench_ || joint_, context);
  if (!needed) return Refusal(needed.error());
  const specdb::Catalogue catalogue;
  const auto told =
      specdb::tell_wrench_set(catalogue, needed->get(), {wrench_, joint_}, question_, context.unit, context.today);
  if (!told) return Refusal(told.error());
  const specdb::WrenchSetReply& reply = told->reply;
  Outcome out;
  out.input = std::make_shared<Json>(echo_of(question_, wrench_, joint_));
  Json result = wrench_set_json(reply);
  result["invented"] = told->invented;
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = reply.findings;
  out.working = reply.working;
  out.sources = reply.sources;
  out.document = specdb::wrench_set_report(reply, told->joint ? &*told->joint : nullptr, context.units, told->invented);
  out.exit = reply.suits && !finding::has_stop(reply.findings) ? ExitCode::answered : ExitCode::check_failed;
  out.hints = std::move(needed->hints);
  return out;
}

} // namespace clampwright::cli
