-- What was an owned unit becomes a unit with the same id, version, tag and facts; ids used once are never used again.
INSERT INTO unit (id, version, tag, holding, facts_json)
SELECT id, version, tag, 'owned', json_insert(json_remove(unit_json, '$.id'), '$.tag', tag) FROM owned_unit;

DELETE FROM sqlite_sequence WHERE name = 'unit';
INSERT INTO sqlite_sequence (name, seq) SELECT 'unit', seq FROM sqlite_sequence WHERE name = 'owned_unit';

CREATE TABLE job_unit (
  job_id  INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  place   INTEGER NOT NULL CHECK (place >= 0),
  unit_id INTEGER NOT NULL REFERENCES unit (id),
  PRIMARY KEY (job_id, place),
  UNIQUE (job_id, unit_id)
) STRICT;

CREATE INDEX job_unit_by_unit ON job_unit (unit_id);

INSERT INTO job_unit (job_id, place, unit_id) SELECT job_id, place, owned_unit_id FROM job_owned_unit;

DROP TABLE job_owned_unit;
DROP TABLE owned_unit;

CREATE TABLE job_lens_set (
  job_id      INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  place       INTEGER NOT NULL CHECK (place >= 0),
  lens_set_id INTEGER NOT NULL REFERENCES lens_set (id),
  PRIMARY KEY (job_id, place),
  UNIQUE (job_id, lens_set_id)
) STRICT;

CREATE INDEX job_lens_set_by_set ON job_lens_set (lens_set_id);
