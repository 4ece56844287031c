-- What was asked and what was answered, kept as it was. A total can pass what an integer holds, hence the text.
CREATE TABLE costing (
  id                 INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id             INTEGER REFERENCES job (id),
  job_name           TEXT    NOT NULL,
  created_at         TEXT    NOT NULL,
  engine_version     TEXT    NOT NULL,
  time_limit_seconds INTEGER CHECK (time_limit_seconds >= 1),
  currency           TEXT    NOT NULL CHECK (length(currency) = 3),
  total              TEXT    NOT NULL,
  is_optimal         INTEGER NOT NULL CHECK (is_optimal IN (0, 1)),
  request_json       TEXT    NOT NULL CHECK (request_json LIKE '{%'),
  answer_json        TEXT    NOT NULL CHECK (answer_json LIKE '{%'),
  request_sha256     TEXT    NOT NULL CHECK (length(request_sha256) = 64),
  answer_sha256      TEXT    NOT NULL CHECK (length(answer_sha256) = 64)
) STRICT;

CREATE INDEX costing_by_job ON costing (job_id);

CREATE TRIGGER costing_never_changes BEFORE UPDATE ON costing
BEGIN
  SELECT RAISE(ABORT, 'a costing is never changed');
END;
