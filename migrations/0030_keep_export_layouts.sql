-- Layouts of the user's own for exports of entries: which columns in which order, how they are headed, and how cost codes
-- are written. layout_json is the layout as REST shows it.
CREATE TABLE export_layout (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  version     INTEGER NOT NULL CHECK (version >= 1),
  name        TEXT    NOT NULL UNIQUE CHECK (name <> ''),
  layout_json TEXT    NOT NULL CHECK (layout_json LIKE '{%')
) STRICT;
