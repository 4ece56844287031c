package dayglass.storage;

import static dayglass.storage.schema.Tables.CHANGE;

import dayglass.house.Change;
import dayglass.house.Person;
import dayglass.house.WhoActs;
import java.time.Clock;
import java.time.Instant;
import org.jooq.DSLContext;

/** Keeps with each change who made it and when, in the transaction that makes it. */
public final class Recording {
    private final WhoActs whoActs;
    private final Clock clock;

    public Recording(WhoActs whoActs, Clock clock) {
        this.whoActs = whoActs;
        this.clock = clock;
    }

    /** Who acts now. */
    public Person.Id who() {
        return whoActs.now();
    }

    /** The moment that is kept with what is done now. */
    public Instant when() {
        return clock.instant();
    }

    /**
     * Keeps a change.
     *
     * @param facts as they are after it, as JSON; empty after a removal
     */
    public void keep(DSLContext sql, Change.Deed deed, Thing thing, String facts) {
        sql.insertInto(CHANGE)
                .set(CHANGE.MADE_AT, when().getEpochSecond())
                .set(CHANGE.PERSON_ID, who().number())
                .set(CHANGE.NOUN, thing.noun())
                .set(CHANGE.THING_ID, thing.id())
                .set(CHANGE.DEED, deed.word())
                .set(CHANGE.FACTS_JSON, facts)
                .execute();
    }

    /** What was changed: {@code rate card}, 3. */
    public record Thing(String noun, long id) {}
}
