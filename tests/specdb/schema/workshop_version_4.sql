-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- A workshop file of version 4, as the program of that version made it with `clampwright demo` (all invented), `wrench
-- log`, `wrench revise`, `shelf add` and `shelf retire`, less most of its joints. Frozen: files like it are out there.
-- Tables first, then their rows.
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
  rod_mm REAL CHECK (rod_mm > stroke_mm / 2), serial_from TEXT, serial_to TEXT, port_below_top_mm REAL CHECK (port_below_top_mm > 0), plug_reach_mm REAL CHECK (plug_reach_mm > 0), regulated_by TEXT, crown_depth_mm REAL CHECK (crown_depth_mm > 0), stop_length_mm REAL CHECK (stop_length_mm > 0), stop_tip_mm REAL CHECK (stop_tip_mm > 0), stop_tip_limit_MPa REAL CHECK (stop_tip_limit_MPa > 0), plug_thread TEXT, head_material TEXT,
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
  on_crank INTEGER NOT NULL CHECK (on_crank IN (0,1)),
  seen_from TEXT NOT NULL,
  holding TEXT,
  words TEXT NOT NULL, nut_class TEXT, washer TEXT, seat_material TEXT, soft_material TEXT, taper TEXT, mating_part TEXT, mating_material TEXT, engagement TEXT, drive TEXT, running_torque TEXT, shaft_turn TEXT CHECK (shaft_turn IN ('clockwise','anticlockwise')), driver TEXT CHECK (driver IN ('shaft','part')), bolt_length TEXT, grip TEXT, hole_depth TEXT, duty TEXT CHECK (duty IN ('dry','wet')), pattern TEXT CHECK (pattern IN ('circle','row')), must_clamp TEXT, must_clamp_because TEXT CHECK ((must_clamp_because IS NULL) = (must_clamp IS NULL)),
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
  source_id INTEGER NOT NULL REFERENCES source(id),
  place TEXT NOT NULL,
  status TEXT NOT NULL CHECK (status IN ('maker','general-table','shop','derived','none')),
  supersedes INTEGER REFERENCES figure(id), method TEXT NOT NULL DEFAULT 'torque'
  CHECK (method IN ('torque','torque-angle','to-shoulder','by-feel')), friction TEXT, temperature TEXT, running_torque_rule TEXT CHECK (running_torque_rule IN ('add','included')), reuse_rule TEXT CHECK (reuse_rule IN ('never','while-good')), reuse TEXT CHECK ((reuse IS NULL) = (reuse_rule IS NULL)), revised_because TEXT CHECK (revised_because IS NULL OR supersedes IS NOT NULL),
  CHECK ((value IS NULL) = (unit IS NULL)),
  CHECK ((value IS NULL) = (status = 'none')),
  CHECK ((low IS NULL) = (high IS NULL) AND (low IS NULL OR (low <= value AND value <= high)))
) STRICT;
CREATE INDEX figure_by_joint ON figure(joint_id);
CREATE VIRTUAL TABLE joint_search USING fts5(
  name, assembly, machine, thread, words, tokenize = "unicode61 remove_diacritics 2", prefix = '2 3');
