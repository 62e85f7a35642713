// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/schema/migrations.hpp"

namespace clampwright::specdb {

// The bench: the life of a wrench, the shelf of locking compounds, what stands in the plug hole of an engine, how the
// bolts of a joint lie, and what a joint must carry.
//
// `kept_event` is the log of a wrench or a compound: what happened to it, and what was changed in its record (was → is)
// and why. Nothing in it is ever taken away.
const char* const k_version_4 = R"sql(
ALTER TABLE machine ADD COLUMN crown_depth_mm REAL CHECK (crown_depth_mm > 0);
ALTER TABLE machine ADD COLUMN stop_length_mm REAL CHECK (stop_length_mm > 0);
ALTER TABLE machine ADD COLUMN stop_tip_mm REAL CHECK (stop_tip_mm > 0);
ALTER TABLE machine ADD COLUMN stop_tip_limit_MPa REAL CHECK (stop_tip_limit_MPa > 0);
ALTER TABLE machine ADD COLUMN plug_thread TEXT;
ALTER TABLE machine ADD COLUMN head_material TEXT;

ALTER TABLE joint ADD COLUMN pattern TEXT CHECK (pattern IN ('circle','row'));
ALTER TABLE joint ADD COLUMN must_clamp TEXT;
ALTER TABLE joint ADD COLUMN must_clamp_because TEXT CHECK ((must_clamp_because IS NULL) = (must_clamp IS NULL));

ALTER TABLE wrench ADD COLUMN accuracy_class TEXT;
ALTER TABLE wrench ADD COLUMN arm_mm REAL CHECK (arm_mm > 0);
ALTER TABLE wrench ADD COLUMN calibrated_on TEXT
  CHECK (calibrated_on IS NULL OR date(calibrated_on, '+0 days') IS calibrated_on);
ALTER TABLE wrench ADD COLUMN calibration_months INTEGER CHECK (calibration_months > 0);
ALTER TABLE wrench ADD COLUMN calibration_cycles INTEGER CHECK (calibration_cycles > 0);
ALTER TABLE wrench ADD COLUMN retired_on TEXT CHECK (retired_on IS NULL OR date(retired_on, '+0 days') IS retired_on);
ALTER TABLE wrench ADD COLUMN retired_because TEXT CHECK ((retired_because IS NULL) = (retired_on IS NULL));

CREATE TABLE compound (
  id INTEGER PRIMARY KEY,
  slug TEXT NOT NULL UNIQUE,
  label TEXT NOT NULL CHECK (label <> ''),
  grade TEXT NOT NULL,
  batch TEXT,
  expires_on TEXT CHECK (expires_on IS NULL OR date(expires_on, '+0 days') IS expires_on),
  opened_on TEXT CHECK (opened_on IS NULL OR date(opened_on, '+0 days') IS opened_on),
  bears_degC REAL CHECK (bears_degC BETWEEN -273.15 AND 3000),
  sheet TEXT,
  retired_on TEXT CHECK (retired_on IS NULL OR date(retired_on, '+0 days') IS retired_on),
  retired_because TEXT,
  CHECK ((retired_because IS NULL) = (retired_on IS NULL))
) STRICT;

CREATE TABLE kept_event (
  id INTEGER PRIMARY KEY,
  wrench_id INTEGER REFERENCES wrench(id),
  compound_id INTEGER REFERENCES compound(id),
  on_date TEXT NOT NULL CHECK (date(on_date, '+0 days') IS on_date),
  kind TEXT NOT NULL CHECK (kind IN ('calibrated','used','drop','overload','revised','retired','note')),
  words TEXT NOT NULL,
  cycles INTEGER CHECK (cycles > 0),
  CHECK ((wrench_id IS NULL) <> (compound_id IS NULL)),
  CHECK ((cycles IS NULL) = (kind <> 'used'))
) STRICT;
CREATE INDEX kept_event_by_wrench ON kept_event(wrench_id);
CREATE INDEX kept_event_by_compound ON kept_event(compound_id);
)sql";

} // namespace clampwright::specdb
