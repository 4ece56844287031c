package dayglass.books.post;

import static dayglass.books.BookHouse.MONDAY;
import static dayglass.books.BookHouse.done;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.books.BookHouse;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.storage.Database;
import dayglass.storage.books.ChainCheck;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A period closes in the midst of posting: what was said to be posted is there, before the close, and nothing after. */
class ClosingWhilePostingTest {
    private static final int THREADS = 4;
    private static final int EACH = 60;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @Test
    void nothingIsLostAndNothingSlipsIn() throws Exception {
        try (BookHouse house = new BookHouse(folder)) {
            house.post(house.entry(Kind.ACTUAL, "2340", "1.00"));
            ExecutorService posting = Executors.newFixedThreadPool(THREADS);
            List<Future<List<Long>>> works = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                works.add(posting.submit(() -> post(house)));
            }
            while (house.rooms.books().entries().head().entry() < EACH) {
                Thread.onSpinWait();
            }
            long head = done(house.rooms.books().close().close(house.job, MONDAY.plusDays(6)))
                    .act()
                    .head()
                    .entry();
            List<Long> said = new ArrayList<>(List.of(1L));
            for (Future<List<Long>> work : works) {
                said.addAll(work.get());
            }
            posting.shutdown();
            List<Long> there = house
                    .rooms
                    .books()
                    .entries()
                    .list(Entries.Which.of(house.job), Optional.empty(), Integer.MAX_VALUE)
                    .stream()
                    .map(each -> each.id().number())
                    .toList();
            assertEquals(there, said.stream().sorted().toList());
            assertEquals(head, there.get(there.size() - 1));
            assertTrue(there.size() < THREADS * EACH, "the close came after everything");
            try (Database database = Database.open(house.file)) {
                assertEquals(List.of(), ChainCheck.of(database).findings());
            }
        }
    }

    private static List<Long> post(BookHouse house) {
        List<Long> posted = new ArrayList<>();
        for (int at = 0; at < EACH; at++) {
            house.rooms
                    .books()
                    .post()
                    .post(List.of(house.entry(Kind.ACTUAL, "2340", "2.00")))
                    .fold(
                            done -> posted.addAll(done.stream()
                                    .map(Posted::id)
                                    .map(id -> id.number())
                                    .toList()),
                            problem -> {
                                assertTrue(problem.detail().contains("closed"), problem.detail());
                                return false;
                            });
        }
        return posted;
    }
}
