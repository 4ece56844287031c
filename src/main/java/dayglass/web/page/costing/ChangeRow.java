package dayglass.web.page.costing;

import dayglass.cost.plan.Question;
import dayglass.planning.Change;
import dayglass.planning.CompareCostings;
import dayglass.planning.KeptCosting;
import dayglass.web.page.RateWords;
import dayglass.web.page.picture.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One thing that changed between what two costings were asked, in words. */
public record ChangeRow(String what, String before, String after) {
    private static final Pattern BLOCK_PRICE = Pattern.compile("blocks/([0-9]+)/price");
    private static final Map<String, String> TERMS = Map.of(
            "job", "name of the job",
            "discountRatePercent", "discount rate, % a year",
            "cashLimit", "most cash for purchases");

    static List<ChangeRow> of(KeptCosting before, KeptCosting after) {
        Question question = after.question();
        List<ChangeRow> rows = new ArrayList<>();
        for (Change change : CompareCostings.between(before, after).request()) {
            boolean whole = isOption(change) && change.part().isEmpty();
            rows.add(new ChangeRow(
                    what(change, question),
                    change.before()
                            .map(value -> whole ? "considered" : value)
                            .orElse(whole ? "not considered" : "none"),
                    change.after()
                            .map(value -> whole ? "considered" : value)
                            .orElse(whole ? "not considered" : "none")));
        }
        return rows;
    }

    private static String what(Change change, Question question) {
        return switch (change.subject()) {
            case TERM -> TERMS.getOrDefault(change.name(), change.name());
            case DAYS -> Words.date(LocalDate.parse(change.name()));
            case NEED -> "need of " + change.name();
            case RENTAL -> change.name() + (change.part().isEmpty() ? "" : ", " + part(change, question));
            default ->
                change.name()
                        + (change.part().isEmpty() ? "" : ", " + change.part().replace('/', ' '));
        };
    }

    private static boolean isOption(Change change) {
        return switch (change.subject()) {
            case RENTAL, PURCHASE, OWNED -> true;
            default -> false;
        };
    }

    private static String part(Change change, Question question) {
        Matcher price = BLOCK_PRICE.matcher(change.part());
        if (price.matches()) {
            int block = Integer.parseInt(price.group(1));
            return question.rentals().stream()
                    .filter(rental -> rental.id().equals(change.name()))
                    .map(rental -> rental.terms().blocks())
                    .filter(blocks -> block < blocks.size())
                    .map(blocks -> "price of " + RateWords.block(blocks.get(block)))
                    .findFirst()
                    .orElse("price");
        }
        return change.part().replace('/', ' ');
    }
}
