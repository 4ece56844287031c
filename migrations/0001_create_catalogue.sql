-- Who lets and sells, and at what price. Amounts and terms are kept as JSON in the form of the costing request.
CREATE TABLE supplier (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  version  INTEGER NOT NULL CHECK (version >= 1),
  name     TEXT    NOT NULL UNIQUE CHECK (length(name) BETWEEN 1 AND 200)
) STRICT;

-- Cards of one supplier and name succeed each other; old ones stay.
CREATE TABLE rate_card (
  id             INTEGER PRIMARY KEY AUTOINCREMENT,
  version        INTEGER NOT NULL CHECK (version >= 1),
  supplier_id    INTEGER NOT NULL REFERENCES supplier (id),
  name           TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  currency       TEXT    NOT NULL CHECK (length(currency) = 3),
  effective_from TEXT    NOT NULL CHECK (effective_from LIKE '____-__-__'),
  rates_json     TEXT    NOT NULL CHECK (rates_json LIKE '[%'),
  UNIQUE (supplier_id, name, effective_from)
) STRICT;

CREATE TABLE purchase_offer (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  version     INTEGER NOT NULL CHECK (version >= 1),
  supplier_id INTEGER NOT NULL REFERENCES supplier (id),
  currency    TEXT    NOT NULL CHECK (length(currency) = 3),
  offer_json  TEXT    NOT NULL CHECK (offer_json LIKE '{%'),
  valid_until TEXT    CHECK (valid_until IS NULL OR valid_until LIKE '____-__-__')
) STRICT;

CREATE INDEX purchase_offer_by_supplier ON purchase_offer (supplier_id);
