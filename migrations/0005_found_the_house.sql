-- What every room shares: where and how the house keeps time, its people, and who changed what.
-- Columns that end in _at are whole seconds since 1970-01-01T00:00Z; time_zone is for showing and for asking.
CREATE TABLE house (
  id                 INTEGER PRIMARY KEY CHECK (id = 1),
  version            INTEGER NOT NULL CHECK (version >= 1),
  name               TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  time_zone          TEXT    NOT NULL,
  currency           TEXT    NOT NULL CHECK (length(currency) = 3),
  out_time           TEXT    NOT NULL CHECK (out_time LIKE '__:__'),
  back_time          TEXT    NOT NULL CHECK (back_time LIKE '__:__'),
  turnaround_minutes INTEGER NOT NULL CHECK (turnaround_minutes BETWEEN 0 AND 43200)
) STRICT;

CREATE TABLE person (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  version  INTEGER NOT NULL CHECK (version >= 1),
  name     TEXT    NOT NULL UNIQUE CHECK (length(name) BETWEEN 1 AND 200),
  role     TEXT    NOT NULL CHECK (role IN ('owner', 'clerk', 'accountant')),
  is_gone  INTEGER NOT NULL CHECK (is_gone IN (0, 1))
) STRICT;

-- Every record needs a name behind it from the first day; whoever it is puts their own name here.
INSERT INTO person (version, name, role, is_gone) VALUES (1, 'Owner', 'owner', 0);

-- Who changed what and when, with the facts as they were after it (empty after a removal).
CREATE TABLE change (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  made_at    INTEGER NOT NULL,
  person_id  INTEGER NOT NULL REFERENCES person (id),
  noun       TEXT    NOT NULL,
  thing_id   INTEGER NOT NULL,
  deed       TEXT    NOT NULL CHECK (deed IN ('added', 'changed', 'removed')),
  facts_json TEXT    NOT NULL
) STRICT;

CREATE INDEX change_by_thing ON change (noun, thing_id, id);

CREATE TRIGGER change_never_changes BEFORE UPDATE ON change
BEGIN
  SELECT RAISE(ABORT, 'a record of a change is never changed');
END;

CREATE TRIGGER change_is_never_removed BEFORE DELETE ON change
BEGIN
  SELECT RAISE(ABORT, 'a record of a change is never removed');
END;

-- Answers to requests that carried an Idempotency-Key, so that a second sending has no second effect.
CREATE TABLE keyed_answer (
  idempotency_key TEXT    NOT NULL PRIMARY KEY CHECK (length(idempotency_key) BETWEEN 1 AND 200),
  request_sha256  TEXT    NOT NULL CHECK (length(request_sha256) = 64),
  answered_at     INTEGER NOT NULL,
  answer_json     TEXT    NOT NULL CHECK (answer_json LIKE '{%')
) STRICT;
