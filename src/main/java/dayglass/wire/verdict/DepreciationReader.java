package dayglass.wire.verdict;

import dayglass.base.Money;
import dayglass.cost.ownership.Depreciation;
import dayglass.cost.scenario.VerdictQuestion.WrittenOff;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** How a price is to be written off. */
public final class DepreciationReader {
    static final String STRAIGHT = "straight line";
    static final String DECLINING = "declining balance";
    static final String DIGITS = "sum of years' digits";
    static final String TABLE = "published table";

    private static final int MOST_YEARS = 50;
    private static final BigDecimal DOUBLE = BigDecimal.valueOf(2);

    private final Optional<Money> price;
    private final Reader<Money> money;

    private DepreciationReader(Optional<Money> price, Reader<Money> money) {
        this.price = price;
        this.money = money;
    }

    /** Of a price; where that is at fault, only the form is checked. */
    public static Reader<WrittenOff> of(Optional<Money> price, Reader<Money> money) {
        DepreciationReader reader = new DepreciationReader(price, money);
        return Fields.object(reader::read);
    }

    private Read<WrittenOff> read(Fields fields) {
        Read<String> method = fields.required("method", Readers.oneOf(List.of(STRAIGHT, DECLINING, DIGITS, TABLE)));
        if (!method.isGood()) {
            return Read.bad();
        }
        return method.get().equals(TABLE) ? table(fields) : years(fields, method.get());
    }

    private Read<WrittenOff> table(Fields fields) {
        PublishedTables known = PublishedTables.KNOWN;
        Read<String> name = fields.required(
                "table", Readers.oneOf(List.copyOf(known.byName().keySet())));
        return price.isEmpty()
                ? Read.bad()
                : fields.build(() -> new WrittenOff(
                        name.get(),
                        known.source(),
                        Depreciation.byTable(price.get(), known.byName().getOrDefault(name.get(), List.of()))));
    }

    private Read<WrittenOff> years(Fields fields, String method) {
        Read<Integer> years = fields.required("years", Readers.whole(1, MOST_YEARS));
        Read<Optional<Money>> salvage = fields.optional("salvage", money);
        Read<BigDecimal> factor = method.equals(DECLINING)
                ? fields.optional("factor", Decimals.positiveUpTo(MOST_YEARS), DOUBLE)
                : Read.good(DOUBLE);
        if (price.isEmpty()) {
            return Read.bad();
        }
        Money cost = price.get();
        Optional<Money> left = salvage.found().flatMap(each -> each);
        if (left.isPresent() && left.get().compareTo(cost) > 0) {
            fields.place().member("salvage").fault("is more than the price: make it less");
        }
        return fields.build(() -> new WrittenOff(
                method,
                "",
                amounts(method, factor.get(), years.get()).of(cost, left.orElse(Money.zero(cost.currency())))));
    }

    private interface Method {
        List<Money> of(Money cost, Money salvage);
    }

    private static Method amounts(String method, BigDecimal factor, int years) {
        if (method.equals(STRAIGHT)) {
            return (cost, salvage) -> Depreciation.straightLine(cost, salvage, years);
        }
        return method.equals(DIGITS)
                ? (cost, salvage) -> Depreciation.sumOfYearsDigits(cost, salvage, years)
                : (cost, salvage) -> Depreciation.declining(cost, salvage, years, factor, true);
    }
}
