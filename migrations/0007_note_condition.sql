-- What was seen on a unit, append-only. A finding stands until a later note resolves it.
CREATE TABLE condition_note (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  unit_id       INTEGER NOT NULL REFERENCES unit (id),
  noted_at      INTEGER NOT NULL,
  person_id     INTEGER NOT NULL REFERENCES person (id),
  part          TEXT    NOT NULL CHECK (part IN ('front glass', 'inner groups', 'rear glass', 'coating', 'iris',
                'focus', 'housing', 'mount', 'accessories', 'whole')),
  finding       TEXT    NOT NULL CHECK (length(finding) BETWEEN 1 AND 100),
  severity      INTEGER NOT NULL CHECK (severity BETWEEN 0 AND 4),
  is_quarantine INTEGER NOT NULL CHECK (is_quarantine IN (0, 1)),
  words         TEXT    NOT NULL CHECK (length(words) <= 4000)
) STRICT;

CREATE INDEX condition_note_by_unit ON condition_note (unit_id, id);

-- Which earlier findings of the same unit a note resolves; each is resolved once.
CREATE TABLE condition_resolved (
  condition_note_id INTEGER NOT NULL PRIMARY KEY REFERENCES condition_note (id),
  by_note_id        INTEGER NOT NULL REFERENCES condition_note (id),
  CHECK (by_note_id > condition_note_id)
) STRICT;

-- A picture's bytes lie beside the database under its SHA-256; place orders the pictures of a note.
CREATE TABLE condition_picture (
  id                INTEGER PRIMARY KEY AUTOINCREMENT,
  condition_note_id INTEGER NOT NULL REFERENCES condition_note (id),
  place             INTEGER NOT NULL CHECK (place >= 0),
  sha256            TEXT    NOT NULL CHECK (length(sha256) = 64),
  media_type        TEXT    NOT NULL CHECK (media_type IN ('image/jpeg', 'image/png', 'image/webp')),
  width             INTEGER NOT NULL CHECK (width >= 1),
  height            INTEGER NOT NULL CHECK (height >= 1),
  UNIQUE (condition_note_id, place)
) STRICT;

CREATE INDEX condition_picture_by_sha256 ON condition_picture (sha256);

CREATE TRIGGER condition_note_never_changes BEFORE UPDATE ON condition_note
BEGIN SELECT RAISE(ABORT, 'a condition note is never changed'); END;
CREATE TRIGGER condition_note_is_never_removed BEFORE DELETE ON condition_note
BEGIN SELECT RAISE(ABORT, 'a condition note is never removed'); END;
CREATE TRIGGER condition_resolved_never_changes BEFORE UPDATE ON condition_resolved
BEGIN SELECT RAISE(ABORT, 'what a note resolved is never changed'); END;
CREATE TRIGGER condition_resolved_is_never_removed BEFORE DELETE ON condition_resolved
BEGIN SELECT RAISE(ABORT, 'what a note resolved is never removed'); END;
CREATE TRIGGER condition_picture_never_changes BEFORE UPDATE ON condition_picture
BEGIN SELECT RAISE(ABORT, 'a picture of a note is never changed'); END;
CREATE TRIGGER condition_picture_is_never_removed BEFORE DELETE ON condition_picture
BEGIN SELECT RAISE(ABORT, 'a picture of a note is never removed'); END;
CREATE TRIGGER condition_resolved_on_one_unit BEFORE INSERT ON condition_resolved
WHEN (SELECT unit_id FROM condition_note WHERE id = NEW.condition_note_id)
  IS NOT (SELECT unit_id FROM condition_note WHERE id = NEW.by_note_id)
BEGIN SELECT RAISE(ABORT, 'a note resolves findings of its own unit only'); END;
