package dayglass.web.page.desk.paper;

import dayglass.desk.paper.DoorSheet;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.RentalNow;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The sheets of the door: what is handed over, and what comes back beside how it went. */
public final class DoorPaper {
    private final PaperSources sources;
    private final RentalNow rental;
    private final DoorSheet sheet;

    DoorPaper(PaperSources sources, RentalNow rental) {
        this.sources = sources;
        this.rental = rental;
        this.sheet = DoorSheet.of(rental, sources.shelf());
    }

    /**
     * A unit.
     *
     * @param notes below its name: when it is due where units differ, and that another went in its place
     * @param out whether it went, so that what was not there is known
     * @param conditionOut empty to be filled by hand
     * @param remarks differences in words
     */
    public record Row(
            int number,
            String tag,
            String what,
            String serial,
            List<String> notes,
            List<DoorSheet.Accessory> accessories,
            boolean out,
            String conditionOut,
            boolean back,
            String conditionBack,
            List<String> remarks) {}

    Map<String, Object> handover() {
        return model("Handover sheet", DoorSheet.Row::leftBehind);
    }

    Map<String, Object> handedBack() {
        return model("Return sheet", row -> {
            List<String> differences = row.differences();
            return row.back().isPresent() && differences.isEmpty() ? List.of("as it went out") : differences;
        });
    }

    private Map<String, Object> model(String name, Function<DoorSheet.Row, List<String>> remarks) {
        List<Row> rows = new ArrayList<>();
        sheet.rows().forEach(row -> rows.add(row(rows.size() + 1, row, remarks.apply(row))));
        return Map.of(
                "heading", sources.heading(name + " of rental " + rental.facts().number(), facts()), "rows", rows);
    }

    private List<Heading.Fact> facts() {
        List<Heading.Fact> facts =
                new ArrayList<>(PaperSources.customer(rental.facts().customer()));
        facts.add(PaperSources.days(rental.facts()));
        facts.add(new Heading.Fact(
                "Due back", dues().stream().map(sources::moment).collect(Collectors.joining("; "))));
        facts.add(new Heading.Fact("Handed over", seen(DoorSheet.Row::out)));
        facts.add(new Heading.Fact("Taken back", seen(DoorSheet.Row::back)));
        return facts;
    }

    private List<Instant> dues() {
        return sheet.rows().stream()
                .flatMap(row -> row.due().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** When and by whom; several where not all went at once. */
    private String seen(Function<DoorSheet.Row, Optional<Rental.Check>> check) {
        return sheet.rows().stream()
                .flatMap(row -> check.apply(row).stream())
                .map(seen -> sources.moment(seen.at()) + " by " + sources.person(seen.by()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private Row row(int number, DoorSheet.Row row, List<String> remarks) {
        List<String> notes = new ArrayList<>();
        if (row.tag().isEmpty()) {
            notes.add("rented in for this rental");
        }
        if (dues().size() > 1) {
            row.due().ifPresent(due -> notes.add("due back " + sources.moment(due)));
        }
        if (row.gaveWay()) {
            notes.add("came back early; another unit went in its place");
        }
        return new Row(
                number,
                row.tag(),
                row.what(),
                row.serial().map(serial -> "serial " + serial).orElse("no serial recorded"),
                notes,
                row.accessories(),
                row.out().isPresent(),
                condition(row.out()),
                row.back().isPresent(),
                condition(row.back()),
                remarks);
    }

    private static String condition(Optional<Rental.Check> check) {
        return check.map(seen -> seen.condition().isEmpty() ? "nothing to remark" : seen.condition())
                .orElse("");
    }
}
