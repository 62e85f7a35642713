// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/crank/piston_stop.hpp"
#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

// A torque as specified. Where the page gives no value, `value` and `unit` are empty and `printed` holds its words.
struct FigureRecord {
  std::string printed; // word for word, comma and all
  std::optional<double> value;
  std::optional<std::string> unit; // name of a unit of torque
  std::optional<std::string> tolerance;
  std::optional<double> low; // in `unit`
  std::optional<double> high;
  std::optional<double> angle_deg;
  std::optional<std::string> reading; // how the printed text was understood, where that needs saying
  std::string surfaces;
  std::optional<std::string> condition;
  std::optional<std::string> sequence;
  std::optional<std::string> recheck;
  Source source;
  std::string status; // maker, general-table, shop, derived, none
};

// A place on a machine that is tightened.
struct JointRecord {
  std::string slug;
  std::string machine;
  std::string assembly;
  std::string name;
  std::string kind;
  int quantity = 1;
  std::string thread;
  std::string strength_class;
  std::string turned; // head, nut, part
  std::optional<std::string> head;
  std::optional<std::string> face_outer;
  std::optional<std::string> face_inner;
  std::optional<std::string> seat;
  std::string lock;
  bool on_crank = false;
  std::optional<crank::SliderCrank> crank;
  std::string seen_from;
  std::optional<std::string> holding;
  FigureRecord figure; // the one in force
};

// The joint of that slug ("pump/clutch-hub"), in any case; nothing if there is none.
[[nodiscard]] std::optional<JointRecord> joint_of_slug(const Workshop& workshop, std::string_view slug);

// The joint with which a tour begins: the first that was entered. Nothing in a file without joints.
[[nodiscard]] std::optional<std::string> first_joint(const Workshop& workshop);

// The joint that a person names: its slug, or words that fit one joint only. Fails with no-such and the candidates.
[[nodiscard]] Result<JointRecord> find_joint(const Workshop& workshop, std::string_view words);

} // namespace clampwright::specdb
