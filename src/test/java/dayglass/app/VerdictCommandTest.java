package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Fault;
import dayglass.wire.JsonText;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class VerdictCommandTest {
    private static final String EXAMPLE =
            "src/test/resources/dayglass/cost/verdict/anamorphic-set-for-commercials.json";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String standardInput, String... arguments) {
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(standardInput.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        return Main.run(terminal, System.nanoTime(), arguments);
    }

    @Test
    void theTableSaysWhatToDoAndWhereItTurns() {
        assertEquals(0, run("", "verdict", EXAMPLE));
        String table = out.toString(StandardCharsets.UTF_8);
        assertTrue(table.startsWith("Buy: it costs 3770.46 EUR less than renting over 36 months"), table);
        assertTrue(table.contains("days of use a year") && table.contains("none is claimed"), table);
        assertTrue(table.contains("year 3, at present value"), table);
        assertTrue(table.lines().allMatch(line -> line.length() <= 100), table);
    }

    @Test
    void jsonIsTheAnswerAndNothingElse() {
        assertEquals(0, run("", "verdict", EXAMPLE, "--json"));
        List<Fault> faults = JsonText.parse(out.toByteArray()).fold(json -> List.of(), found -> found);
        assertEquals(List.of(), faults);
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aFaultyRequestEndsWithTwo() {
        assertEquals(2, run("{\"currency\": \"EUR\"}", "verdict", "-"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("purchase"));
    }
}
