// SPDX-License-Identifier: GPL-3.0-or-later
//
// Everything here is invented: crew, machines, makers' sheets and figures.
#include "specdb/demo/demo_workshop.hpp"

#include <array>
#include <optional>
#include <string_view>

#include <SQLiteCpp/Database.h>

#include "specdb/sql/query.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

namespace {

using Text = std::optional<std::string_view>;

struct DemoSource {
  std::string_view slug, title, edition;
};

constexpr std::array k_sources{
    DemoSource{"MM", "Marrowfen workshop sheets (invented)", "2nd print"},
    DemoSource{"TH", "Tallisk handbook (invented)", "rev C"},
};

struct DemoMachine {
  std::string_view slug, name, kind;
  Text crank_turn, crank_seen_from;
  std::optional<double> stroke_mm, rod_mm;
};

constexpr std::array k_machines{
    DemoMachine{"pump", "Pump Marrowfen P3", "flood pump, two-stroke single", "clockwise", "looking at the clutch",
                44.0, 88.0},
    DemoMachine{"winch", "Winch Tallisk W1", "rescue winch with engine", {}, {}, {}, {}},
};

struct DemoFigure {
  std::string_view printed;
  std::optional<double> value;
  Text unit;
  Text reading;
  std::string_view surfaces;
  Text condition, sequence, recheck;
  std::string_view source, place;
  std::string_view status = "maker";
};

struct DemoJoint {
  std::string_view machine, slug, assembly, name, kind;
  int quantity;
  std::string_view thread, strength_class, turned;
  Text face_outer, face_inner, seat;
  bool on_crank;
  std::string_view seen_from;
  Text holding;
  std::string_view words; // what else a person may call it
  DemoFigure figure;
};

constexpr std::array k_joints{
    DemoJoint{.machine = "pump",
              .slug = "pump/clutch-hub",
              .assembly = "clutch",
              .name = "clutch hub",
              .kind = "hub",
              .quantity = 1,
              .thread = "M14x1.5-LH",
              .strength_class = "unknown",
              .turned = "part",
              .face_outer = "30 mm",
              .face_inner = "15 mm",
              .seat = "screwed onto the crank, face against the shoulder",
              .on_crank = true,
              .seen_from = "looking at the clutch",
              .holding = "flats of the crank beside the hub, with the flat key of the sheets",
              .words = "centrifugal clutch boss drum left-hand",
              .figure = {.printed = "42 N·m",
                         .value = 42.0,
                         .unit = "N.m",
                         .reading = {},
                         .surfaces = "dry",
                         .condition = "thread and face clean and dry",
                         .sequence = {},
                         .recheck = {},
                         .source = "MM",
                         .place = "page 4"}},
    DemoJoint{.machine = "pump",
              .slug = "pump/head-nuts",
              .assembly = "cylinder",
              .name = "cylinder head nuts",
              .kind = "bolt",
              .quantity = 4,
              .thread = "M8",
              .strength_class = "8.8",
              .turned = "nut",
              .face_outer = {},
              .face_inner = {},
              .seat = {},
              .on_crank = false,
              .seen_from = "looking at the nut",
              .holding = {},
              .words = "studs gasket top",
              .figure = {.printed = "17 N·m",
                         .value = 17.0,
                         .unit = "N.m",
                         .reading = {},
                         .surfaces = "oiled",
                         .condition = "engine cold",
                         .sequence = "crosswise in three passes: 6, 12 and 17 N·m, then once round",
                         .recheck = "cold, after the first hour of running",
                         .source = "MM",
                         .place = "page 6"}},
    DemoJoint{
        .machine = "pump",
        .slug = "pump/mounts",
        .assembly = "frame",
        .name = "engine mount bolts",
        .kind = "bolt",
        .quantity = 4,
        .thread = "M10",
        .strength_class = "8.8",
        .turned = "head",
        .face_outer = {},
        .face_inner = {},
        .seat = {},
        .on_crank = false,
        .seen_from = "looking at the bolt head",
        .holding = {},
        .words = "mounting feet",
        .figure = {.printed = "3,4 mkg",
                   .value = 3.4,
                   .unit = "kgf.m",
                   .reading =
                       "foreign print: its comma is the decimal mark, its mkg the metre-kilogram-force, so 3.4 kgf·m",
                   .surfaces = "oiled",
                   .condition = {},
                   .sequence = {},
                   .recheck = {},
                   .source = "MM",
                   .place = "page 2, foreign print"}},
    DemoJoint{.machine = "winch",
              .slug = "winch/pulley-bolt",
              .assembly = "engine",
              .name = "drive pulley bolt",
              .kind = "bolt",
              .quantity = 1,
              .thread = "M10x1.25",
              .strength_class = "8.8",
              .turned = "head",
              .face_outer = {},
              .face_inner = {},
              .seat = "pulley on a taper 1:5, mean diameter 18 mm",
              .on_crank = true,
              .seen_from = "looking at the bolt head",
              .holding = {},
              .words = "belt sheave taper cone crank",
              .figure = {.printed = "46 N·m",
                         .value = 46.0,
                         .unit = "N.m",
                         .reading = {},
                         .surfaces = "dry",
                         .condition = "cone and thread clean and dry",
                         .sequence = {},
                         .recheck = {},
                         .source = "TH",
                         .place = "page 5"}},
    DemoJoint{.machine = "winch",
              .slug = "winch/frame-bolts",
              .assembly = "frame",
              .name = "frame bolts",
              .kind = "bolt",
              .quantity = 8,
              .thread = "3/8-24 UNF",
              .strength_class = "SAE 5",
              .turned = "nut",
              .face_outer = {},
              .face_inner = {},
              .seat = {},
              .on_crank = false,
              .seen_from = "looking at the nut",
              .holding = {},
              .words = "chassis",
              .figure = {.printed = "30 lbf·ft",
                         .value = 30.0,
                         .unit = "lbf.ft",
                         .reading = {},
                         .surfaces = "zinc-dry",
                         .condition = {},
                         .sequence = {},
                         .recheck = {},
                         .source = "TH",
                         .place = "page 2"}},
    DemoJoint{.machine = "winch",
              .slug = "winch/brake-pivot",
              .assembly = "brake",
              .name = "brake pivot bolt",
              .kind = "bolt",
              .quantity = 1,
              .thread = "M8",
              .strength_class = "8.8",
              .turned = "head",
              .face_outer = {},
              .face_inner = {},
              .seat = {},
              .on_crank = false,
              .seen_from = "looking at the bolt head",
              .holding = {},
              .words = "lever pin",
              .figure = {.printed = "tighten firmly",
                         .value = {},
                         .unit = {},
                         .reading = {},
                         .surfaces = "not-stated",
                         .condition = {},
                         .sequence = {},
                         .recheck = {},
                         .source = "TH",
                         .place = "page 6",
                         .status = "none"}},
};

void fill(SQLite::Database& database) {
  run(database, "INSERT INTO meta VALUES ('invented', 'yes'), ('workshop', 'Reedmarsh Volunteer Flood Crew')");
  for (const DemoSource& s : k_sources)
    run(database, "INSERT INTO source (slug, title, edition, known) VALUES (?, ?, ?, 'printed')", s.slug, s.title,
        s.edition);
  for (const DemoMachine& m : k_machines)
    run(database,
        "INSERT INTO machine (slug, name, kind, crank_turn, crank_seen_from, stroke_mm, rod_mm) VALUES (?, ?, ?, ?, ?, "
        "?, ?)",
        m.slug, m.name, m.kind, m.crank_turn, m.crank_seen_from, m.stroke_mm, m.rod_mm);
  for (const DemoJoint& j : k_joints) {
    run(database, "INSERT OR IGNORE INTO assembly (machine_id, name) SELECT id, ? FROM machine WHERE slug = ?",
        j.assembly, j.machine);
    run(database,
        "INSERT INTO joint (slug, assembly_id, name, kind, quantity, thread, class, turned, face_outer, face_inner, "
        "seat, lock, on_crank, "
        "seen_from, holding, words) SELECT ?, a.id, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'none', ?, ?, ?, ? FROM assembly a JOIN "
        "machine m ON m.id = "
        "a.machine_id WHERE a.name = ? AND m.slug = ?",
        j.slug, j.name, j.kind, j.quantity, j.thread, j.strength_class, j.turned, j.face_outer, j.face_inner, j.seat,
        j.on_crank ? 1 : 0, j.seen_from, j.holding, j.words, j.assembly, j.machine);
    const DemoFigure& f = j.figure;
    run(database,
        "INSERT INTO figure (joint_id, printed, value, unit, reading, surfaces, condition, sequence, recheck, "
        "source_id, place, status) "
        "SELECT j.id, ?, ?, ?, ?, ?, ?, ?, ?, s.id, ?, ? FROM joint j, source s WHERE j.slug = ? AND s.slug = ?",
        f.printed, f.value, f.unit, f.reading, f.surfaces, f.condition, f.sequence, f.recheck, f.place, f.status,
        j.slug, f.source);
  }
  run(database, "INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) SELECT j.id, j.name, a.name, "
                "m.name || ' ' || m.kind, "
                "j.thread, j.slug || ' ' || j.words FROM joint j JOIN assembly a ON a.id = j.assembly_id JOIN machine "
                "m ON m.id = a.machine_id");
}

} // namespace

Result<void> make_demo_workshop(const std::filesystem::path& path) { return Workshop::create(path, fill); }

} // namespace clampwright::specdb
