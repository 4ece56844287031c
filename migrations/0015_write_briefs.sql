-- The picture that a job is to get: camera, delivery, light, set, looks, budget. JSON as in REST.
CREATE TABLE brief (
  job_id     INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  version    INTEGER NOT NULL CHECK (version >= 1),
  facts_json TEXT    NOT NULL CHECK (facts_json LIKE '{%')
) STRICT;
