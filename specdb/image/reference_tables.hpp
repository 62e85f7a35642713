// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tables of the reference image, and which file of specdb/data fills each. The columns of a file are the columns of
// its table, in order; empty fields become NULL. What a table may hold is said here, by type and CHECK, so a slip in a
// file stops the build with its line number.
#pragma once

#include <array>

namespace clampwright::specdb {

struct ReferenceTable {
  const char* name; // of the table, and of the file: NAME.csv
  const char* create;
};

inline constexpr std::array k_reference_tables{
    ReferenceTable{"sources", R"(CREATE TABLE sources (
      id TEXT PRIMARY KEY, title TEXT NOT NULL, edition TEXT, note TEXT) STRICT, WITHOUT ROWID)"},
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
             AND (stress_area IS NULL) = (stress_area_known IS NULL))) STRICT, WITHOUT ROWID)"},
    ReferenceTable{"thread_limits", R"(CREATE TABLE thread_limits (
      designation TEXT PRIMARY KEY REFERENCES threads(designation),
      external_class TEXT NOT NULL, internal_class TEXT NOT NULL, unit TEXT NOT NULL CHECK (unit IN ('mm','in')),
      d_max REAL NOT NULL, d_min REAL NOT NULL, d2_max REAL NOT NULL, d2_min REAL NOT NULL, d3_max REAL NOT NULL,
      D_min_internal REAL NOT NULL, D2_min_internal REAL NOT NULL, D2_max_internal REAL NOT NULL,
      D1_min_internal REAL NOT NULL, D1_max_internal REAL NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (d_min < d_max AND d2_min < d2_max AND d3_max < d2_min AND d2_max < d_min),
      CHECK (D1_min_internal < D1_max_internal AND D2_min_internal < D2_max_internal
             AND D1_max_internal < D_min_internal)) STRICT, WITHOUT ROWID)"},
    ReferenceTable{"strength_classes", R"(CREATE TABLE strength_classes (
      class TEXT NOT NULL, system TEXT NOT NULL, form TEXT NOT NULL CHECK (form IN ('metric','unified')),
      over REAL NOT NULL, over_inclusive INTEGER NOT NULL CHECK (over_inclusive IN (0,1)), up_to REAL NOT NULL,
      size_unit TEXT NOT NULL CHECK (size_unit IN ('mm','in')),
      proof REAL CHECK (proof > 0), yield REAL CHECK (yield > 0), yield_kind TEXT CHECK (yield_kind IN ('ReL','Rp0.2','Rpf')),
      tensile REAL NOT NULL CHECK (tensile > 0), stress_unit TEXT NOT NULL CHECK (stress_unit IN ('MPa','psi','ksi')),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL,
      hv_max REAL CHECK (hv_max BETWEEN 100 AND 700), hv_max_source TEXT REFERENCES sources(id), hv_max_where TEXT,
      hv_max_known TEXT, note TEXT,
      PRIMARY KEY (class, over), CHECK (over < up_to), CHECK (yield <= tensile), CHECK (proof <= yield)) STRICT, WITHOUT ROWID)"},
    ReferenceTable{"reduced_classes", R"(CREATE TABLE reduced_classes (
      class TEXT PRIMARY KEY, full_class TEXT NOT NULL UNIQUE, share REAL NOT NULL CHECK (share > 0 AND share < 1),
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (class <> full_class)) STRICT, WITHOUT ROWID)"},
    ReferenceTable{"nut_pairing", R"(CREATE TABLE nut_pairing (
      nut_class TEXT PRIMARY KEY, system TEXT NOT NULL CHECK (system IN ('ISO 898-2','SAE J995')), highest_bolt_class TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)"},
    ReferenceTable{"part_materials", R"(CREATE TABLE part_materials (
      name TEXT PRIMARY KEY, description TEXT NOT NULL,
      shear_MPa REAL CHECK (shear_MPa > 0), shear_source TEXT REFERENCES sources(id), shear_where TEXT, shear_known TEXT,
      seat_pressure_MPa REAL CHECK (seat_pressure_MPa > 0), seat_pressure_source TEXT REFERENCES sources(id),
      seat_pressure_where TEXT, seat_pressure_known TEXT,
      soft INTEGER NOT NULL CHECK (soft IN (0,1)), note TEXT) STRICT)"},
    ReferenceTable{"bolt_loads", R"(CREATE TABLE bolt_loads (
      thread TEXT NOT NULL REFERENCES threads(designation), class TEXT NOT NULL,
      proof_load_N REAL CHECK (proof_load_N > 0), proof_known TEXT, ultimate_load_N REAL CHECK (ultimate_load_N > 0), ultimate_known TEXT,
      source TEXT NOT NULL REFERENCES sources(id), proof_where TEXT, ultimate_where TEXT, note TEXT,
      PRIMARY KEY (thread, class), CHECK (proof_load_N < ultimate_load_N)) STRICT, WITHOUT ROWID)"},
    ReferenceTable{"surfaces", R"(CREATE TABLE surfaces (
      name TEXT PRIMARY KEY, description TEXT NOT NULL,
      mu_low REAL NOT NULL, mu_likely REAL NOT NULL, mu_high REAL NOT NULL,
      k_low REAL NOT NULL, k_likely REAL NOT NULL, k_high REAL NOT NULL,
      wet_compound INTEGER NOT NULL CHECK (wet_compound IN (0,1)),
      electroplated INTEGER NOT NULL CHECK (electroplated IN (0,1)), note TEXT,
      CHECK (0 < mu_low AND mu_low <= mu_likely AND mu_likely <= mu_high AND mu_high < 1),
      CHECK (0 < k_low AND k_low <= k_likely AND k_likely <= k_high AND k_high < 1)) STRICT)"},
    ReferenceTable{"surface_sources", R"(CREATE TABLE surface_sources (
      surface TEXT NOT NULL REFERENCES surfaces(name), model TEXT NOT NULL CHECK (model IN ('mu','k')),
      published TEXT NOT NULL, low REAL, likely REAL, high REAL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)"},
    ReferenceTable{"surface_reductions", R"(CREATE TABLE surface_reductions (
      from_surfaces TEXT NOT NULL REFERENCES surfaces(name), to_surfaces TEXT NOT NULL REFERENCES surfaces(name),
      factor REAL NOT NULL CHECK (factor > 0 AND factor < 1), rule TEXT NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      CHECK (from_surfaces <> to_surfaces)) STRICT)"},
    ReferenceTable{"faces", R"(CREATE TABLE faces (
      name TEXT NOT NULL, part TEXT NOT NULL CHECK (part IN ('head','nut')),
      form TEXT NOT NULL CHECK (form IN ('metric','unified')), size TEXT NOT NULL,
      diameter REAL NOT NULL, diameter_unit TEXT NOT NULL CHECK (diameter_unit IN ('mm','in')),
      face_diameter REAL NOT NULL CHECK (face_diameter > 0), outer_unit TEXT NOT NULL CHECK (outer_unit IN ('mm','in')),
      standard TEXT NOT NULL, grade TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (name, part, form, size), CHECK (diameter_unit <> outer_unit OR face_diameter > diameter)) STRICT, WITHOUT ROWID)"},
    ReferenceTable{"holes", R"(CREATE TABLE holes (
      form TEXT NOT NULL CHECK (form IN ('metric','unified')), size TEXT NOT NULL,
      diameter REAL NOT NULL, diameter_unit TEXT NOT NULL, hole REAL NOT NULL, hole_unit TEXT NOT NULL, fit TEXT NOT NULL,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT,
      PRIMARY KEY (form, size), CHECK (hole > diameter)) STRICT, WITHOUT ROWID)"},
    ReferenceTable{"locks", R"(CREATE TABLE locks (
      name TEXT PRIMARY KEY, description TEXT NOT NULL,
      family TEXT NOT NULL CHECK (family IN ('none','compound','running-torque','positive','washer')),
      single_use INTEGER NOT NULL CHECK (single_use IN (0,1)),
      heat_limit_degC REAL CHECK (heat_limit_degC BETWEEN 0 AND 1000), heat_limit_source TEXT REFERENCES sources(id),
      heat_limit_where TEXT, heat_limit_known TEXT,
      source TEXT NOT NULL REFERENCES sources(id), "where" TEXT, known TEXT NOT NULL, note TEXT) STRICT)"},
};

} // namespace clampwright::specdb
