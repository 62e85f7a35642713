// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/demo/demo_joints.hpp"

namespace clampwright::specdb {

MachineRecord demo_boat() {
  return {.slug = "boat", .name = "Fan boat Ostrel F2", .kind = "flat boat with air propeller"};
}

namespace {

FigureRecord book(std::string printed, double value, std::string surfaces, std::string sheet) {
  return {.printed = std::move(printed),
          .value = value,
          .unit = "N.m",
          .surfaces = std::move(surfaces),
          .source_slug = k_ostrel,
          .source = {.where = std::move(sheet)}};
}

JointRecord propeller_hub() {
  JointRecord joint{.slug = "boat/propeller-hub",
                    .assembly = "propeller",
                    .name = "propeller hub bolts",
                    .quantity = 6,
                    .thread = "M8",
                    .strength_class = "8.8",
                    .soft_material = "wood",
                    .pattern = "circle",
                    .drive = "13 mm hexagon",
                    .words = "airscrew wooden blade rotor",
                    .figure = book("14 N·m", 14.0, "dry", "sheet 3")};
  joint.figure.sequence = "crosswise in three passes, then once round";
  joint.figure.passes = {5.0, 10.0, 14.0};
  joint.figure.recheck = {{"after the first run", {}, {}, "first run"},
                          {"every 10 hours or 10 days until nothing moves", 10.0, 10.0, {}},
                          {"after a change of weather or storage", {}, {}, "climate"}};
  return joint;
}

JointRecord cage_clamps() {
  return {.slug = "boat/cage-clamps",
          .assembly = "cage",
          .name = "cage clamp bolts",
          .quantity = 12,
          .thread = "M6",
          .strength_class = "8.8",
          .drive = "10 mm hexagon",
          .words = "guard ring",
          .figure = book("9.5 N·m", 9.5, "zinc-dry", "sheet 5")};
}

JointRecord steering_arm() {
  return {.slug = "boat/steering-arm",
          .assembly = "rudder",
          .name = "steering arm bolts",
          .quantity = 2,
          .thread = "M10",
          .strength_class = "8.8",
          .drive = "16 mm hexagon",
          .words = "tiller",
          .figure = book("33 N·m", 33.0, "zinc-dry", "sheet 6")};
}

} // namespace

std::vector<JointRecord> boat_joints() { return {propeller_hub(), cage_clamps(), steering_arm()}; }

} // namespace clampwright::specdb
