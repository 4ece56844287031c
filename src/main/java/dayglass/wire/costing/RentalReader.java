package dayglass.wire.costing;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalTerms;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Part;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** Something that can be rented, with the terms of its rate. */
public final class RentalReader {
    /** Held at once, or bought, at most. */
    public static final int MOST_COPIES = 20;
    /** The longest block, in days. */
    public static final int MOST_BLOCK_DAYS = 400;

    private static final int MOST_PERIOD_DAYS = 1_100;
    private static final int MOST_FACTOR = 1000;

    private final Read<Currency> currency;
    private final Reader<Money> money;

    private RentalReader(Read<Currency> currency) {
        this.currency = currency;
        this.money = Decimals.money(currency);
    }

    /** A rental option of a request; its key is its id. */
    static Reader<Part<String, Question.Rental>> option(Read<Currency> currency) {
        RentalReader reader = new RentalReader(currency);
        return Fields.object(fields -> reader.rental(fields, fields.required("supplier", Readers.name()), true));
    }

    /** A rate of a supplier's card: a rental option without its supplier. */
    public static Reader<Question.Rental> rate(Currency currency, String supplier) {
        RentalReader reader = new RentalReader(Read.good(currency));
        return Fields.object(
                fields -> reader.rental(fields, Read.good(supplier), true).get().value());
    }

    /**
     * A rate with members of its own, which are read before the others.
     *
     * @param own reads them; what is wrong with them is told and makes the whole faulty
     * @param coversNeeded whether a rate that covers no slot is refused, by what the own members say
     */
    public static <M, T> Reader<T> rate(
            Currency currency,
            Function<Fields, M> own,
            Predicate<M> coversNeeded,
            BiFunction<Question.Rental, M, T> whole) {
        RentalReader reader = new RentalReader(Read.good(currency));
        return Fields.object(fields -> {
            M members = own.apply(fields);
            Read<Question.Rental> rental = reader.rental(fields, Read.good(""), coversNeeded.test(members))
                    .get()
                    .value();
            return rental.map(read -> whole.apply(read, members));
        });
    }

    /** The terms alone, of something that no job names. */
    public static Reader<RentalTerms> terms(Read<Currency> currency) {
        RentalReader reader = new RentalReader(currency);
        return Fields.object(fields -> {
            Supplier<RentalTerms> terms = reader.terms(fields);
            return fields.build(terms);
        });
    }

    private Read<Part<String, Question.Rental>> rental(Fields fields, Read<String> supplier, boolean coversNeeded) {
        Read<String> id = fields.required("id", Readers.name());
        Read<Map<String, Integer>> covers = coversNeeded
                ? fields.required("covers", CoversReader.covers())
                : fields.optional("covers", CoversReader.covers(), Map.of());
        Read<Integer> copies = fields.optional("copies", Readers.whole(1, MOST_COPIES), 1);
        Supplier<RentalTerms> terms = terms(fields);
        Read<List<DateRange>> available = fields.optional("available", SpanReader.spans(), List.of());
        Read<Question.Rental> rental = fields.build(() -> new Question.Rental(
                id.get(), supplier.get(), covers.get(), copies.get(), terms.get(), available.get(), Map.of()));
        return Read.good(new Part<>(fields.place(), id, rental));
    }

    private Supplier<RentalTerms> terms(Fields fields) {
        Read<List<RentalTerms.Block>> blocks =
                fields.required("blocks", Readers.notEmpty(Readers.list(Fields.object(this::block))));
        Read<Optional<RentalTerms.ExtraDay>> extraDay = fields.optional("extraDay", Fields.object(this::extraDay));
        Read<Map<DayUse, BigDecimal>> factors =
                fields.optional("dayFactors", Fields.object(RentalReader::dayFactors), Map.of());
        Read<List<RentalTerms.LongHire>> longHire = fields.optional("longHire", RentalReader::longHires, List.of());
        Money zero = Amounts.zero(currency);
        Read<Money> minimum = fields.optional("minimumCharge", money, zero);
        Read<Money> trip = fields.optional("perTrip", money, zero);
        Read<List<RentalTerms.AddOn>> addOns = fields.optional("addOns", AddOnsReader.addOns(), List.of());
        return () -> new RentalTerms(
                blocks.get(), extraDay.get(), factors.get(), longHire.get(), minimum.get(), trip.get(), addOns.get());
    }

    private Read<RentalTerms.Block> block(Fields fields) {
        Read<Integer> days = fields.required("days", Readers.whole(1, MOST_BLOCK_DAYS));
        Read<Money> price = fields.required("price", money);
        Read<Optional<DayOfWeek>> startsOn = fields.optional("startsOn", Readers.weekday());
        return fields.build(() -> new RentalTerms.Block(days.get(), price.get(), startsOn.get()));
    }

    private Read<RentalTerms.ExtraDay> extraDay(Fields fields) {
        Read<Integer> afterDays = fields.required("afterDays", Readers.whole(0, MOST_PERIOD_DAYS));
        Read<Money> price = fields.required("price", money);
        return fields.build(() -> new RentalTerms.ExtraDay(afterDays.get(), price.get()));
    }

    /** Only the factors that are not 1 are kept, since 1 is what an absent one means. */
    private static Read<Map<DayUse, BigDecimal>> dayFactors(Fields fields) {
        Map<DayUse, BigDecimal> factors = new EnumMap<>(DayUse.class);
        for (DayUse use : DayUse.values()) {
            fields.optional(use.word(), Decimals.decimal(0, MOST_FACTOR), BigDecimal.ONE)
                    .found()
                    .filter(factor -> factor.compareTo(BigDecimal.ONE) != 0)
                    .ifPresent(factor -> factors.put(use, factor));
        }
        return fields.build(() -> factors);
    }

    private static Read<List<RentalTerms.LongHire>> longHires(Json json, Place place) {
        Read<List<Part<Integer, RentalTerms.LongHire>>> parts =
                Part.list(Fields.object(RentalReader::longHire)).read(json, place);
        parts.found()
                .ifPresent(list ->
                        Part.requireDistinct(list, Part::place, "an earlier entry begins at the same number of days"));
        return parts.map(Part::goodValues);
    }

    private static Read<Part<Integer, RentalTerms.LongHire>> longHire(Fields fields) {
        Read<Integer> fromDays = fields.required("fromDays", Readers.whole(1, MOST_PERIOD_DAYS));
        Read<Percent> percent = fields.required("percent", Decimals.percent(0, 100));
        Read<RentalTerms.LongHire> entry = fields.build(() -> new RentalTerms.LongHire(fromDays.get(), percent.get()));
        return Read.good(new Part<>(fields.place(), fromDays, entry));
    }
}
