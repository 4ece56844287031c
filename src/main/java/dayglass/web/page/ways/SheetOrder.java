package dayglass.web.page.ways;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.optics.Verdict;
import dayglass.planning.ways.Payback;
import dayglass.planning.ways.SheetRow;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How the rows of a sheet are sorted; what a row lacks comes last, and rows that are alike stay in the order of the ways.
 *
 * @param word by which an address names it
 */
record SheetOrder(String word, Comparator<SheetLine> order) {
    private static final SheetOrder BY_WAY = by("way", line -> Optional.of(line.number()));

    private static final List<SheetOrder> ALL = List.of(
            BY_WAY,
            by("fit", line -> line.row().picture().worst().map(SheetOrder::rank)),
            by("look", line -> line.row().picture().look().map(look -> look.negate())),
            by("bought", line -> line.row().bought()),
            by("day", line -> total(line, Answer.Comparison::dayRateOnly)),
            by("week", line -> total(line, Answer.Comparison::weekRateOnly)),
            by("best", line -> total(line, Answer.Comparison::best)),
            by("cash", line -> line.row().cost().map(SheetRow.Cost::payable)),
            by("pays", line -> line.row().payback().flatMap(Payback::shootDays)));

    private static <T extends Comparable<T>> SheetOrder by(String word, Function<SheetLine, Optional<T>> key) {
        return new SheetOrder(
                word,
                Comparator.comparing((SheetLine line) -> key.apply(line).isEmpty())
                        .thenComparing((one, other) -> compare(key.apply(one), key.apply(other)))
                        .thenComparing(SheetLine::number));
    }

    private static <T extends Comparable<T>> int compare(Optional<T> one, Optional<T> other) {
        return one.isPresent() && other.isPresent() ? one.get().compareTo(other.get()) : 0;
    }

    private static Integer rank(Verdict verdict) {
        return switch (verdict) {
            case FITS -> 0;
            case FITS_WITH_CARE -> 1;
            case DOES_NOT_FIT -> 2;
        };
    }

    private static Optional<Money> total(SheetLine line, Function<Answer.Comparison, Answer.Row> which) {
        return line.row().cost().flatMap(cost -> which.apply(cost.comparison()).total());
    }

    static SheetOrder of(String word) {
        return ALL.stream().filter(each -> each.word().equals(word)).findFirst().orElse(BY_WAY);
    }

    List<SheetLine> sorted(List<SheetLine> lines) {
        return lines.stream().sorted(order).toList();
    }
}
