package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The program as it is really started, in a process of its own. */
class CostStartTest {
    private static final List<String> NOT_FOR_COST = List.of(
            "io.javalin",
            "org.eclipse.jetty",
            "org.jooq",
            "org.sqlite",
            "org.flywaydb",
            "com.zaxxer",
            "gg.jte",
            "dayglass.web",
            "dayglass.storage",
            "tools.jackson.databind");

    @Test
    void costLoadsNeitherWebNorDatabaseClasses() throws Exception {
        List<String> loaded =
                lines("-Xlog:class+load", "dayglass.app.Main", "cost", example("00-sample"), "--json").stream()
                        .filter(line -> line.contains("[class,load]"))
                        .toList();
        assertTrue(
                loaded.stream().anyMatch(line -> line.contains("dayglass.wire.costing.CostingRequestReader")),
                "the log of loaded classes is there");
        assertEquals(
                List.of(),
                loaded.stream()
                        .filter(line -> NOT_FOR_COST.stream().anyMatch(name -> line.contains(" " + name + ".")))
                        .toList());
    }

    @Test
    void aFaultyRequestEndsTheProcessWithTwo() throws Exception {
        Process process = start("dayglass.app.Main", "cost", example("bad-06-not-json"));
        process.getInputStream().readAllBytes();
        assertEquals(2, process.waitFor());
    }

    @Test
    void helpTeachesWithExamplesAndTheVersionIsTold() throws Exception {
        String help = String.join("\n", lines("dayglass.app.Main", "cost", "--help"));
        assertTrue(help.contains("Exit status"), help);
        assertTrue(help.contains("\"schedule\""), help);
        assertTrue(help.contains("--time-limit=SECONDS"), help);
        assertTrue(help.lines().allMatch(line -> line.length() <= 100), help);
        assertTrue(String.join("\n", lines("dayglass.app.Main", "--help")).contains("Examples"));
        assertTrue(lines("dayglass.app.Main", "--version").get(0).startsWith("dayglass "));
    }

    private static String example(String name) {
        return Path.of("src/test/resources/dayglass/cost/examples", name + ".json")
                .toString();
    }

    private static List<String> lines(String... arguments) throws IOException, InterruptedException {
        Process process = start(arguments);
        List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        process.waitFor();
        return lines;
    }

    private static Process start(String... arguments) throws IOException {
        List<String> command = new java.util.ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }
}
