-- The tables of a log. Everything is built from the lines in op, which are those of the journals.

CREATE TABLE meta (
  key TEXT NOT NULL PRIMARY KEY, -- what is told, such as device, before, clean, version
  value TEXT NOT NULL            -- what it is
) STRICT, WITHOUT ROWID;

CREATE TABLE run (
  id INTEGER PRIMARY KEY,        -- row number; differs from log to log
  name TEXT NOT NULL UNIQUE      -- 20 hex digits: one run of the program
) STRICT;

CREATE TABLE op (
  run INTEGER NOT NULL REFERENCES run, -- the run that wrote it
  n INTEGER NOT NULL,            -- its count in that run; 0 is the run's header
  t INTEGER NOT NULL,            -- Lamport number: what orders operations
  raw TEXT NOT NULL,             -- the journal's line byte for byte, without its end
  state TEXT NOT NULL CHECK (state IN ('applied', 'future')), -- future: of a newer version, only kept
  PRIMARY KEY (run, n)
) STRICT;

CREATE INDEX op_order ON op (t, n);

CREATE TABLE journal_file (
  name TEXT NOT NULL PRIMARY KEY, -- file in the folder of journals
  bytes INTEGER NOT NULL,        -- taken in up to here, a line's end
  seen INTEGER NOT NULL          -- size of the file when that was last done
) STRICT, WITHOUT ROWID;

CREATE TABLE bad_line (
  file TEXT NOT NULL,            -- file in the folder of journals, where the line still stands
  at INTEGER NOT NULL,           -- its first byte
  why TEXT NOT NULL,             -- why it was not taken in
  PRIMARY KEY (file, at)
) STRICT, WITHOUT ROWID;

CREATE TABLE record (
  id INTEGER PRIMARY KEY,        -- row number; differs from log to log
  name TEXT NOT NULL UNIQUE,     -- the record's id: the operation that made it
  kind TEXT NOT NULL,            -- flight, rocket, lot ...; of a newer version perhaps unknown here
  t INTEGER NOT NULL,            -- smallest Lamport number among its operations
  run TEXT NOT NULL,             -- the run in its name, to order records with one t
  part INTEGER NOT NULL,         -- which of several records one operation made
  doc TEXT NOT NULL DEFAULT '{}', -- the cells that show: {"field":{"v":value,"y":typed text}}
  removed INTEGER NOT NULL DEFAULT 0, -- 1: marked as removed, and nobody edited it unseen
  contested INTEGER NOT NULL DEFAULT 0, -- 1: heads of it say different things, or a removal had not seen one
  whole INTEGER NOT NULL DEFAULT 0, -- 1: one operation made it and none said more; its cells are in doc only
  rocket ANY GENERATED ALWAYS AS (doc ->> '$.rocket.v') STORED, -- as doc has it
  day ANY GENERATED ALWAYS AS (doc ->> '$.day.v') STORED,       -- as doc has it
  lot ANY GENERATED ALWAYS AS (doc ->> '$.lot.v') STORED,       -- as doc has it
  booster_lot ANY GENERATED ALWAYS AS (doc ->> '$.booster_lot.v') STORED, -- as doc has it
  device ANY GENERATED ALWAYS AS (doc ->> '$.device.v') STORED, -- as doc has it
  altimeter ANY GENERATED ALWAYS AS (doc ->> '$.altimeter.v') STORED, -- as doc has it
  motor ANY GENERATED ALWAYS AS (doc ->> '$.motor.v') STORED,   -- as doc has it
  several ANY GENERATED ALWAYS AS (motor GLOB '*[xX×,]*' OR motor LIKE '%then%') STORED, -- 1: motor may name more than one
  status ANY GENERATED ALWAYS AS (doc ->> '$.status.v') STORED  -- as doc has it
) STRICT;

CREATE INDEX record_order ON record (kind, removed, t, run, part, name);
CREATE INDEX record_contested ON record (t, run, part, name) WHERE contested = 1;
CREATE INDEX flight_of_day ON record (day, t, run, part) WHERE kind = 'flight' AND removed = 0;
CREATE INDEX flight_of_rocket ON record (rocket, t, run, part)
  WHERE kind = 'flight' AND removed = 0;
CREATE INDEX flight_told_of_rocket ON record (rocket, t, run, part)
  WHERE kind = 'flight' AND removed = 0 AND status <> 'draft';
CREATE INDEX flight_flown_of_lot ON record (lot)
  WHERE kind = 'flight' AND removed = 0 AND status = 'flown' AND several IS NOT 1;
