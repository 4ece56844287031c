-- The production's own cost codes of a job: an object whose members are options and whose values are codes.
CREATE TABLE cost_codes (
  job_id     INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  version    INTEGER NOT NULL CHECK (version >= 1),
  codes_json TEXT    NOT NULL CHECK (codes_json LIKE '{%')
) STRICT;
