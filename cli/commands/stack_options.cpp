// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/stack_options.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "specdb/catalogue/materials.hpp"

namespace clampwright::cli {

void StackOptions::declare(CLI::App& app) {
  auto& q = question_;
  app.add_option("--grip", q.grip, "what it clamps, between the faces of head and nut")->type_name("Q");
  app.add_option("--bolt-length", q.bolt_length, "under the head; tells how much of the grip is thread")
      ->type_name("Q");
  app.add_option("--shank-length", q.shank_length, "shank in the grip, where it was measured")->type_name("Q");
  app.add_option("--thread-length", q.thread_length, "free thread in the grip, where it was measured")->type_name("Q");
  app.add_option("--part-material", q.part_material, "what the clamped parts are made of")->type_name("NAME");
  app.add_option("--part-modulus", q.part_modulus, "their modulus of elasticity instead: 70GPa")->type_name("Q");
  app.add_option("--bolt-modulus", q.bolt_modulus, "of the bolt; that of its class if not said")->type_name("Q");
  app.add_option("--part-outer", q.part_outer, "how wide the parts are round the bolt; wide if not said")
      ->type_name("Q");
  app.add_option("--hole", q.hole, "hole in the parts; that of the face if not said")->type_name("Q");
  app.add_flag("--into-part", q.into_part, "the bolt screws into the part; no nut");
}

void StackOptions::echo_into(Json& input) const {
  const auto& q = question_;
  put_text(input, "grip", q.grip);
  put_text(input, "bolt_length", q.bolt_length);
  put_text(input, "shank_length", q.shank_length);
  put_text(input, "thread_length", q.thread_length);
  put_text(input, "part_material", q.part_material);
  put_text(input, "part_modulus", q.part_modulus);
  put_text(input, "bolt_modulus", q.bolt_modulus);
  put_text(input, "part_outer", q.part_outer);
  put_text(input, "hole", q.hole);
  if (q.into_part) input["into_part"] = true;
}

std::vector<std::pair<std::string, std::string>> StackOptions::lists() {
  const specdb::Catalogue catalogue;
  return {{"MATERIALS", fmt::format("{}", fmt::join(specdb::elastic_names(catalogue), ", "))}};
}

} // namespace clampwright::cli
