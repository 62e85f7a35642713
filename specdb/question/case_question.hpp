// SPDX-License-Identifier: GPL-3.0-or-later
//
// From words to values: what a person says about a fastener becomes the plain case that the core computes with. The
// command line, the desk and the joints of a workshop all come through here.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/tightening/case.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/catalogue/faces.hpp"
#include "specdb/catalogue/threads.hpp"

namespace clampwright::specdb {

// Every entry as text, as it was typed or stored. What is empty was not said.
struct CaseQuestion {
  std::string thread;
  bool any_pitch = false; // take a thread that no table lists
  std::optional<std::string> strength_class;
  std::optional<std::string> surfaces;
  std::optional<std::string> mu;
  std::optional<std::string> mu_thread;
  std::optional<std::string> mu_head;
  std::optional<std::string> nut_factor;
  std::optional<std::string> head;
  std::optional<std::string> turned;
  std::optional<std::string> washer;
  std::optional<std::string> face_outer;
  std::optional<std::string> face_inner;
  std::optional<std::string> kind;
  std::optional<std::string> wrench_accuracy;
  std::optional<std::string> running_torque;
  std::vector<std::string> locks;
  std::optional<std::string> shank;
  std::optional<std::string> bore;
  // Said of joints in a workshop only.
  std::optional<std::string> mating_material; // what it screws into: a name of the table of materials
  std::optional<std::string> soft_material;   // the weakest of what is clamped, where that is soft
  bool angle_follows = false;
};

struct ResolvedCase {
  ThreadEntry thread;
  tightening::Case asked;
  std::optional<tightening::WrenchAccuracy> accuracy;
};

// The case that the words describe. Nothing is assumed in silence: without a word on friction both models take the
// surfaces "not-stated", which the findings say; a bolt without a word on its head takes the hexagon of its standard,
// which the answer names; whatever else was not said stays empty.
//
// A problem names its entry like the option of the command line ("--class"). Fails with usage for entries that exclude
// each other or need each other, with not-understood and no-such for their texts.
[[nodiscard]] Result<ResolvedCase> resolve(const Catalogue& catalogue, const CaseQuestion& question);

// "head" or "nut": the part that is turned.
[[nodiscard]] Result<Part> read_turned(std::string_view text);

// "bolt", "hub", "plug", "stud-set" or "union".
[[nodiscard]] Result<tightening::JointKind> read_joint_kind(std::string_view text);

} // namespace clampwright::specdb
