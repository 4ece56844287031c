package dayglass.web.api.job;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.CostingRequestWriter;
import dayglass.wire.costing.NeedsReader;
import dayglass.wire.costing.ScheduleReader;
import java.util.List;
import java.util.Optional;

/** A job on the wire. */
final class JobJson {
    private static final int MOST_DISCOUNT_RATE = 1000;

    private JobJson() {}

    static Reader<Job> reader() {
        return Fields.object(JobJson::read);
    }

    private static Read<Job> read(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<Currency> currency = fields.required("currency", Decimals.currency());
        Read<Percent> discountRate =
                fields.optional("discountRatePercent", Decimals.percent(0, MOST_DISCOUNT_RATE), Percent.ZERO);
        Read<Optional<Money>> cashLimit = fields.optional("cashLimit", Decimals.money(currency));
        Read<Schedule> schedule = fields.required("schedule", ScheduleReader.schedule());
        Read<List<Question.Need>> needs = fields.required("needs", NeedsReader.needs(schedule.map(Schedule::horizon)));
        Read<Job.Sources> sources = sources(fields);
        return fields.build(() -> new Job(
                name.get(),
                currency.get(),
                discountRate.get(),
                cashLimit.get(),
                schedule.get(),
                needs.get(),
                sources.get()));
    }

    private static Read<Job.Sources> sources(Fields fields) {
        Read<List<RateCard.Id>> cards =
                fields.optional("rateCards", Readers.distinct(Ids.id(RateCard.Id::new)), List.of());
        Read<List<PurchaseOffer.Id>> offers =
                fields.optional("purchaseOffers", Readers.distinct(Ids.id(PurchaseOffer.Id::new)), List.of());
        Read<List<Unit.Id>> units = fields.optional("units", Readers.distinct(Ids.id(Unit.Id::new)), List.of());
        Read<List<LensSet.Id>> sets = fields.optional("lensSets", Readers.distinct(Ids.id(LensSet.Id::new)), List.of());
        Read<List<String>> leftOut = fields.optional("leftOut", Readers.distinct(Readers.name()), List.of());
        boolean good = cards.isGood() && offers.isGood() && units.isGood() && sets.isGood() && leftOut.isGood();
        return good
                ? Read.good(new Job.Sources(cards.get(), offers.get(), units.get(), sets.get(), leftOut.get()))
                : Read.bad();
    }

    static void write(Json.Members members, Job job) {
        members.put("name", job.name())
                .put("currency", job.currency().code())
                .put("discountRatePercent", job.discountRate().value().toPlainString());
        job.cashLimit().ifPresent(limit -> members.put("cashLimit", limit.amount()));
        members.put("schedule", CostingRequestWriter.schedule(job.schedule()))
                .put("needs", CostingRequestWriter.needs(job.needs()))
                .put("rateCards", Ids.list(job.sources().rateCards()))
                .put("purchaseOffers", Ids.list(job.sources().purchaseOffers()))
                .put("units", Ids.list(job.sources().units()))
                .put("lensSets", Ids.list(job.sources().lensSets()))
                .put("leftOut", Json.texts(job.sources().leftOut()));
    }
}
