package dayglass.storage.inventory;

import static dayglass.storage.schema.Tables.JOB_OWNED_UNIT;
import static dayglass.storage.schema.Tables.OWNED_UNIT;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.inventory.OwnedUnit;
import dayglass.inventory.OwnedUnits;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.OwnedUnitRecord;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Owned units as rows. */
public final class JooqOwnedUnits extends VersionedTable<OwnedUnit.Id, OwnedUnit, OwnedUnitRecord>
        implements OwnedUnits {
    public JooqOwnedUnits(Database database) {
        super(database, new Shape<>("owned unit", OWNED_UNIT.ID, OWNED_UNIT.VERSION, OwnedUnit.Id::new));
    }

    @Override
    public Optional<Stored<OwnedUnit.Id, OwnedUnit>> tagged(String tag) {
        return database.reading(
                sql -> sql.selectFrom(OWNED_UNIT).where(OWNED_UNIT.TAG.eq(tag)).fetchOptional(row -> stored(sql, row)));
    }

    @Override
    protected void fill(OwnedUnitRecord row, OwnedUnit facts) {
        row.setTag(facts.tag());
        row.setUnitJson(FactsJson.unit(facts));
    }

    @Override
    protected OwnedUnit facts(DSLContext sql, OwnedUnitRecord row) {
        return FactsJson.unit(row.getUnitJson());
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<OwnedUnit.Id> self, OwnedUnit facts) {
        return tagged(facts.tag())
                .filter(other -> !self.equals(Optional.of(other.id())))
                .map(other -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Owned unit " + other.id().number() + " already has the tag " + facts.tag() + "."));
    }

    @Override
    protected List<String> uses(DSLContext sql, OwnedUnit.Id id) {
        return named(
                "job",
                sql.select(JOB_OWNED_UNIT.JOB_ID)
                        .from(JOB_OWNED_UNIT)
                        .where(JOB_OWNED_UNIT.OWNED_UNIT_ID.eq(id.number())));
    }
}
