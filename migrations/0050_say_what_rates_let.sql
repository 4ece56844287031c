-- The house itself may have rate cards: it stands among those who let, once at most.
ALTER TABLE supplier ADD COLUMN is_house INTEGER NOT NULL DEFAULT 0 CHECK (is_house IN (0, 1));
CREATE UNIQUE INDEX supplier_house ON supplier (is_house) WHERE is_house = 1;
