package dayglass.storage.inventory;

import static dayglass.storage.schema.Tables.BOOK_GEAR;
import static dayglass.storage.schema.Tables.CONDITION_NOTE;
import static dayglass.storage.schema.Tables.HOLD;
import static dayglass.storage.schema.Tables.JOB_UNIT;
import static dayglass.storage.schema.Tables.LENS_MODEL;
import static dayglass.storage.schema.Tables.LENS_SET;
import static dayglass.storage.schema.Tables.OCCUPATION;
import static dayglass.storage.schema.Tables.SERVICE_PLAN;
import static dayglass.storage.schema.Tables.SET_MEMBERSHIP;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.catalogue.LettingCards;
import dayglass.storage.schema.tables.records.UnitRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.TableField;
import org.jooq.impl.DSL;

/** Units as rows, all their facts as JSON; what is searched for or must be unique stands in columns too. */
public final class JooqUnits extends VersionedTable<Unit.Id, Unit, UnitRecord> implements Units {
    public JooqUnits(Database database) {
        super(database, new Shape<>("unit", UNIT.ID, UNIT.VERSION, Unit.Id::new));
    }

    @Override
    public Optional<Stored<Unit.Id, Unit>> tagged(String tag) {
        return database.reading(
                sql -> sql.selectFrom(UNIT).where(UNIT.TAG.eq(tag)).fetchOptional(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<Unit.Id, Unit>> matching(List<String> words, int most) {
        Field<String> model = DSL.coalesce(LENS_MODEL.MAKER.concat(DSL.inline(" "), LENS_MODEL.NAME), DSL.inline(""));
        Field<String> known = UNIT.TAG
                .concat(DSL.inline(" "), DSL.coalesce(UNIT.SERIAL, DSL.inline("")))
                .concat(DSL.inline(" "), model);
        String whole = String.join(" ", words);
        Condition exact = UNIT.TAG.equalIgnoreCase(whole).or(UNIT.SERIAL.equalIgnoreCase(whole));
        return database.reading(sql -> sql.select(UNIT.fields())
                .from(UNIT.leftJoin(LENS_MODEL).on(LENS_MODEL.ID.eq(UNIT.LENS_MODEL_ID)))
                .where(UNIT.LEFT_ON.isNull())
                .and(DSL.and(words.stream().map(known::containsIgnoreCase).toList()))
                .orderBy(DSL.when(exact, 0).otherwise(1), UNIT.TAG)
                .limit(most)
                .fetchInto(UNIT)
                .map(row -> stored(sql, row)));
    }

    @Override
    protected void fill(UnitRecord row, Unit facts) {
        row.setTag(facts.tag());
        row.setLensModelId(facts.model().map(LensModel.Id::number).orElse(null));
        row.setSerial(facts.serial().orElse(null));
        row.setHolding(facts.holding().word());
        row.setHeldTo(facts.heldTo().map(LocalDate::toString).orElse(null));
        row.setLeftOn(facts.departure().map(gone -> gone.on().toString()).orElse(null));
        row.setFactsJson(FactsJson.unit(facts));
    }

    @Override
    protected Unit facts(DSLContext sql, UnitRecord row) {
        return FactsJson.unit(row.getFactsJson());
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Unit.Id> self, Unit facts) {
        return facts.model()
                .flatMap(model -> missing(sql, "/modelId", "lens model", LENS_MODEL.ID, model))
                .or(() -> tagged(facts.tag())
                        .filter(other -> !self.equals(Optional.of(other.id())))
                        .map(other -> new Problem(
                                Problem.Code.ALREADY_THERE,
                                "Unit " + other.id().number() + " already has the tag " + facts.tag() + ".")))
                .or(() -> serialTaken(sql, self, facts));
    }

    private static Optional<Problem> serialTaken(DSLContext sql, Optional<Unit.Id> self, Unit facts) {
        if (facts.model().isEmpty() || facts.serial().isEmpty()) {
            return Optional.empty();
        }
        return sql.selectFrom(UNIT)
                .where(
                        UNIT.LENS_MODEL_ID.eq(facts.model().get().number()),
                        UNIT.SERIAL.eq(facts.serial().get()),
                        UNIT.ID.ne(self.map(Unit.Id::number).orElse(0L)))
                .fetchOptional(row -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Unit " + row.getTag() + " of the same model already has the serial "
                                + facts.serial().get() + "."));
    }

    @Override
    protected List<String> uses(DSLContext sql, Unit.Id id) {
        List<String> uses = new ArrayList<>();
        uses.addAll(named("job", sql.select(JOB_UNIT.JOB_ID).from(JOB_UNIT).where(JOB_UNIT.UNIT_ID.eq(id.number()))));
        uses.addAll(sql
                .selectDistinct(LENS_SET.NAME)
                .from(SET_MEMBERSHIP.join(LENS_SET).on(LENS_SET.ID.eq(SET_MEMBERSHIP.LENS_SET_ID)))
                .where(SET_MEMBERSHIP.UNIT_ID.eq(id.number()))
                .fetch(LENS_SET.NAME)
                .stream()
                .map(name -> "the membership of set " + name + ", now or in its history")
                .toList());
        uses.addAll(pointing(sql, "condition note", CONDITION_NOTE.ID, CONDITION_NOTE.UNIT_ID, id));
        uses.addAll(pointing(sql, "occupation", OCCUPATION.ID, OCCUPATION.UNIT_ID, id));
        uses.addAll(pointing(sql, "hold", HOLD.ID, HOLD.UNIT_ID, id));
        uses.addAll(pointing(sql, "service plan", SERVICE_PLAN.ID, SERVICE_PLAN.UNIT_ID, id));
        uses.addAll(named("rate card", LettingCards.of(sql, new Lets(Lets.Kind.UNIT, id.number()))));
        uses.addAll(pointing(sql, "gear in the books", BOOK_GEAR.ID, BOOK_GEAR.UNIT_ID, id));
        return uses;
    }

    private static List<String> pointing(
            DSLContext sql, String noun, TableField<?, Long> row, TableField<?, Long> unit, Unit.Id id) {
        return named(noun, sql.select(row).from(row.getTable()).where(unit.eq(id.number())));
    }
}
