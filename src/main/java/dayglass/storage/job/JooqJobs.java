package dayglass.storage.job;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static dayglass.storage.schema.Tables.BOOK_GEAR;
import static dayglass.storage.schema.Tables.BOOK_TO_COMPLETE;
import static dayglass.storage.schema.Tables.COSTING;
import static dayglass.storage.schema.Tables.JOB;
import static dayglass.storage.schema.Tables.JOB_LENS_SET;
import static dayglass.storage.schema.Tables.JOB_PURCHASE_OFFER;
import static dayglass.storage.schema.Tables.JOB_RATE_CARD;
import static dayglass.storage.schema.Tables.JOB_UNIT;
import static dayglass.storage.schema.Tables.LENS_SET;
import static dayglass.storage.schema.Tables.PURCHASE_OFFER;
import static dayglass.storage.schema.Tables.RATE_CARD;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Currency;
import dayglass.base.Id;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.cost.Schedule;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.JobRecord;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import org.jooq.DSLContext;
import org.jooq.TableField;

/** Jobs as rows; what they consider lies in tables of its own, so that nothing considered can be removed. */
public final class JooqJobs extends VersionedTable<Job.Id, Job, JobRecord> implements Jobs {
    private static final Link<RateCard.Id> CARDS =
            new Link<>(JOB_RATE_CARD.JOB_ID, JOB_RATE_CARD.PLACE, JOB_RATE_CARD.RATE_CARD_ID, RateCard.Id::new);
    private static final Link<PurchaseOffer.Id> OFFERS = new Link<>(
            JOB_PURCHASE_OFFER.JOB_ID,
            JOB_PURCHASE_OFFER.PLACE,
            JOB_PURCHASE_OFFER.PURCHASE_OFFER_ID,
            PurchaseOffer.Id::new);
    private static final Link<Unit.Id> UNITS =
            new Link<>(JOB_UNIT.JOB_ID, JOB_UNIT.PLACE, JOB_UNIT.UNIT_ID, Unit.Id::new);
    private static final Link<LensSet.Id> SETS =
            new Link<>(JOB_LENS_SET.JOB_ID, JOB_LENS_SET.PLACE, JOB_LENS_SET.LENS_SET_ID, LensSet.Id::new);

    public JooqJobs(Database database) {
        super(database, new Shape<>("job", JOB.ID, JOB.VERSION, Job.Id::new));
    }

    @Override
    protected void fill(JobRecord row, Job facts) {
        row.setName(facts.name());
        row.setCurrency(facts.currency().code());
        row.setDiscountRatePercent(facts.discountRate().value().toPlainString());
        row.setCashLimit(facts.cashLimit().map(Money::amount).orElse(null));
        row.setScheduleJson(FactsJson.schedule(facts.schedule()));
        row.setNeedsJson(FactsJson.needs(facts.needs()));
        row.setLeftOutJson(FactsJson.texts(facts.sources().leftOut()));
    }

    @Override
    protected Job facts(DSLContext sql, JobRecord row) {
        Currency currency = Currency.of(row.getCurrency());
        Schedule schedule = FactsJson.schedule(row.getScheduleJson());
        Job.Id id = new Job.Id(row.getId());
        return new Job(
                row.getName(),
                currency,
                new Percent(new BigDecimal(row.getDiscountRatePercent())),
                Optional.ofNullable(row.getCashLimit()).map(limit -> Money.of(currency, new BigDecimal(limit))),
                schedule,
                FactsJson.needs(row.getNeedsJson(), schedule),
                new Job.Sources(
                        CARDS.of(sql, id),
                        OFFERS.of(sql, id),
                        UNITS.of(sql, id),
                        SETS.of(sql, id),
                        FactsJson.texts(row.getLeftOutJson())));
    }

    @Override
    protected void linked(DSLContext sql, Job.Id id, Job facts) {
        CARDS.put(sql, id, facts.sources().rateCards());
        OFFERS.put(sql, id, facts.sources().purchaseOffers());
        UNITS.put(sql, id, facts.sources().units());
        SETS.put(sql, id, facts.sources().lensSets());
    }

    @Override
    protected void tell(Json.Members record, Job facts) {
        record.put("rate_cards", Ids.list(facts.sources().rateCards()))
                .put("purchase_offers", Ids.list(facts.sources().purchaseOffers()))
                .put("units", Ids.list(facts.sources().units()))
                .put("lens_sets", Ids.list(facts.sources().lensSets()));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Job.Id> self, Job facts) {
        Job.Sources sources = facts.sources();
        return missing(sql, "/rateCards", "rate card", RATE_CARD.ID, sources.rateCards())
                .or(() ->
                        missing(sql, "/purchaseOffers", "purchase offer", PURCHASE_OFFER.ID, sources.purchaseOffers()))
                .or(() -> missing(sql, "/units", "unit", UNIT.ID, sources.units()))
                .or(() -> missing(sql, "/lensSets", "set", LENS_SET.ID, sources.lensSets()))
                .or(() -> ForeignPrices.of(sql, facts));
    }

    @Override
    protected List<String> uses(DSLContext sql, Job.Id id) {
        List<String> uses = new ArrayList<>(
                named("costing", sql.select(COSTING.ID).from(COSTING).where(COSTING.JOB_ID.eq(id.number()))));
        uses.addAll(named(
                "book entry",
                sql.select(BOOK_ENTRY.ID)
                        .from(BOOK_ENTRY)
                        .where(BOOK_ENTRY.JOB_ID.eq(id.number()))
                        .limit(1)));
        uses.addAll(named(
                "gear in the books", sql.select(BOOK_GEAR.ID).from(BOOK_GEAR).where(BOOK_GEAR.JOB_ID.eq(id.number()))));
        uses.addAll(named(
                "figure to complete",
                sql.select(BOOK_TO_COMPLETE.ID)
                        .from(BOOK_TO_COMPLETE)
                        .where(BOOK_TO_COMPLETE.JOB_ID.eq(id.number()))
                        .limit(1)));
        return uses;
    }

    /** A table that says, in order, what a job considers of one kind. */
    private record Link<I extends Id>(
            TableField<?, Long> job, TableField<?, Integer> place, TableField<?, Long> other, LongFunction<I> idOf) {
        List<I> of(DSLContext sql, Job.Id id) {
            return sql
                    .select(other)
                    .from(job.getTable())
                    .where(job.eq(id.number()))
                    .orderBy(place)
                    .fetch(other)
                    .stream()
                    .map(idOf::apply)
                    .toList();
        }

        void put(DSLContext sql, Job.Id id, List<I> others) {
            sql.deleteFrom(java.util.Objects.requireNonNull(job.getTable()))
                    .where(job.eq(id.number()))
                    .execute();
            for (int at = 0; at < others.size(); at++) {
                sql.insertInto(java.util.Objects.requireNonNull(job.getTable()))
                        .set(job, id.number())
                        .set(place, at)
                        .set(other, others.get(at).number())
                        .execute();
            }
        }
    }
}
