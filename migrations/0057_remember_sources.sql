-- Which rental or bench visit an entry of gear was brought in from: origin_id is the rental's number, or the
-- visit's.
CREATE TABLE book_gear_source (
  entry_id  INTEGER PRIMARY KEY REFERENCES book_gear_entry (entry_id),
  origin    TEXT    NOT NULL CHECK (origin IN ('rental', 'bench')),
  origin_id INTEGER NOT NULL CHECK (origin_id >= 1)
) STRICT;

CREATE TRIGGER book_gear_source_never_changes BEFORE UPDATE ON book_gear_source
BEGIN SELECT RAISE(ABORT, 'where an entry came from is never changed'); END;
CREATE TRIGGER book_gear_source_is_never_removed BEFORE DELETE ON book_gear_source
BEGIN SELECT RAISE(ABORT, 'where an entry came from is never removed'); END;
