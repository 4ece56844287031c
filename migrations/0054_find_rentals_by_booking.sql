-- Which rental a booking belongs to, found without reading every rental. The database itself keeps it from what the rental
-- says, so that a booking belongs to one rental at most.
CREATE TABLE rental_booking (
  booking_id INTEGER PRIMARY KEY REFERENCES occupation (id),
  rental_id  INTEGER NOT NULL REFERENCES rental (id),
  unit_id    INTEGER NOT NULL REFERENCES unit (id)
) STRICT;

CREATE INDEX rental_booking_by_unit ON rental_booking (unit_id, rental_id);
CREATE INDEX rental_by_end ON rental (ended_at);

INSERT INTO rental_booking (booking_id, rental_id, unit_id)
SELECT json_extract(placed.value, '$.bookingId'), rental.id, json_extract(placed.value, '$.unitId')
FROM rental, json_each(rental.rental_json, '$.placed') AS placed;

CREATE TRIGGER rental_books BEFORE INSERT ON rental_booking
WHEN EXISTS (SELECT 1 FROM rental_booking WHERE booking_id = NEW.booking_id)
BEGIN SELECT RAISE(ABORT, 'a booking belongs to one rental'); END;
CREATE TRIGGER rental_places AFTER INSERT ON rental
BEGIN
  INSERT INTO rental_booking (booking_id, rental_id, unit_id)
  SELECT json_extract(placed.value, '$.bookingId'), NEW.id, json_extract(placed.value, '$.unitId')
  FROM json_each(NEW.rental_json, '$.placed') AS placed;
END;
CREATE TRIGGER rental_places_more AFTER UPDATE OF rental_json ON rental
BEGIN
  INSERT INTO rental_booking (booking_id, rental_id, unit_id)
  SELECT json_extract(placed.value, '$.bookingId'), NEW.id, json_extract(placed.value, '$.unitId')
  FROM json_each(NEW.rental_json, '$.placed') AS placed
  WHERE NOT EXISTS (SELECT 1 FROM rental_booking AS kept
                    WHERE kept.booking_id = json_extract(placed.value, '$.bookingId') AND kept.rental_id = NEW.id);
END;
