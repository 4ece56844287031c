-- What a person says is still to come of a cost code, beyond what is committed. The last one of a code and episode counts,
-- by its day and then by its number; one without amounts takes back what was said. Episode is empty where it is of none in
-- particular. Amounts are in the job's currency.
CREATE TABLE book_to_complete (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id    INTEGER NOT NULL REFERENCES job (id),
  day       TEXT    NOT NULL CHECK (day LIKE '____-__-__'),
  cost_code TEXT    NOT NULL,
  episode   TEXT    NOT NULL,
  currency  TEXT    CHECK (length(currency) = 3),
  net_minor INTEGER CHECK (net_minor >= 0),
  tax_minor INTEGER CHECK (tax_minor >= 0),
  note      TEXT    NOT NULL,
  person_id INTEGER NOT NULL REFERENCES person (id),
  said_at   INTEGER NOT NULL,
  CHECK ((net_minor IS NULL) = (tax_minor IS NULL) AND (net_minor IS NULL) = (currency IS NULL))
) STRICT;

CREATE INDEX book_to_complete_by_job ON book_to_complete (job_id, id);

CREATE TRIGGER book_to_complete_never_changes BEFORE UPDATE ON book_to_complete
BEGIN SELECT RAISE(ABORT, 'what was said is never changed'); END;
CREATE TRIGGER book_to_complete_is_never_removed BEFORE DELETE ON book_to_complete
BEGIN SELECT RAISE(ABORT, 'what was said is never removed'); END;
CREATE TRIGGER book_to_complete_is_never_replaced BEFORE INSERT ON book_to_complete
WHEN EXISTS (SELECT 1 FROM book_to_complete WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'what was said is never replaced'); END;
CREATE TRIGGER book_to_complete_in_closed_period BEFORE INSERT ON book_to_complete
WHEN NEW.day <= (SELECT closed_through FROM period_act WHERE job_id = NEW.job_id ORDER BY id DESC LIMIT 1)
BEGIN SELECT RAISE(ABORT, 'the period is closed'); END;
