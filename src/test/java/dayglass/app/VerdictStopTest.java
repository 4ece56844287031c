package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command as a process of its own that is interrupted while it draws, as Ctrl-C does. */
@DisabledOnOs(OS.WINDOWS)
class VerdictStopTest {
    private static final int BY_INTERRUPT = 130;
    private static final int DRAWS = 100_000;

    /** Of processor time from the request on: far past reading it, far from all draws. */
    private static final Duration AT_WORK = Duration.ofSeconds(6);

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private record Run(int status, String out, String err) {}

    @Test
    void whatIsKnownIsPrintedAsWholeJson() throws Exception {
        Run run = interrupted("--json");
        assertEquals(BY_INTERRUPT, run.status(), run.err());
        JsonNode answer = JsonMapper.shared().readTree(run.out());
        int done = answer.at("/uncertainty/draws").asInt(0);
        assertTrue(done > 0 && done < DRAWS, "draws done: " + done);
        assertEquals("", run.err());
    }

    @Test
    void whatIsKnownIsToldInWordsWithHowFarItGot() throws Exception {
        Run run = interrupted();
        assertEquals(BY_INTERRUPT, run.status(), run.err());
        assertTrue(run.out().contains("of " + DRAWS + " draws: how sure it is rests on those."), run.out());
        assertTrue(run.out().contains("chance that owning is cheaper"), run.out());
        assertFalse(run.out().contains("Stopped after 0 "), run.out());
    }

    private Run interrupted(String... options) throws IOException, InterruptedException {
        File out = folder.resolve("out").toFile();
        File err = folder.resolve("err").toFile();
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "dayglass.app.Main",
                "verdict",
                "-"));
        command.addAll(List.of(options));
        Process process = new ProcessBuilder(command)
                .redirectOutput(out)
                .redirectError(err)
                .start();
        try {
            try (OutputStream in = process.getOutputStream()) {
                in.write(request().getBytes(StandardCharsets.UTF_8));
            }
            awaitWork(process);
            assertEquals(
                    0,
                    new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                            .start()
                            .waitFor());
            assertTrue(process.waitFor(20, TimeUnit.SECONDS), "it ends within seconds");
            return new Run(process.exitValue(), Files.readString(out.toPath()), Files.readString(err.toPath()));
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private static void awaitWork(Process process) throws InterruptedException {
        while (process.isAlive() && used(process).compareTo(AT_WORK) < 0) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
        assertTrue(process.isAlive(), "it was done before it could be interrupted");
    }

    private static Duration used(Process process) {
        return process.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** Many kinds of jobs of unsure length and long rates, so that a draw is much work. */
    private static String request() {
        String jobs = IntStream.range(0, 6)
                .mapToObj(kind -> "{\"name\": \"kind " + kind + "\", \"perYear\": \"1\", \"days\": 60,"
                        + " \"daysSpread\": {\"shape\": \"triangular\", \"low\": \"30\", \"likely\": \"60\","
                        + " \"high\": \"200\"}}")
                .collect(Collectors.joining(", "));
        return "{\"currency\": \"EUR\", \"purchase\": {\"price\": \"8000.00\", \"termMonths\": 36,"
                + " \"resale\": {\"lossPercentPerYear\": \"9\"}}, \"jobs\": [" + jobs + "],"
                + " \"rates\": [{\"blocks\": [{\"days\": 1, \"price\": \"120.00\"}, {\"days\": 7, \"price\": \"360.00\"}]}],"
                + " \"uncertainty\": {\"draws\": " + DRAWS + ", \"seed\": 7,"
                + " \"slipDays\": {\"shape\": \"triangular\", \"low\": \"0\", \"likely\": \"0\", \"high\": \"9\"}}}";
    }
}
