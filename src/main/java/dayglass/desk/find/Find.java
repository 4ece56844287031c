package dayglass.desk.find;

import dayglass.desk.price.Wish;
import java.util.Optional;

/**
 * Something that can be asked for and answers to what was typed.
 *
 * @param facts what tells it from others of a like name, in words
 * @param free how many of it are free on the days asked for; empty without days, or where it is no one thing
 */
public record Find(Wish wish, String name, String facts, Optional<Free> free) {
    /** So many of so many: units of a model, members of a set, one unit. */
    public record Free(int free, int there) {}
}