CREATE INDEX flight_flown_on_several ON record (lot, booster_lot, motor)
  WHERE kind = 'flight' AND removed = 0 AND status = 'flown' AND several IS 1;
CREATE INDEX flight_flown_under_device ON record (device, day)
  WHERE kind = 'flight' AND removed = 0 AND status = 'flown';
CREATE INDEX flight_flown_with_altimeter ON record (altimeter, day)
  WHERE kind = 'flight' AND removed = 0 AND status = 'flown';

CREATE TABLE cell (
  record INTEGER NOT NULL REFERENCES record, -- the record it belongs to
  field TEXT NOT NULL,           -- unit-suffixed name; of a newer version perhaps unknown here
  run INTEGER NOT NULL REFERENCES run, -- the operation that wrote it ...
  n INTEGER NOT NULL,            -- ... and its count
  t INTEGER NOT NULL,            -- the operation's Lamport number
  value TEXT,                    -- JSON in SI; NULL when emptied or when the text could not be read
  typed TEXT,                    -- the text the flier typed; NULL when computed or emptied
  head INTEGER NOT NULL,         -- 1 while no operation has replaced it
  PRIMARY KEY (record, field, run, n)
) STRICT, WITHOUT ROWID;

CREATE TABLE replaced (
  record INTEGER NOT NULL REFERENCES record, -- cells that were replaced, arrived or not:
  field TEXT NOT NULL,           -- the field,
  run INTEGER NOT NULL REFERENCES run, -- the operation
  n INTEGER NOT NULL,            -- and its count
  PRIMARY KEY (record, field, run, n)
) STRICT, WITHOUT ROWID;

-- What a search looks through. Made from record when it is looked for or while nothing else is to
-- be done, never while something is kept; empty is as good as full.
CREATE TABLE find_name (
  id INTEGER PRIMARY KEY,        -- row number; differs from log to log
  name TEXT NOT NULL UNIQUE      -- id of a record that is looked through, or that one of those names
) STRICT;

CREATE TABLE find_flight (
  t INTEGER NOT NULL,            -- as record has it
  run TEXT NOT NULL,             -- as record has it
  part INTEGER NOT NULL,         -- as record has it
  flight INTEGER NOT NULL,       -- a flight that is not removed, by find_name
  rocket INTEGER,                -- what the flight names, by find_name
  day INTEGER,                   -- what the flight names, by find_name
  lot INTEGER,                   -- what the flight names, by find_name
  booster_lot INTEGER,           -- what the flight names, by find_name
  device INTEGER,                -- what the flight names, by find_name
  altimeter INTEGER,             -- what the flight names, by find_name
  motor TEXT NOT NULL,           -- its motors, folded: without letter case and accents
  outcome TEXT NOT NULL,         -- what came of it in words, folded
  text TEXT NOT NULL,            -- whatever else is told of it in words, folded
  PRIMARY KEY (t, run, part, flight)
) STRICT, WITHOUT ROWID;

CREATE UNIQUE INDEX find_flight_once ON find_flight (flight);

CREATE TABLE find_note (
  record INTEGER PRIMARY KEY,    -- a fix or a misfire that is not removed, by find_name
  flight INTEGER,                -- the flight it was noted for, by find_name
  open INTEGER NOT NULL,         -- 1: a fix that is not done
  text TEXT NOT NULL             -- what is told of it, folded
) STRICT;

CREATE INDEX find_note_of ON find_note (flight);

-- Every cell ever given, those of records that were made whole included.
CREATE VIEW every_cell AS
SELECT record, field, run, n, t, value, typed, head FROM cell
UNION ALL
SELECT record.id, CAST(each.key AS TEXT), run.id, CAST(substr(record.name, 22) AS INTEGER), record.t,
       CAST(nullif(each.value -> '$.v', 'null') AS TEXT), CAST(each.value ->> '$.y' AS TEXT), 1
FROM record JOIN run ON run.name = record.run, json_each(record.doc) AS each
WHERE record.whole = 1;

-- Every cell nobody has replaced; several for one field are an open conflict.
CREATE VIEW head AS
SELECT record.name AS id, record.kind AS kind, cell.field AS field, cell.value AS value,
       cell.typed AS typed, cell.t AS t, run.name || '.' || cell.n AS op
FROM every_cell AS cell JOIN record ON record.id = cell.record JOIN run ON run.id = cell.run
WHERE cell.head = 1;
