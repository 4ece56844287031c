-- Which line of which rental a commitment was put into the books for; line is the priced line, from 0. A line stands
-- there once, until its commitment is reversed.
CREATE TABLE book_rental_order (
  entry_id  INTEGER PRIMARY KEY REFERENCES book_entry (id),
  rental_id INTEGER NOT NULL REFERENCES rental (id),
  line      INTEGER NOT NULL CHECK (line >= 0)
) STRICT;

CREATE INDEX book_rental_order_by_line ON book_rental_order (rental_id, line);

CREATE TRIGGER book_rental_order_stands_once BEFORE INSERT ON book_rental_order
WHEN EXISTS (SELECT 1 FROM book_rental_order AS kept
             WHERE kept.rental_id = NEW.rental_id AND kept.line = NEW.line
               AND NOT EXISTS (SELECT 1 FROM book_entry WHERE reverses_id = kept.entry_id))
BEGIN SELECT RAISE(ABORT, 'this line of the rental stands in the books already'); END;
CREATE TRIGGER book_rental_order_never_changes BEFORE UPDATE ON book_rental_order
BEGIN SELECT RAISE(ABORT, 'what an entry was ordered for is never changed'); END;
CREATE TRIGGER book_rental_order_is_never_removed BEFORE DELETE ON book_rental_order
BEGIN SELECT RAISE(ABORT, 'what an entry was ordered for is never removed'); END;
