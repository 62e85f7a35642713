// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/case_options.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/any_pitch.hpp"
#include "cli/json/values_json.hpp"
#include "specdb/catalogue/faces.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/surfaces.hpp"

namespace clampwright::cli {

void CaseOptions::declare(CLI::App& app, Sizes sizes) {
  auto& q = question_;
  const bool one = sizes != Sizes::many;
  if (sizes == Sizes::one)
    app.add_option("--class", q.strength_class, "strength class: 8.8, SAE 5, A2-70, unknown")->type_name("C");
  app.add_option("--surfaces", q.surfaces, "state of thread and face: dry, oiled, zinc-dry, ...")->type_name("NAME");
  app.add_option("--mu", q.mu, "friction of thread and face: 0.12, 0.08..0.16, 0.08..0.12..0.16")->type_name("X");
  app.add_option("--mu-thread", q.mu_thread, "friction in the thread")->type_name("X");
  app.add_option("--mu-head", q.mu_head, "friction under the turned part")->type_name("X");
  app.add_option("--nut-factor", q.nut_factor, "nut factor K: 0.20, 0.15..0.25")->type_name("X");
  app.add_option("--head", q.head, "head or nut under which the face lies; a bolt has hex")->type_name("NAME");
  app.add_option("--turned", q.turned, "which part is turned: head or nut")->type_name("PART");
  if (one) {
    app.add_option("--washer", q.washer, "washer under the turned part, outer by inner: 24x13mm")->type_name("DxD");
    app.add_option("--face-outer", q.face_outer, "outer diameter of the face that rubs")->type_name("Q");
    app.add_option("--face-inner", q.face_inner, "inner diameter of the face that rubs")->type_name("Q");
    app.add_option("--kind", q.kind, "bolt, hub, plug, stud-set or union; bolt if not said")->type_name("KIND");
  }
  app.add_option("--wrench-accuracy", q.wrench_accuracy, "4%; ISO 6789 if not said")->type_name("X");
  if (one)
    app.add_option("--running-torque", q.running_torque, "running (prevailing) torque of a locking nut")
        ->type_name("Q");
  app.add_option("--lock", q.locks, "how the joint is locked; may be given again")
      ->type_name("NAME")
      ->allow_extra_args(false);
  if (one) {
    app.add_option("--shank", q.shank, "waisted shank's diameter")->type_name("Q");
    app.add_option("--bore", q.bore, "hollow bolt's bore")->type_name("Q");
    declare_any_pitch(app, q.any_pitch);
  }
}

Json CaseOptions::echo() const {
  const auto& q = question_;
  Json input = Json::object();
  if (!q.thread.empty()) input["thread"] = q.thread;
  if (q.any_pitch) input["any_pitch"] = true;
  put_text(input, "class", q.strength_class);
  put_text(input, "surfaces", q.surfaces);
  put_text(input, "mu", q.mu);
  put_text(input, "mu_thread", q.mu_thread);
  put_text(input, "mu_head", q.mu_head);
  put_text(input, "nut_factor", q.nut_factor);
  put_text(input, "head", q.head);
  put_text(input, "turned", q.turned);
  put_text(input, "washer", q.washer);
  put_text(input, "face_outer", q.face_outer);
  put_text(input, "face_inner", q.face_inner);
  put_text(input, "kind", q.kind);
  put_text(input, "wrench_accuracy", q.wrench_accuracy);
  put_text(input, "running_torque", q.running_torque);
  if (!q.locks.empty()) input["lock"] = fmt::format("{}", fmt::join(q.locks, " + "));
  put_text(input, "shank", q.shank);
  put_text(input, "bore", q.bore);
  return input;
}

bool CaseOptions::describes_fastener() const {
  Json said = echo();
  said.erase("thread");
  said.erase("wrench_accuracy");
  return !said.empty();
}

std::vector<std::pair<std::string, std::string>> CaseOptions::lists() {
  const specdb::Catalogue catalogue;
  const auto joined = [](const std::vector<std::string>& names) { return fmt::format("{}", fmt::join(names, ", ")); };
  return {{"CLASSES", joined(specdb::class_names(catalogue)) + ", unknown"},
          {"SURFACES", joined(specdb::surfaces_names(catalogue))},
          {"HEADS", joined(specdb::face_names(catalogue, specdb::Part::head)) +
                        "; with --turned nut: " + joined(specdb::face_names(catalogue, specdb::Part::nut))},
          {"LOCKS", joined(specdb::lock_names(catalogue))}};
}

} // namespace clampwright::cli
