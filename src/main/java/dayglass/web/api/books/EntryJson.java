package dayglass.web.api.books;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entry;
import dayglass.books.entry.EntryFaults;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.books.entry.Split;
import dayglass.job.Job;
import dayglass.web.api.house.Moments;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Entries as JSON. */
public final class EntryJson {
    static final int MOST_NOTE = 1_000;
    private static final int MOST_WEIGHT = 1_000_000_000;
    private static final int MOST_QUANTITY = 1_000_000;

    /** About twenty years: whoever spreads an entry over its periods makes an entry of each week. */
    private static final long MOST_SERVICE_DAYS = 7_320;

    private EntryJson() {}

    /** What is sent to be posted. */
    public record Typed(Entry entry, List<Split.Part> parts, boolean overPeriods) {}

    /**
     * Reads an entry of a job.
     *
     * @param base the job's currency
     */
    public static Reader<Typed> reader(Job.Id job, Currency base) {
        return Fields.object(fields -> {
            Read<Kind> kind = fields.required("kind", Readers.word(kinds()));
            Read<LocalDate> date = fields.required("date", Readers.date());
            Read<Optional<DateRange>> service = service(fields);
            Read<Entry.Coding> coding = coding(fields);
            Read<Entry.Sum> sum = sum(fields, base, date);
            Read<Entry.Item> item = item(fields, sum);
            Read<Entry.Papers> papers = papers(fields);
            Read<List<Split.Part>> parts = fields.optional("parts", Readers.notEmpty(Readers.list(part())), List.of());
            Read<Boolean> overPeriods = fields.optional("overPeriods", Readers.yesOrNo(), false);
            return fields.build(() -> new Typed(
                    new Entry(
                            kind.get(),
                            job,
                            date.get(),
                            service.get().orElse(DateRange.inclusive(date.get(), date.get())),
                            coding.get(),
                            item.get(),
                            sum.get(),
                            papers.get(),
                            Entry.Links.NONE),
                    parts.get(),
                    overPeriods.get()));
        });
    }

    /** Estimates and actuals are typed; commitments too. Accruals come of closing a period alone. */
    private static Map<String, Kind> kinds() {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        for (Kind kind : List.of(Kind.ESTIMATE, Kind.COMMITMENT, Kind.ACTUAL)) {
            kinds.put(kind.word(), kind);
        }
        return kinds;
    }

    static Read<Optional<DateRange>> service(Fields fields) {
        Read<Optional<LocalDate>> from = fields.optional("serviceFrom", Readers.date());
        Read<Optional<LocalDate>> to = fields.optional("serviceTo", Readers.date());
        if (!from.isGood() || !to.isGood()) {
            return Read.bad();
        }
        if (from.get().isEmpty() && to.get().isEmpty()) {
            return Read.good(Optional.empty());
        }
        LocalDate first = from.get().or(to::get).orElseThrow();
        LocalDate last = to.get().or(from::get).orElseThrow();
        if (last.isBefore(first)) {
            return fields.place().member("serviceTo").fault("is before serviceFrom: swap them");
        }
        return last.toEpochDay() - first.toEpochDay() >= MOST_SERVICE_DAYS
                ? fields.place()
                        .member("serviceTo")
                        .fault("is more than " + MOST_SERVICE_DAYS + " days after serviceFrom: check both years")
                : Read.good(Optional.of(DateRange.inclusive(first, last)));
    }

    private static Read<Entry.Coding> coding(Fields fields) {
        Read<String> code = fields.optional("costCode", Readers.name(), "");
        Read<String> episode = fields.optional("episode", Readers.name(), "");
        Read<String> supplier = fields.optional("supplier", Readers.name(), "");
        return code.isGood() && episode.isGood() && supplier.isGood()
                ? Read.good(new Entry.Coding(code.get(), episode.get(), supplier.get()))
                : Read.bad();
    }

    private static Read<Entry.Item> item(Fields fields, Read<Entry.Sum> sum) {
        Read<String> description = fields.required("description", Readers.name());
        Read<String> tag = fields.optional("tag", Readers.name(), "");
        Read<String> serial = fields.optional("serial", Readers.name(), "");
        Read<BigDecimal> quantity = fields.optional("quantity", Decimals.positiveUpTo(MOST_QUANTITY), BigDecimal.ONE);
        Read<Currency> currency = sum.map(each -> each.amounts().net().currency());
        Read<Optional<Money>> rate = fields.optional("rate", rate(currency));
        return description.isGood()
                        && tag.isGood()
                        && serial.isGood()
                        && quantity.isGood()
                        && rate.isGood()
                        && sum.isGood()
                ? Read.good(new Entry.Item(
                        description.get(),
                        tag.get(),
                        serial.get(),
                        quantity.get(),
                        rate.get().orElse(sum.get().amounts().net())))
                : Read.bad();
    }

    private static Reader<Money> rate(Read<Currency> currency) {
        Reader<Money> money = Decimals.money(currency);
        return (json, place) -> {
            Read<Money> rate = money.read(json, place);
            return rate.found().filter(EntryFaults::isTooMuch).isPresent()
                    ? place.fault(EntryFaults.MAKE_IT_SMALLER)
                    : rate;
        };
    }

