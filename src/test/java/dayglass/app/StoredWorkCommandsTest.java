package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Served;
import dayglass.wire.JsonPrint;
import dayglass.wire.costing.CostingRequestReader;
import dayglass.wire.costing.CostingRequestWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code import}, {@code export} and {@code serve} as they are typed. */
class StoredWorkCommandsTest {
    @TempDir
    Path folder;

    private record Run(int status, String out, String err) {}

    private Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        int status = Main.run(terminal, System.nanoTime(), arguments);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private String db() {
        return folder.resolve("house.db").toString();
    }

    private String file(String example) throws Exception {
        return Files.writeString(folder.resolve(example + ".json"), Served.example(example))
                .toString();
    }

    @Test
    void whatIsImportedIsExportedAsAnEqualRequest() throws Exception {
        Run imported = run("import", file("00-sample"), "--db", db());
        assertEquals(0, imported.status(), imported.err());
        assertTrue(imported.out().startsWith("Job 1 is stored"), imported.out());
        Run exported = run("export", "1", "--db", db());
        assertEquals(0, exported.status(), exported.err());
        assertEquals(canonical(Served.example("00-sample")), exported.out());
    }

    private static String canonical(String request) {
        return CostingRequestReader.read(request.getBytes(StandardCharsets.UTF_8))
                .fold(question -> JsonPrint.pretty(CostingRequestWriter.write(question)), faults -> {
                    throw new AssertionError(faults.toString());
                });
    }

    @Test
    void aFaultyFileIsToldItsFaultsAndMakesNoDatabase() throws Exception {
        Run refused = run("import", file("bad-03-dates"), "--db", db());
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("/purchases/0/availableFrom"), refused.err());
        assertEquals("", refused.out());
        assertFalse(Files.exists(Path.of(db())));
    }

    @Test
    void aJobThatIsNotThereIsNotExported() {
        Run refused = run("export", "7", "--db", db());
        assertEquals(2, refused.status());
        assertEquals("There is no job with the id 7.", refused.err().strip());
        assertEquals(2, run("export", "seven", "--db", db()).status());
    }

    @Test
    void aFileThatIsNoDatabaseIsRefusedInWords() throws Exception {
        Path notes = Files.writeString(folder.resolve("notes.txt"), "no database".repeat(200));
        for (Run refused : new Run[] {
            run("export", "1", "--db", notes.toString()), run("serve", "--port", "0", "--db", notes.toString())
        }) {
            assertEquals(1, refused.status());
            assertTrue(refused.err().contains("notes.txt"), refused.err());
            assertFalse(refused.err().contains("\tat "), refused.err());
        }
    }

    @Test
    void aTakenPortIsSaidPlainly() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Run refused = run("serve", "--port", Integer.toString(taken.getLocalPort()), "--db", db());
            assertEquals(1, refused.status());
            assertTrue(refused.err().contains("--port") && refused.err().contains("" + taken.getLocalPort()));
            assertFalse(refused.err().contains("Exception"), refused.err());
        }
    }

    @Test
    void aPortThatIsNoneIsAFaultOfTheCommand() {
        assertEquals(2, run("serve", "--port", "70000", "--db", db()).status());
        assertEquals(2, run("serve", "--port", "http", "--db", db()).status());
    }

    @Test
    void theServerSaysWhereItIsAndStopsAtASignal() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "dayglass.app.Main",
                        "serve",
                        "--port",
                        "0",
                        "--db",
                        db())
                .redirectErrorStream(true)
                .start();
        try (InputStream output = process.getInputStream()) {
            StringBuilder said = new StringBuilder();
            for (int next = output.read(); next >= 0 && next != '\n'; next = output.read()) {
                said.append((char) next);
            }
            assertTrue(said.toString().startsWith("Dayglass is at http://127.0.0.1:"), said.toString());
            process.toHandle().destroy();
            assertTrue(process.waitFor(15, TimeUnit.SECONDS));
            assertEquals("", new String(output.readAllBytes(), StandardCharsets.UTF_8));
        } finally {
            process.destroyForcibly();
        }
        assertFalse(Files.exists(Path.of(db() + "-wal")), "the database is closed whole");
    }
}
