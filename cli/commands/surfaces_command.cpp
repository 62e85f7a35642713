// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/surfaces_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/json/locking_json.hpp"
#include "cli/json/values_json.hpp"
#include "specdb/catalogue/surfaces.hpp"

namespace clampwright::cli {

namespace {

Outcome every_surface(const specdb::Catalogue& catalogue) {
  Outcome out;
  const auto surfaces = specdb::all_surfaces(catalogue);
  out.input = std::make_shared<Json>(Json::object());
  out.result = std::make_shared<Json>(all_surfaces_json(surfaces));
  out.document = specdb::all_surfaces_document(surfaces);
  out.hints.emplace_back("where each figure comes from: clampwright table surface-sources NAME");
  return out;
}

Json echo_of(const specdb::SurfacesQuestion& q) {
  Json input = Json::object();
  put_text(input, "stated", q.stated);
  put_text(input, "stated_nut_factor", q.stated_nut_factor);
  put_text(input, "fitted", q.fitted);
  put_text(input, "fitted_nut_factor", q.fitted_nut_factor);
  put_text(input, "torque", q.torque);
  put_text(input, "running_torque", q.running_torque);
  put_text(input, "thread", q.thread);
  put_text(input, "class", q.strength_class);
  put_text(input, "kind", q.kind);
  put_text(input, "into", q.into);
  if (!q.locks.empty()) input["locks"] = q.locks;
  if (q.taper) input["taper"] = true;
  return input;
}

// Does what is to be set break the bolt?
bool is_over(const specdb::SurfacesReply& reply) {
  const auto& clamp = reply.as_corrected ? reply.as_corrected : reply.differs ? reply.uncorrected : reply.as_stated;
  return clamp && clamp->verdict == tightening::Verdict::over_limit;
}

} // namespace

std::string_view SurfacesCommand::summary() const { return "a torque on other surfaces than it is for"; }
std::string_view SurfacesCommand::usage() const {
  return "surfaces [--stated NAME --fitted NAME --torque Q [options]]";
}
std::vector<Example> SurfacesCommand::examples() const {
  return {{"surfaces", "the states of surfaces and their friction"},
          {"surfaces --stated dry --fitted oiled --torque 25Nm", "corrected once, published rules beside"},
          {"surfaces --stated oiled --fitted oiled --torque 25Nm", "already says oiled: nothing is taken off"},
          {"surfaces --stated dry --fitted moly-paste --torque 45Nm --thread M10 --class 8.8", "with the clamp loads"},
          {"surfaces --stated-nut-factor 0.20 --fitted-nut-factor 0.15 --torque 25Nm", "with nut factors of your own"}};
}

void SurfacesCommand::declare(CLI::App& app) {
  declare_words(app);
  auto& q = question_;
  app.add_option("--stated", q.stated, "surfaces that the torque is for")->type_name("NAME");
  app.add_option("--fitted", q.fitted, "surfaces on the bench")->type_name("NAME");
  app.add_option("--stated-nut-factor", q.stated_nut_factor, "instead: K that the torque is for")->type_name("X");
  app.add_option("--fitted-nut-factor", q.fitted_nut_factor, "instead: K on the bench")->type_name("X");
  app.add_option("--torque", q.torque, "as printed, with its running torque if any")->type_name("Q");
  app.add_option("--running-torque", q.running_torque, "of a locking nut: left out of the correction")->type_name("Q");
  app.add_option("--lock", q.locks, "a lock on the thread; may be given again")
      ->type_name("NAME")
      ->allow_extra_args(false);
  app.add_option("--kind", q.kind, "bolt, hub, plug, stud-set or union")->type_name("KIND");
  app.add_flag("--taper", q.taper, "the part sits on a cone");
  app.add_option("--into", q.into, "material it screws into, for the rules that go by it")->type_name("NAME");
  app.add_option("--thread", q.thread, "for the clamp load")->type_name("T");
  app.add_option("--class", q.strength_class, "strength class, for the clamp load")->type_name("C");
}

std::vector<std::pair<std::string, std::string>> SurfacesCommand::lists() const {
  const specdb::Catalogue catalogue;
  return {{"SURFACES", fmt::format("{}", fmt::join(specdb::surfaces_names(catalogue), ", "))}};
}

Result<Outcome> SurfacesCommand::run(const Context& context) {
  const specdb::Catalogue catalogue;
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "that was not expected", words_.front(),
                  "write clampwright surfaces --stated dry --fitted oiled --torque 25Nm");
  if (echo_of(question_).empty()) return every_surface(catalogue);
  const auto reply = specdb::answer_surfaces(catalogue, question_);
  if (!reply) return Refusal(reply.error());
  Outcome out;
  out.input = std::make_shared<Json>(echo_of(question_));
  out.result = std::make_shared<Json>(surfaces_json(*reply));
  out.findings = reply->findings;
  out.sources = reply->sources;
  out.document = specdb::surfaces_document(*reply, context.units);
  out.exit = is_over(*reply) ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
