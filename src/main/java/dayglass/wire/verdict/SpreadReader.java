package dayglass.wire.verdict;

import dayglass.cost.scenario.Spread;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** How something uncertain is spread: a shape between three numbers, or the user's own values. */
final class SpreadReader {
    private static final int MOST_VALUES = 1_000;

    private final Reader<BigDecimal> number;

    private SpreadReader(int least, int most) {
        this.number = Decimals.decimal(least, most);
    }

    /** A spread of which every number lies between two bounds. */
    static Reader<Spread> between(int least, int most) {
        SpreadReader reader = new SpreadReader(least, most);
        return Fields.object(reader::spread);
    }

    private Read<Spread> spread(Fields fields) {
        if (fields.has("values")) {
            Read<List<BigDecimal>> values = fields.required("values", Readers.notEmpty(Readers.list(number)));
            if (values.isGood() && values.get().size() > MOST_VALUES) {
                fields.place().member("values").fault("has more than " + MOST_VALUES + " entries: leave some out");
            }
            return fields.build(() -> Spread.empirical(
                    values.get().stream().map(BigDecimal::doubleValue).toList()));
        }
        Read<String> shape = fields.optional("shape", Readers.oneOf(List.of("triangular", "pert")), "pert");
        Read<BigDecimal> low = fields.required("low", number);
        Read<BigDecimal> likely = fields.required("likely", number);
        Read<BigDecimal> high = fields.required("high", number);
        requireOrder(fields, low.found(), likely.found(), high.found());
        return fields.build(() -> {
            double from = low.get().doubleValue();
            double mode = likely.get().doubleValue();
            double to = high.get().doubleValue();
            return shape.get().equals("pert") ? Spread.pert(from, mode, to) : Spread.triangular(from, mode, to);
        });
    }

    private static void requireOrder(
            Fields fields, Optional<BigDecimal> low, Optional<BigDecimal> likely, Optional<BigDecimal> high) {
        if (low.isPresent() && likely.isPresent() && low.get().compareTo(likely.get()) > 0) {
            fields.place().member("likely").fault("is below low: put the three in ascending order");
        }
        if (likely.isPresent() && high.isPresent() && likely.get().compareTo(high.get()) > 0) {
            fields.place().member("high").fault("is below likely: put the three in ascending order");
        }
    }
}
