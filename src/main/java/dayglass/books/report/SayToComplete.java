package dayglass.books.report;

import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.books.entry.Entry;
import dayglass.books.post.Books;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Keeps a typed figure; refused where the chart lacks its code, its day is closed, or there is nothing to take back. */
public record SayToComplete(Books books, TypedFigures figures) {
    private static final BigInteger MOST = BigInteger.valueOf(Entry.MOST_MINOR);

    public Outcome<ToComplete.Kept> say(ToComplete figure) {
        return books.house()
                .transactions()
                .atomically(() -> refusal(figure)
                        .<Outcome<ToComplete.Kept>>map(Outcome::refused)
                        .orElseGet(() -> figures.add(figure)));
    }

    private Optional<Problem> refusal(ToComplete figure) {
        return fault(figure).map(fault -> Problem.faulty(List.of(fault))).or(() -> nothingToTakeBack(figure));
    }

    private Optional<Fault> fault(ToComplete figure) {
        String code = figure.place().costCode();
        if (!books.charts().of(figure.job()).facts().allows(code)) {
            return Optional.of(new Fault("/costCode", "is not in the job's chart: give it a code of the chart"));
        }
        Optional<LocalDate> closed = books.close().closedThrough(figure.job());
        if (closed.filter(day -> !figure.date().isAfter(day)).isPresent()) {
            return Optional.of(
                    new Fault("/date", "lies in a closed period, and what that came to stays: give it a later day"));
        }
        return figure.sum().stream()
                .flatMap(sum -> Stream.of(sum.net(), sum.tax()))
                .map(Money::minor)
                .filter(minor -> minor.compareTo(MOST) > 0)
                .findFirst()
                .map(minor -> new Fault("/net", "is more than the books hold"));
    }

    private Optional<Problem> nothingToTakeBack(ToComplete figure) {
        boolean there = ToComplete.inForce(figures.of(figure.job()), Optional.of(figure.date())).stream()
                .anyMatch(kept -> kept.figure().place().equals(figure.place()));
        return figure.sum().isPresent() || there
                ? Optional.empty()
                : Optional.of(new Problem(
                        Problem.Code.CANNOT_BE_DONE, "Nothing was typed for that code and episode by that day."));
    }
}
