package dayglass.inventory.life;

import dayglass.house.Person;
import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.util.Optional;

/**
 * Something that happened to a unit.
 *
 * @param at when; of what is known by its day alone, that day's beginning
 * @param byDay only the day is known
 * @param what in a word or two: {@code went out}
 * @param words the rest of it; may be empty
 * @param by who entered it, where somebody did
 * @param occupation the booking, visit or absence that it belongs to
 */
public record LifeEvent(
        Instant at,
        boolean byDay,
        String what,
        String words,
        Optional<Person.Id> by,
        Optional<Occupation.Id> occupation) {}
