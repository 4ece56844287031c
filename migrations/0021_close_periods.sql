-- The production's own chart of cost codes: a list of code and name, in its order.
CREATE TABLE cost_chart (
  job_id     INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  version    INTEGER NOT NULL CHECK (version >= 1),
  codes_json TEXT    NOT NULL CHECK (codes_json LIKE '[%')
) STRICT;

-- Which days a job's periods end on; a job without a row has weeks by ISO 8601.
CREATE TABLE book_calendar (
  job_id    INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  version   INTEGER NOT NULL CHECK (version >= 1),
  first_day TEXT    NOT NULL,
  ends_json TEXT    NOT NULL CHECK (ends_json LIKE '[%')
) STRICT;

-- That a period was closed or opened again. closed_through is the last closed day after it, empty where none is. At a
-- close, the head of the chain is kept: how many entries it had, and the hash of the last.
CREATE TABLE period_act (
  id             INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id         INTEGER NOT NULL REFERENCES job (id),
  deed           TEXT    NOT NULL CHECK (deed IN ('closed', 'reopened')),
  first_day      TEXT    NOT NULL CHECK (first_day LIKE '____-__-__'),
  last_day       TEXT    NOT NULL CHECK (last_day LIKE '____-__-__' AND last_day >= first_day),
  closed_through TEXT    NOT NULL,
  head_entry_id  INTEGER NOT NULL CHECK (head_entry_id >= 0),
  head_hash      TEXT    NOT NULL CHECK (length(head_hash) = 64),
  reason         TEXT    NOT NULL CHECK (deed = 'closed' OR reason <> ''),
  person_id      INTEGER NOT NULL REFERENCES person (id),
  made_at        INTEGER NOT NULL
) STRICT;

CREATE INDEX period_act_by_job ON period_act (job_id, id);

CREATE TRIGGER period_act_never_changes BEFORE UPDATE ON period_act
BEGIN SELECT RAISE(ABORT, 'what was closed or opened is never changed'); END;
CREATE TRIGGER period_act_is_never_removed BEFORE DELETE ON period_act
BEGIN SELECT RAISE(ABORT, 'what was closed or opened is never removed'); END;
CREATE TRIGGER period_act_is_never_replaced BEFORE INSERT ON period_act
WHEN EXISTS (SELECT 1 FROM period_act WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'what was closed or opened is never replaced'); END;

CREATE TRIGGER book_entry_in_closed_period BEFORE INSERT ON book_entry
WHEN NEW.entry_date <= (SELECT closed_through FROM period_act WHERE job_id = NEW.job_id ORDER BY id DESC LIMIT 1)
BEGIN SELECT RAISE(ABORT, 'the period is closed'); END;
