package dayglass.books.report;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.books.entry.Kind;
import dayglass.books.report.CostFigures.Cell;
import dayglass.books.report.CostFigures.Sums;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The cost report of a job. No sum stands in two columns: what is invoiced or accrued was taken out of what is committed.
 *
 * <p>What is to complete is reckoned a cost code: what of its estimate is neither committed nor spent, and never below
 * nothing. By episode or supplier it stands on the row of no name, as it is placed with none yet. Where somebody typed
 * what is to complete of a code, that alone counts for the whole code, and stands on the row of its episode.
 *
 * @param rows by name; the row of entries that bear no name has an empty one
 */
public record CostReport(By by, Basis basis, List<Row> rows, Figures total) {
    public CostReport {
        rows = List.copyOf(rows);
    }

    /** What a row is. */
    public enum By {
        CODE,
        EPISODE,
        SUPPLIER;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<By> of(String word) {
            return Arrays.stream(values()).filter(by -> by.word().equals(word)).findFirst();
        }

        private String name(Cell cell) {
            return switch (this) {
                case CODE -> cell.costCode();
                case EPISODE -> cell.episode();
                case SUPPLIER -> cell.supplier();
            };
        }

        private String name(ToComplete.Place place) {
            return switch (this) {
                case CODE -> place.costCode();
                case EPISODE -> place.episode();
                case SUPPLIER -> "";
            };
        }
    }

    /** What counts as cost: net where the tax comes back, gross where it does not. */
    public enum Basis {
        NET,
        GROSS;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Basis> of(String word) {
            return Arrays.stream(values())
                    .filter(basis -> basis.word().equals(word))
                    .findFirst();
        }

        private Money amount(Cell cell) {
            return amount(cell.net(), cell.tax());
        }

        private Money amount(Money net, Money tax) {
            return this == NET ? net : net.plus(tax);
        }
    }

    public record Row(String name, Figures figures) {}

    /** Of one row. */
    public record Figures(Money estimate, Money committed, Money actual, Money accrued, Money toComplete) {
        static Figures none(Currency currency) {
            Money none = Money.zero(currency);
            return new Figures(none, none, none, none, none);
        }

        /** What is ordered, invoiced or used. */
        public Money spoken() {
            return committed.plus(actual).plus(accrued);
        }

        /** What it will come to. */
        public Money finalCost() {
            return spoken().plus(toComplete);
        }

        /** The estimate less the final cost; negative where it will cost more than was estimated. */
        public Money variance() {
            return estimate.minus(finalCost());
        }

        Figures plus(Figures other) {
            return new Figures(
                    estimate.plus(other.estimate),
                    committed.plus(other.committed),
                    actual.plus(other.actual),
                    accrued.plus(other.accrued),
                    toComplete.plus(other.toComplete));
        }

        static Figures of(Kind kind, Money amount) {
            Money none = Money.zero(amount.currency());
            return switch (kind) {
                case ESTIMATE -> new Figures(amount, none, none, none, none);
                case COMMITMENT -> new Figures(none, amount, none, none, none);
                case ACTUAL -> new Figures(none, none, amount, none, none);
                case ACCRUAL -> new Figures(none, none, none, amount, none);
            };
        }

        private static Figures toComplete(Money amount) {
            Money none = Money.zero(amount.currency());
            return new Figures(none, none, none, none, amount);
        }
    }

    /**
     * The report that the sums make.
     *
     * @param base the currency of the job
     */
    public static CostReport of(By by, Basis basis, Currency base, Sums sums) {
        Map<String, Figures> rows = summed(by, basis, sums.cells());
        List<ToComplete> typed = typed(base, sums);
        Set<String> typedCodes =
                typed.stream().map(figure -> figure.place().costCode()).collect(Collectors.toSet());
        summed(By.CODE, basis, sums.cells()).forEach((code, figures) -> {
            Money left = figures.estimate().minus(figures.spoken());
            if (left.signum() > 0 && !typedCodes.contains(code)) {
                rows.merge(by == By.CODE ? code : "", Figures.toComplete(left), Figures::plus);
            }
        });
        typed.forEach(figure -> figure.sum()
                .ifPresent(sum -> rows.merge(
                        by.name(figure.place()),
                        Figures.toComplete(basis.amount(sum.net(), sum.tax())),
                        Figures::plus)));
        List<Row> list = new ArrayList<>();
        rows.forEach((name, figures) -> list.add(new Row(name, figures)));
        return new CostReport(by, basis, list, rows.values().stream().reduce(Figures.none(base), Figures::plus));
    }

    /** One that was typed while the job, still without entries, had another currency counts no more. */
    private static List<ToComplete> typed(Currency base, Sums sums) {
        return sums.typed().stream()
                .map(ToComplete.Kept::figure)
                .filter(figure -> figure.sum()
                        .filter(sum -> sum.net().currency().equals(base))
                        .isPresent())
                .toList();
    }

    private static Map<String, Figures> summed(By by, Basis basis, List<Cell> cells) {
        Map<String, Figures> summed = new TreeMap<>();
        for (Cell cell : cells) {
            summed.merge(by.name(cell), Figures.of(cell.kind(), basis.amount(cell)), Figures::plus);
        }
        return summed;
    }

    /** The figures of a row, all nothing where there is no such row. */
    public Figures figures(String name) {
        return rows.stream()
                .filter(row -> row.name().equals(name))
                .map(Row::figures)
                .findFirst()
                .orElse(Figures.none(total.estimate().currency()));
    }

    /** The rows whose figures are others than before. */
    public List<Change> since(CostReport before) {
        Map<String, Change> changes = new TreeMap<>();
        before.rows.forEach(row -> changes.put(row.name(), new Change(row.name(), row.figures(), figures(row.name()))));
        rows.forEach(row -> changes.put(row.name(), new Change(row.name(), before.figures(row.name()), row.figures())));
        return changes.values().stream()
                .filter(change -> !change.before().equals(change.now()))
                .toList();
    }

    /** A row then and now. */
    public record Change(String name, Figures before, Figures now) {}
}
