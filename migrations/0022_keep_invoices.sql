-- A supplier's invoice as it was posted: its lines are the entries of its posting.
CREATE TABLE book_invoice (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id       INTEGER NOT NULL REFERENCES job (id),
  supplier     TEXT    NOT NULL CHECK (supplier <> ''),
  number       TEXT    NOT NULL CHECK (number <> ''),
  invoice_date TEXT    NOT NULL CHECK (invoice_date LIKE '____-__-__'),
  posting_id   INTEGER NOT NULL REFERENCES book_entry (id),
  currency     TEXT    NOT NULL CHECK (length(currency) = 3),
  gross_minor  INTEGER NOT NULL,
  base_currency TEXT   NOT NULL CHECK (length(base_currency) = 3),
  base_gross_minor INTEGER NOT NULL
) STRICT;

CREATE INDEX book_invoice_by_job ON book_invoice (job_id, supplier, number);

CREATE TRIGGER book_invoice_never_changes BEFORE UPDATE ON book_invoice
BEGIN SELECT RAISE(ABORT, 'a posted invoice is never changed'); END;
CREATE TRIGGER book_invoice_is_never_removed BEFORE DELETE ON book_invoice
BEGIN SELECT RAISE(ABORT, 'a posted invoice is never removed'); END;

-- A payment on an invoice, at the rate of its day; difference is what that rate made it dearer than was booked.
CREATE TABLE book_payment (
  id              INTEGER PRIMARY KEY AUTOINCREMENT,
  invoice_id      INTEGER NOT NULL REFERENCES book_invoice (id),
  paid_on         TEXT    NOT NULL CHECK (paid_on LIKE '____-__-__'),
  amount_minor    INTEGER NOT NULL CHECK (amount_minor <> 0),
  exchange_rate   TEXT    NOT NULL,
  exchange_source TEXT    NOT NULL,
  exchange_date   TEXT    NOT NULL CHECK (exchange_date LIKE '____-__-__'),
  base_minor      INTEGER NOT NULL,
  booked_minor    INTEGER NOT NULL,
  entry_id        INTEGER REFERENCES book_entry (id),
  person_id       INTEGER NOT NULL REFERENCES person (id),
  recorded_at     INTEGER NOT NULL
) STRICT;

CREATE INDEX book_payment_by_invoice ON book_payment (invoice_id);

CREATE TRIGGER book_payment_never_changes BEFORE UPDATE ON book_payment
BEGIN SELECT RAISE(ABORT, 'a payment is never changed'); END;
CREATE TRIGGER book_payment_is_never_removed BEFORE DELETE ON book_payment
BEGIN SELECT RAISE(ABORT, 'a payment is never removed'); END;
