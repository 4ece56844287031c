-- A user's own camera in one recorded mode. Sizes are decimals as typed, in millimetres.
CREATE TABLE camera (
  id              INTEGER PRIMARY KEY AUTOINCREMENT,
  version         INTEGER NOT NULL CHECK (version >= 1),
  name            TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  mode            TEXT    NOT NULL CHECK (length(mode) BETWEEN 1 AND 200),
  width           TEXT    NOT NULL CHECK (length(width) BETWEEN 1 AND 40),
  height          TEXT    NOT NULL CHECK (length(height) BETWEEN 1 AND 40),
  photosites_wide INTEGER CHECK (photosites_wide >= 1),
  photosites_high INTEGER CHECK (photosites_high >= 1),
  mount           TEXT    NOT NULL CHECK (length(mount) BETWEEN 1 AND 200),
  UNIQUE (name, mode),
  CHECK ((photosites_wide IS NULL) = (photosites_high IS NULL))
) STRICT;

-- A mount of the house's own, beside those that are published.
CREATE TABLE mount (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  version   INTEGER NOT NULL CHECK (version >= 1),
  name      TEXT    NOT NULL UNIQUE CHECK (length(name) BETWEEN 1 AND 200),
  flange_mm TEXT    NOT NULL CHECK (length(flange_mm) BETWEEN 1 AND 40),
  note      TEXT    NOT NULL CHECK (length(note) <= 2000)
) STRICT;
