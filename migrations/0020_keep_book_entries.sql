-- The entries of the books, of every job in one chain. Amounts are whole minor units of their currency; base amounts were
-- fixed when the entry was posted. hash is the SHA-256 of the entry's canonical form and of the hash before it.
CREATE TABLE book_entry (
  id              INTEGER PRIMARY KEY AUTOINCREMENT,
  posting_id      INTEGER NOT NULL CHECK (posting_id BETWEEN 1 AND id),
  job_id          INTEGER NOT NULL REFERENCES job (id),
  kind            TEXT    NOT NULL CHECK (kind IN ('estimate', 'commitment', 'actual', 'accrual')),
  entry_date      TEXT    NOT NULL CHECK (entry_date LIKE '____-__-__'),
  service_from    TEXT    NOT NULL CHECK (service_from LIKE '____-__-__'),
  service_to      TEXT    NOT NULL CHECK (service_to LIKE '____-__-__' AND service_to >= service_from),
  cost_code       TEXT    NOT NULL,
  episode         TEXT    NOT NULL,
  supplier        TEXT    NOT NULL,
  description     TEXT    NOT NULL CHECK (description <> ''),
  tag             TEXT    NOT NULL,
  serial          TEXT    NOT NULL,
  quantity        TEXT    NOT NULL,
  rate_minor      INTEGER NOT NULL,
  net_minor       INTEGER NOT NULL,
  tax_code        TEXT    NOT NULL,
  tax_minor       INTEGER NOT NULL,
  currency        TEXT    NOT NULL CHECK (length(currency) = 3),
  exchange_rate   TEXT    NOT NULL,
  exchange_source TEXT    NOT NULL,
  exchange_date   TEXT    NOT NULL CHECK (exchange_date LIKE '____-__-__'),
  base_currency   TEXT    NOT NULL CHECK (length(base_currency) = 3),
  base_net_minor  INTEGER NOT NULL,
  base_tax_minor  INTEGER NOT NULL,
  purchase_order  TEXT    NOT NULL,
  invoice         TEXT    NOT NULL,
  note            TEXT    NOT NULL,
  reverses_id     INTEGER UNIQUE,
  commitment_id   INTEGER,
  costing_id      INTEGER,
  person_id       INTEGER NOT NULL REFERENCES person (id),
  recorded_at     INTEGER NOT NULL,
  hash            TEXT    NOT NULL CHECK (length(hash) = 64)
) STRICT;

CREATE INDEX book_entry_by_job ON book_entry (job_id, entry_date);
CREATE INDEX book_entry_in_order ON book_entry (job_id, id);
CREATE INDEX book_entry_by_posting ON book_entry (posting_id);
CREATE INDEX book_entry_by_commitment ON book_entry (commitment_id) WHERE commitment_id IS NOT NULL;
CREATE INDEX book_entry_by_costing ON book_entry (costing_id) WHERE costing_id IS NOT NULL;

CREATE TRIGGER book_entry_never_changes BEFORE UPDATE ON book_entry
BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER book_entry_is_never_removed BEFORE DELETE ON book_entry
BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END;
-- INSERT OR REPLACE would remove a row without asking the trigger above.
CREATE TRIGGER book_entry_is_never_replaced BEFORE INSERT ON book_entry
WHEN EXISTS (SELECT 1 FROM book_entry WHERE id = NEW.id OR reverses_id = NEW.reverses_id)
BEGIN SELECT RAISE(ABORT, 'an entry is never replaced'); END;
-- Entries never leave, so looking once is enough.
CREATE TRIGGER book_entry_draws_on_a_commitment BEFORE INSERT ON book_entry
WHEN NEW.commitment_id IS NOT NULL AND NOT EXISTS (
  SELECT 1 FROM book_entry WHERE id = NEW.commitment_id AND kind = 'commitment' AND job_id = NEW.job_id)
BEGIN SELECT RAISE(ABORT, 'there is no such commitment'); END;
CREATE TRIGGER book_entry_reverses_an_entry BEFORE INSERT ON book_entry
WHEN NEW.reverses_id IS NOT NULL AND NOT EXISTS (
  SELECT 1 FROM book_entry WHERE id = NEW.reverses_id AND job_id = NEW.job_id)
BEGIN SELECT RAISE(ABORT, 'there is no such entry to reverse'); END;
