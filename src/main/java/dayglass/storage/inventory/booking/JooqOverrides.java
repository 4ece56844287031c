package dayglass.storage.inventory.booking;

import static dayglass.storage.schema.Tables.HANDOVER_OVERRIDE;

import dayglass.base.Outcome;
import dayglass.house.Person;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupation;
import dayglass.storage.Database;
import java.time.Instant;
import java.util.List;

/** Overrides of handover as rows; a trigger keeps them as they are. */
public final class JooqOverrides implements HandOver.Overrides {
    private final Database database;

    public JooqOverrides(Database database) {
        this.database = database;
    }

    @Override
    public void keep(HandOver.KeptOverride override) {
        Outcome<Integer> kept = database.writing(sql -> Outcome.done(sql.insertInto(HANDOVER_OVERRIDE)
                .set(HANDOVER_OVERRIDE.OCCUPATION_ID, override.occupation().number())
                .set(HANDOVER_OVERRIDE.PERSON_ID, override.by().number())
                .set(HANDOVER_OVERRIDE.MADE_AT, override.at().getEpochSecond())
                .set(HANDOVER_OVERRIDE.OBSTACLES, override.obstacles())
                .set(HANDOVER_OVERRIDE.REASON, override.reason())
                .execute()));
        kept.fold(rows -> rows, problem -> {
            throw new IllegalStateException(problem.detail());
        });
    }

    @Override
    public List<HandOver.KeptOverride> of(Occupation.Id occupation) {
        return database.reading(sql -> sql.selectFrom(HANDOVER_OVERRIDE)
                .where(HANDOVER_OVERRIDE.OCCUPATION_ID.eq(occupation.number()))
                .orderBy(HANDOVER_OVERRIDE.ID)
                .fetch(row -> new HandOver.KeptOverride(
                        occupation,
                        new Person.Id(row.getPersonId()),
                        Instant.ofEpochSecond(row.getMadeAt()),
                        row.getObstacles(),
                        row.getReason())));
    }
}
