package dayglass.books.entry;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What an entry stands for; no sum ever stands in two of them. */
public enum Kind {
    /** What it was expected to cost: the budget. */
    ESTIMATE,
    /** What is ordered and neither invoiced nor accrued. */
    COMMITMENT,
    /** What is invoiced. */
    ACTUAL,
    /** What was used in a closed period and not invoiced in it. */
    ACCRUAL;

    /** As it is written: {@code commitment}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Kind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }
}
