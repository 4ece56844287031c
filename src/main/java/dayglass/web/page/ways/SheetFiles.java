package dayglass.web.page.ways;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.optics.check.Fit;
import dayglass.planning.ways.Payback;
import dayglass.planning.ways.SheetRow;
import dayglass.sheet.CsvTable;
import dayglass.sheet.SheetBook;
import dayglass.sheet.SheetTable;
import dayglass.sheet.SheetTable.Cell;
import dayglass.sheet.SheetTable.Column;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The options sheet as a table to take away; an amount that cannot be had is an empty cell. */
final class SheetFiles {
    private static final int LOOK_DECIMALS = 2;

    private SheetFiles() {}

    private static SheetTable<SheetLine> table(List<SheetLine> lines) {
        return new SheetTable<>(
                List.of(
                        text("way", SheetLine::name),
                        text("note", SheetLine::note),
                        text("fit", SheetLine::verdict),
                        text("slots served", SheetLine::served),
                        Column.plain(
                                "look",
                                line -> number(line.row()
                                        .picture()
                                        .look()
                                        .map(look -> look.setScale(LOOK_DECIMALS, RoundingMode.HALF_UP)))),
                        text("look note", SheetLine::lookNote),
                        text(
                                "currency",
                                line -> line.total()
                                        .or(line.row()::bought)
                                        .map(total -> total.currency().code())
                                        .orElse("")),
                        Column.plain("bought", line -> cell(line.row().bought())),
                        text("bought note", SheetLine::boughtNote),
                        amount("by the day", Answer.Comparison::dayRateOnly),
                        amount("by the week", Answer.Comparison::weekRateOnly),
                        amount("best mix", Answer.Comparison::best),
                        Column.plain(
                                "cash needed", line -> cell(line.row().cost().map(SheetRow.Cost::payable))),
                        text("within budget", line -> line.budget().equals("–") ? "" : line.budget()),
                        Column.plain(
                                "buying pays from shoot days",
                                line -> number(line.row()
                                        .payback()
                                        .flatMap(Payback::shootDays)
                                        .map(BigDecimal::valueOf))),
                        text("beaten by none", line -> line.unbeaten() ? "yes" : ""),
                        text("best mix takes", SheetLine::takes),
                        text("completed by others", line -> String.join("; ", line.completions())),
                        text("reasons", SheetFiles::reasons),
                        text("costing", line -> line.costed() ? String.valueOf(line.costing()) : "")),
                lines);
    }

    private static String reasons(SheetLine line) {
        List<String> reasons = new ArrayList<>();
        line.slots().forEach(slot -> slot.reasons().forEach(reason -> reasons.add(slot.slot() + ": " + reason)));
        reasons.addAll(line.remarks());
        if (!line.problem().isEmpty()) {
            reasons.add(line.problem());
        }
        return String.join(" ", reasons);
    }

    private static Column<SheetLine> text(String heading, Function<SheetLine, String> text) {
        return Column.plain(heading, line -> new SheetTable.Text(text.apply(line)));
    }

    private static Column<SheetLine> amount(String heading, Function<Answer.Comparison, Answer.Row> which) {
        return Column.plain(
                heading,
                line -> cell(line.row()
                        .cost()
                        .flatMap(cost -> which.apply(cost.comparison()).total())));
    }

    private static Cell cell(Optional<Money> money) {
        return money.<Cell>map(SheetTable.Amount::new).orElseGet(SheetTable.Nothing::new);
    }

    private static Cell number(Optional<BigDecimal> number) {
        return number.<Cell>map(SheetTable.PlainNumber::new).orElseGet(SheetTable.Nothing::new);
    }

    static byte[] csv(List<SheetLine> lines) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            CsvTable.write(table(lines), out);
        } catch (IOException e) {
            throw new UncheckedIOException("memory took no more", e);
        }
        return out.toByteArray();
    }

    /** A sheet of the table and one of the cautions. */
    static byte[] xlsx(String job, Instant startedAt, List<SheetLine> lines) {
        return SheetBook.bytes("Options sheet of " + job, startedAt, book -> {
            book.table("Ways", table(lines));
            book.facts(
                    "Cautions",
                    Fit.CAUTIONS.stream()
                            .map(caution -> List.<Object>of("Caution", caution))
                            .toList());
        });
    }
}
