package dayglass.storage.house;

import static dayglass.storage.schema.Tables.HOUSE;

import dayglass.base.Currency;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.HouseSettings;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.HouseRecord;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** The one row of settings. */
public final class JooqHouseSettings extends VersionedTable<House.Id, House, HouseRecord> implements HouseSettings {
    private JooqHouseSettings(Database database) {
        super(database, new Shape<>("house", HOUSE.ID, HOUSE.VERSION, House.Id::new));
    }

    /**
     * The settings, made where there are none yet.
     *
     * @param zone of a new house
     */
    public static JooqHouseSettings opened(Database database, ZoneId zone) {
        JooqHouseSettings settings = new JooqHouseSettings(database);
        if (settings.find(House.Id.ONLY).isEmpty()) {
            database.atomically(() -> settings.find(House.Id.ONLY)
                    .map(dayglass.base.Outcome::done)
                    .orElseGet(() -> settings.add(House.usual(zone))));
        }
        return settings;
    }

    @Override
    public Stored<House.Id, House> now() {
        return find(House.Id.ONLY).orElseThrow();
    }

    @Override
    protected void fill(HouseRecord row, House facts) {
        row.setName(facts.name());
        row.setId(House.Id.ONLY.number());
        row.setTimeZone(facts.zone().getId());
        row.setCurrency(facts.currency().code());
        row.setOutTime(facts.outTime().toString());
        row.setBackTime(facts.backTime().toString());
        row.setTurnaroundMinutes((int) facts.turnaround().toMinutes());
    }

    @Override
    protected House facts(DSLContext sql, HouseRecord row) {
        return new House(
                row.getName(),
                ZoneId.of(row.getTimeZone()),
                Currency.of(row.getCurrency()),
                LocalTime.parse(row.getOutTime()),
                LocalTime.parse(row.getBackTime()),
                Duration.ofMinutes(row.getTurnaroundMinutes()));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<House.Id> self, House facts) {
        return Optional.empty();
    }

    @Override
    protected List<String> uses(DSLContext sql, House.Id id) {
        return List.of("everything in it");
    }
}
