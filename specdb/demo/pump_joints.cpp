// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/demo/demo_joints.hpp"

namespace clampwright::specdb {

MachineRecord demo_pump() {
  return {.slug = "pump",
          .name = "Pump Marrowfen P3",
          .kind = "flood pump, two-stroke single",
          .serial_from = "P3-0400",
          .serial_to = "P3-1299",
          .crank_turn = "clockwise",
          .crank_seen_from = "looking at the clutch",
          .stroke_mm = 44.0,
          .rod_mm = 88.0,
          .port_below_top_mm = 27.0,
          .plug_reach_mm = 12.7,
          .crown_depth_mm = 14.0,
          .stop_length_mm = 23.0,
          .stop_tip_mm = 10.0,
          .stop_tip_limit_MPa = 60.0,
          .plug_thread = "M14x1.25",
          .head_material = "cast-aluminium"};
}

namespace {

// A figure of the workshop sheets in newton-metres.
FigureRecord sheets(std::string printed, double value, std::string surfaces, std::string page) {
  return {.printed = std::move(printed),
          .value = value,
          .unit = "N.m",
          .surfaces = std::move(surfaces),
          .source_slug = k_marrowfen,
          .source = {.where = std::move(page)}};
}

JointRecord clutch_hub() {
  JointRecord joint{.slug = "pump/clutch-hub",
                    .assembly = "clutch",
                    .name = "clutch hub",
                    .kind = "hub",
                    .thread = "M14x1.5-LH",
                    .turned = "part",
                    .face_outer = "30 mm",
                    .face_inner = "15 mm",
                    .seat = "screwed onto the crank, face against the shoulder",
                    .drive = "hub key of the sheets",
                    .neighbours = {{"crank oil seal", 120.0, {}}},
                    .on_crank = true,
                    .shaft_turn = "clockwise",
                    .driver = "shaft",
                    .seen_from = "looking at the clutch",
                    .holding = "flats of the crank beside the hub, 17 mm open spanner",
                    .words = "centrifugal boss drum left-hand",
                    .figure = sheets("42 N·m", 42.0, "dry", "page 4")};
  joint.figure.condition = "thread and face clean and dry";
  return joint;
}

JointRecord flywheel_nut() {
  JointRecord joint{.slug = "pump/flywheel-nut",
                    .assembly = "flywheel",
                    .name = "flywheel nut",
                    .thread = "M12x1.25",
                    .strength_class = "8.8",
                    .nut_class = "8",
                    .turned = "nut",
                    .seat = "flywheel on the taper of the crank; the crank end counts as 8.8",
                    .taper = "1:5",
                    .drive = "18 mm hexagon",
                    .neighbours = {{"crank oil seal", 120.0, {}}},
                    .on_crank = true,
                    .shaft_turn = "anticlockwise",
                    .driver = "shaft",
                    .seen_from = "looking at the flywheel nut",
                    .holding = "strap round the flywheel",
                    .words = "magneto rotor taper key crank",
                    .figure = sheets("78 N·m", 78.0, "dry", "page 4")};
  joint.figure.condition = "taper and thread clean and dry";
  return joint;
}

JointRecord head_nuts() {
  JointRecord joint{.slug = "pump/head-nuts",
                    .assembly = "cylinder",
                    .name = "cylinder head nuts",
                    .quantity = 4,
                    .thread = "M8",
                    .strength_class = "8.8",
                    .nut_class = "8",
                    .turned = "nut",
                    .pattern = "circle",
                    .drive = "13 mm hexagon",
                    .seen_from = "looking at the nut",
                    .words = "studs gasket top",
                    .figure = sheets("17 N·m", 17.0, "oiled", "page 6")};
  joint.figure.temperature = "engine cold";
  joint.figure.sequence = "crosswise, then once round until nothing moves";
  joint.figure.passes = {6.0, 12.0, 17.0};
  joint.figure.recheck = {{"cold, after the first hour of running", 1.0, {}, "first heat"}};
  joint.figure.revised_because = "the second print raised it for the new gasket";
  return joint;
}

JointRecord spark_plug() {
  JointRecord joint{.slug = "pump/spark-plug",
                    .assembly = "cylinder",
                    .name = "spark plug",
                    .kind = "plug",
                    .thread = "M14x1.25",
                    .turned = "part",
                    .face_outer = "19 mm",
                    .face_inner = "14.5 mm",
                    .seat = "ring gasket",
                    .mating_part = "cylinder head",
                    .mating_material = "cast-aluminium",
                    .engagement = "12.7 mm",
                    .drive = "21 mm plug socket",
                    .seen_from = "looking at the plug",
                    .words = "sparkplug ignition head",
                    .figure = sheets("24 N·m", 24.0, "dry", "page 6")};
  joint.figure.condition = "new gasket; thread clean, no lubricant";
  joint.figure.temperature = "engine cold";
  return joint;
}

JointRecord base_nuts() {
  JointRecord joint{.slug = "pump/base-nuts",
                    .assembly = "cylinder",
                    .name = "cylinder base nuts",
                    .quantity = 4,
                    .thread = "M8",
                    .strength_class = "8.8",
                    .nut_class = "8",
                    .turned = "nut",
                    .pattern = "circle",
                    .drive = "13 mm hexagon",
                    .seen_from = "looking at the nut",
                    .words = "studs barrel foot",
                    .figure = sheets("17 N·m", 17.0, "oiled", "page 7"),
                    .beside = {sheets("19 N·m", 19.0, "oiled", "for page 7")}};
  joint.figure.sequence = "crosswise in two passes";
  joint.beside.front().sequence = "crosswise in two passes";
  joint.beside.front().source_slug = k_marrowfen_bulletin;
  return joint;
}

JointRecord exhaust_nuts() {
  return {.slug = "pump/exhaust-nuts",
          .assembly = "exhaust",
          .name = "exhaust nuts",
          .quantity = 2,
          .thread = "M8",
          .strength_class = "8.8",
          .nut_class = "8",
          .turned = "nut",
          .drive = "13 mm hexagon",
          .seen_from = "looking at the nut",
          .words = "silencer flange muffler port",
          .figure = sheets("22 N·m", 22.0, "dry", "page 8")};
}

JointRecord exhaust_studs() {
  JointRecord joint{.slug = "pump/exhaust-studs",
                    .assembly = "exhaust",
                    .name = "exhaust studs",
                    .kind = "stud-set",
                    .quantity = 2,
                    .thread = "M8",
                    .strength_class = "8.8",
                    .turned = "part",
                    .face_outer = "11 mm",
                    .face_inner = "8.5 mm",
                    .seat = "shoulder of the stud",
                    .mating_part = "cylinder",
                    .mating_material = "cast-aluminium",
                    .engagement = "16 mm",
                    .seen_from = "looking at the end of the stud",
                    .words = "port stud",
                    .figure = sheets("9 N·m to the shoulder", 9.0, "dry", "page 8")};
  joint.figure.method = "to-shoulder";
  return joint;
}

JointRecord mounts() {
  JointRecord joint{.slug = "pump/mounts",
                    .assembly = "frame",
                    .name = "engine mount bolts",
                    .quantity = 4,
                    .thread = "M10",
                    .strength_class = "8.8",
                    .drive = "16 mm hexagon",
                    .words = "mounting feet",
                    .figure = sheets("3,4 mkg", 3.4, "oiled", "page 2, foreign print")};
  joint.figure.unit = "kgf.m";
  joint.figure.reading = "foreign print: its comma is the decimal mark, its mkg the metre-kilogram-force, so 3.4 kgf·m";
  return joint;
}

JointRecord crankcase() {
  JointRecord joint{.slug = "pump/crankcase",
                    .assembly = "crankcase",
                    .name = "crankcase bolts",
                    .quantity = 8,
                    .thread = "M6",
                    .strength_class = "8.8",
                    .mating_part = "crankcase half",
                    .mating_material = "cast-aluminium",
                    .engagement = "14 mm",
                    .drive = "10 mm hexagon",
                    .words = "case halves",
                    .figure = sheets("80 lbf·in", 80.0, "dry", "page 9")};
  joint.figure.unit = "lbf.in";
  joint.figure.sequence = "crosswise from the middle";
  joint.figure.passes = {40.0, 80.0};
  return joint;
}

JointRecord blower_cover() {
  return {.slug = "pump/blower-cover",
          .assembly = "cooling",
          .name = "blower cover screws",
          .quantity = 4,
          .thread = "M6",
          .strength_class = "8.8",
          .drive = "10 mm hexagon",
          .words = "fan shroud cowl",
          .figure = sheets("90 N·m", 90.0, "dry", "page 3")};
}

JointRecord coil() {
  return {.slug = "pump/coil",
          .assembly = "ignition",
          .name = "ignition coil screws",
          .quantity = 2,
          .thread = "M5",
          .strength_class = "8.8",
          .mating_part = "crankcase",
          .mating_material = "cast-aluminium",
          .engagement = "12 mm",
          .drive = "8 mm hexagon",
          .words = "magneto armature",
          .figure = sheets("5.5 N·m", 5.5, "dry", "page 10")};
}

JointRecord carburettor() {
  return {.slug = "pump/carburettor",
          .assembly = "intake",
          .name = "carburettor nuts",
          .quantity = 2,
          .thread = "M4",
          .strength_class = "8.8",
          .nut_class = "8",
          .turned = "nut",
          .drive = "7 mm hexagon",
          .seen_from = "looking at the nut",
          .words = "carb carburetor",
          .figure = sheets("2.8 N·m", 2.8, "dry", "page 11")};
}

JointRecord reed_block() {
  return {.slug = "pump/reed-block",
          .assembly = "intake",
          .name = "reed block screws",
          .quantity = 4,
          .thread = "M6",
          .strength_class = "8.8",
          .mating_part = "crankcase",
          .mating_material = "cast-aluminium",
          .engagement = "6.5 mm",
          .bolt_length = "20 mm",
          .grip = "13 mm",
          .hole_depth = "9 mm",
          .duty = "dry",
          .drive = "10 mm hexagon",
          .words = "valve inlet",
          .figure = sheets("10 N·m", 10.0, "dry", "page 11")};
}

JointRecord volute() {
  return {.slug = "pump/volute",
          .assembly = "water end",
          .name = "volute screws",
          .quantity = 6,
          .thread = "M8",
          .strength_class = "10.9",
          .head = "socket",
          .seat_material = "cast-aluminium",
          .mating_part = "back plate",
          .mating_material = "steel",
          .engagement = "16 mm",
          .duty = "wet",
          .drive = "6 mm hexagon key",
          .seen_from = "looking at the screw head",
          .words = "pump housing spiral",
          .figure = sheets("31 N·m", 31.0, "dry", "page 12")};
}

JointRecord impeller() {
  JointRecord joint{.slug = "pump/impeller",
                    .assembly = "water end",
                    .name = "impeller screw",
                    .thread = "M8",
                    .strength_class = "8.8",
                    .locks = {{"compound-medium", {}}},
                    .drive = "13 mm hexagon",
                    .words = "wheel pump shaft",
                    .figure = sheets("21.5 N·m", 21.5, "threadlocker-wet", "page 12")};
  joint.figure.condition = "clean and free of grease, then wet with compound";
  return joint;
}

JointRecord silencer() {
  return {.slug = "pump/silencer",
          .assembly = "exhaust",
          .name = "silencer bracket bolts",
          .quantity = 2,
          .thread = "M6",
          .strength_class = "8.8",
          .locks = {{"compound-medium", {}}},
          .drive = "10 mm hexagon",
          .neighbours = {{"silencer", {}, 260.0}},
          .words = "muffler stay",
          .figure = sheets("9.5 N·m", 9.5, "zinc-dry", "page 8")};
}

JointRecord seal_plate() {
  JointRecord joint{.slug = "pump/seal-plate",
                    .assembly = "water end",
                    .name = "seal plate screws",
                    .quantity = 4,
                    .thread = "M6",
                    .strength_class = "A2-70",
                    .mating_part = "seal housing",
                    .mating_material = "stainless-steel",
                    .engagement = "9 mm",
                    .drive = "10 mm hexagon",
                    .words = "shaft seal stainless",
                    .figure = sheets("5 N·m", 5.0, "stainless-lubricated", "page 13")};
  joint.figure.condition = "paste on the thread and under the head";
  return joint;
}

} // namespace

std::vector<JointRecord> pump_joints() {
  return {clutch_hub(),    flywheel_nut(), head_nuts(), spark_plug(),   base_nuts(), exhaust_nuts(),
          exhaust_studs(), mounts(),       crankcase(), blower_cover(), coil(),      carburettor(),
          reed_block(),    volute(),       impeller(),  silencer(),     seal_plate()};
}

} // namespace clampwright::specdb
