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
  currency       TEXT    NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  effective_from TEXT    NOT NULL CHECK (date(effective_from) IS effective_from),
  rates_json     TEXT    NOT NULL CHECK (json_type(rates_json) = 'array'),
  UNIQUE (supplier_id, name, effective_from)
) STRICT;

CREATE TABLE purchase_offer (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  version     INTEGER NOT NULL CHECK (version >= 1),
  supplier_id INTEGER NOT NULL REFERENCES supplier (id),
  currency    TEXT    NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  offer_json  TEXT    NOT NULL CHECK (json_type(offer_json) = 'object'),
  valid_until TEXT    CHECK (valid_until IS NULL OR date(valid_until) IS valid_until)
) STRICT;

CREATE INDEX purchase_offer_by_supplier ON purchase_offer (supplier_id);
