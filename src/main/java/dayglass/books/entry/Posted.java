package dayglass.books.entry;

import dayglass.house.Person;
import java.time.Instant;
import java.util.Optional;

/**
 * An entry in the books.
 *
 * @param posting the first entry of those that were posted together
 * @param hash of it and of all before it, in hexadecimal
 */
public record Posted(Entry.Id id, Entry.Id posting, Entry entry, Person.Id by, Instant at, String hash) {

    /** What takes it back: everything the same but the sign, the day and the reason. */
    public Entry reversal(java.time.LocalDate on, String reason) {
        Optional<Entry.Id> commitment =
                isOrder() ? Optional.of(id) : entry.links().commitment();
        Entry.Links links =
                new Entry.Links(Optional.of(id), commitment, entry.links().costing());
        return entry.with(entry.kind(), entry.amounts().negated(), links).on(on).noted(reason);
    }

    /** A commitment that others draw on. */
    public boolean isOrder() {
        return entry.kind() == Kind.COMMITMENT
                && entry.links().commitment().isEmpty()
                && entry.links().reverses().isEmpty();
    }
}
