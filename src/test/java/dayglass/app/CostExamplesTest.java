package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.wire.Json;
import dayglass.wire.JsonText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every good example through the command line: its total and comparison, or what it is short of. */
class CostExamplesTest {
    private static final Path EXAMPLES = Path.of("src/test/resources/dayglass/cost/examples");

    static List<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.matches("[0-9].*\\.expected\\.json"))
                    .map(name -> name.replace(".expected.json", ""))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anExampleHasItsTotalAndItsComparison(String name) {
        Json.Obj expected = parse(read(EXAMPLES.resolve(name + ".expected.json")));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int status = run(out, name, "--json");
        Json.Obj answer = parse(out.toByteArray());
        boolean impossible = expected.members().containsKey("uncovered");
        assertEquals(impossible ? CostCommand.NO_PLAN : CostCommand.PLAN, status);
        for (String member : impossible ? List.of("status", "uncovered") : List.of("total", "comparison")) {
            assertEquals(expected.members().get(member), answer.members().get(member), member);
        }
        if (!impossible) {
            assertEquals(Json.bool(true), answer.members().get("optimal"));
            assertEquals(answer.members().get("total"), answer.members().get("lowerBound"));
            assertTrue(Objects.equals(
                    ((Json.Obj) Objects.requireNonNull(answer.members().get("comparison")))
                            .members()
                            .get("best"),
                    answer.members().get("total")));
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anExampleAsATableFitsOneHundredColumns(String name) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        run(out, name);
        String table = out.toString(StandardCharsets.UTF_8);
        assertTrue(table.lines().count() > 3, table);
        assertTrue(table.lines().allMatch(line -> line.length() <= 100), table);
    }

    private static int run(ByteArrayOutputStream out, String name, String... options) {
        Terminal terminal = new Terminal(
                InputStream.nullInputStream(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                false);
        String[] arguments = Stream.concat(
                        Stream.of("cost", EXAMPLES.resolve(name + ".json").toString()), Stream.of(options))
                .toArray(String[]::new);
        return Main.run(terminal, System.nanoTime(), arguments);
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Json.Obj parse(byte[] text) {
        return JsonText.parse(text).fold(json -> (Json.Obj) json, faults -> {
            throw new AssertionError(faults.toString());
        });
    }
}
