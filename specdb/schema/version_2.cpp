// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/schema/migrations.hpp"

namespace clampwright::specdb {

// The whole joint: several locks, what it screws into and seats on, what is hot beside it; figures with passes,
// rechecks and rules for using parts again; wrenches.
//
// `shaft_turn` is seen from where `seen_from` says, at the free end of the thread. `bears_degC` is what a neighbour
// stands (a seal, where heat is used to undo), `runs_at_degC` what it gives off in service (an exhaust).
const char* const k_version_2 = R"sql(
ALTER TABLE machine ADD COLUMN serial_from TEXT;
ALTER TABLE machine ADD COLUMN serial_to TEXT;
ALTER TABLE machine ADD COLUMN port_below_top_mm REAL CHECK (port_below_top_mm > 0);
ALTER TABLE machine ADD COLUMN plug_reach_mm REAL CHECK (plug_reach_mm > 0);

CREATE TABLE joint_lock (
  joint_id INTEGER NOT NULL REFERENCES joint(id),
  position INTEGER NOT NULL CHECK (position > 0),
  lock TEXT NOT NULL,
  note TEXT,
  PRIMARY KEY (joint_id, position)
) STRICT, WITHOUT ROWID;
INSERT INTO joint_lock (joint_id, position, lock) SELECT id, 1, lock FROM joint WHERE lock <> 'none';
ALTER TABLE joint DROP COLUMN lock;

ALTER TABLE joint ADD COLUMN nut_class TEXT;
ALTER TABLE joint ADD COLUMN washer TEXT;
ALTER TABLE joint ADD COLUMN seat_material TEXT;
ALTER TABLE joint ADD COLUMN soft_material TEXT;
ALTER TABLE joint ADD COLUMN taper TEXT;
ALTER TABLE joint ADD COLUMN mating_part TEXT;
ALTER TABLE joint ADD COLUMN mating_material TEXT;
ALTER TABLE joint ADD COLUMN engagement TEXT;
ALTER TABLE joint ADD COLUMN drive TEXT;
ALTER TABLE joint ADD COLUMN running_torque TEXT;
ALTER TABLE joint ADD COLUMN shaft_turn TEXT CHECK (shaft_turn IN ('clockwise','anticlockwise'));
ALTER TABLE joint ADD COLUMN driver TEXT CHECK (driver IN ('shaft','part'));

CREATE TABLE neighbour (
  joint_id INTEGER NOT NULL REFERENCES joint(id),
  name TEXT NOT NULL,
  bears_degC REAL CHECK (bears_degC BETWEEN -273.15 AND 3000),
  runs_at_degC REAL CHECK (runs_at_degC BETWEEN -273.15 AND 3000),
  PRIMARY KEY (joint_id, name),
  CHECK (bears_degC IS NOT NULL OR runs_at_degC IS NOT NULL)
) STRICT, WITHOUT ROWID;

ALTER TABLE figure ADD COLUMN method TEXT NOT NULL DEFAULT 'torque'
  CHECK (method IN ('torque','torque-angle','to-shoulder','by-feel'));
ALTER TABLE figure ADD COLUMN friction TEXT;
ALTER TABLE figure ADD COLUMN temperature TEXT;
ALTER TABLE figure ADD COLUMN running_torque_rule TEXT CHECK (running_torque_rule IN ('add','included'));
ALTER TABLE figure ADD COLUMN reuse_rule TEXT CHECK (reuse_rule IN ('never','while-good'));
ALTER TABLE figure ADD COLUMN reuse TEXT CHECK ((reuse IS NULL) = (reuse_rule IS NULL));
ALTER TABLE figure ADD COLUMN revised_because TEXT CHECK (revised_because IS NULL OR supersedes IS NOT NULL);
UPDATE figure SET method = 'torque-angle' WHERE angle_deg IS NOT NULL;
UPDATE figure SET method = 'by-feel' WHERE value IS NULL;
CREATE UNIQUE INDEX figure_by_superseded ON figure(supersedes);

CREATE TABLE figure_pass (
  figure_id INTEGER NOT NULL REFERENCES figure(id),
  position INTEGER NOT NULL CHECK (position > 0),
  value REAL NOT NULL CHECK (value > 0),
  PRIMARY KEY (figure_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE recheck (
  figure_id INTEGER NOT NULL REFERENCES figure(id),
  position INTEGER NOT NULL CHECK (position > 0),
  words TEXT NOT NULL,
  hours REAL CHECK (hours > 0),
  days REAL CHECK (days > 0),
  event TEXT,
  PRIMARY KEY (figure_id, position)
) STRICT, WITHOUT ROWID;
INSERT INTO recheck (figure_id, position, words) SELECT id, 1, recheck FROM figure WHERE recheck IS NOT NULL;
ALTER TABLE figure DROP COLUMN recheck;

CREATE TABLE wrench (
  id INTEGER PRIMARY KEY,
  slug TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  low REAL NOT NULL CHECK (low > 0),
  high REAL NOT NULL CHECK (high > low),
  unit TEXT NOT NULL,
  step REAL CHECK (step > 0),
  accuracy REAL NOT NULL CHECK (accuracy > 0 AND accuracy < 1),
  accuracy_basis TEXT NOT NULL,
  turns TEXT NOT NULL CHECK (turns IN ('clockwise','anticlockwise','both')),
  due_on TEXT CHECK (due_on IS NULL OR date(due_on, '+0 days') IS due_on)
) STRICT;
)sql";

} // namespace clampwright::specdb
