package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.app.Rooms;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.cost.Schedule;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.Wish;
import dayglass.desk.quote.Customer;
import dayglass.desk.quote.MakeQuote;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Desk;
import dayglass.desk.words.DateWords;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.support.Reply;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many clerks who confirm at once. */
class DeskRaceTest {
    private static final int SETS = 100;
    private static final int CALLERS_A_SET = 10;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @Test
    void aThousandConfirmationsOfAHundredSetsPromiseEachOnceAndLoseNone() throws Exception {
        try (DeskHouse house = new DeskHouse(folder)) {
            Rooms rooms = house.served.rooms();
            List<Stored<Quote.Id, Quote>> quotes = quotes(house, rooms);
            Collections.shuffle(quotes, new java.util.Random(7));
            ExecutorService clerks = Executors.newFixedThreadPool(8);
            List<Future<String>> told = new ArrayList<>();
            Desk desk = rooms.desk();
            for (Stored<Quote.Id, Quote> quote : quotes) {
                told.add(clerks.submit(() -> desk.runRental()
                        .confirm(quote)
                        .fold(done -> "booked", problem -> problem.code().name())));
            }
            clerks.shutdown();
            assertTrue(clerks.awaitTermination(5, TimeUnit.MINUTES));
            int booked = 0;
            for (Future<String> one : told) {
                booked += one.get().equals("booked") ? 1 : 0;
                assertTrue(List.of("booked", Problem.Code.TAKEN.name()).contains(one.get()), one.get());
            }
            assertEquals(SETS, booked);
            assertEveryUnitOnce(rooms);
        }
    }

    private static void assertEveryUnitOnce(Rooms rooms) {
        HashSet<Unit.Id> units = new HashSet<>();
        List<Long> numbers = new ArrayList<>();
        rooms.desk().rentals().list(Optional.empty(), Integer.MAX_VALUE).forEach(rental -> {
            numbers.add(rental.facts().number());
            assertEquals(2, rental.facts().placed().size());
            rental.facts().placed().forEach(placed -> assertTrue(units.add(placed.unit()), "promised twice"));
        });
        assertEquals(2 * SETS, units.size());
        assertEquals(SETS, numbers.get(SETS - 1), "numbers have no gap");
    }

    private static List<Stored<Quote.Id, Quote>> quotes(DeskHouse house, Rooms rooms) {
        StringBuilder rates = new StringBuilder();
        List<LensSet.Id> sets = new ArrayList<>();
        for (int number = 0; number < SETS; number++) {
            List<Unit.Id> members = new ArrayList<>();
            for (int member = 0; member < 2; member++) {
                members.add(must(rooms.shelf().units().add(Unit.serving("S" + number + "-" + member, Unit.Use.NONE)))
                        .id());
            }
            sets.add(must(rooms.shelf().sets().add(new LensSet("set " + number, true, members, Map.of())))
                    .id());
            rates.append(rates.isEmpty() ? "" : ",")
                    .append("{\"id\": \"s" + number + "\", \"lets\": {\"set\": "
                            + sets.get(number).number() + "}, \"blocks\": [{\"days\": 1, \"price\": \"10.00\"}]}");
        }
        Reply card = house.made(
                "/api/rate-cards",
                "{\"supplierId\": 1, \"name\": \"Sets\", \"currency\": \"EUR\", \"effectiveFrom\": \"2027-01-01\","
                        + " \"rates\": [" + rates + "]}");
        assertEquals(201, card.status());
        Schedule days = must(DateWords.read("mon to fri", LocalDate.parse(DeskHouse.TODAY)));
        List<Stored<Quote.Id, Quote>> quotes = new ArrayList<>();
        for (LensSet.Id set : sets) {
            PackageAsked asked = new PackageAsked(
                    List.of(new PackageAsked.Asked(new Wish.OfSet(set), 1, Percent.ZERO)),
                    days,
                    false,
                    Percent.ZERO,
                    "");
            for (int caller = 0; caller < CALLERS_A_SET; caller++) {
                quotes.add(must(rooms.desk()
                        .makeQuote()
                        .issue(new MakeQuote.Wanted(
                                new Customer("caller " + caller, "", ""), asked, Optional.empty(), Optional.empty()))));
            }
        }
        return quotes;
    }

    private static <T> T must(Outcome<T> outcome) {
        return outcome.fold(done -> done, problem -> {
            throw new AssertionError(problem.toString());
        });
    }
}
