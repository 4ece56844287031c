package dayglass.storage.catalogue;

import static dayglass.storage.schema.Tables.LENS_MODEL;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.LensModels;
import dayglass.catalogue.Lets;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.LensModelRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;

/** Lens models as rows, all their facts as JSON. */
public final class JooqLensModels extends VersionedTable<LensModel.Id, LensModel, LensModelRecord>
        implements LensModels {
    public JooqLensModels(Database database) {
        super(database, new Shape<>("lens model", LENS_MODEL.ID, LENS_MODEL.VERSION, LensModel.Id::new));
    }

    @Override
    public Optional<Stored<LensModel.Id, LensModel>> named(String maker, String name) {
        return database.reading(sql -> sql.selectFrom(LENS_MODEL)
                .where(LENS_MODEL.MAKER.eq(maker), LENS_MODEL.NAME.eq(name))
                .fetchOptional(row -> stored(sql, row)));
    }

    @Override
    public Map<LensModel.Id, String> names() {
        return database.reading(sql -> sql.select(LENS_MODEL.ID, LENS_MODEL.MAKER, LENS_MODEL.NAME)
                .from(LENS_MODEL)
                .fetchMap(row -> new LensModel.Id(row.value1()), row -> row.value2() + " " + row.value3()));
    }

    @Override
    protected void fill(LensModelRecord row, LensModel facts) {
        row.setMaker(facts.maker());
        row.setName(facts.name());
        row.setKind(facts.kind().word());
        row.setRecordJson(FactsJson.lensModel(facts));
    }

    @Override
    protected LensModel facts(DSLContext sql, LensModelRecord row) {
        return FactsJson.lensModel(row.getRecordJson());
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<LensModel.Id> self, LensModel facts) {
        return named(facts.maker(), facts.name())
                .filter(other -> !self.equals(Optional.of(other.id())))
                .map(other -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Lens model " + other.id().number() + " already is " + facts.fullName() + "."));
    }

    @Override
    protected List<String> uses(DSLContext sql, LensModel.Id id) {
        List<String> uses = new ArrayList<>(
                named("unit", sql.select(UNIT.ID).from(UNIT).where(UNIT.LENS_MODEL_ID.eq(id.number()))));
        uses.addAll(named("rate card", LettingCards.of(sql, new Lets(Lets.Kind.MODEL, id.number()))));
        return uses;
    }
}
