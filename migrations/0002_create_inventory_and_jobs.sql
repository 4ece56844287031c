CREATE TABLE owned_unit (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  version   INTEGER NOT NULL CHECK (version >= 1),
  tag       TEXT    NOT NULL UNIQUE CHECK (length(tag) BETWEEN 1 AND 200),
  unit_json TEXT    NOT NULL CHECK (unit_json LIKE '{%')
) STRICT;

CREATE TABLE job (
  id                    INTEGER PRIMARY KEY AUTOINCREMENT,
  version               INTEGER NOT NULL CHECK (version >= 1),
  name                  TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  currency              TEXT    NOT NULL CHECK (length(currency) = 3),
  discount_rate_percent TEXT    NOT NULL,
  cash_limit            TEXT,
  schedule_json         TEXT    NOT NULL CHECK (schedule_json LIKE '[%'),
  needs_json            TEXT    NOT NULL CHECK (needs_json LIKE '[%'),
  left_out_json         TEXT    NOT NULL CHECK (left_out_json LIKE '[%')
) STRICT;

-- What a job considers, in the order in which the user put it.
CREATE TABLE job_rate_card (
  job_id       INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  place        INTEGER NOT NULL CHECK (place >= 0),
  rate_card_id INTEGER NOT NULL REFERENCES rate_card (id),
  PRIMARY KEY (job_id, place),
  UNIQUE (job_id, rate_card_id)
) STRICT;

CREATE INDEX job_rate_card_by_card ON job_rate_card (rate_card_id);

CREATE TABLE job_purchase_offer (
  job_id            INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  place             INTEGER NOT NULL CHECK (place >= 0),
  purchase_offer_id INTEGER NOT NULL REFERENCES purchase_offer (id),
  PRIMARY KEY (job_id, place),
  UNIQUE (job_id, purchase_offer_id)
) STRICT;

CREATE INDEX job_purchase_offer_by_offer ON job_purchase_offer (purchase_offer_id);

CREATE TABLE job_owned_unit (
  job_id        INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  place         INTEGER NOT NULL CHECK (place >= 0),
  owned_unit_id INTEGER NOT NULL REFERENCES owned_unit (id),
  PRIMARY KEY (job_id, place),
  UNIQUE (job_id, owned_unit_id)
) STRICT;

CREATE INDEX job_owned_unit_by_unit ON job_owned_unit (owned_unit_id);
