package dayglass.wire.costing;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.plan.Question;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Part;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Something that can be bought, with its terms. */
public final class PurchaseReader {
    /** The longest term, and the longest time between services, in months. */
    public static final int MOST_MONTHS = 600;

    private static final int MOST_PERCENT = 1000;
    private static final int MOST_DAYS_A_YEAR = 366;

    private final Read<Currency> currency;
    private final Reader<Money> money;
    private final LocalDate firstDay;

    private PurchaseReader(Read<Currency> currency, LocalDate firstDay) {
        this.currency = currency;
        this.money = Decimals.money(currency);
        this.firstDay = firstDay;
    }

    /**
     * A purchase option of a request; its key is its id.
     *
     * @param horizon its first day is the default of {@code availableFrom}
     */
    static Reader<Part<String, Question.Purchase>> option(Read<Currency> currency, Read<DateRange> horizon) {
        LocalDate firstDay = horizon.found().map(DateRange::from).orElse(LocalDate.EPOCH);
        PurchaseReader reader = new PurchaseReader(currency, firstDay);
        return Fields.object(fields -> reader.purchase(fields, fields.required("supplier", Readers.name())));
    }

    /**
     * A supplier's offer: a purchase option without its supplier.
     *
     * @param firstDay the default of {@code availableFrom}
     */
    public static Reader<Question.Purchase> offer(Currency currency, String supplier, LocalDate firstDay) {
        return offer(Read.good(currency), supplier, firstDay);
    }

    /** The same where the currency may be at fault: the rest is checked all the same. */
    public static Reader<Question.Purchase> offer(Read<Currency> currency, String supplier, LocalDate firstDay) {
        PurchaseReader reader = new PurchaseReader(currency, firstDay);
        return Fields.object(
                fields -> reader.purchase(fields, Read.good(supplier)).get().value());
    }

    /** The terms alone, of something that no job names. */
    public static Reader<PurchaseTerms> terms(Read<Currency> currency) {
        PurchaseReader reader = new PurchaseReader(currency, LocalDate.EPOCH);
        return Fields.object(fields -> {
            Supplier<PurchaseTerms> terms = reader.terms(fields);
            return fields.build(terms);
        });
    }

    private Read<Part<String, Question.Purchase>> purchase(Fields fields, Read<String> supplier) {
        Read<String> id = fields.required("id", Readers.name());
        Read<Map<String, Integer>> covers = fields.required("covers", CoversReader.covers());
        Read<Integer> copies = fields.optional("copies", Readers.whole(1, RentalReader.MOST_COPIES), 1);
        Supplier<PurchaseTerms> terms = terms(fields);
        Read<LocalDate> from = fields.optional("availableFrom", Readers.date(), firstDay);
        Read<Question.Purchase> purchase = fields.build(() ->
                new Question.Purchase(id.get(), supplier.get(), covers.get(), copies.get(), terms.get(), from.get()));
        return Read.good(new Part<>(fields.place(), id, purchase));
    }

    private Supplier<PurchaseTerms> terms(Fields fields) {
        Read<Money> price = fields.required("price", money);
        Read<Percent> tax = fields.optional("taxPercent", Decimals.percent(0, MOST_PERCENT), Percent.ZERO);
        Read<List<PurchaseTerms.Extra>> extras =
                fields.optional("extras", Readers.list(Fields.object(this::extra)), List.of());
        Read<Integer> termMonths = fields.required("termMonths", Readers.whole(1, MOST_MONTHS));
        Read<PurchaseTerms.Resale> resale = fields.required("resale", ResaleReader.resale(money));
        Read<PurchaseTerms.Holding> holding = fields.optional(
                "holding",
                Fields.object(this::holding),
                new PurchaseTerms.Holding(Percent.ZERO, Amounts.zero(currency)));
        Read<Optional<PurchaseTerms.Service>> service = fields.optional("service", Fields.object(this::service));
        Read<Optional<PurchaseTerms.Letting>> letting = fields.optional("letting", Fields.object(this::letting));
        return () -> new PurchaseTerms(
                price.get(),
                tax.get(),
                extras.get(),
                termMonths.get(),
                resale.get(),
                holding.get(),
                service.get(),
                letting.get());
    }

    private Read<PurchaseTerms.Extra> extra(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<Money> amount = fields.required("amount", money);
        return fields.build(() -> new PurchaseTerms.Extra(name.get(), amount.get()));
    }

    private Read<PurchaseTerms.Holding> holding(Fields fields) {
        Read<Percent> insurance =
                fields.optional("insurancePercentPerYear", Decimals.percent(0, MOST_PERCENT), Percent.ZERO);
        Read<Money> storage = fields.optional("storagePerYear", money, Amounts.zero(currency));
        return fields.build(() -> new PurchaseTerms.Holding(insurance.get(), storage.get()));
    }

    private Read<PurchaseTerms.Service> service(Fields fields) {
        Read<Integer> everyMonths = fields.required("everyMonths", Readers.whole(1, MOST_MONTHS));
        Read<Money> cost = fields.required("cost", money);
        return fields.build(() -> new PurchaseTerms.Service(everyMonths.get(), cost.get()));
    }

    private Read<PurchaseTerms.Letting> letting(Fields fields) {
        Read<BigDecimal> days = fields.required("daysPerYear", Decimals.decimal(0, MOST_DAYS_A_YEAR));
        Read<Money> dayRate = fields.required("dayRate", money);
        Read<Percent> ownerShare = fields.required("ownerSharePercent", Decimals.percent(0, 100));
        return fields.build(() -> new PurchaseTerms.Letting(days.get(), dayRate.get(), ownerShare.get()));
    }
}
