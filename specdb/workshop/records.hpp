// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a workshop file holds, as plain values. Threads, classes, surfaces, locks and materials are the words that the
// reference tables know; lengths and torques of the joint are text with their unit, as they were entered.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/source/source.hpp"

namespace clampwright::specdb {

using MaybeText = std::optional<std::string>;

// What happened to a thing that is kept: a wrench, a compound, the record of a machine or joint.
struct EventRecord {
  std::string on_date = {}; // 2026-12-31
  std::string kind = {};    // calibrated, used, drop, overload, revised, retired, note; entered, revised of a record
  std::string words = {};
  std::optional<int> cycles = {}; // pulls, of `used` only
  MaybeText because = {};         // of a machine's or joint's revision
};

struct MachineRecord {
  std::string slug = {};
  std::string name = {};
  std::string kind = {};
  MaybeText serial_from = {}; // the figures hold for these serial numbers; empty: for all
  MaybeText serial_to = {};
  MaybeText crank_turn = {};      // in service: clockwise, anticlockwise
  MaybeText crank_seen_from = {}; // "looking at the clutch"
  std::optional<double> stroke_mm = {};
  std::optional<double> rod_mm = {};
  std::optional<double> port_below_top_mm = {}; // the crown's way down until the highest port opens
  std::optional<double> plug_reach_mm = {};
  MaybeText regulated_by = {}; // the rules under which it is certified, in words; empty: none recorded
  // A piston stop for its plug hole. Both lengths are measured from the seat of the plug: the stop into the cylinder,
  // the crown at its top position.
  std::optional<double> crown_depth_mm = {};
  std::optional<double> stop_length_mm = {};
  std::optional<double> stop_tip_mm = {};        // diameter of its flat tip
  std::optional<double> stop_tip_limit_MPa = {}; // the pressure that the owner allows on the crown
  MaybeText plug_thread = {};
  MaybeText head_material = {};         // that the plug screws into
  std::vector<EventRecord> events = {}; // in the order in which they were entered
};

// A document from which figures are taken.
struct SourceRecord {
  std::string slug = {};
  std::string title = {};
  std::string edition = {};
  Known known = Known::printed;
};

struct LockRecord {
  std::string lock = {};
  MaybeText note = {};
};

// A part near the joint: one that heat would harm (it bears so much), or one that heats the joint (it runs so hot).
struct NeighbourRecord {
  std::string name = {};
  std::optional<double> bears_degC = {};
  std::optional<double> runs_at_degC = {};
};

struct RecheckRecord {
  std::string words = {};
  std::optional<double> hours = {};
  std::optional<double> days = {};
  MaybeText event = {};
};

// A torque as specified. Where the page gives no value, `value` and `unit` are empty and `printed` holds its words.
struct FigureRecord {
  long long id = 0;         // in the file; 0 before it is entered
  std::string printed = {}; // word for word, comma and all
  std::optional<double> value = {};
  MaybeText unit = {}; // name of a unit of torque
  MaybeText tolerance = {};
  std::optional<double> low = {}; // in `unit`
  std::optional<double> high = {};
  std::string method = "torque"; // torque, torque-angle, to-shoulder, by-feel
  std::optional<double> angle_deg = {};
  MaybeText reading = {}; // how the printed text was understood, where that needs saying
  std::string surfaces = "not-stated";
  MaybeText friction = {}; // a coefficient that the page names; it takes the place of the surfaces' band
  MaybeText condition = {};
  MaybeText temperature = {};
  MaybeText sequence = {};
  std::vector<double> passes = {};    // in `unit`
  MaybeText running_torque_rule = {}; // add, included
  MaybeText reuse_rule = {};          // never, while-good
  MaybeText reuse = {};               // in words
  std::vector<RecheckRecord> recheck = {};
  std::string source_slug = {};
  Source source = {};           // `where` is the page; the rest comes from the source of that slug
  std::string status = "maker"; // maker, general-table, shop, derived, none
  MaybeText revised_because = {};
  MaybeText entered_on = {};                // 2026-12-31; empty where nobody kept it
  std::optional<long long> supersedes = {}; // the figure whose place it took
  // Where another has taken its place: which, when and why.
  std::optional<long long> superseded_by = {};
  MaybeText superseded_on = {};
  MaybeText superseded_because = {};
};

// A place on a machine that is tightened.
struct JointRecord {
  std::string slug = {};
  std::string assembly = {};
  std::string name = {};
  std::string kind = "bolt"; // bolt, hub, plug, stud-set, union
  int quantity = 1;
  std::string thread = {};
  std::string strength_class = "unknown";
  MaybeText nut_class = {};
  std::string turned = "head"; // head, nut, part
  MaybeText head = {};
  MaybeText washer = {};
  MaybeText face_outer = {};
  MaybeText face_inner = {};
  MaybeText seat = {};          // in words
  MaybeText seat_material = {}; // what the turned part presses on
  MaybeText soft_material = {}; // the weakest of what is clamped, where that is wood, plastic or a gasket
  MaybeText taper = {};         // "1:5": the part sits on a cone, which holds by friction
  MaybeText mating_part = {};   // what it screws into, in words
  MaybeText mating_material = {};
  MaybeText engagement = {};  // length of thread engaged
  MaybeText bolt_length = {}; // under the head
  MaybeText grip = {};        // what it clamps, between head and thread
  MaybeText hole_depth = {};  // of thread that a screw can use
  MaybeText duty = {};        // dry, wet
  MaybeText pattern = {};     // how its bolts lie: circle, row
  MaybeText must_clamp = {};  // the clamp load that each bolt must keep for the joint to do its work
  MaybeText must_clamp_because = {};
  std::vector<LockRecord> locks = {};
  MaybeText running_torque = {}; // of a locking nut, as measured
  MaybeText drive = {};          // the tool that fits: "13 mm hexagon"
  std::vector<NeighbourRecord> neighbours = {};
  bool on_crank = false;
  MaybeText shaft_turn = {}; // of the shaft that it sits on, in service, seen from `seen_from`
  MaybeText driver = {};     // shaft, part: which of the two turns the other
  std::string seen_from = "looking at the bolt head";
  MaybeText holding = {};
  std::string words = {}; // what else a person may call it
  MachineRecord machine = {};
  FigureRecord figure = {};                  // the one in force that was entered first
  std::vector<FigureRecord> beside = {};     // others in force
  std::vector<FigureRecord> superseded = {}; // newest first
  std::vector<EventRecord> events = {};      // in the order in which they were entered
};

struct WrenchRecord {
  std::string slug = {};
  std::string name = {};
  double low = 0; // in `unit`
  double high = 0;
  std::string unit = "N.m";
  std::optional<double> step = {};
  double accuracy = 0.04;
  std::string accuracy_basis = {};
  std::string turns = "both";        // clockwise, anticlockwise, both
  MaybeText due_on = {};             // 2026-12-31, where the certificate names a day
  MaybeText accuracy_class = {};     // as its standard names it, in words
  std::optional<double> arm_mm = {}; // from the middle of the grip to the drive
  MaybeText calibrated_on = {};
  std::optional<int> calibration_months = {}; // after that many it is due again
  std::optional<int> calibration_cycles = {}; // or after that many pulls
  MaybeText retired_on = {};
  MaybeText retired_because = {};
  std::vector<EventRecord> events = {}; // in the order in which they were entered
};

// A locking compound on the shelf. What its label says is the owner's own text.
struct CompoundRecord {
  std::string slug = {};
  std::string label = {};
  std::string grade = {}; // a lock of the reference tables: compound-medium
  MaybeText batch = {};
  MaybeText expires_on = {};
  MaybeText opened_on = {};
  std::optional<double> bears_degC = {}; // by its maker's sheet
  MaybeText sheet = {};                  // what else that sheet says, in words
  MaybeText retired_on = {};
  MaybeText retired_because = {};
  std::vector<EventRecord> events = {};
};

} // namespace clampwright::specdb