    private static Read<Entry.Sum> sum(Fields fields, Currency base, Read<LocalDate> date) {
        Read<Currency> currency = fields.optional("currency", Decimals.currency(), base);
        Read<Money> net = fields.required("net", amount(currency));
        Read<String> taxCode = fields.optional("taxCode", Readers.name(), "");
        Read<Optional<Money>> tax = fields.optional("tax", amount(currency));
        Read<Exchange> exchange = exchange(fields, currency, base, date);
        return net.isGood() && tax.isGood() && taxCode.isGood() && exchange.isGood()
                ? Read.good(new Entry.Sum(
                        Amounts.at(
                                exchange.get(),
                                base,
                                net.get(),
                                tax.get().orElse(Money.zero(net.get().currency()))),
                        taxCode.get(),
                        exchange.get()))
                : Read.bad();
    }

    /** An amount that may be negative, as on a credit note. */
    static Reader<Money> amount(Read<Currency> currency) {
        Reader<Money> plain = Decimals.money(currency);
        return (json, place) -> json instanceof Json.Text text && text.value().startsWith("-")
                ? plain.read(Json.text(text.value().substring(1)), place).map(money -> money.times(-1))
                : plain.read(json, place);
    }

    /** The rate of a foreign amount must be said with its source; one of the base currency has none. */
    static Read<Exchange> exchange(Fields fields, Read<Currency> currency, Currency base, Read<LocalDate> date) {
        boolean foreign = currency.isGood() && !currency.get().equals(base);
        if (foreign) {
            return fields.required("exchange", exchange(date));
        }
        Read<Optional<Json>> said = fields.optional("exchange", (json, place) -> Read.good(json));
        return currency.isGood() && said.found().flatMap(each -> each).isPresent()
                ? fields.place()
                        .member("exchange")
                        .fault("is not needed: the amount is in " + base + ", the job's own currency: remove it")
                : date.map(Exchange::none);
    }

    static Reader<Exchange> exchange(Read<LocalDate> date) {
        return Fields.object(inner -> {
            Read<BigDecimal> rate = inner.required("rate", Decimals.positiveUpTo(MOST_QUANTITY));
            Read<String> source = inner.required("source", Readers.name());
            Read<Optional<LocalDate>> on = inner.optional("date", Readers.date());
            return inner.build(() -> new Exchange(
                    rate.get(),
                    source.get(),
                    on.get().orElseGet(() -> date.found().orElse(LocalDate.EPOCH))));
        });
    }

    private static Read<Entry.Papers> papers(Fields fields) {
        Read<String> order = fields.optional("purchaseOrder", Readers.name(), "");
        Read<String> invoice = fields.optional("invoice", Readers.name(), "");
        Read<String> note = fields.optional("note", Readers.text(MOST_NOTE), "");
        return order.isGood() && invoice.isGood() && note.isGood()
                ? Read.good(new Entry.Papers(order.get(), invoice.get(), note.get()))
                : Read.bad();
    }

    private static Reader<Split.Part> part() {
        return Fields.object(fields -> {
            Read<String> code = fields.optional("costCode", Readers.name(), "");
            Read<String> episode = fields.optional("episode", Readers.name(), "");
            Read<Integer> weight = fields.required("weight", Readers.whole(1, MOST_WEIGHT));
            return fields.build(() -> new Split.Part(code.get(), episode.get(), BigInteger.valueOf(weight.get())));
        });
    }

    static Json list(List<Posted> posted, ZoneId zone) {
        return Json.object()
                .put(
                        "items",
                        Json.list(posted.stream().map(each -> write(each, zone)).toList()))
                .build();
    }

    static Json.Obj write(Posted posted, ZoneId zone) {
        Entry entry = posted.entry();
        Json.Members members = Json.object()
                .put("id", posted.id().number())
                .put("posting", posted.posting().number())
                .put("jobId", entry.job().number())
                .put("kind", entry.kind().word())
                .put("date", entry.date().toString())
                .put("serviceFrom", entry.service().from().toString())
                .put("serviceTo", entry.service().lastDay().toString());
        put(members, "costCode", entry.coding().costCode());
        put(members, "episode", entry.coding().episode());
        put(members, "supplier", entry.coding().supplier());
        members.put("description", entry.item().description());
        put(members, "tag", entry.item().tag());
        put(members, "serial", entry.item().serial());
        members.put("quantity", entry.item().quantity().toPlainString())
                .put("rate", entry.item().rate().amount());
        sum(members, entry.sum());
        put(members, "purchaseOrder", entry.papers().purchaseOrder());
        put(members, "invoice", entry.papers().invoice());
        put(members, "note", entry.papers().note());
        entry.links().reverses().ifPresent(id -> members.put("reverses", id.number()));
        entry.links().commitment().ifPresent(id -> members.put("commitment", id.number()));
        entry.links().costing().ifPresent(id -> members.put("costingId", id));
        return members.put("enteredBy", posted.by().number())
                .put("enteredAt", Moments.text(posted.at(), zone))
                .put("hash", posted.hash())
                .build();
    }

    private static void sum(Json.Members members, Entry.Sum sum) {
        Amounts amounts = sum.amounts();
        members.put("net", amounts.net().amount());
        put(members, "taxCode", sum.taxCode());
        members.put("tax", amounts.tax().amount())
                .put("gross", amounts.gross().amount())
                .put("currency", amounts.net().currency().code())
                .put("exchange", exchange(sum.exchange()))
                .put("baseNet", amounts.baseNet().amount())
                .put("baseTax", amounts.baseTax().amount())
                .put("baseCurrency", amounts.baseNet().currency().code());
    }

    static Json exchange(Exchange exchange) {
        return Json.object()
                .put("rate", exchange.rate().toPlainString())
                .put("source", exchange.source())
                .put("date", exchange.on().toString())
                .build();
    }

    private static void put(Json.Members members, String name, String text) {
        if (!text.isEmpty()) {
            members.put(name, text);
        }
    }
}
