package dayglass.inventory.condition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Stored;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A unit's condition is the worst finding that no later note resolved. */
class ConditionTest {
    /** A note as {@code 2} or {@code 0q}, with what it resolves after a {@code >}: {@code 0>1+2}. */
    private static Stored<ConditionNote.Id, ConditionNote> note(long id, String text) {
        String[] halves = text.split(">", 2);
        List<ConditionNote.Id> resolves = halves.length == 1
                ? List.of()
                : Arrays.stream(halves[1].split("\\+"))
                        .map(each -> new ConditionNote.Id(Long.parseLong(each)))
                        .toList();
        Observation seen =
                new Observation(Part.IRIS, "oil", Severity.of(halves[0].charAt(0) - '0'), halves[0].endsWith("q"), "");
        return new Stored<>(
                new ConditionNote.Id(id),
                1,
                new ConditionNote(new Unit.Id(1), Instant.EPOCH, new Person.Id(1), seen, resolves, List.of()));
    }

    private static List<Stored<ConditionNote.Id, ConditionNote>> notes(String texts) {
        List<Stored<ConditionNote.Id, ConditionNote>> notes = new ArrayList<>();
        for (String text : texts.isBlank() ? new String[0] : texts.strip().split("\\s+")) {
            notes.add(note(notes.size() + 1L, text));
        }
        return notes;
    }

    private static String ids(List<Stored<ConditionNote.Id, ConditionNote>> notes) {
        return notes.stream().map(each -> String.valueOf(each.id().number())).collect(Collectors.joining(" "));
    }

    /** Each note of a unit in order; the thresholds are the house's own: 3 or more or quarantine, 1 or 2. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''              | healthy     | ''    | false",
                "0               | healthy     | ''    | false",
                "1               | warning     | 1     | false",
                "2               | warning     | 1     | false",
                "3               | not healthy | 1     | false",
                "4               | not healthy | 1     | false",
                "0q              | not healthy | 1     | true",
                "1q              | not healthy | 1     | true",
                "1 2 1           | warning     | 2 3 1 | false",
                "2 3 1           | not healthy | 2     | false",
                "3 4 0q          | not healthy | 2 1 3 | true",
                "3 0>1           | healthy     | ''    | false",
                "3 1>1           | warning     | 2     | false",
                "3 4>1           | not healthy | 2     | false",
                "2 3 0>1+2       | healthy     | ''    | false",
                "2 3 0>2         | warning     | 1     | false",
                "0q 0>1          | healthy     | ''    | false",
                "0q 0q>1         | not healthy | 2     | true",
                "3 2>1 0>2       | healthy     | ''    | false",
                "3 0>1 3         | not healthy | 3     | false"
            })
    void whatTheNotesSayNow(String texts, String health, String because, boolean quarantined) {
        Condition now = Condition.now(notes(texts));
        assertEquals(health, now.health().word());
        assertEquals(because, ids(now.because()));
        assertEquals(quarantined, now.quarantined());
    }

    @Test
    void everySeveritySaysWhatItMeansAndThereAreFive() {
        assertEquals(5, Severity.values().length);
        for (int grade = 0; grade <= Severity.MOST; grade++) {
            assertEquals(grade, Severity.of(grade).grade());
            assertTrue(!Severity.of(grade).words().isBlank());
        }
        assertThrows(IllegalArgumentException.class, () -> Severity.of(5));
    }

    private static List<Stored<ConditionNote.Id, ConditionNote>> drawn(Random random) {
        StringBuilder texts = new StringBuilder();
        int count = random.nextInt(8);
        List<Integer> open = new ArrayList<>();
        for (int id = 1; id <= count; id++) {
            texts.append(random.nextInt(5)).append(random.nextInt(5) == 0 ? "q" : "");
            if (!open.isEmpty() && random.nextBoolean()) {
                texts.append('>').append(open.remove(random.nextInt(open.size())));
            }
            texts.append(' ');
            open.add(id);
        }
        return notes(texts.toString());
    }

    @Property(tries = 400)
    void theOrderInWhichNotesAreReadDoesNotMatter(@ForAll @LongRange(min = 0, max = 1 << 20) long seed) {
        Random random = new Random(seed);
        List<Stored<ConditionNote.Id, ConditionNote>> notes = drawn(random);
        List<Stored<ConditionNote.Id, ConditionNote>> shuffled = new ArrayList<>(notes);
        Collections.shuffle(shuffled, random);
        assertEquals(Condition.now(notes), Condition.now(shuffled));
    }

    @Property(tries = 400)
    void resolvingEverythingMakesHealthyAndAnotherFindingNeverMakesBetter(
            @ForAll @LongRange(min = 0, max = 1 << 20) long seed) {
        Random random = new Random(seed);
        List<Stored<ConditionNote.Id, ConditionNote>> notes = drawn(random);
        Health before = Condition.now(notes).health();
        List<Stored<ConditionNote.Id, ConditionNote>> more = new ArrayList<>(notes);
        more.add(note(notes.size() + 1L, String.valueOf(random.nextInt(5))));
        assertTrue(Condition.now(more).health().compareTo(before) >= 0);
        List<Stored<ConditionNote.Id, ConditionNote>> resolved = new ArrayList<>(notes);
        String standing = ids(Condition.standing(notes)).replace(' ', '+');
        resolved.add(note(notes.size() + 1L, standing.isEmpty() ? "0" : "0>" + standing));
        assertEquals(Health.HEALTHY, Condition.now(resolved).health());
    }

    @Property(tries = 400)
    void whatIsNamedAsTheReasonStandsAndSaysSo(@ForAll @LongRange(min = 0, max = 1 << 20) long seed) {
        List<Stored<ConditionNote.Id, ConditionNote>> notes = drawn(new Random(seed));
        Condition now = Condition.now(notes);
        assertEquals(now.health() == Health.HEALTHY, now.because().isEmpty());
        now.because().forEach(reason -> {
            assertTrue(notes.stream().noneMatch(note -> note.facts().resolves().contains(reason.id())));
            assertEquals(now.health(), Condition.says(reason.facts().seen()));
        });
    }
}
