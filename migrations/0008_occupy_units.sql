-- Where a unit is when it is not free: booked, on the bench or absent, from starts_at up to free_at, half-open.
-- ends_at is when it comes back; the turnaround lies between that and free_at. One that was cancelled occupies nothing.
CREATE TABLE occupation (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  version      INTEGER NOT NULL CHECK (version >= 1),
  unit_id      INTEGER NOT NULL REFERENCES unit (id),
  kind         TEXT    NOT NULL CHECK (kind IN ('booking', 'bench', 'absence')),
  starts_at    INTEGER NOT NULL,
  ends_at      INTEGER NOT NULL,
  free_at      INTEGER NOT NULL,
  is_cancelled INTEGER NOT NULL CHECK (is_cancelled IN (0, 1)),
  subject      TEXT    NOT NULL CHECK (length(subject) BETWEEN 1 AND 200),
  person_id    INTEGER NOT NULL REFERENCES person (id),
  recorded_at  INTEGER NOT NULL,
  went_out_at  INTEGER,
  came_back_at INTEGER CHECK (came_back_at >= went_out_at),
  facts_json   TEXT    NOT NULL CHECK (facts_json LIKE '{%'),
  CHECK (starts_at < ends_at AND ends_at <= free_at)
) STRICT;

-- Rows of one unit that occupy it never overlap, so the last that starts before a wanted end decides alone.
CREATE INDEX occupation_by_unit ON occupation (unit_id, starts_at, free_at) WHERE is_cancelled = 0;
CREATE INDEX occupation_out ON occupation (unit_id, ends_at)
  WHERE is_cancelled = 0 AND went_out_at IS NOT NULL AND came_back_at IS NULL;
CREATE INDEX occupation_by_start ON occupation (starts_at) WHERE is_cancelled = 0;

CREATE TRIGGER occupation_overlaps_on_insert BEFORE INSERT ON occupation
WHEN NEW.is_cancelled = 0 AND NEW.starts_at < (
  SELECT free_at FROM occupation
  WHERE unit_id = NEW.unit_id AND is_cancelled = 0 AND starts_at < NEW.free_at
  ORDER BY starts_at DESC LIMIT 1)
BEGIN SELECT RAISE(ABORT, 'the unit is in another place then'); END;

CREATE TRIGGER occupation_overlaps_on_update BEFORE UPDATE ON occupation
WHEN NEW.is_cancelled = 0 AND NEW.starts_at < (
  SELECT max(free_at) FROM (
    SELECT free_at FROM occupation
    WHERE unit_id = NEW.unit_id AND is_cancelled = 0 AND starts_at < NEW.free_at AND id <> OLD.id
    ORDER BY starts_at DESC LIMIT 1))
BEGIN SELECT RAISE(ABORT, 'the unit is in another place then'); END;

CREATE TRIGGER occupation_is_never_removed BEFORE DELETE ON occupation
BEGIN SELECT RAISE(ABORT, 'an occupation is cancelled, never removed'); END;

-- A wish in line for a unit. It occupies nothing and lapses by itself.
CREATE TABLE hold (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  version      INTEGER NOT NULL CHECK (version >= 1),
  unit_id      INTEGER NOT NULL REFERENCES unit (id),
  starts_at    INTEGER NOT NULL,
  ends_at      INTEGER NOT NULL CHECK (ends_at > starts_at),
  rank         INTEGER NOT NULL CHECK (rank BETWEEN 1 AND 9),
  expires_at   INTEGER NOT NULL,
  subject      TEXT    NOT NULL CHECK (length(subject) BETWEEN 1 AND 200),
  person_id    INTEGER NOT NULL REFERENCES person (id),
  recorded_at  INTEGER NOT NULL
) STRICT;

CREATE INDEX hold_by_unit ON hold (unit_id, starts_at);

-- When a unit is to be serviced: by months, by days out, or by whichever comes first.
CREATE TABLE service_plan (
  id             INTEGER PRIMARY KEY AUTOINCREMENT,
  version        INTEGER NOT NULL CHECK (version >= 1),
  unit_id        INTEGER NOT NULL UNIQUE REFERENCES unit (id),
  every_months   INTEGER CHECK (every_months BETWEEN 1 AND 600),
  every_days_out INTEGER CHECK (every_days_out BETWEEN 1 AND 10000),
  last_done_on   TEXT    NOT NULL CHECK (last_done_on LIKE '____-__-__'),
  CHECK (every_months IS NOT NULL OR every_days_out IS NOT NULL)
) STRICT;

-- A named person let a unit out that should have stayed in.
CREATE TABLE handover_override (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  occupation_id INTEGER NOT NULL REFERENCES occupation (id),
  person_id     INTEGER NOT NULL REFERENCES person (id),
  made_at       INTEGER NOT NULL,
  obstacles     TEXT    NOT NULL,
  reason        TEXT    NOT NULL CHECK (length(reason) BETWEEN 1 AND 1000)
) STRICT;

CREATE INDEX handover_override_by_occupation ON handover_override (occupation_id);

CREATE TRIGGER handover_override_never_changes BEFORE UPDATE ON handover_override
BEGIN SELECT RAISE(ABORT, 'an override is never changed'); END;
CREATE TRIGGER handover_override_is_never_removed BEFORE DELETE ON handover_override
BEGIN SELECT RAISE(ABORT, 'an override is never removed'); END;
