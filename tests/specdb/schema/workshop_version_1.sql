-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- A workshop file of version 1, as the program of that version made it with `clampwright demo` (all invented). Frozen:
-- files like it are out there. Tables first, then their rows.
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
INSERT INTO meta VALUES ('invented', 'yes');
INSERT INTO meta VALUES ('workshop', 'Reedmarsh Volunteer Flood Crew');
INSERT INTO source VALUES (1, 'MM', 'Marrowfen workshop sheets (invented)', '2nd print', 'printed');
INSERT INTO source VALUES (2, 'TH', 'Tallisk handbook (invented)', 'rev C', 'printed');
INSERT INTO machine VALUES (1, 'pump', 'Pump Marrowfen P3', 'flood pump, two-stroke single', 'clockwise', 'looking at the clutch', 44.0, 88.0);
INSERT INTO machine VALUES (2, 'winch', 'Winch Tallisk W1', 'rescue winch with engine', NULL, NULL, NULL, NULL);
INSERT INTO assembly VALUES (1, 1, 'clutch');
INSERT INTO assembly VALUES (2, 1, 'cylinder');
INSERT INTO assembly VALUES (3, 1, 'frame');
INSERT INTO assembly VALUES (4, 2, 'engine');
INSERT INTO assembly VALUES (5, 2, 'frame');
INSERT INTO assembly VALUES (6, 2, 'brake');
INSERT INTO joint VALUES (1, 'pump/clutch-hub', 1, 'clutch hub', 'hub', 1, 'M14x1.5-LH', 'unknown', 'part', NULL, '30 mm', '15 mm', 'screwed onto the crank, face against the shoulder', 'none', 1, 'looking at the clutch', 'flats of the crank beside the hub, with the flat key of the sheets', 'centrifugal clutch boss drum left-hand');
INSERT INTO joint VALUES (2, 'pump/head-nuts', 2, 'cylinder head nuts', 'bolt', 4, 'M8', '8.8', 'nut', NULL, NULL, NULL, NULL, 'none', 0, 'looking at the nut', NULL, 'studs gasket top');
INSERT INTO joint VALUES (3, 'pump/mounts', 3, 'engine mount bolts', 'bolt', 4, 'M10', '8.8', 'head', NULL, NULL, NULL, NULL, 'none', 0, 'looking at the bolt head', NULL, 'mounting feet');
INSERT INTO joint VALUES (4, 'winch/pulley-bolt', 4, 'drive pulley bolt', 'bolt', 1, 'M10x1.25', '8.8', 'head', NULL, NULL, NULL, 'pulley on a taper 1:5, mean diameter 18 mm', 'none', 1, 'looking at the bolt head', NULL, 'belt sheave taper cone crank');
INSERT INTO joint VALUES (5, 'winch/frame-bolts', 5, 'frame bolts', 'bolt', 8, '3/8-24 UNF', 'SAE 5', 'nut', NULL, NULL, NULL, NULL, 'none', 0, 'looking at the nut', NULL, 'chassis');
INSERT INTO joint VALUES (6, 'winch/brake-pivot', 6, 'brake pivot bolt', 'bolt', 1, 'M8', '8.8', 'head', NULL, NULL, NULL, NULL, 'none', 0, 'looking at the bolt head', NULL, 'lever pin');
INSERT INTO figure VALUES (1, 1, '42 N·m', 42.0, 'N.m', NULL, NULL, NULL, NULL, NULL, 'dry', 'thread and face clean and dry', NULL, NULL, 1, 'page 4', 'maker', NULL);
INSERT INTO figure VALUES (2, 2, '17 N·m', 17.0, 'N.m', NULL, NULL, NULL, NULL, NULL, 'oiled', 'engine cold', 'crosswise in three passes: 6, 12 and 17 N·m, then once round', 'cold, after the first hour of running', 1, 'page 6', 'maker', NULL);
INSERT INTO figure VALUES (3, 3, '3,4 mkg', 3.4, 'kgf.m', NULL, NULL, NULL, NULL, 'foreign print: its comma is the decimal mark, its mkg the metre-kilogram-force, so 3.4 kgf·m', 'oiled', NULL, NULL, NULL, 1, 'page 2, foreign print', 'maker', NULL);
INSERT INTO figure VALUES (4, 4, '46 N·m', 46.0, 'N.m', NULL, NULL, NULL, NULL, NULL, 'dry', 'cone and thread clean and dry', NULL, NULL, 2, 'page 5', 'maker', NULL);
INSERT INTO figure VALUES (5, 5, '30 lbf·ft', 30.0, 'lbf.ft', NULL, NULL, NULL, NULL, NULL, 'zinc-dry', NULL, NULL, NULL, 2, 'page 2', 'maker', NULL);
INSERT INTO figure VALUES (6, 6, 'tighten firmly', NULL, NULL, NULL, NULL, NULL, NULL, NULL, 'not-stated', NULL, NULL, NULL, 2, 'page 6', 'none', NULL);
INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) VALUES (1, 'clutch hub', 'clutch', 'Pump Marrowfen P3 flood pump, two-stroke single', 'M14x1.5-LH', 'pump/clutch-hub centrifugal clutch boss drum left-hand');
INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) VALUES (2, 'cylinder head nuts', 'cylinder', 'Pump Marrowfen P3 flood pump, two-stroke single', 'M8', 'pump/head-nuts studs gasket top');
INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) VALUES (3, 'engine mount bolts', 'frame', 'Pump Marrowfen P3 flood pump, two-stroke single', 'M10', 'pump/mounts mounting feet');
INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) VALUES (4, 'drive pulley bolt', 'engine', 'Winch Tallisk W1 rescue winch with engine', 'M10x1.25', 'winch/pulley-bolt belt sheave taper cone crank');
INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) VALUES (5, 'frame bolts', 'frame', 'Winch Tallisk W1 rescue winch with engine', '3/8-24 UNF', 'winch/frame-bolts chassis');
INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) VALUES (6, 'brake pivot bolt', 'brake', 'Winch Tallisk W1 rescue winch with engine', 'M8', 'winch/brake-pivot lever pin');
PRAGMA application_id = 1131180151;
PRAGMA user_version = 1;
