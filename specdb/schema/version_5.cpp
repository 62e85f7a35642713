// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/schema/migrations.hpp"

namespace clampwright::specdb {

// Machines, joints and figures as they are kept at the bench: what was changed in the record of a machine or joint
// (was -> is), when and why, and on which day a figure was entered. Figures need no log: none is ever overwritten.
//
// Nothing in `record_event` is changed or taken away again, not even by us.
const char* const k_version_5 = R"sql(
ALTER TABLE figure ADD COLUMN entered_on TEXT
  CHECK (entered_on IS NULL OR date(entered_on, '+0 days') IS entered_on);

CREATE TABLE record_event (
  id INTEGER PRIMARY KEY,
  machine_id INTEGER REFERENCES machine(id),
  joint_id INTEGER REFERENCES joint(id),
  on_date TEXT NOT NULL CHECK (date(on_date, '+0 days') IS on_date),
  kind TEXT NOT NULL CHECK (kind IN ('entered','revised')),
  words TEXT NOT NULL,
  because TEXT,
  CHECK ((machine_id IS NULL) <> (joint_id IS NULL)),
  CHECK ((because IS NULL) = (kind = 'entered'))
) STRICT;
CREATE INDEX record_event_by_machine ON record_event(machine_id);
CREATE INDEX record_event_by_joint ON record_event(joint_id);
CREATE TRIGGER record_event_is_not_changed BEFORE UPDATE ON record_event
  BEGIN SELECT RAISE(ABORT, 'what happened to a record is never changed'); END;
CREATE TRIGGER record_event_is_not_taken_away BEFORE DELETE ON record_event
  BEGIN SELECT RAISE(ABORT, 'what happened to a record is never taken away'); END;

CREATE INDEX joint_by_assembly ON joint(assembly_id);
)sql";

} // namespace clampwright::specdb
