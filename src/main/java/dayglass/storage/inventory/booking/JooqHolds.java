package dayglass.storage.inventory.booking;

import static dayglass.storage.schema.Tables.HOLD;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Problem;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Holds;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.HoldRecord;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Holds as rows. */
public final class JooqHolds extends VersionedTable<Hold.Id, Hold, HoldRecord> implements Holds {
    public JooqHolds(Database database) {
        super(database, new Shape<>("hold", HOLD.ID, HOLD.VERSION, Hold.Id::new));
    }

    @Override
    protected void fill(HoldRecord row, Hold facts) {
        row.setUnitId(facts.unit().number());
        row.setStartsAt(facts.out().getEpochSecond());
        row.setEndsAt(facts.back().getEpochSecond());
        row.setRank(facts.rank());
        row.setExpiresAt(facts.expires().getEpochSecond());
        row.setSubject(facts.subject());
        row.setPersonId(facts.enteredBy().number());
        row.setRecordedAt(facts.enteredAt().getEpochSecond());
    }

    @Override
    protected Hold facts(DSLContext sql, HoldRecord row) {
        return new Hold(
                new Unit.Id(row.getUnitId()),
                Instant.ofEpochSecond(row.getStartsAt()),
                Instant.ofEpochSecond(row.getEndsAt()),
                row.getRank(),
                Instant.ofEpochSecond(row.getExpiresAt()),
                row.getSubject(),
                new Person.Id(row.getPersonId()),
                Instant.ofEpochSecond(row.getRecordedAt()));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Hold.Id> self, Hold facts) {
        return missing(sql, "/unitId", "unit", UNIT.ID, facts.unit());
    }

    @Override
    protected List<String> uses(DSLContext sql, Hold.Id id) {
        return List.of();
    }
}
