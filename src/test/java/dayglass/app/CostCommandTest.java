package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.Explanation;
import dayglass.cost.rental.RentalCharge;
import dayglass.wire.Json;
import dayglass.wire.JsonText;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The command with a computation put in its place, so that each kind of outcome can be had at will. */
class CostCommandTest {
    private static final Path EXAMPLES = Path.of("src/test/resources/dayglass/cost/examples");
    private static final String GOOD = EXAMPLES.resolve("00-sample.json").toString();
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 5);

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private InputStream in = InputStream.nullInputStream();
    private CostCommand.Solver solver = (question, stop) -> new Costing.OutOfTime();

    private int run(String... arguments) {
        Terminal terminal = new Terminal(
                in,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        return new CommandLine(
                        new CostCommand(terminal, System.nanoTime(), (question, stop) -> solver.solve(question, stop)))
                .setErr(new java.io.PrintWriter(err, true, StandardCharsets.UTF_8))
                .setOut(new java.io.PrintWriter(out, true, StandardCharsets.UTF_8))
                .execute(arguments);
    }

    @Test
    void aPlanIsPrintedAsATableThatFitsItsWidthAndEndsWithNought() {
        solver = (question, stop) -> new Costing.Planned(plan());
        assertEquals(0, run(GOOD));
        String table = out.toString(StandardCharsets.UTF_8);
        assertTrue(table.lines().noneMatch(line -> line.endsWith(" ")), table);
        assertTrue(table.lines().allMatch(line -> line.length() <= 100), table);
        assertTrue(table.contains("Mon 5 Apr – Wed 14 Apr 2027, 10 days. All amounts are in EUR."), table);
        assertTrue(table.contains("Not proved: no plan costs less than 800.00; at most 5.89 % could be saved."), table);
        assertTrue(table.contains("Rent quay-pair from Quay Hire, Mon 5 Apr – Sun 11 Apr 2027, 7 days"), table);
        assertTrue(table.contains("It serves no slot; it is bought because it pays for itself."), table);
        assertTrue(table.contains("Without it the least plan costs 1000.00, 150.00 more."), table);
        assertTrue(table.contains("not proved; no less than 800.00"), table);
        assertTrue(table.contains("This differs from the plan's cost of 850.00"), table);
        assertTrue(table.lines().anyMatch(line -> line.matches("  Payable in all +9900\\.00")), table);
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aPlanAsJsonIsTheAnswerAndNothingElse() {
        solver = (question, stop) -> new Costing.Planned(plan());
        assertEquals(0, run(GOOD, "--json"));
        Json.Obj answer = printedJson();
        assertEquals(Json.text("850.00"), answer.members().get("total"));
        assertEquals(Json.text("9900.00"), answer.members().get("payable"));
        assertEquals(Json.bool(false), answer.members().get("optimal"));
        assertEquals(
                Json.object()
                        .put("rentOnly", "800.00")
                        .put("buyOnly", "700.00")
                        .put("best", "800.00")
                        .build(),
                answer.members().get("comparisonBounds"));
        Json.Obj comparison = (Json.Obj) Objects.requireNonNull(answer.members().get("comparison"));
        assertEquals(
                List.of("ownedOnly", "dayRateOnly", "weekRateOnly", "rentOnly", "buyOnly", "best"),
                List.copyOf(comparison.members().keySet()));
        assertEquals(Json.nothing(), comparison.members().get("ownedOnly"));
        Json.Arr choices = (Json.Arr) Objects.requireNonNull(answer.members().get("choices"));
        assertTrue(((Json.Obj) choices.entries().get(1)).members().containsKey("spare"));
        assertFalse(((Json.Obj) choices.entries().get(0)).members().containsKey("spare"));
    }

    @Test
    void faultsAreToldWithTheirLinesAndEndWithTwo() {
        assertEquals(2, run(EXAMPLES.resolve("bad-02-numbers.json").toString()));
        String words = err.toString(StandardCharsets.UTF_8);
        assertTrue(words.contains("The request has 6 faults; nothing was computed."), words);
        assertTrue(words.contains("line 17, /discountRatePercent"), words);
        assertTrue(words.contains("line 33, /rentals/0/blocks/1/price"), words);
        assertEquals("", out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void faultsAsJsonAreAProblemOnStandardOutput() {
        in = new ByteArrayInputStream("{\"job\":}".getBytes(StandardCharsets.UTF_8));
        assertEquals(2, run("-", "--json"));
        Json.Obj problem = printedJson();
        assertEquals(Json.number(400), problem.members().get("status"));
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void noPlanEndsWithThreeAndSaysWhatIsShort() {
        Costing.Impossible impossible = new Costing.Impossible(
                List.of(
                        new Costing.Shortage("40 mm", FIRST, 2),
                        new Costing.Shortage("100 mm", FIRST, 1),
                        new Costing.Shortage("40 mm", FIRST.plusDays(1), 2)),
                false);
        solver = (question, stop) -> impossible;
        assertEquals(3, run(GOOD));
        String words = out.toString(StandardCharsets.UTF_8);
        assertTrue(words.lines().anyMatch(line -> line.matches(" +Mon 5 Apr – Tue 6 Apr 2027, 2 days +2")), words);
        out.reset();
        assertEquals(3, run("--json", GOOD));
        Json.Obj problem = printedJson();
        assertEquals(Json.number(422), problem.members().get("status"));
        assertEquals(
                3,
                ((Json.Arr) Objects.requireNonNull(problem.members().get("uncovered")))
                        .entries()
                        .size());
        assertFalse(problem.members().containsKey("cashLimitOnly"));
        out.reset();
        solver = (question, stop) -> new Costing.Impossible(List.of(), true);
        assertEquals(3, run("--json", GOOD));
        assertEquals(Json.bool(true), printedJson().members().get("cashLimitOnly"));
    }

    @Test
    void noPlanInTimeIsItsOwnAnswer() {
        assertEquals(1, run(GOOD));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("time limit"));
        assertEquals(1, run(GOOD, "--json"));
        assertEquals(Json.number(503), printedJson().members().get("status"));
    }

    @Test
    void anUnexpectedFailureIsOneSentenceAndNoStackTrace() {
        solver = (question, stop) -> {
            throw new IllegalStateException("the sky fell");
        };
        assertEquals(1, run(GOOD));
        String words = err.toString(StandardCharsets.UTF_8);
        assertEquals(1, words.lines().count(), words);
        assertTrue(words.contains("the sky fell"), words);
        assertEquals(1, run(GOOD, "--json"));
        assertEquals(Json.number(500), printedJson().members().get("status"));
    }

    @Test
    void aFileThatCannotBeReadIsTheUsersToMend() {
        for (String name : List.of("no-such-file.json", "src/test", "bad\u0000name")) {
            err.reset();
            assertEquals(2, run(name));
            assertEquals(1, err.toString(StandardCharsets.UTF_8).lines().count(), name);
        }
        assertEquals(2, run("no-such-file.json", "--json"));
        assertEquals(Json.number(400), printedJson().members().get("status"));
    }

    @Test
    void aTimeLimitThatIsNoTimeIsRefusedAsIsAnUnknownOption() {
        for (String limit : List.of("0", "-1", "soon", "1e99")) {
            assertEquals(2, run(GOOD, "--time-limit", limit), limit);
        }
        assertEquals(2, run(GOOD, "--colour"));
        assertEquals(2, run());
        assertFalse(err.toString(StandardCharsets.UTF_8).contains("\tat "));
    }

    @Test
    void theTimeLimitStopsTheComputation() {
        solver = (question, stop) -> {
            while (!stop.stopped()) {
                Thread.onSpinWait();
            }
            return new Costing.Planned(plan());
        };
        assertEquals(0, run(GOOD, "--time-limit", "0.05"));
    }

    @Test
    void aStreamWithoutEndIsReadNoFurtherThanARequestMayBeLong() {
        in = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }
        };
        assertEquals(2, run("-"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("2 MiB"));
    }

    private Json.Obj printedJson() {
        return JsonText.parse(out.toByteArray()).fold(json -> (Json.Obj) json, faults -> {
            throw new AssertionError(faults + out.toString(StandardCharsets.UTF_8));
        });
    }

    private static Money eur(String amount) {
        return Money.of("EUR", amount);
    }

    private static Answer plan() {
        RentalCharge charge = new RentalCharge(
                List.of(new RentalCharge.BlockUsed(FIRST, 7, eur("720.00"), false)),
                eur("720.00"),
                eur("20.00"),
                eur("0.00"),
                eur("100.00"),
                List.of(new RentalCharge.AddOnCharge("loss damage waiver", eur("100.00"))),
                eur("900.00"));
        Choice rent = new Choice.Rent("quay-pair", "Quay Hire", new DateRange(FIRST, FIRST.plusDays(7)), charge);
        Choice buy = new Choice.Buy("buy-40", "Quay Hire", FIRST, eur("9000.00"), eur("-50.00"), true);
        Answer.Row none = new Answer.Row(Optional.empty(), Optional.empty());
        Answer.Row best = new Answer.Row(Optional.of(eur("850.00")), Optional.of(eur("800.00")));
        return new Answer(
                eur("850.00"),
                eur("800.00"),
                false,
                new Answer.Comparison(
                        none,
                        new Answer.Row(Optional.of(eur("1600.00")), Optional.of(eur("1600.00"))),
                        none,
                        new Answer.Row(Optional.of(eur("900.00")), Optional.of(eur("800.00"))),
                        new Answer.Row(Optional.empty(), Optional.of(eur("700.00"))),
                        best),
                List.of(rent, buy),
                List.of(
                        new Answer.Coverage(FIRST, "40 mm", List.of("quay-pair")),
                        new Answer.Coverage(FIRST.plusDays(1), "40 mm", List.of("quay-pair"))),
                List.of(
                        new Answer.Cash(FIRST, eur("900.00"), "quay-pair"),
                        new Answer.Cash(FIRST, eur("9000.00"), "buy-40")),
                new Explanation(
                        List.of(
                                new Explanation.Reason(
                                        List.of(new Explanation.Rival("1-day blocks only", eur("1680.00"))),
                                        Optional.of(new Explanation.Without(Optional.of(eur("1000.00")), true))),
                                new Explanation.Reason(List.of(), Optional.empty())),
                        List.of(new Explanation.SlotDay(FIRST, "40 mm", eur("900.00"))),
                        eur("-50.00")));
    }
}
