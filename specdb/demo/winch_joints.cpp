// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/demo/demo_joints.hpp"

namespace clampwright::specdb {

MachineRecord demo_winch() { return {.slug = "winch", .name = "Winch Tallisk W1", .kind = "rescue winch with engine"}; }

namespace {

// A figure of the handbook in newton-metres.
FigureRecord handbook(std::string printed, double value, std::string surfaces, std::string page) {
  return {.printed = std::move(printed),
          .value = value,
          .unit = "N.m",
          .surfaces = std::move(surfaces),
          .source_slug = k_tallisk,
          .source = {.where = std::move(page)}};
}

JointRecord pulley_bolt() {
  JointRecord joint{.slug = "winch/pulley-bolt",
                    .assembly = "engine",
                    .name = "drive pulley bolt",
                    .thread = "M10x1.25",
                    .strength_class = "8.8",
                    .seat = "pulley on a taper 1:5, mean diameter 18 mm",
                    .taper = "1:5",
                    .drive = "17 mm hexagon",
                    .on_crank = true,
                    .shaft_turn = "anticlockwise",
                    .driver = "shaft",
                    .words = "belt sheave taper cone crank",
                    .figure = handbook("46 N·m", 46.0, "dry", "page 5")};
  joint.figure.condition = "cone and thread clean and dry";
  return joint;
}

JointRecord drum_nut() {
  return {.slug = "winch/drum-nut",
          .assembly = "drum",
          .name = "drum nut",
          .thread = "M16x1.5",
          .strength_class = "8.8",
          .nut_class = "8",
          .turned = "nut",
          .locks = {{"tab-washer", {}}},
          .drive = "24 mm hexagon",
          .shaft_turn = "clockwise",
          .driver = "shaft",
          .seen_from = "looking at the drum nut",
          .holding = "pawl of the drum engaged",
          .words = "rope barrel",
          .figure = handbook("190 N·m", 190.0, "dry", "page 7")};
}

JointRecord drum_cap() {
  return {.slug = "winch/drum-cap",
          .assembly = "drum",
          .name = "drum cap bolt",
          .thread = "M10",
          .strength_class = "8.8",
          .face_outer = "52 mm",
          .face_inner = "11 mm",
          .seat = "cap and bolt in one piece",
          .drive = "16 mm hexagon",
          .words = "cover lid",
          .figure = handbook("48 N·m", 48.0, "dry", "page 7")};
}

JointRecord gearbox_cover() {
  return {.slug = "winch/gearbox-cover",
          .assembly = "gearbox",
          .name = "gearbox cover bolts",
          .quantity = 6,
          .thread = "M8",
          .strength_class = "8.8",
          .drive = "13 mm hexagon",
          .words = "lid gear",
          .figure = handbook("17 N·m", 17.0, "not-stated", "page 8")};
}

JointRecord gearbox_flange() {
  return {.slug = "winch/gearbox-flange",
          .assembly = "gearbox",
          .name = "gearbox flange bolts",
          .quantity = 4,
          .thread = "M8",
          .strength_class = "8.8",
          .drive = "13 mm hexagon",
          .words = "gear output",
          .figure = handbook("2.2 N·m", 2.2, "dry", "page 8")};
}

JointRecord frame_bolts() {
  JointRecord joint{.slug = "winch/frame-bolts",
                    .assembly = "frame",
                    .name = "frame bolts",
                    .quantity = 8,
                    .thread = "3/8-24 UNF",
                    .strength_class = "SAE 5",
                    .turned = "nut",
                    .drive = "9/16 in hexagon",
                    .seen_from = "looking at the nut",
                    .words = "chassis",
                    .figure = handbook("30 lbf·ft", 30.0, "zinc-dry", "page 2")};
  joint.figure.unit = "lbf.ft";
  return joint;
}

JointRecord fairlead() {
  JointRecord joint{.slug = "winch/fairlead",
                    .assembly = "rope",
                    .name = "fairlead bolts",
                    .quantity = 4,
                    .thread = "M8",
                    .strength_class = "4.8",
                    .drive = "13 mm hexagon",
                    .words = "roller guide",
                    .figure = handbook("25 N·m", 25.0, "zinc-dry", "inside the cover")};
  joint.figure.source_slug = k_notebook;
  joint.figure.status = "shop";
  return joint;
}

JointRecord rope_guide() {
  JointRecord joint{.slug = "winch/rope-guide",
                    .assembly = "rope",
                    .name = "rope guide nuts",
                    .quantity = 2,
                    .thread = "M8",
                    .strength_class = "8.8",
                    .nut_class = "8",
                    .turned = "nut",
                    .locks = {{"locking-nut-insert", {}}},
                    .running_torque = "2 N·m",
                    .drive = "13 mm hexagon",
                    .seen_from = "looking at the nut",
                    .words = "self-locking",
                    .figure = handbook("22 N·m + running torque", 22.0, "zinc-dry", "page 9")};
  joint.figure.running_torque_rule = "add";
  joint.figure.reuse_rule = "while-good";
  joint.figure.reuse = "the nut again while it runs with 0.85 N·m or more, else a new one";
  return joint;
}

JointRecord belt_guard() {
  JointRecord joint{.slug = "winch/belt-guard",
                    .assembly = "engine",
                    .name = "belt guard nuts",
                    .quantity = 3,
                    .thread = "M6",
                    .strength_class = "8.8",
                    .nut_class = "8",
                    .turned = "nut",
                    .locks = {{"locking-nut-insert", {}}, {"compound-medium", "pencilled beside the figure"}},
                    .drive = "10 mm hexagon",
                    .seen_from = "looking at the nut",
                    .words = "cover shield self-locking",
                    .figure = handbook("9.5 N·m", 9.5, "zinc-dry", "page 9 and a note beside it")};
  joint.figure.reuse_rule = "while-good";
  joint.figure.reuse = "the nut again while fingers cannot turn it";
  return joint;
}

JointRecord clevis() {
  return {.slug = "winch/clevis",
          .assembly = "rope",
          .name = "clevis bolt",
          .thread = "M8",
          .strength_class = "12.9",
          .drive = "13 mm hexagon",
          .words = "shackle hook anchor electroplated",
          .figure = handbook("38 N·m", 38.0, "zinc-dry", "page 10")};
}

JointRecord gearbox_foot() {
  return {.slug = "winch/gearbox-foot",
          .assembly = "gearbox",
          .name = "gearbox foot bolts",
          .quantity = 4,
          .thread = "M10",
          .strength_class = "10.9",
          .nut_class = "8",
          .drive = "16 mm hexagon",
          .words = "gear base",
          .figure = handbook("64 N·m", 64.0, "zinc-dry", "page 3")};
}

JointRecord anchor_frame() {
  return {.slug = "winch/anchor-frame",
          .assembly = "frame",
          .name = "anchor frame bolts",
          .quantity = 2,
          .thread = "M12",
          .seat = "heads without a mark",
          .drive = "18 mm hexagon",
          .words = "ground spade unmarked",
          .figure = handbook("75 N·m", 75.0, "zinc-dry", "page 2")};
}

JointRecord chain_cover() {
  return {.slug = "winch/chain-cover",
          .assembly = "gearbox",
          .name = "chain cover screws",
          .quantity = 5,
          .thread = "M6",
          .strength_class = "010.9",
          .face_outer = "10.07 mm",
          .face_inner = "6.6 mm",
          .seat = "button heads",
          .drive = "4 mm hexagon key",
          .seen_from = "looking at the screw head",
          .words = "button head guard",
          .figure = handbook("10.5 N·m", 10.5, "dry", "page 11")};
}

JointRecord tensioner() {
  JointRecord joint{.slug = "winch/tensioner",
                    .assembly = "engine",
                    .name = "belt tensioner bolt",
                    .thread = "M8",
                    .strength_class = "8.8",
                    .drive = "13 mm hexagon",
                    .words = "idler",
                    .figure = handbook("25.5 N·m (friction 0.12)", 25.5, "oiled", "page 5")};
  joint.figure.friction = "0.12";
  return joint;
}

JointRecord brake_pivot() {
  return {.slug = "winch/brake-pivot",
          .assembly = "brake",
          .name = "brake pivot bolt",
          .thread = "M8",
          .strength_class = "8.8",
          .nut_class = "8",
          .seat_material = "steel",
          .must_clamp = "4 kN",
          .must_clamp_because = "so that the lever does not rattle on its pivot",
          .drive = "13 mm hexagon",
          .words = "lever pin",
          .figure = {.printed = "tighten firmly",
                     .method = "by-feel",
                     .source_slug = k_tallisk,
                     .source = {.where = "page 6"},
                     .status = "none"}};
}

JointRecord motor_plate() {
  JointRecord joint{.slug = "winch/motor-plate",
                    .assembly = "frame",
                    .name = "motor plate bolts",
                    .quantity = 4,
                    .thread = "M10",
                    .strength_class = "10.9",
                    .drive = "16 mm hexagon",
                    .words = "engine bed angle",
                    .figure = handbook("20 N·m + 60°", 20.0, "oiled", "page 4")};
  joint.figure.method = "torque-angle";
  joint.figure.angle_deg = 60.0;
  return joint;
}

} // namespace

std::vector<JointRecord> winch_joints() {
  return {pulley_bolt(), drum_nut(),   drum_cap(),    gearbox_cover(), gearbox_flange(), frame_bolts(),
          fairlead(),    rope_guide(), belt_guard(),  clevis(),        gearbox_foot(),   anchor_frame(),
          chain_cover(), tensioner(),  brake_pivot(), motor_plate()};
}

} // namespace clampwright::specdb
