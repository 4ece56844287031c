package dayglass.web.page.desk.paper;

import dayglass.desk.paper.PackingList;
import dayglass.desk.rental.Rental;
import dayglass.web.page.picture.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A packing list as it is printed. */
public final class PackingPaper {
    private static final String UNKNOWN = "not known";
    private static final int GRAM_DIGITS = 3;

    private final PaperSources sources;
    private final Rental rental;
    private final PackingList list;

    PackingPaper(PaperSources sources, Rental rental) {
        this.sources = sources;
        this.rental = rental;
        this.list = PackingList.of(rental, sources.shelf());
    }

    /** A piece, in the columns of the list. */
    public record Row(
            int number,
            String tag,
            String what,
            String with,
            String serial,
            String weight,
            String value,
            String origin) {}

    Map<String, Object> model() {
        List<Heading.Fact> facts = new ArrayList<>(PaperSources.customer(rental.customer()));
        facts.add(PaperSources.days(rental));
        List<Row> rows = new ArrayList<>();
        list.rows().forEach(row -> rows.add(row(rows.size() + 1, row)));
        return Map.of(
                "heading",
                sources.heading("Packing list of rental " + rental.number(), facts),
                "rows",
                rows,
                "pieces",
                list.pieces(),
                "weight",
                list.weightG() == 0 ? UNKNOWN : kilograms(list.weightG()),
                "values",
                list.values().isEmpty()
                        ? List.of(UNKNOWN)
                        : list.values().stream().map(Words::money).toList(),
                "missing",
                list.missing().entrySet().stream()
                        .map(each -> "No " + each.getKey() + " is recorded of "
                                + each.getValue().size() + " of "
                                + list.pieces() + ": "
                                + each.getValue().stream().collect(Collectors.joining(", ")) + ".")
                        .toList());
    }

    private static Row row(int number, PackingList.Row row) {
        return new Row(
                number,
                row.tag(),
                row.description(),
                String.join(", ", row.with()),
                row.serial().orElse(row.tag().isEmpty() ? UNKNOWN : "none"),
                row.weightG().map(grams -> kilograms(grams)).orElse(UNKNOWN),
                row.value().map(Words::money).orElse(UNKNOWN),
                row.origin().orElse(UNKNOWN));
    }

    /** To the gram. */
    private static String kilograms(long grams) {
        return BigDecimal.valueOf(grams, GRAM_DIGITS).toPlainString() + "\u00a0kg";
    }
}
