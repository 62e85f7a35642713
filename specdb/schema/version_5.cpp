// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/schema/migrations.hpp"

namespace clampwright::specdb {

// Machines, joints and figures as they are kept at the bench: what was changed in the record of a machine or joint
// (was -> is), when and why, and on which day a figure was entered. Figures need no log: none is ever overwritten.
//
// The search index is made anew with beginnings of one letter, for a line that is searched while it is typed, and every
// word of it stands once in `search_word`: gathering them from the index takes longer than a frame of the screen.
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

DROP TABLE joint_search;
CREATE VIRTUAL TABLE joint_search USING fts5(
  name, assembly, machine, thread, words, tokenize = "unicode61 remove_diacritics 2", prefix = '1 2 3');
INSERT INTO joint_search (rowid, name, assembly, machine, thread, words)
  SELECT j.id, j.name, a.name, m.name || ' ' || m.kind, j.thread, j.slug || ' ' || j.words
  FROM joint j JOIN assembly a ON a.id = j.assembly_id JOIN machine m ON m.id = a.machine_id;

CREATE TABLE search_word (word TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;
CREATE VIRTUAL TABLE word_of_search USING fts5vocab(joint_search, row);
INSERT INTO search_word SELECT term FROM word_of_search;
DROP TABLE word_of_search;
)sql";

} // namespace clampwright::specdb
