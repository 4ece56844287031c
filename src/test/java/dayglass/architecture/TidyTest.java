package dayglass.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a compiler does not hold: sizes, loose ends, and that a migration which landed never changes. */
class TidyTest {
    private static final Path MAIN = Path.of("src/main/java");
    private static final Path TEST = Path.of("src/test/java");
    private static final Path MIGRATIONS = Path.of("migrations");
    private static final Path LANDED = Path.of("src/test/resources/dayglass/architecture/landed-migrations.txt");

    private static final int LONGEST_FILE = 400;
    private static final Pattern MIGRATION_NAME = Pattern.compile("[0-9]{4}(_[a-z0-9]+){2,}\\.sql");
    // Spelled apart, so that this file is not its own finding.
    private static final Pattern LOOSE_END = Pattern.compile("\\b(TO" + "DO|FIX" + "ME)\\b");
    private static final Pattern SEEDLESS = Pattern.compile("new Rand" + "om\\(\\s*\\)");

    @Test
    void mainFilesAreShortEnoughToRead() {
        assertEquals(List.of(), among(MAIN, ".java", file -> lines(file) > LONGEST_FILE));
    }

    @Test
    void noLooseEnds() {
        List<Path> loose = Stream.of(MAIN, TEST, MIGRATIONS)
                .flatMap(root ->
                        among(root, "", file -> LOOSE_END.matcher(text(file)).find()).stream())
                .toList();
        assertEquals(List.of(), loose);
    }

    @Test
    void testsDrawWithASeedToo() {
        // The main code is held to it by a rule of the architecture, which one class breaks on purpose.
        assertEquals(
                List.of("LeavesItToChance.java"),
                among(TEST, ".java", file -> SEEDLESS.matcher(text(file)).find()).stream()
                        .map(file -> file.getFileName().toString())
                        .toList());
    }

    @Test
    void everyPackageSaysWhatBelongsThereAndThatNullsAreMarked() {
        List<Path> unsaid = among(MAIN, ".java", file -> true).stream()
                .map(Path::getParent)
                .distinct()
                .filter(folder -> !describesItself(folder.resolve("package-info.java")))
                .toList();
        assertEquals(List.of(), unsaid);
    }

    @Test
    void migrationsAreNamedByNumberVerbAndNoun() {
        List<String> names = names(MIGRATIONS);
        assertFalse(names.isEmpty());
        assertEquals(
                List.of(),
                names.stream()
                        .filter(name -> !MIGRATION_NAME.matcher(name).matches())
                        .toList());
        List<String> numbers = names.stream().map(name -> name.substring(0, 4)).toList();
        assertEquals(numbers.stream().distinct().toList(), numbers);
    }

    /**
     * A changed migration would leave databases that have run it behind. To land a new one, add the line that the
     * failure shows; never alter a line.
     */
    @Test
    void migrationsThatLandedNeverChange() throws IOException {
        Map<String, String> landed = new TreeMap<>();
        for (String line : Files.readAllLines(LANDED)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] parts = line.split("\\s+", 2);
                landed.put(parts[1], parts[0]);
            }
        }
        Map<String, String> present =
                new TreeMap<>(names(MIGRATIONS).stream().collect(Collectors.toMap(name -> name, TidyTest::checksum)));
        assertEquals(lines(landed), lines(present));
    }

    @ParameterizedTest
    @CsvSource({
        "0001_create_suppliers.sql, true",
        "0012_add_rate_card_dates.sql, true",
        "1_create_suppliers.sql, false",
        "0001_suppliers.sql, false",
        "0001-create-suppliers.sql, false",
        "0001_Create_suppliers.sql, false",
        "0001_create_suppliers.txt, false"
    })
    void theNameOfAMigration(String name, boolean good) {
        assertEquals(good, MIGRATION_NAME.matcher(name).matches());
    }

    @Test
    void theSearchesFindWhatTheyLookFor() {
        assertTrue(LOOSE_END.matcher("// TO" + "DO later").find());
        assertFalse(LOOSE_END.matcher("TODOS").find());
        assertTrue(SEEDLESS.matcher("new Rand" + "om()").find());
        assertFalse(SEEDLESS.matcher("new Rand" + "om(7)").find());
    }

    private static boolean describesItself(Path packageInfo) {
        return Files.exists(packageInfo)
                && text(packageInfo).contains("@NullMarked")
                && text(packageInfo).startsWith("/**");
    }

    /** The files below a folder whose names end so and of which the test is true, by name. */
    private static List<Path> among(Path root, String ending, java.util.function.Predicate<Path> test) {
        try (Stream<Path> files = Files.walk(root)) {
            List<Path> found = files.filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
            assertFalse(found.isEmpty(), "nothing under " + root);
            return found.stream().filter(test).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> names(Path folder) {
        return among(folder, "", file -> true).stream()
                .map(file -> folder.relativize(file).toString())
                .toList();
    }

    private static String lines(Map<String, String> checksums) {
        return checksums.entrySet().stream()
                .map(entry -> entry.getValue() + "  " + entry.getKey())
                .collect(Collectors.joining("\n"));
    }

    private static long lines(Path file) {
        return text(file).lines().count();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String checksum(String migration) {
        try {
            byte[] bytes = Files.readAllBytes(MIGRATIONS.resolve(migration));
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
