package dayglass.sheet;

import dayglass.base.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Rows and columns of one kind of line, the same for every format.
 *
 * @param columns in their documented order
 * @param rows one a line
 */
public record SheetTable<L>(List<Column<L>> columns, List<L> rows) {
    public SheetTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * One column.
     *
     * @param total the sum of the column where it is one of amounts
     */
    public record Column<L>(String heading, Function<L, Cell> cell, Optional<Money> total) {
        public static <L> Column<L> plain(String heading, Function<L, Cell> cell) {
            return new Column<>(heading, cell, Optional.empty());
        }
    }

    /** Rows that can be gone through in order, more than once, without holding them all. */
    @FunctionalInterface
    public interface Rows<L> {
        void each(Consumer<L> one);
    }

    /** What stands in a cell. */
    public sealed interface Cell permits Text, Day, Amount, PlainNumber, Nothing {}

    public record Text(String text) implements Cell {}

    public record Day(LocalDate date) implements Cell {}

    public record Amount(Money money) implements Cell {}

    /** A number with all its decimals. */
    public record PlainNumber(BigDecimal value) implements Cell {}

    public record Nothing() implements Cell {}
}
