// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tables of the reference image, and which file of specdb/data fills each. The columns of a file are the columns of
// its table, in order; empty fields become NULL. What a table may hold is said here, by type and CHECK, so a slip in a
// file stops the build with its line number. Tables whose order means something to a reader keep their rowid: with it
// they are read in the order of their file.
#pragma once

#include <array>

namespace clampwright::specdb {

struct ReferenceTable {
  const char* name; // of the table, and of the file: NAME.csv
  const char* create;
  const char* holds = ""; // what a fitter finds in it, one line
};

inline constexpr std::array k_reference_tables{
    ReferenceTable{"sources", R"(CREATE TABLE sources (
      id TEXT PRIMARY KEY, title TEXT NOT NULL, edition TEXT, note TEXT) STRICT, WITHOUT ROWID)",
                   "the documents that the other tables rest on"},
    ReferenceTable{"threads", R"(CREATE TABLE threads (
      designation TEXT PRIMARY KEY,
      form TEXT NOT NULL CHECK (form IN ('metric','unified','whitworth','ba','bsc')),
      size TEXT NOT NULL,
      diameter REAL NOT NULL CHECK (diameter > 0), diameter_unit TEXT NOT NULL CHECK (diameter_unit IN ('mm','in')),
      pitch REAL CHECK (pitch > 0), tpi REAL CHECK (tpi > 0),
      series TEXT NOT NULL CHECK (series IN ('coarse','fine','UNC','UNF','UNEF','BSW','BSF','BA','BSC')),
      choice INTEGER, in_iso262 INTEGER NOT NULL CHECK (in_iso262 IN (0,1)),
      stress_area REAL CHECK (stress_area > 0), stress_area_unit TEXT CHECK (stress_area_unit IN ('mm2','in2')),
      stress_area_source TEXT REFERENCES sources(id), stress_area_where TEXT, stress_area_known TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK ((pitch IS NULL) <> (tpi IS NULL)),
      CHECK ((stress_area IS NULL) = (stress_area_unit IS NULL) AND (stress_area IS NULL) = (stress_area_source IS NULL)
             AND (stress_area IS NULL) = (stress_area_known IS NULL))) STRICT)",
                   "metric, Unified, Whitworth, BA and cycle threads: diameter, pitch, series, stress area as printed"},
    ReferenceTable{"thread_limits", R"(CREATE TABLE thread_limits (
      designation TEXT PRIMARY KEY REFERENCES threads(designation),
      external_class TEXT NOT NULL, internal_class TEXT NOT NULL, unit TEXT NOT NULL CHECK (unit IN ('mm','in')),
      d_max REAL NOT NULL, d_min REAL NOT NULL, d2_max REAL NOT NULL, d2_min REAL NOT NULL, d3_max REAL NOT NULL,
      D_min_internal REAL NOT NULL, D2_min_internal REAL NOT NULL, D2_max_internal REAL NOT NULL,
      D1_min_internal REAL NOT NULL, D1_max_internal REAL NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (d_min < d_max AND d2_min < d2_max AND d3_max < d2_min AND d2_max < d_min),
      CHECK (D1_min_internal < D1_max_internal AND D2_min_internal < D2_max_internal
             AND D1_max_internal < D_min_internal)) STRICT)",
                   "limits of size: 6g bolt and 6H nut, 2A and 2B"},
    ReferenceTable{"strength_classes", R"(CREATE TABLE strength_classes (
      class TEXT NOT NULL, system TEXT NOT NULL, form TEXT NOT NULL CHECK (form IN ('metric','unified')),
      over REAL NOT NULL, over_inclusive INTEGER NOT NULL CHECK (over_inclusive IN (0,1)), up_to REAL NOT NULL,
      size_unit TEXT NOT NULL CHECK (size_unit IN ('mm','in')),
      proof REAL CHECK (proof > 0), yield REAL CHECK (yield > 0), yield_kind TEXT CHECK (yield_kind IN ('ReL','Rp0.2','Rpf')),
      tensile REAL NOT NULL CHECK (tensile > 0), stress_unit TEXT NOT NULL CHECK (stress_unit IN ('MPa','psi','ksi')),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL,
      hv_max REAL CHECK (hv_max BETWEEN 100 AND 700), hv_max_source TEXT REFERENCES sources(id), hv_max_where TEXT,
      hv_max_known TEXT, note TEXT,
      PRIMARY KEY (class, over), CHECK (over < up_to), CHECK (yield <= tensile), CHECK (proof <= yield)) STRICT)",
                   "strength classes of bolts: proof stress, yield, tensile strength, highest hardness"},
    ReferenceTable{"reduced_classes", R"(CREATE TABLE reduced_classes (
      class TEXT PRIMARY KEY, full_class TEXT NOT NULL UNIQUE, share REAL NOT NULL CHECK (share > 0 AND share < 1),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (class <> full_class)) STRICT, WITHOUT ROWID)",
                   "classes with a leading zero, for bolts with weak heads: share of the loads"},
    ReferenceTable{"nut_pairing", R"(CREATE TABLE nut_pairing (
      nut_class TEXT PRIMARY KEY, system TEXT NOT NULL CHECK (system IN ('ISO 898-2','SAE J995')), highest_bolt_class TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)",
                   "nut classes and the highest bolt class that each may hold"},
    ReferenceTable{"material_elastic", R"(CREATE TABLE material_elastic (
      name TEXT PRIMARY KEY, description TEXT NOT NULL,
      modulus_least_GPa REAL NOT NULL CHECK (modulus_least_GPa BETWEEN 1 AND 500),
      modulus_most_GPa REAL NOT NULL CHECK (modulus_most_GPa BETWEEN 1 AND 500),
      expansion_1e_6_per_K REAL CHECK (expansion_1e_6_per_K BETWEEN 1 AND 100), expansion_range TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (modulus_least_GPa <= modulus_most_GPa)) STRICT)",
                   "materials: modulus of elasticity and thermal expansion"},
    ReferenceTable{"nut_proof_stress", R"(CREATE TABLE nut_proof_stress (
      nut_class TEXT NOT NULL, style TEXT NOT NULL CHECK (style IN ('1','2','thin','0.8 d')),
      form TEXT NOT NULL CHECK (form IN ('metric','unified')), series TEXT NOT NULL CHECK (series IN ('coarse','fine','any')),
      over REAL NOT NULL, over_inclusive INTEGER NOT NULL CHECK (over_inclusive IN (0,1)), up_to REAL NOT NULL,
      size_unit TEXT NOT NULL CHECK (size_unit IN ('mm','in')),
      proof REAL NOT NULL CHECK (proof > 0), stress_unit TEXT NOT NULL CHECK (stress_unit IN ('MPa','psi','ksi')),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL,
      hardness_scale TEXT CHECK (hardness_scale IN ('HV','HRC')), hardness_min REAL CHECK (hardness_min > 0),
      hardness_max REAL CHECK (hardness_max > 0), hardness_known TEXT, note TEXT,
      UNIQUE (nut_class, style, series, over), CHECK (over < up_to), CHECK (hardness_min < hardness_max)) STRICT)",
                   "what a nut bears, by class, style and size, as a stress"},
    ReferenceTable{"nut_loads", R"(CREATE TABLE nut_loads (
      nut_class TEXT NOT NULL, style TEXT NOT NULL, thread TEXT NOT NULL REFERENCES threads(designation),
      proof_load_N REAL NOT NULL CHECK (proof_load_N > 0),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (nut_class, style, thread)) STRICT, WITHOUT ROWID)",
                   "proof loads of nuts as their standard prints them"},
    ReferenceTable{"part_materials", R"(CREATE TABLE part_materials (
      name TEXT PRIMARY KEY, description TEXT NOT NULL,
      shear_MPa REAL CHECK (shear_MPa > 0), shear_source TEXT REFERENCES sources(id), shear_where TEXT, shear_known TEXT,
      shear_high_MPa REAL CHECK (shear_high_MPa > 0), shear_high_source TEXT REFERENCES sources(id),
      shear_high_where TEXT, shear_high_known TEXT,
      seat_pressure_MPa REAL CHECK (seat_pressure_MPa > 0), seat_pressure_source TEXT REFERENCES sources(id),
      seat_pressure_where TEXT, seat_pressure_known TEXT,
      family TEXT NOT NULL, elastic TEXT REFERENCES material_elastic(name),
      creep_above_degC REAL CHECK (creep_above_degC BETWEEN 0 AND 1000), creep_source TEXT REFERENCES sources(id),
      creep_where TEXT, creep_known TEXT,
      soft INTEGER NOT NULL CHECK (soft IN (0,1)), note TEXT, CHECK (shear_MPa < shear_high_MPa)) STRICT)",
                   "materials of parts: shear strength, seat pressure, whether soft"},
    ReferenceTable{"thread_engagement", R"(CREATE TABLE thread_engagement (
      tapped_material TEXT NOT NULL, families TEXT NOT NULL, class_from REAL CHECK (class_from > 3), class_to REAL,
      pitch TEXT CHECK (pitch IN ('coarse','fine')),
      engagement_over_d REAL NOT NULL CHECK (engagement_over_d BETWEEN 0.5 AND 4),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK ((class_from IS NULL) = (class_to IS NULL)), CHECK (class_from <= class_to)) STRICT)",
                   "published rules for the length of thread engaged, side by side"},
    ReferenceTable{"bolt_shear", R"(CREATE TABLE bolt_shear (
      class TEXT PRIMARY KEY, share REAL NOT NULL CHECK (share BETWEEN 0.3 AND 1),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)",
                   "shear strength of a bolt's thread over its tensile strength, by class"},
    ReferenceTable{"bolt_loads", R"(CREATE TABLE bolt_loads (
      thread TEXT NOT NULL REFERENCES threads(designation), class TEXT NOT NULL,
      proof_load_N REAL CHECK (proof_load_N > 0), proof_known TEXT, ultimate_load_N REAL CHECK (ultimate_load_N > 0), ultimate_known TEXT,
      source TEXT NOT NULL REFERENCES sources(id), proof_where TEXT, ultimate_where TEXT, note TEXT,
      PRIMARY KEY (thread, class), CHECK (proof_load_N < ultimate_load_N)) STRICT)",
                   "proof and ultimate loads as their standard prints them, by thread and class"},
    ReferenceTable{"breaking_torques", R"(CREATE TABLE breaking_torques (
      system TEXT NOT NULL CHECK (system IN ('ISO 898-7','ISO 3506-1')),
      thread TEXT NOT NULL REFERENCES threads(designation), class TEXT NOT NULL,
      torque_N_m REAL NOT NULL CHECK (torque_N_m > 0),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (system, thread, class)) STRICT, WITHOUT ROWID)",
                   "least torque that breaks a screw, by thread and class"},
    ReferenceTable{"hot_yield", R"(CREATE TABLE hot_yield (
      class TEXT NOT NULL, temperature_degC REAL NOT NULL CHECK (temperature_degC BETWEEN 0 AND 700),
      yield_MPa REAL CHECK (yield_MPa > 0), share_of_cold REAL CHECK (share_of_cold > 0 AND share_of_cold <= 1),
      yield_kind TEXT NOT NULL CHECK (yield_kind IN ('ReL','Rp0.2')),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (class, temperature_degC), CHECK ((yield_MPa IS NULL) <> (share_of_cold IS NULL))) STRICT, WITHOUT ROWID)",
                   "yield of a class when it is hot"},
    ReferenceTable{"class_temperatures", R"(CREATE TABLE class_temperatures (
      system TEXT NOT NULL, class TEXT, low_degC REAL CHECK (low_degC >= -273), high_degC REAL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      UNIQUE (system, class), CHECK (low_degC < high_degC),
      CHECK (low_degC IS NOT NULL OR high_degC IS NOT NULL)) STRICT)",
                   "for which temperatures a class is made"},
    ReferenceTable{"embrittlement", R"(CREATE TABLE embrittlement (
      topic TEXT NOT NULL, over_HV REAL CHECK (over_HV > 0), up_to_HV REAL CHECK (up_to_HV > 0), condition TEXT NOT NULL,
      rule TEXT NOT NULL, advice TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      UNIQUE (topic, condition), CHECK (over_HV < up_to_HV)) STRICT)",
                   "hydrogen: limits of hardness, baking, and what to do"},
    ReferenceTable{"class_cross", R"(CREATE TABLE class_cross (
      metric_class TEXT NOT NULL, metric_range TEXT NOT NULL, inch_class TEXT NOT NULL, inch_range TEXT NOT NULL,
      metric_proof_MPa REAL NOT NULL, inch_proof_MPa REAL NOT NULL, metric_yield_MPa REAL NOT NULL,
      inch_yield_MPa REAL NOT NULL, metric_tensile_MPa REAL NOT NULL, inch_tensile_MPa REAL NOT NULL,
      proof_ratio REAL NOT NULL, yield_ratio REAL NOT NULL, tensile_ratio REAL NOT NULL,
      metric_may_replace INTEGER NOT NULL CHECK (metric_may_replace IN (0,1)),
      inch_may_replace INTEGER NOT NULL CHECK (inch_may_replace IN (0,1)),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      UNIQUE (metric_class, metric_range, inch_class, inch_range)) STRICT)",
                   "metric classes against inch grades, by stress"},
    ReferenceTable{"class_cross_warnings", R"(CREATE TABLE class_cross_warnings (
      number INTEGER PRIMARY KEY, warning TEXT NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL) STRICT)",
                   "why no class equals a grade"},
    ReferenceTable{"running_torques", R"(CREATE TABLE running_torques (
      kind TEXT NOT NULL CHECK (kind IN ('least running torque','least breakaway torque','greatest first-on torque',
                                         'least first-off torque','least fifth-off torque',
                                         'greatest running torque')),
      nut TEXT NOT NULL, size TEXT NOT NULL, thread TEXT REFERENCES threads(designation),
      torque REAL CHECK (torque > 0), unit TEXT NOT NULL CHECK (unit IN ('N·m','lbf·in')),
      also REAL CHECK (also > 0), also_unit TEXT CHECK (also_unit IN ('N·m','lbf·in')),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      UNIQUE (kind, nut, size, source), CHECK ((also IS NULL) = (also_unit IS NULL)),
      CHECK (torque IS NOT NULL OR note IS NOT NULL)) STRICT)",
                   "running torques of locking nuts and inserts, every edition side by side"},
    ReferenceTable{"running_rules", R"(CREATE TABLE running_rules (
      name TEXT PRIMARY KEY, from_share REAL CHECK (from_share BETWEEN 0 AND 1), words TEXT NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)",
                   "rules for adding the running torque of a locking nut to a printed torque"},
    ReferenceTable{"friction_pairs", R"(CREATE TABLE friction_pairs (
      use TEXT NOT NULL CHECK (use IN ('thread and face','joint faces')), one TEXT NOT NULL, other TEXT,
      lubrication TEXT NOT NULL, model TEXT NOT NULL CHECK (model IN ('mu','k','torque factor')),
      low REAL CHECK (low > 0), likely REAL CHECK (likely > 0), high REAL CHECK (high > 0),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (low < high), CHECK (low IS NOT NULL OR likely IS NOT NULL OR high IS NOT NULL)) STRICT)",
                   "friction by the pair of surfaces that was measured"},
    ReferenceTable{"surfaces", R"(CREATE TABLE surfaces (
      name TEXT PRIMARY KEY, description TEXT NOT NULL,
      mu_low REAL NOT NULL, mu_likely REAL NOT NULL, mu_high REAL NOT NULL,
      k_low REAL NOT NULL, k_likely REAL NOT NULL, k_high REAL NOT NULL,
      wet_compound INTEGER NOT NULL CHECK (wet_compound IN (0,1)),
      electroplated INTEGER NOT NULL CHECK (electroplated IN (0,1)), note TEXT,
      CHECK (0 < mu_low AND mu_low <= mu_likely AND mu_likely <= mu_high AND mu_high < 1),
      CHECK (0 < k_low AND k_low <= k_likely AND k_likely <= k_high AND k_high < 1)) STRICT)",
                   "friction and nut factor by surfaces: the bands that this program uses"},
    ReferenceTable{"surface_sources", R"(CREATE TABLE surface_sources (
      surface TEXT NOT NULL REFERENCES surfaces(name), model TEXT NOT NULL CHECK (model IN ('mu','k')),
      published TEXT NOT NULL, low REAL, likely REAL, high REAL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)",
                   "friction and nut factor by surfaces: what was published, source by source"},
    ReferenceTable{"surface_reductions", R"(CREATE TABLE surface_reductions (
      from_surfaces TEXT NOT NULL REFERENCES surfaces(name), to_surfaces TEXT NOT NULL REFERENCES surfaces(name),
      factor REAL NOT NULL CHECK (factor BETWEEN 0.3 AND 2), rule TEXT NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (from_surfaces <> to_surfaces)) STRICT)",
                   "published rules for a torque on other surfaces than it is for"},
    ReferenceTable{"part_reductions", R"(CREATE TABLE part_reductions (
      families TEXT NOT NULL, factor REAL NOT NULL CHECK (factor > 0 AND factor < 1), rule TEXT NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      UNIQUE (families, source)) STRICT)",
                   "published rules that lower a torque for the material of the part"},
    ReferenceTable{"faces", R"(CREATE TABLE faces (
      name TEXT NOT NULL, part TEXT NOT NULL CHECK (part IN ('head','nut')),
      form TEXT NOT NULL CHECK (form IN ('metric','unified','whitworth')), size TEXT NOT NULL,
      diameter REAL NOT NULL, diameter_unit TEXT NOT NULL CHECK (diameter_unit IN ('mm','in')),
      face_diameter REAL CHECK (face_diameter > 0), outer_unit TEXT NOT NULL CHECK (outer_unit IN ('mm','in')),
      standard TEXT NOT NULL, grade TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (name, part, form, size), CHECK (diameter_unit <> outer_unit OR face_diameter > diameter),
      CHECK (face_diameter IS NOT NULL OR note IS NOT NULL)) STRICT)",
                   "bearing face under heads and nuts, by the names of --head"},
    ReferenceTable{"holes", R"(CREATE TABLE holes (
      form TEXT NOT NULL CHECK (form IN ('metric','unified')), size TEXT NOT NULL,
      diameter REAL NOT NULL, diameter_unit TEXT NOT NULL, hole REAL NOT NULL, hole_unit TEXT NOT NULL, fit TEXT NOT NULL CHECK (fit IN ('fine','medium','coarse','close','normal','loose')),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (form, size, fit), CHECK (hole > diameter)) STRICT)",
                   "clearance holes: ISO 273 fine, medium, coarse; ASME B18.2.8 close, normal, loose"},
    ReferenceTable{"locks", R"(CREATE TABLE locks (
      name TEXT PRIMARY KEY, description TEXT NOT NULL,
      family TEXT NOT NULL CHECK (family IN ('none','compound','running-torque','positive','washer')),
      single_use INTEGER NOT NULL CHECK (single_use IN (0,1)),
      heat_limit_degC REAL CHECK (heat_limit_degC BETWEEN 0 AND 1000), heat_limit_source TEXT REFERENCES sources(id),
      heat_limit_where TEXT, heat_limit_known TEXT,
      parts_from_degC REAL CHECK (parts_from_degC BETWEEN 0 AND 1000), parts_to_degC REAL,
      parts_source TEXT REFERENCES sources(id), parts_where TEXT, parts_known TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (parts_from_degC < parts_to_degC)) STRICT)",
                   "ways of locking: single use or not, heat limit, heat that parts a compound"},
    ReferenceTable{
        "lock_rules", R"(CREATE TABLE lock_rules (
      lock TEXT NOT NULL, topic TEXT NOT NULL CHECK (topic IN ('about','fit','never','heat','undo','check','renew','bears')),
      rule TEXT NOT NULL, source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      UNIQUE (lock, topic, rule)) STRICT)",
        "how each lock is fitted, undone, checked and renewed; compound and locking-nut stand for all of them"},
    ReferenceTable{"lock_pairs", R"(CREATE TABLE lock_pairs (
      one TEXT NOT NULL, other TEXT NOT NULL, verdict TEXT NOT NULL CHECK (verdict IN ('ok','mind','no')), why TEXT NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      UNIQUE (one, other)) STRICT)",
                   "which locks go together; compound and locking-nut stand for all of them"},
    ReferenceTable{"cure_surfaces", R"(CREATE TABLE cure_surfaces (
      name TEXT PRIMARY KEY, description TEXT NOT NULL,
      activity TEXT NOT NULL CHECK (activity IN ('active','inactive','not-known','never')),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)",
                   "on which surfaces locking compound cures by itself"},
    ReferenceTable{"cure_times", R"(CREATE TABLE cure_times (
      what TEXT NOT NULL CHECK (what IN ('setting','full strength','primer','heat only','heat cure')),
      surface TEXT NOT NULL CHECK (surface IN ('active','any')),
      from_degC REAL, to_degC REAL, least_min REAL CHECK (least_min > 0), most_min REAL CHECK (most_min > 0),
      words TEXT NOT NULL, source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (from_degC < to_degC), CHECK (least_min < most_min),
      CHECK (from_degC IS NOT NULL OR to_degC IS NOT NULL)) STRICT)",
                   "how long locking compound cures, by temperature"},
    ReferenceTable{"heads", R"(CREATE TABLE heads (
      standard TEXT NOT NULL, kind TEXT NOT NULL,
      form TEXT NOT NULL CHECK (form IN ('metric','unified','whitworth')), size TEXT NOT NULL,
      diameter REAL NOT NULL CHECK (diameter > 0), unit TEXT NOT NULL CHECK (unit IN ('mm','in')),
      across_flats REAL CHECK (across_flats > diameter), head_diameter REAL CHECK (head_diameter > diameter),
      height REAL CHECK (height > 0), "key" REAL CHECK ("key" > 0 AND "key" < diameter),
      face_diameter REAL CHECK (face_diameter > diameter), face_known TEXT, face_name TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (standard, kind, form, size), CHECK (across_flats IS NOT NULL OR head_diameter IS NOT NULL),
      CHECK (face_diameter < coalesce(head_diameter, across_flats)),
      CHECK ((face_diameter IS NULL) = (face_known IS NULL))) STRICT)",
                   "heads of bolts and screws: across flats or head diameter, height, key, bearing face"},
    ReferenceTable{"nuts", R"(CREATE TABLE nuts (
      standard TEXT NOT NULL, kind TEXT NOT NULL,
      form TEXT NOT NULL CHECK (form IN ('metric','unified','whitworth')), size TEXT NOT NULL,
      diameter REAL NOT NULL CHECK (diameter > 0), pitch REAL CHECK (pitch > 0),
      unit TEXT NOT NULL CHECK (unit IN ('mm','in')),
      across_flats REAL NOT NULL CHECK (across_flats > diameter), height REAL NOT NULL CHECK (height > 0),
      thread_height REAL CHECK (thread_height > 0 AND thread_height < height),
      face_diameter REAL CHECK (face_diameter > diameter), face_known TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (standard, kind, form, size), CHECK ((face_diameter IS NULL) = (face_known IS NULL))) STRICT)",
                   "nuts: across flats, greatest height, least height of full thread, bearing face"},
    ReferenceTable{"washers", R"(CREATE TABLE washers (
      standard TEXT NOT NULL, kind TEXT NOT NULL,
      form TEXT NOT NULL CHECK (form IN ('metric','unified')), size TEXT NOT NULL,
      diameter REAL NOT NULL CHECK (diameter > 0), unit TEXT NOT NULL CHECK (unit IN ('mm','in')),
      "inner" REAL NOT NULL CHECK ("inner" > diameter), "outer" REAL NOT NULL CHECK ("outer" > "inner"),
      thickness REAL NOT NULL CHECK (thickness > 0), thickness_max REAL CHECK (thickness_max > thickness),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (standard, kind, form, size)) STRICT)",
                   "plain washers: inner and outer diameter, thickness"},
    ReferenceTable{"wrench_sizes", R"(CREATE TABLE wrench_sizes (
      form TEXT NOT NULL CHECK (form IN ('metric','unified','whitworth','ba')), size TEXT NOT NULL,
      fastener TEXT NOT NULL, standard TEXT NOT NULL, tool TEXT NOT NULL CHECK (tool IN ('spanner','hexagon key')),
      width REAL NOT NULL CHECK (width > 0), unit TEXT NOT NULL CHECK (unit IN ('mm','in')), marking TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (form, size, fastener, standard)) STRICT)",
                   "which spanner or key fits a thread, by standard: metric, inch, W, BS and BA"},
    ReferenceTable{"hexagon_keys", R"(CREATE TABLE hexagon_keys (
      key_mm REAL PRIMARY KEY CHECK (key_mm > 0), width_max_mm REAL NOT NULL,
      width_min_mm REAL NOT NULL CHECK (width_min_mm < width_max_mm), must_bear_N_m REAL NOT NULL CHECK (must_bear_N_m > 0),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)",
                   "hexagon keys: limits of width, least torque that a key must bear (no torque to tighten with)"},
    ReferenceTable{"spark_plugs", R"(CREATE TABLE spark_plugs (
      thread TEXT NOT NULL, seat TEXT NOT NULL CHECK (seat IN ('flat','conical')), head_material TEXT,
      torque_low_N_m REAL CHECK (torque_low_N_m > 0), torque_high_N_m REAL CHECK (torque_high_N_m < 100),
      printed TEXT, turn_new TEXT, turn_reused TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (torque_low_N_m <= torque_high_N_m), CHECK ((torque_low_N_m IS NULL) = (printed IS NULL)),
      CHECK (torque_low_N_m IS NOT NULL OR turn_new IS NOT NULL)) STRICT)",
                   "torques and angles for spark plugs, all sources side by side: they disagree; clean dry threads"},
    ReferenceTable{"spark_plug_threads", R"(CREATE TABLE spark_plug_threads (
      thread TEXT NOT NULL, seat TEXT NOT NULL CHECK (seat IN ('flat','conical')), standard TEXT, hexagon_mm TEXT, reach_mm TEXT,
      used_in TEXT NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (thread, seat)) STRICT)",
                   "threads of spark plugs: seat, hexagon, reach, where they are used"},
    ReferenceTable{"taper_seats", R"(CREATE TABLE taper_seats (
      item TEXT NOT NULL, used_in TEXT, taper TEXT NOT NULL, angle_deg REAL NOT NULL CHECK (angle_deg BETWEEN 1 AND 20),
      holds_itself_above_mu REAL NOT NULL, large_diameter REAL, large_diameter_unit TEXT CHECK (large_diameter_unit IN ('mm','in')), length TEXT,
      small_diameter TEXT, "key" TEXT, nut_thread TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK ((large_diameter IS NULL) = (large_diameter_unit IS NULL))) STRICT)",
                   "tapers of hubs and flywheels, conical shaft ends and their nut threads"},
    ReferenceTable{"head_marks", R"(CREATE TABLE head_marks (
      mark TEXT NOT NULL, part TEXT NOT NULL CHECK (part IN
        ('bolt','screw','stud','nut','bolt screw','bolt stud','bolt screw stud','bolt screw nut','bolt screw stud nut')),
      system TEXT, class TEXT, meaning TEXT NOT NULL,
      verdict TEXT NOT NULL CHECK (verdict IN ('means','may-mean','not-known')),
      in_tables INTEGER NOT NULL CHECK (in_tables IN (0,1)), rule TEXT NOT NULL, look_alikes TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (mark, part, meaning), CHECK (in_tables = 0 OR class IS NOT NULL)) STRICT)",
                   "marks on heads and nuts, and what they stand for"},
};

} // namespace clampwright::specdb
