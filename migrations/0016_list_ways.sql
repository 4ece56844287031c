-- A way of getting a job's picture: its pieces, each from one source with the glass that it brings, are JSON.
CREATE TABLE way (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  version    INTEGER NOT NULL CHECK (version >= 1),
  job_id     INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  name       TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  facts_json TEXT    NOT NULL CHECK (facts_json LIKE '{%'),
  UNIQUE (job_id, name)
) STRICT;
