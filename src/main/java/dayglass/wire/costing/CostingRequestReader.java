package dayglass.wire.costing;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.plan.Question;
import dayglass.wire.Checked;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Part;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A whole costing request: every default filled in, or every fault told. */
public final class CostingRequestReader {
    /** Rentals, purchases and owned units together, at most. */
    public static final int MOST_OPTIONS = 200;

    private static final int MOST_DISCOUNT_RATE = 1000;

    private CostingRequestReader() {}

    /** The question that the text asks, or everything that is wrong with it. */
    public static Checked<Question> read(byte[] text) {
        return request().read(text);
    }

    public static Reader<Question> request() {
        return Fields.object(CostingRequestReader::question);
    }

    private static Read<Question> question(Fields fields) {
        Read<String> job = fields.required("job", Readers.name());
        Read<Currency> currency = fields.required("currency", Decimals.currency());
        Read<Percent> discountRate =
                fields.optional("discountRatePercent", Decimals.percent(0, MOST_DISCOUNT_RATE), Percent.ZERO);
        Read<Optional<Money>> cashLimit = fields.optional("cashLimit", Decimals.money(currency));
        Read<ScheduleReader.Days> days = fields.required("schedule", ScheduleReader.days());
        Read<DateRange> horizon = days.isGood() ? days.get().horizon() : Read.bad();
        Read<List<Question.Need>> needs = fields.required("needs", NeedsReader.needs(horizon));
        Options options = Options.read(fields, currency, horizon);
        return fields.build(() -> new Question(
                job.get(),
                currency.get(),
                discountRate.get(),
                cashLimit.get(),
                days.get().schedule().get(),
                needs.get(),
                Part.goodValues(options.rentals()),
                Part.goodValues(options.purchases()),
                Part.goodValues(options.owned()),
                Map.of()));
    }

    /** The three lists of options; one that is no list counts as empty once that has been told. */
    private record Options(
            List<Part<String, Question.Rental>> rentals,
            List<Part<String, Question.Purchase>> purchases,
            List<Part<String, Question.Owned>> owned) {

        static Options read(Fields fields, Read<Currency> currency, Read<DateRange> horizon) {
            Options options = new Options(
                    list(fields, "rentals", RentalReader.option(currency)),
                    list(fields, "purchases", PurchaseReader.option(currency, horizon)),
                    list(fields, "owned", OwnedReader.option()));
            options.requireFew(fields.place());
            options.requireDistinctIds();
            return options;
        }

        private static <T> List<Part<String, T>> list(Fields fields, String name, Reader<Part<String, T>> option) {
            return fields.optional(name, Part.list(option), List.of()).found().orElse(List.of());
        }

        /** Tells the list in which the count passes the limit. */
        private void requireFew(Place place) {
            int withPurchases = rentals.size() + purchases.size();
            int all = withPurchases + owned.size();
            if (all > MOST_OPTIONS) {
                String list = rentals.size() > MOST_OPTIONS
                        ? "rentals"
                        : withPurchases > MOST_OPTIONS ? "purchases" : "owned";
                place.member(list)
                        .fault("brings the options (rentals, purchases and owned together) to " + all
                                + ": leave at most " + MOST_OPTIONS);
            }
        }

        private void requireDistinctIds() {
            List<Part<String, Object>> all = new ArrayList<>();
            Stream.of(rentals, purchases, owned)
                    .flatMap(List::stream)
                    .forEach(part -> all.add(new Part<>(part.place(), part.key(), Read.bad())));
            Part.requireDistinct(
                    all, part -> part.place().member("id"), "an earlier rental, purchase or owned unit has this id");
        }
    }
}
