-- A kind of lens, attachment, filter or adapter. The optical record and the look grades are JSON.
CREATE TABLE lens_model (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  version     INTEGER NOT NULL CHECK (version >= 1),
  maker       TEXT    NOT NULL CHECK (length(maker) BETWEEN 1 AND 200),
  name        TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  kind        TEXT    NOT NULL CHECK (kind IN ('spherical prime', 'spherical zoom', 'anamorphic prime',
              'anamorphic zoom', 'front attachment', 'effect filter', 'close-up dioptre', 'mount adapter')),
  record_json TEXT    NOT NULL CHECK (record_json LIKE '{%'),
  UNIQUE (maker, name)
) STRICT;

-- One physical thing. What it serves in a costing, what it cost, whose it is and what belongs to it are JSON.
-- held_to is the last day on which it may serve, where there is one: paid up to, consigned until, or left after.
CREATE TABLE unit (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  version       INTEGER NOT NULL CHECK (version >= 1),
  tag           TEXT    NOT NULL UNIQUE CHECK (length(tag) BETWEEN 1 AND 200),
  lens_model_id INTEGER REFERENCES lens_model (id),
  serial        TEXT    CHECK (length(serial) BETWEEN 1 AND 200),
  holding       TEXT    NOT NULL CHECK (holding IN ('owned', 'rented in', 'consigned')),
  held_to       TEXT    CHECK (held_to LIKE '____-__-__'),
  left_on       TEXT    CHECK (left_on LIKE '____-__-__'),
  facts_json    TEXT    NOT NULL CHECK (facts_json LIKE '{%'),
  UNIQUE (lens_model_id, serial)
) STRICT;

CREATE TABLE lens_set (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  version    INTEGER NOT NULL CHECK (version >= 1),
  name       TEXT    NOT NULL UNIQUE CHECK (length(name) BETWEEN 1 AND 200),
  is_matched INTEGER NOT NULL CHECK (is_matched IN (0, 1)),
  facts_json TEXT    NOT NULL CHECK (facts_json LIKE '{%')
) STRICT;

-- Membership keeps its history; a unit is in one set at most at a time.
CREATE TABLE set_membership (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  lens_set_id INTEGER NOT NULL REFERENCES lens_set (id),
  unit_id     INTEGER NOT NULL REFERENCES unit (id),
  place       INTEGER NOT NULL CHECK (place >= 0),
  joined_at   INTEGER NOT NULL,
  left_at     INTEGER CHECK (left_at >= joined_at)
) STRICT;

CREATE UNIQUE INDEX set_membership_now ON set_membership (unit_id) WHERE left_at IS NULL;
CREATE INDEX set_membership_by_set ON set_membership (lens_set_id);
CREATE INDEX set_membership_by_unit ON set_membership (unit_id);
