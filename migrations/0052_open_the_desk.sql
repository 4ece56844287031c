-- By what rules the desk prices and charges; none until a house sets its own.
CREATE TABLE desk_rules (
  id         INTEGER PRIMARY KEY CHECK (id = 1),
  version    INTEGER NOT NULL CHECK (version >= 1),
  rules_json TEXT    NOT NULL CHECK (rules_json LIKE '{%')
) STRICT;

-- What was promised. Numbers run from 1 without gaps, whoever writes.
CREATE TABLE quote (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  version     INTEGER NOT NULL CHECK (version >= 1),
  number      INTEGER NOT NULL UNIQUE CHECK (number >= 1),
  customer    TEXT    NOT NULL CHECK (length(customer) BETWEEN 1 AND 200),
  decision    TEXT    NOT NULL CHECK (decision IN ('open', 'accepted', 'declined')),
  valid_until TEXT    NOT NULL CHECK (valid_until LIKE '____-__-__'),
  quote_json  TEXT    NOT NULL CHECK (quote_json LIKE '{%')
) STRICT;

CREATE TRIGGER quote_numbers_have_no_gap BEFORE INSERT ON quote
WHEN NEW.number <> (SELECT coalesce(max(number), 0) + 1 FROM quote)
BEGIN SELECT RAISE(ABORT, 'a quote takes the next number'); END;
CREATE TRIGGER quote_keeps_its_number BEFORE UPDATE OF number ON quote
WHEN NEW.number <> OLD.number
BEGIN SELECT RAISE(ABORT, 'a quote keeps its number'); END;
CREATE TRIGGER quote_stays_decided BEFORE UPDATE ON quote
WHEN OLD.decision = 'accepted'
BEGIN SELECT RAISE(ABORT, 'an accepted quote does not change'); END;
CREATE TRIGGER quote_is_never_removed BEFORE DELETE ON quote
BEGIN SELECT RAISE(ABORT, 'a quote is never removed'); END;

-- What follows a quote that was accepted, once. ended_at and the invoice are set by the change that ends it.
CREATE TABLE rental (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  version     INTEGER NOT NULL CHECK (version >= 1),
  number      INTEGER NOT NULL UNIQUE CHECK (number >= 1),
  quote_id    INTEGER NOT NULL UNIQUE REFERENCES quote (id),
  customer    TEXT    NOT NULL CHECK (length(customer) BETWEEN 1 AND 200),
  ended_at    INTEGER,
  invoice     INTEGER UNIQUE CHECK (invoice >= 1),
  rental_json TEXT    NOT NULL CHECK (rental_json LIKE '{%'),
  CHECK (invoice IS NULL OR ended_at IS NOT NULL)
) STRICT;

CREATE INDEX rental_open ON rental (id) WHERE ended_at IS NULL;

CREATE TRIGGER rental_numbers_have_no_gap BEFORE INSERT ON rental
WHEN NEW.number <> (SELECT coalesce(max(number), 0) + 1 FROM rental) OR NEW.ended_at IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'a rental takes the next number and has not ended'); END;
CREATE TRIGGER rental_invoices_have_no_gap BEFORE UPDATE ON rental
WHEN NEW.invoice IS NOT NULL AND NEW.invoice <> (SELECT coalesce(max(invoice), 0) + 1 FROM rental)
BEGIN SELECT RAISE(ABORT, 'an invoice takes the next number'); END;
CREATE TRIGGER rental_keeps_its_number BEFORE UPDATE ON rental
WHEN NEW.number <> OLD.number OR NEW.quote_id <> OLD.quote_id
BEGIN SELECT RAISE(ABORT, 'a rental keeps its number and its quote'); END;
CREATE TRIGGER rental_ends_once BEFORE UPDATE ON rental
WHEN OLD.ended_at IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'a rental that has ended does not change'); END;
CREATE TRIGGER rental_is_never_removed BEFORE DELETE ON rental
BEGIN SELECT RAISE(ABORT, 'a rental is never removed'); END;
