package dayglass.app;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.wire.costing.AnswerWriter;
import java.util.Map;
import java.util.Optional;

/** What other ways would cost, each with its difference to the plan. */
final class ComparisonLines {
    private static final Map<String, String> WORDS = Map.of(
            "ownedOnly", "Only what is owned",
            "dayRateOnly", "Rent by the day only",
            "weekRateOnly", "Rent by the week only",
            "rentOnly", "Rent by every block, buy nothing",
            "buyOnly", "Buy, rent nothing",
            "best", "This plan: everything allowed");

    private ComparisonLines() {}

    static void print(Answer.Comparison comparison, TextLayout lines) {
        lines.heading("How it compares", pair("total", "more than plan"));
        Optional<Money> best = comparison.best().total();
        AnswerWriter.rows(comparison)
                .forEach((name, row) -> lines.row(2, WORDS.getOrDefault(name, name) + note(row), figures(row, best)));
    }

    private static String note(Answer.Row row) {
        return row.total().isPresent() && row.cutShort()
                ? " (not proved; no less than " + row.bound().orElseThrow().amount() + ")"
                : "";
    }

    private static String figures(Answer.Row row, Optional<Money> best) {
        if (row.total().isEmpty()) {
            return row.cutShort() ? pair("not found in time", "") : pair("cannot be done", "");
        }
        Money total = row.total().get();
        return pair(
                total.amount(), best.map(least -> total.minus(least).amount()).orElse(""));
    }

    private static String pair(String total, String more) {
        return total + " ".repeat(Math.max(2, 16 - more.length())) + more;
    }
}
