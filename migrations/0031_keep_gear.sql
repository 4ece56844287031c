-- A unit of the house's own whose price is written off in a job's books. gear_json says price, first day of service, cost
-- code and how it is written off, as REST does.
CREATE TABLE book_gear (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  version   INTEGER NOT NULL CHECK (version >= 1),
  job_id    INTEGER NOT NULL REFERENCES job (id),
  unit_id   INTEGER NOT NULL UNIQUE REFERENCES unit (id),
  currency  TEXT    NOT NULL CHECK (length(currency) = 3),
  gear_json TEXT    NOT NULL CHECK (gear_json LIKE '{%')
) STRICT;

CREATE INDEX book_gear_by_job ON book_gear (job_id);

-- Which entries are of which gear, and for what.
CREATE TABLE book_gear_entry (
  entry_id INTEGER PRIMARY KEY REFERENCES book_entry (id),
  gear_id  INTEGER NOT NULL REFERENCES book_gear (id),
  deed     TEXT    NOT NULL CHECK (deed IN ('depreciation', 'letting', 'service', 'disposal'))
) STRICT;

CREATE INDEX book_gear_entry_by_gear ON book_gear_entry (gear_id);

CREATE TRIGGER book_gear_entry_never_changes BEFORE UPDATE ON book_gear_entry
BEGIN SELECT RAISE(ABORT, 'what an entry of gear is for is never changed'); END;
CREATE TRIGGER book_gear_entry_is_never_removed BEFORE DELETE ON book_gear_entry
BEGIN SELECT RAISE(ABORT, 'what an entry of gear is for is never removed'); END;