CREATE TABLE joint_lock (
  joint_id INTEGER NOT NULL REFERENCES joint(id),
  position INTEGER NOT NULL CHECK (position > 0),
  lock TEXT NOT NULL,
  note TEXT,
  PRIMARY KEY (joint_id, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE neighbour (
  joint_id INTEGER NOT NULL REFERENCES joint(id),
  name TEXT NOT NULL,
  bears_degC REAL CHECK (bears_degC BETWEEN -273.15 AND 3000),
  runs_at_degC REAL CHECK (runs_at_degC BETWEEN -273.15 AND 3000),
  PRIMARY KEY (joint_id, name),
  CHECK (bears_degC IS NOT NULL OR runs_at_degC IS NOT NULL)
) STRICT, WITHOUT ROWID;
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
, accuracy_class TEXT, arm_mm REAL CHECK (arm_mm > 0), calibrated_on TEXT
  CHECK (calibrated_on IS NULL OR date(calibrated_on, '+0 days') IS calibrated_on), calibration_months INTEGER CHECK (calibration_months > 0), calibration_cycles INTEGER CHECK (calibration_cycles > 0), retired_on TEXT CHECK (retired_on IS NULL OR date(retired_on, '+0 days') IS retired_on), retired_because TEXT CHECK ((retired_because IS NULL) = (retired_on IS NULL))) STRICT;
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
INSERT INTO meta VALUES ('data_version','540c149f173b301d1aa635476e4a6d94591f2560af1917a2710d49b3bc8b4405');
INSERT INTO meta VALUES ('invented','yes');
INSERT INTO meta VALUES ('workshop','Reedmarsh Volunteer Flood Crew');
INSERT INTO source VALUES (1,'MM1','Marrowfen workshop sheets (invented)','1st print','printed');
INSERT INTO source VALUES (2,'MM','Marrowfen workshop sheets (invented)','2nd print','printed');
INSERT INTO source VALUES (3,'B2','Marrowfen bulletin (invented)','sheet B2','printed');
INSERT INTO source VALUES (4,'TH','Tallisk handbook (invented)','rev C','printed');
INSERT INTO source VALUES (5,'YN','yard notebook (invented)','undated','second-hand');
INSERT INTO source VALUES (6,'OB','Ostrel boat book (invented)','1st edition','printed');
INSERT INTO machine VALUES (1,'pump','Pump Marrowfen P3','flood pump, two-stroke single','clockwise','looking at the clutch',44.0,88.0,'P3-0400','P3-1299',27.0,12.7,NULL,14.0,23.0,10.0,60.0,'M14x1.25','cast-aluminium');
INSERT INTO machine VALUES (2,'winch','Winch Tallisk W1','rescue winch with engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO machine VALUES (3,'boat','Fan boat Ostrel F2','flat boat with air propeller',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO assembly VALUES (1,1,'clutch');
INSERT INTO assembly VALUES (2,1,'flywheel');
INSERT INTO assembly VALUES (3,1,'cylinder');
INSERT INTO assembly VALUES (4,1,'exhaust');
INSERT INTO assembly VALUES (5,1,'frame');
INSERT INTO assembly VALUES (6,1,'crankcase');
INSERT INTO assembly VALUES (7,1,'cooling');
INSERT INTO assembly VALUES (8,1,'ignition');
INSERT INTO assembly VALUES (9,1,'intake');
INSERT INTO assembly VALUES (10,1,'water end');
INSERT INTO assembly VALUES (11,2,'engine');
INSERT INTO assembly VALUES (12,2,'drum');
INSERT INTO assembly VALUES (13,2,'gearbox');
INSERT INTO assembly VALUES (14,2,'frame');
INSERT INTO assembly VALUES (15,2,'rope');
INSERT INTO assembly VALUES (16,2,'brake');
INSERT INTO assembly VALUES (17,3,'propeller');
INSERT INTO assembly VALUES (18,3,'cage');
INSERT INTO assembly VALUES (19,3,'rudder');
INSERT INTO joint VALUES (1,'pump/clutch-hub',1,'clutch hub','hub',1,'M14x1.5-LH','unknown','part',NULL,'30 mm','15 mm','screwed onto the crank, face against the shoulder',1,'looking at the clutch','flats of the crank beside the hub, 17 mm open spanner','centrifugal boss drum left-hand',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'hub key of the sheets',NULL,'clockwise','shaft',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO joint VALUES (3,'pump/head-nuts',3,'cylinder head nuts','bolt',4,'M8','8.8','nut',NULL,NULL,NULL,NULL,0,'looking at the nut',NULL,'studs gasket top','8',NULL,NULL,NULL,NULL,NULL,NULL,NULL,'13 mm hexagon',NULL,NULL,NULL,NULL,NULL,NULL,NULL,'circle',NULL,NULL);
INSERT INTO joint VALUES (5,'pump/base-nuts',3,'cylinder base nuts','bolt',4,'M8','8.8','nut',NULL,NULL,NULL,NULL,0,'looking at the nut',NULL,'studs barrel foot','8',NULL,NULL,NULL,NULL,NULL,NULL,NULL,'13 mm hexagon',NULL,NULL,NULL,NULL,NULL,NULL,NULL,'circle',NULL,NULL);
INSERT INTO joint VALUES (13,'pump/reed-block',9,'reed block screws','bolt',4,'M6','8.8','head',NULL,NULL,NULL,NULL,0,'looking at the bolt head',NULL,'valve inlet',NULL,NULL,NULL,NULL,NULL,'crankcase','cast-aluminium','6.5 mm','10 mm hexagon',NULL,NULL,NULL,'20 mm','13 mm','9 mm','dry',NULL,NULL,NULL);
INSERT INTO joint VALUES (18,'winch/pulley-bolt',11,'drive pulley bolt','bolt',1,'M10x1.25','8.8','head',NULL,NULL,NULL,'pulley on a taper 1:5, mean diameter 18 mm',1,'looking at the bolt head',NULL,'belt sheave taper cone crank',NULL,NULL,NULL,NULL,'1:5',NULL,NULL,NULL,'17 mm hexagon',NULL,'anticlockwise','shaft',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO joint VALUES (27,'winch/clevis',15,'clevis bolt','bolt',1,'M8','12.9','head',NULL,NULL,NULL,NULL,0,'looking at the bolt head',NULL,'shackle hook anchor electroplated',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'13 mm hexagon',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO joint VALUES (32,'winch/brake-pivot',16,'brake pivot bolt','bolt',1,'M8','8.8','head',NULL,NULL,NULL,NULL,0,'looking at the bolt head',NULL,'lever pin','8',NULL,'steel',NULL,NULL,NULL,NULL,NULL,'13 mm hexagon',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'4 kN','so that the lever does not rattle on its pivot');
INSERT INTO joint VALUES (34,'boat/propeller-hub',17,'propeller hub bolts','bolt',6,'M8','8.8','head',NULL,NULL,NULL,NULL,0,'looking at the bolt head',NULL,'airscrew wooden blade rotor',NULL,NULL,NULL,'wood',NULL,NULL,NULL,NULL,'13 mm hexagon',NULL,NULL,NULL,NULL,NULL,NULL,NULL,'circle',NULL,NULL);
INSERT INTO figure VALUES (1,1,'42 N·m',42.0,'N.m',NULL,NULL,NULL,NULL,NULL,'dry','thread and face clean and dry',NULL,2,'page 4','maker',NULL,'torque',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO figure VALUES (3,3,'16 N·m',16.0,'N.m',NULL,NULL,NULL,NULL,NULL,'oiled',NULL,'crosswise',1,'page 5','maker',NULL,'torque',NULL,'engine cold',NULL,NULL,NULL,NULL);
INSERT INTO figure VALUES (4,3,'17 N·m',17.0,'N.m',NULL,NULL,NULL,NULL,NULL,'oiled',NULL,'crosswise, then once round until nothing moves',2,'page 6','maker',3,'torque',NULL,'engine cold',NULL,NULL,NULL,'the second print raised it for the new gasket');
INSERT INTO figure VALUES (6,5,'17 N·m',17.0,'N.m',NULL,NULL,NULL,NULL,NULL,'oiled',NULL,'crosswise in two passes',2,'page 7','maker',NULL,'torque',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO figure VALUES (7,5,'19 N·m',19.0,'N.m',NULL,NULL,NULL,NULL,NULL,'oiled',NULL,'crosswise in two passes',3,'for page 7','maker',NULL,'torque',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO figure VALUES (15,13,'10 N·m',10.0,'N.m',NULL,NULL,NULL,NULL,NULL,'dry',NULL,NULL,2,'page 11','maker',NULL,'torque',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO figure VALUES (20,18,'46 N·m',46.0,'N.m',NULL,NULL,NULL,NULL,NULL,'dry','cone and thread clean and dry',NULL,4,'page 5','maker',NULL,'torque',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO figure VALUES (29,27,'38 N·m',38.0,'N.m',NULL,NULL,NULL,NULL,NULL,'zinc-dry',NULL,NULL,4,'page 10','maker',NULL,'torque',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO figure VALUES (34,32,'tighten firmly',NULL,NULL,NULL,NULL,NULL,NULL,NULL,'not-stated',NULL,NULL,4,'page 6','none',NULL,'by-feel',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO figure VALUES (36,34,'14 N·m',14.0,'N.m',NULL,NULL,NULL,NULL,NULL,'dry',NULL,'crosswise in three passes, then once round',6,'sheet 3','maker',NULL,'torque',NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO joint_search (rowid,name,assembly,machine,thread,words) VALUES (1,'clutch hub','clutch','Pump Marrowfen P3 flood pump, two-stroke single','M14x1.5-LH','pump/clutch-hub centrifugal boss drum left-hand');
INSERT INTO joint_search (rowid,name,assembly,machine,thread,words) VALUES (3,'cylinder head nuts','cylinder','Pump Marrowfen P3 flood pump, two-stroke single','M8','pump/head-nuts studs gasket top');
INSERT INTO joint_search (rowid,name,assembly,machine,thread,words) VALUES (5,'cylinder base nuts','cylinder','Pump Marrowfen P3 flood pump, two-stroke single','M8','pump/base-nuts studs barrel foot');
INSERT INTO joint_search (rowid,name,assembly,machine,thread,words) VALUES (13,'reed block screws','intake','Pump Marrowfen P3 flood pump, two-stroke single','M6','pump/reed-block valve inlet');
INSERT INTO joint_search (rowid,name,assembly,machine,thread,words) VALUES (18,'drive pulley bolt','engine','Winch Tallisk W1 rescue winch with engine','M10x1.25','winch/pulley-bolt belt sheave taper cone crank');
INSERT INTO joint_search (rowid,name,assembly,machine,thread,words) VALUES (27,'clevis bolt','rope','Winch Tallisk W1 rescue winch with engine','M8','winch/clevis shackle hook anchor electroplated');
INSERT INTO joint_search (rowid,name,assembly,machine,thread,words) VALUES (32,'brake pivot bolt','brake','Winch Tallisk W1 rescue winch with engine','M8','winch/brake-pivot lever pin');
INSERT INTO joint_search (rowid,name,assembly,machine,thread,words) VALUES (34,'propeller hub bolts','propeller','Fan boat Ostrel F2 flat boat with air propeller','M8','boat/propeller-hub airscrew wooden blade rotor');
INSERT INTO neighbour VALUES (1,'crank oil seal',120.0,NULL);
INSERT INTO figure_pass VALUES (3,1,5.0);
INSERT INTO figure_pass VALUES (3,2,11.0);
INSERT INTO figure_pass VALUES (3,3,16.0);
INSERT INTO figure_pass VALUES (4,1,6.0);
INSERT INTO figure_pass VALUES (4,2,12.0);
INSERT INTO figure_pass VALUES (4,3,17.0);
INSERT INTO figure_pass VALUES (36,1,5.0);
INSERT INTO figure_pass VALUES (36,2,10.0);
INSERT INTO figure_pass VALUES (36,3,14.0);
INSERT INTO recheck VALUES (3,1,'cold, after the first hour of running',1.0,NULL,'first heat');
INSERT INTO recheck VALUES (4,1,'cold, after the first hour of running',1.0,NULL,'first heat');
INSERT INTO recheck VALUES (36,1,'after the first run',NULL,NULL,'first run');
INSERT INTO recheck VALUES (36,2,'every 10 hours or 10 days until nothing moves',10.0,10.0,NULL);
INSERT INTO recheck VALUES (36,3,'after a change of weather or storage',NULL,NULL,'climate');
INSERT INTO wrench VALUES (1,'A','Bench wrench A',10.0,60.0,'N.m',1.0,0.04,'calibration sheet of wrench A (invented)','clockwise','2027-04-01',NULL,300.0,NULL,NULL,NULL,NULL,NULL);
INSERT INTO wrench VALUES (2,'B','Long wrench B',40.0,200.0,'N.m',1.0,0.04,'calibration sheet of wrench B (invented)','both','2026-10-01',NULL,560.0,NULL,NULL,NULL,NULL,NULL);
INSERT INTO wrench VALUES (3,'C','Small wrench C',1.0,12.0,'N.m',0.1,0.06,'calibration sheet of wrench C (invented)','both','2027-07-01',NULL,180.0,NULL,NULL,NULL,NULL,NULL);
INSERT INTO compound VALUES (1,'bottle-on-the-left','bottle on the left','compound-medium','L-7','2027-06-30',NULL,NULL,NULL,'2026-11-26','gone thick');
INSERT INTO kept_event VALUES (1,1,NULL,'2026-11-20','used','',40);
INSERT INTO kept_event VALUES (2,2,NULL,'2026-11-21','drop','off the bench',NULL);
INSERT INTO kept_event VALUES (3,1,NULL,'2026-11-26','revised','step: 0.5 -> 1; because: new scale',NULL);
INSERT INTO kept_event VALUES (4,NULL,1,'2026-11-26','retired','gone thick',NULL);
PRAGMA application_id = 1131180151;
PRAGMA user_version = 4;
