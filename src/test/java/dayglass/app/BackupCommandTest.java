package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Served;
import dayglass.support.TestPictures;
import dayglass.support.UnitRows;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A backup made while the house is served opens elsewhere with everything in it. */
class BackupCommandTest {
    private static final String NOTES = "/api/units/1/notes";
    private static final String NOTE = "{\"part\": \"iris\", \"finding\": \"oil\", \"severity\": 2}";

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int backup(Path database, Path to) {
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        return Main.run(terminal, System.nanoTime(), "backup", "--db", database.toString(), "--to", to.toString());
    }

    private static Path makeFolder(Path folder) throws Exception {
        return Files.createDirectories(folder);
    }

    @Test
    void aBackupMadeWhileWritingOpensElsewhereWithEveryPicture() throws Exception {
        Path home = makeFolder(folder.resolve("home"));
        List<Path> backups = new ArrayList<>();
        AtomicBoolean done = new AtomicBoolean();
        AtomicInteger noted = new AtomicInteger();
        try (Served served = Served.in(home)) {
            UnitRows.add(home.resolve("dayglass.db"), "unit-0001");
            Thread writer = new Thread(() -> {
                while (!done.get() && noted.get() < 200) {
                    int width = 20 + 2 * noted.incrementAndGet();
                    served.postParts(NOTES, NOTE, List.of(TestPictures.png(width, 20)));
                }
            });
            writer.start();
            for (int round = 0; round < 3; round++) {
                Path to = folder.resolve("backup-" + round);
                assertEquals(0, backup(home.resolve("dayglass.db"), to), err.toString(StandardCharsets.UTF_8));
                backups.add(to);
            }
            done.set(true);
            writer.join();
            served.postParts(NOTES, NOTE, List.of(TestPictures.webp("quarters-lossy")));
            Path last = folder.resolve("backup-last");
            assertEquals(0, backup(home.resolve("dayglass.db"), last));
            backups.add(last);
        }
        for (Path each : backups) {
            Path elsewhere = folder.resolve("restored").resolve(each.getFileName());
            copy(each, elsewhere);
            int notes = opens(elsewhere);
            assertTrue(!each.endsWith("backup-last") || notes == noted.get() + 1, notes + " of " + noted.get());
        }
    }

    /** How many notes there are, each with its picture and both previews. */
    private static int opens(Path home) {
        try (Served served = Served.in(home)) {
            int notes = 0;
            String next = NOTES + "?limit=200";
            while (next != null) {
                JsonNode part = served.get(next).json();
                for (JsonNode note : part.get("items")) {
                    JsonNode picture = note.at("/pictures/0");
                    assertEquals(
                            200, served.get(picture.get("address").asString()).status());
                    picture.get("previews")
                            .forEach(preview -> assertEquals(
                                    200, served.get(preview.asString()).status()));
                    notes++;
                }
                next = part.has("next") ? part.get("next").asString() : null;
            }
            return notes;
        }
    }

    private static void copy(Path from, Path to) throws Exception {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    makeFolder(target);
                } else {
                    makeFolder(Objects.requireNonNull(target.getParent()));
                    Files.copy(file, target);
                }
            }
        }
    }

    @Test
    void aPictureThatIsGoneIsToldAndTheRestIsCopied() throws Exception {
        Path home = makeFolder(folder.resolve("home"));
        try (Served served = Served.in(home)) {
            UnitRows.add(home.resolve("dayglass.db"), "unit-0001");
            served.postParts(NOTES, NOTE, List.of(TestPictures.png(20, 20), TestPictures.png(22, 20)));
            try (Stream<Path> files = Files.walk(home.resolve("dayglass.db.pictures"))) {
                Path one = files.filter(each -> each.toString().endsWith(".png"))
                        .sorted()
                        .findFirst()
                        .orElseThrow();
                Files.writeString(one, "damaged");
            }
            assertEquals(1, backup(home.resolve("dayglass.db"), folder.resolve("copy")));
        }
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("gone or damaged"));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("1 picture."));
    }

    @Test
    void nothingIsWrittenOverAndNoDatabaseIsMade() throws Exception {
        assertEquals(1, backup(folder.resolve("none.db"), folder.resolve("copy")));
        assertTrue(!Files.exists(folder.resolve("none.db")));
        Served.in(makeFolder(folder.resolve("home"))).close();
        Path full = makeFolder(folder.resolve("full"));
        Files.writeString(full.resolve("older"), "kept");
        assertEquals(1, backup(folder.resolve("home/dayglass.db"), full));
        assertEquals("kept", Files.readString(full.resolve("older")));
    }
}
