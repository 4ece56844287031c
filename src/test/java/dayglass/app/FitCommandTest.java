package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.wire.Json;
import dayglass.wire.JsonText;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class FitCommandTest {
    private static final Path EXAMPLES = Path.of("src/test/resources/dayglass/optics/examples");
    private static final Path REQUEST = EXAMPLES.resolve("attachment-in-low-light.json");

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

    /** The sentences of the checks are this program's own and are not compared. */
    @Test
    void theContractsExampleHasItsAnswer() throws IOException {
        assertEquals(0, run("", "fit", REQUEST.toString(), "--json"));
        Json.Obj answer = parse(out.toByteArray());
        Json.Obj expected = parse(Files.readAllBytes(EXAMPLES.resolve("attachment-in-low-light.expected.json")));
        for (Map.Entry<String, Json> member : expected.members().entrySet()) {
            Json found = Objects.requireNonNull(answer.members().get(member.getKey()), member.getKey());
            assertEquals(member.getValue(), withoutSentences(found), member.getKey());
        }
    }

    private static Json withoutSentences(Json json) {
        if (!(json instanceof Json.Arr list)) {
            return json;
        }
        List<Json> entries = new ArrayList<>();
        for (Json entry : list.entries()) {
            if (entry instanceof Json.Obj object) {
                Json.Members members = Json.object();
                object.members().forEach((name, value) -> {
                    if (!name.equals("why")) {
                        members.put(name, value);
                    }
                });
                entries.add(members.build());
            } else {
                entries.add(entry);
            }
        }
        return Json.list(entries);
    }

    private static Json.Obj parse(byte[] text) {
        return (Json.Obj) JsonText.parse(text).fold(json -> json, faults -> {
            throw new AssertionError(faults);
        });
    }

    @Test
    void theTableFitsAHundredColumnsAndEndsWithTheCautions() {
        assertEquals(0, run("", "fit", REQUEST.toString()));
        String table = out.toString(StandardCharsets.UTF_8);
        assertTrue(table.lines().allMatch(line -> line.length() <= 100), table);
        assertTrue(table.contains("does not fit"), table);
        assertTrue(table.contains("Never point a lens at the sun"), table);
    }

    @Test
    void aFaultyRequestIsToldWithItsPointersAndEndsWithTwo() {
        assertEquals(2, run("{\"camera\": {}}", "fit", "-", "--json"));
        String problem = out.toString(StandardCharsets.UTF_8);
        assertTrue(problem.contains("/camera/width") && problem.contains("/lens"), problem);
        assertEquals(2, run("{\"camera\": {}}", "fit", "-"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("/delivery"));
        assertFalse(err.toString(StandardCharsets.UTF_8).contains("Exception"));
        assertEquals(2, run("", "fit", "no-such-file.json"));
    }
}
