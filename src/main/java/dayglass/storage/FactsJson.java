package dayglass.storage;

import dayglass.base.Currency;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.PurchaseOffer.Offer;
import dayglass.catalogue.Rate;
import dayglass.catalogue.Supplier;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.desk.DeskRules;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Rental;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Brief;
import dayglass.job.Job;
import dayglass.job.Way;
import dayglass.shelf.BriefJson;
import dayglass.shelf.LensModelJson;
import dayglass.shelf.RateJson;
import dayglass.shelf.UnitJson;
import dayglass.shelf.WayJson;
import dayglass.shelf.desk.DeskRulesJson;
import dayglass.shelf.desk.QuoteJson;
import dayglass.shelf.desk.RentalJson;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.CostingRequestWriter;
import dayglass.wire.costing.CoversReader;
import dayglass.wire.costing.NeedsReader;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.PurchaseReader;
import dayglass.wire.costing.ScheduleReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Facts that are kept as text, in the form that they have in a costing request or in REST. */
public final class FactsJson {
    /** The supplier stands in a column of its own and is left out of the text. */
    private static final Supplier LEFT_OUT = new Supplier("left out");

    private FactsJson() {}

    public static String rates(List<Rate> rates) {
        return JsonPrint.pretty(Json.list(rates.stream().map(RateJson::write).toList()));
    }

    public static List<Rate> rates(String json, Currency currency) {
        return read(Readers.list(RateJson.reader(currency)), json);
    }

    public static String offer(Offer offer) {
        return JsonPrint.pretty(OptionWriter.offer(offer.from(LEFT_OUT, Offer.ANY_FIRST_DAY), Offer.ANY_FIRST_DAY));
    }

    public static Offer offer(String json, Currency currency) {
        return read(
                PurchaseReader.offer(currency, LEFT_OUT.name(), Offer.ANY_FIRST_DAY)
                        .map(Offer::of),
                json);
    }

    public static String unit(Unit unit) {
        return JsonPrint.pretty(UnitJson.write(unit));
    }

    public static Unit unit(String json) {
        return read(UnitJson.reader(), json);
    }

    public static String lensModel(LensModel model) {
        return JsonPrint.pretty(LensModelJson.write(model));
    }

    public static LensModel lensModel(String json) {
        return read(LensModelJson.reader(), json);
    }

    public static String brief(Brief brief) {
        return JsonPrint.pretty(BriefJson.write(brief));
    }

    public static Brief brief(String json, Job.Id job) {
        return read(BriefJson.reader(job), json);
    }

    public static String way(Way way) {
        return JsonPrint.pretty(WayJson.writeFacts(way));
    }

    public static Way way(String json, Job.Id job) {
        return read(WayJson.reader(job), json);
    }

    public static String deskRules(DeskRules rules) {
        return JsonPrint.pretty(DeskRulesJson.write(rules));
    }

    public static DeskRules deskRules(String json) {
        return read(DeskRulesJson.reader(), json);
    }

    public static String quote(Quote quote) {
        return JsonPrint.pretty(QuoteJson.write(quote));
    }

    public static Quote quote(String json) {
        return read(QuoteJson.reader(), json);
    }

    public static String rental(Rental rental) {
        return JsonPrint.pretty(RentalJson.write(rental));
    }

    public static Rental rental(String json) {
        return read(RentalJson.reader(), json);
    }

    /** What a set covers by itself; its members lie in rows of their own. */
    public static String ownCovers(LensSet set) {
        Json.Members members = Json.object();
        if (!set.ownCovers().isEmpty()) {
            members.put("covers", OptionWriter.covers(set.ownCovers()));
        }
        return JsonPrint.pretty(members.build());
    }

    public static Map<String, Integer> ownCovers(String json) {
        return read(
                Fields.object(fields -> {
                    Read<Map<String, Integer>> covers = fields.optional("covers", CoversReader.covers(), Map.of());
                    return fields.build(covers::get);
                }),
                json);
    }

    public static String schedule(Schedule schedule) {
        return JsonPrint.pretty(CostingRequestWriter.schedule(schedule));
    }

    public static Schedule schedule(String json) {
        return read(ScheduleReader.schedule(), json);
    }

    public static String needs(List<Question.Need> needs) {
        return JsonPrint.pretty(CostingRequestWriter.needs(needs));
    }

    public static List<Question.Need> needs(String json, Schedule schedule) {
        return read(NeedsReader.needs(Read.good(schedule.horizon())), json);
    }

    public static String texts(List<String> texts) {
        return JsonPrint.pretty(Json.texts(texts));
    }

    public static List<String> texts(String json) {
        return read(Readers.list(Readers.name()), json);
    }

    public static String words(Map<String, String> words) {
        Json.Members members = Json.object();
        new TreeMap<>(words).forEach(members::put);
        return JsonPrint.pretty(members.build());
    }

    public static Map<String, String> words(String json) {
        return read(Readers.words(Readers.anyText()), json);
    }

    private static <T> T read(Reader<T> reader, String json) {
        return reader.read(json.getBytes(StandardCharsets.UTF_8)).fold(value -> value, faults -> {
            throw new IllegalStateException("the database holds what it should not: " + faults);
        });
    }
}
