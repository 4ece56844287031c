package dayglass.storage.catalogue;

import static dayglass.storage.schema.Tables.JOB;
import static dayglass.storage.schema.Tables.JOB_RATE_CARD;
import static dayglass.storage.schema.Tables.LENS_MODEL;
import static dayglass.storage.schema.Tables.LENS_SET;
import static dayglass.storage.schema.Tables.RATE_CARD;
import static dayglass.storage.schema.Tables.SUPPLIER;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Currency;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Supplier;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.RateCardRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.TableField;
import org.jooq.impl.DSL;

/** Rate cards as rows, their rates as JSON. */
public final class JooqRateCards extends VersionedTable<RateCard.Id, RateCard, RateCardRecord> implements RateCards {
    public JooqRateCards(Database database) {
        super(database, new Shape<>("rate card", RATE_CARD.ID, RATE_CARD.VERSION, RateCard.Id::new));
    }

    @Override
    public List<Stored<RateCard.Id, RateCard>> succession(Supplier.Id supplier, String name) {
        return database.reading(sql -> sql.selectFrom(RATE_CARD)
                .where(RATE_CARD.SUPPLIER_ID.eq(supplier.number()), RATE_CARD.NAME.eq(name))
                .orderBy(RATE_CARD.EFFECTIVE_FROM)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<RateCard.Id, RateCard>> inForce(Supplier.Id supplier, LocalDate day) {
        return database.reading(sql -> sql.selectFrom(RATE_CARD)
                .where(RATE_CARD.SUPPLIER_ID.eq(supplier.number()), isInForce(day))
                .orderBy(RATE_CARD.ID)
                .fetch(row -> stored(sql, row)));
    }

    /** A card of thousands of rates is cut down before it is read. */
    @Override
    public List<Stored<RateCard.Id, RateCard>> inForce(LocalDate day, Set<Lets> things) {
        Field<String> some = DSL.field(
                "(SELECT json_group_array(json(value)) FROM json_each({0}) WHERE {1})",
                String.class, RATE_CARD.RATES_JSON, letsOneOf(things));
        return database.reading(sql -> sql.select(RATE_CARD.fields())
                .select(some.as("some"))
                .from(RATE_CARD)
                .where(isInForce(day))
                .orderBy(RATE_CARD.ID)
                .fetch(row -> {
                    RateCardRecord card = row.into(RATE_CARD);
                    card.setRatesJson(row.get("some", String.class));
                    return stored(sql, card);
                }));
    }

    private static Condition isInForce(LocalDate day) {
        dayglass.storage.schema.tables.RateCard each = RATE_CARD.as("each");
        return RATE_CARD.EFFECTIVE_FROM.eq(DSL.field(DSL.select(DSL.max(each.EFFECTIVE_FROM))
                .from(each)
                .where(
                        each.SUPPLIER_ID.eq(RATE_CARD.SUPPLIER_ID),
                        each.NAME.eq(RATE_CARD.NAME),
                        each.EFFECTIVE_FROM.le(day.toString()))));
    }

    private static Condition letsOneOf(Set<Lets> things) {
        List<Long> models = numbers(things, Lets.Kind.MODEL);
        List<Long> units = numbers(things, Lets.Kind.UNIT);
        Field<Long> model = thing(Lets.Kind.MODEL);
        return model.in(models)
                .or(model.in(DSL.select(UNIT.LENS_MODEL_ID).from(UNIT).where(UNIT.ID.in(units))))
                .or(thing(Lets.Kind.SET).in(numbers(things, Lets.Kind.SET)))
                .or(thing(Lets.Kind.UNIT)
                        .in(DSL.select(UNIT.ID)
                                .from(UNIT)
                                .where(UNIT.ID.in(units).or(UNIT.LENS_MODEL_ID.in(models)))));
    }

    private static Field<Long> thing(Lets.Kind kind) {
        return DSL.field("json_extract(value, {0})", Long.class, DSL.inline("$.lets." + kind.word()));
    }

    private static List<Long> numbers(Set<Lets> things, Lets.Kind kind) {
        return things.stream()
                .filter(thing -> thing.kind() == kind)
                .map(Lets::number)
                .toList();
    }

    @Override
    protected void fill(RateCardRecord row, RateCard facts) {
        row.setSupplierId(facts.supplier().number());
        row.setName(facts.name());
        row.setCurrency(facts.currency().code());
        row.setEffectiveFrom(facts.effectiveFrom().toString());
        row.setRatesJson(FactsJson.rates(facts.rates()));
    }

    @Override
    protected RateCard facts(DSLContext sql, RateCardRecord row) {
        Currency currency = Currency.of(row.getCurrency());
        return new RateCard(
                new Supplier.Id(row.getSupplierId()),
                row.getName(),
                currency,
                LocalDate.parse(row.getEffectiveFrom()),
                FactsJson.rates(row.getRatesJson(), currency));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<RateCard.Id> self, RateCard facts) {
        return missing(sql, "/supplierId", "supplier", SUPPLIER.ID, facts.supplier())
                .or(() -> succession(facts.supplier(), facts.name()).stream()
                        .filter(other -> other.facts().effectiveFrom().equals(facts.effectiveFrom()))
                        .filter(other -> !self.equals(Optional.of(other.id())))
                        .findFirst()
                        .map(other -> new Problem(
                                Problem.Code.ALREADY_THERE,
                                "Rate card " + other.id().number() + " of this supplier and name already begins on "
                                        + facts.effectiveFrom() + ".")))
                .or(() -> currencyRefusal(sql, self, facts))
                .or(() -> missingThing(sql, facts.rates()));
    }

    private record Thing(long number) implements dayglass.base.Id {}

    /** What a rate is for must be there. */
    private static Optional<Problem> missingThing(DSLContext sql, List<Rate> rates) {
        Map<Lets.Kind, TableField<?, Long>> tables =
                Map.of(Lets.Kind.MODEL, LENS_MODEL.ID, Lets.Kind.SET, LENS_SET.ID, Lets.Kind.UNIT, UNIT.ID);
        for (int at = 0; at < rates.size(); at++) {
            Optional<Lets> lets = rates.get(at).lets();
            String pointer = "/rates/" + at + "/lets/";
            Optional<Problem> missing = lets.flatMap(thing -> missing(
                    sql,
                    pointer + thing.kind().word(),
                    thing.kind() == Lets.Kind.MODEL
                            ? "lens model"
                            : thing.kind().word(),
                    Objects.requireNonNull(tables.get(thing.kind())),
                    new Thing(thing.number())));
            if (missing.isPresent()) {
                return missing;
            }
        }
        return Optional.empty();
    }

    /** A job takes whichever card is in force, so that its currency must not depend on the day. */
    private Optional<Problem> currencyRefusal(DSLContext sql, Optional<RateCard.Id> self, RateCard facts) {
        return succession(facts.supplier(), facts.name()).stream()
                .filter(other -> !self.equals(Optional.of(other.id())))
                .filter(other -> !other.facts().currency().equals(facts.currency()))
                .findFirst()
                .map(other -> Problem.faulty(
                        "/currency",
                        "must be " + other.facts().currency() + ", as rate card "
                                + other.id().number() + " of this supplier and name has it: else give this card a"
                                + " name of its own"))
                .or(() -> self.flatMap(id -> countedOn(sql.select(JOB.ID)
                        .from(JOB)
                        .join(JOB_RATE_CARD)
                        .on(JOB_RATE_CARD.JOB_ID.eq(JOB.ID))
                        .where(
                                JOB_RATE_CARD.RATE_CARD_ID.eq(id.number()),
                                JOB.CURRENCY.ne(facts.currency().code())))));
    }

    @Override
    protected List<String> uses(DSLContext sql, RateCard.Id id) {
        return named(
                "job",
                sql.select(JOB_RATE_CARD.JOB_ID).from(JOB_RATE_CARD).where(JOB_RATE_CARD.RATE_CARD_ID.eq(id.number())));
    }
}
