// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/schema/migrations.hpp"

namespace clampwright::specdb {

// The first slice: one lock and one figure a joint.
//
// Threads, classes, surfaces and locks are stored as the words that the reference tables know, never as keys into them:
// the two databases share nothing. A figure is kept word for word (`printed`) beside what it was read as; a new figure
// never overwrites an old one, it supersedes it.
const char* const k_version_1 = R"sql(
CREATE TABLE meta (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;

CREATE TABLE source (
  id INTEGER PRIMARY KEY,
  slug TEXT NOT NULL UNIQUE,
  title TEXT NOT NULL,
  edition TEXT NOT NULL,
  known TEXT NOT NULL CHECK (known IN ('printed','second-hand','memory','computed','common-practice'))
) STRICT;

CREATE TABLE machine (
  id INTEGER PRIMARY KEY,
  slug TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  kind TEXT NOT NULL,
  crank_turn TEXT CHECK (crank_turn IN ('clockwise','anticlockwise')),
  crank_seen_from TEXT,
  stroke_mm REAL CHECK (stroke_mm > 0),
  rod_mm REAL CHECK (rod_mm > stroke_mm / 2),
  CHECK ((crank_turn IS NULL) = (crank_seen_from IS NULL))
) STRICT;

CREATE TABLE assembly (
  id INTEGER PRIMARY KEY,
  machine_id INTEGER NOT NULL REFERENCES machine(id),
  name TEXT NOT NULL,
  UNIQUE (machine_id, name)
) STRICT;

CREATE TABLE joint (
  id INTEGER PRIMARY KEY,
  slug TEXT NOT NULL UNIQUE,
  assembly_id INTEGER NOT NULL REFERENCES assembly(id),
  name TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('bolt','hub','plug','stud-set','union')),
  quantity INTEGER NOT NULL CHECK (quantity > 0),
  thread TEXT NOT NULL,
  class TEXT NOT NULL,
  turned TEXT NOT NULL CHECK (turned IN ('head','nut','part')),
  head TEXT,
  face_outer TEXT,
  face_inner TEXT,
  seat TEXT,
  lock TEXT NOT NULL,
  on_crank INTEGER NOT NULL CHECK (on_crank IN (0,1)),
  seen_from TEXT NOT NULL,
  holding TEXT,
  words TEXT NOT NULL,
  CHECK ((face_outer IS NULL) = (face_inner IS NULL))
) STRICT;

CREATE TABLE figure (
  id INTEGER PRIMARY KEY,
  joint_id INTEGER NOT NULL REFERENCES joint(id),
  printed TEXT NOT NULL,
  value REAL CHECK (value > 0),
  unit TEXT,
  tolerance TEXT,
  low REAL,
  high REAL,
  angle_deg REAL CHECK (angle_deg > 0),
  reading TEXT,
  surfaces TEXT NOT NULL,
  condition TEXT,
  sequence TEXT,
  recheck TEXT,
  source_id INTEGER NOT NULL REFERENCES source(id),
  place TEXT NOT NULL,
  status TEXT NOT NULL CHECK (status IN ('maker','general-table','shop','derived','none')),
  supersedes INTEGER REFERENCES figure(id),
  CHECK ((value IS NULL) = (unit IS NULL)),
  CHECK ((value IS NULL) = (status = 'none')),
  CHECK ((low IS NULL) = (high IS NULL) AND (low IS NULL OR (low <= value AND value <= high)))
) STRICT;
CREATE INDEX figure_by_joint ON figure(joint_id);

CREATE VIRTUAL TABLE joint_search USING fts5(
  name, assembly, machine, thread, words, tokenize = "unicode61 remove_diacritics 2", prefix = '2 3');
)sql";

} // namespace clampwright::specdb
