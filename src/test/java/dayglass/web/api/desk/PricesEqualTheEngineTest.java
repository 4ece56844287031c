package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.Question;
import dayglass.support.Reply;
import dayglass.wire.costing.CostingRequestReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What the desk asks for a package is the least total of a costing request that this test writes itself, with the free
 * units of a random shelf as its rentals. A request cannot say that a set and its members are the same units, so there
 * are two: one that lets both go at once, which no price may go below, and the least of those in which each set is
 * either kept together for the whole time or not offered, which no price may exceed. Mostly both are the same.
 */
class PricesEqualTheEngineTest {
    private static final int SHELVES = 6;
    private static final int PACKAGES = 60;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private final Map<String, Integer> counts = new TreeMap<>();

    /** Some spans of use, with days between them on which nothing is used. */
    private record Days(List<LocalDate> bounds, String use) {
        LocalDate first() {
            return bounds.get(0);
        }

        LocalDate last() {
            return bounds.get(bounds.size() - 1);
        }

        String spans(boolean withUse) {
            List<String> spans = new ArrayList<>();
            for (int at = 0; at < bounds.size(); at += 2) {
                spans.add("{\"from\": \"" + bounds.get(at) + "\", \"to\": \"" + bounds.get(at + 1) + "\""
                        + (withUse ? ", \"use\": \"" + (at == 0 ? use : "shoot") + "\"}" : "}"));
            }
            return "[" + String.join(", ", spans) + "]";
        }

        Days until(LocalDate last) {
            List<LocalDate> moved = new ArrayList<>(bounds);
            moved.set(moved.size() - 1, last);
            return new Days(moved, use);
        }
    }

    @Test
    void everyPriceIsTheLeastTotal() throws Exception {
        for (long seed = 1; seed <= SHELVES; seed++) {
            try (RandomShelf shelf = new RandomShelf(Files.createDirectory(folder.resolve("" + seed)), seed)) {
                Random random = new Random(1_000 + seed);
                for (int each = 0; each < PACKAGES; each++) {
                    look(shelf, random);
                }
            }
        }
        System.out.println("Prices beside the engine's: " + counts);
        assertTrue(count("exactly the engine's") > SHELVES * PACKAGES / 2, counts.toString());
        for (String seen : List.of("with a set", "with singles", "with several periods", "alternatives", "short")) {
            assertTrue(count(seen) > 0, "never " + seen + ": " + counts);
        }
    }

    private int count(String what) {
        return counts.getOrDefault(what, 0);
    }

    private void look(RandomShelf shelf, Random random) {
        Map<Integer, Integer> wanted = new TreeMap<>();
        String lines = lines(shelf, random, wanted);
        Days days = days(random);
        boolean insured = random.nextBoolean();
        Reply reply = price(shelf, days, lines, insured);
        Optional<BigDecimal> least = least(shelf, wanted, days, insured, shelf.sets(), Map.of());
        Optional<BigDecimal> most = subsets(shelf).stream()
                .flatMap(whole -> least(shelf, wanted, days, insured, whole, members(shelf, whole)).stream())
                .min(Comparator.naturalOrder());
        String told = lines + " " + days + " " + reply.text();
        if (most.isEmpty()) {
            assertTrue(least.isPresent() || !reply.json().get("shorts").isEmpty(), told);
            counts.merge("short", 1, Integer::sum);
            return;
        }
        assertTrue(reply.json().get("shorts").isEmpty(), told);
        BigDecimal total = new BigDecimal(reply.json().get("total").asString());
        assertTrue(total.compareTo(least.orElseThrow()) >= 0, () -> least + " is the least; " + told);
        assertTrue(total.compareTo(most.get()) <= 0, () -> most + " is possible; " + told);
        counts.merge(least.equals(most) ? "exactly the engine's" : "between two of the engine's", 1, Integer::sum);
        tally(reply.json());
        for (JsonNode alternative : reply.json().get("alternatives")) {
            LocalDate last = LocalDate.parse(alternative.get("lastDay").asString());
            Reply other = price(shelf, days.until(last), lines, insured);
            assertEquals(alternative.get("total"), other.json().get("total"), told);
            assertTrue(other.json().get("shorts").isEmpty(), told);
            counts.merge("alternatives", 1, Integer::sum);
        }
    }

    private void tally(JsonNode price) {
        boolean set = false;
        boolean single = false;
        TreeSet<String> begins = new TreeSet<>();
        for (JsonNode line : price.get("lines")) {
            boolean whole = line.get("units").size() > 1;
            set |= whole;
            single |= !whole;
            begins.add(line.get("firstDay").asString());
        }
        counts.merge("with a set", set ? 1 : 0, Integer::sum);
        counts.merge("with singles", single ? 1 : 0, Integer::sum);
        counts.merge("with several periods", begins.size() > 1 ? 1 : 0, Integer::sum);
    }

    /** Models, each once; or a set, which asks for one of each member's model, with models that it has not. */
    private static String lines(RandomShelf shelf, Random random, Map<Integer, Integer> wanted) {
        List<String> lines = new ArrayList<>();
        if (!shelf.sets().isEmpty() && random.nextInt(4) == 0) {
            lines.add("{\"set\": 1}");
            shelf.members(1).forEach(unit -> wanted.put(shelf.model(unit), 1));
        }
        for (int model = 1; model <= RandomShelf.MODELS; model++) {
            if (!wanted.containsKey(model) && (random.nextInt(3) > 0 || lines.isEmpty())) {
                int count = 1 + random.nextInt(2);
                wanted.put(model, count);
                lines.add("{\"model\": " + model + ", \"count\": " + count + "}");
            }
        }
        return "[" + String.join(", ", lines) + "]";
    }

    private static Days days(Random random) {
        LocalDate from = RandomShelf.FIRST.plusDays(random.nextInt(20));
        LocalDate to = from.plusDays(random.nextInt(9));
        String use = List.of("shoot", "shoot", "prep").get(random.nextInt(3));
        if (random.nextInt(3) > 0) {
            return new Days(List.of(from, to), use);
        }
        LocalDate again = to.plusDays(2 + random.nextInt(12));
        return new Days(List.of(from, to, again, again.plusDays(random.nextInt(4))), use);
    }

    private static Reply price(RandomShelf shelf, Days days, String lines, boolean insured) {
        Reply reply = shelf.served.post(
                "/api/packages/price",
                "{\"schedule\": " + days.spans(true) + ", \"lines\": " + lines + ", \"insured\": " + insured + "}");
        assertEquals(200, reply.status(), reply.text());
        return reply;
    }

    private static List<List<Integer>> subsets(RandomShelf shelf) {
        List<List<Integer>> subsets = new ArrayList<>(List.of(List.of()));
        for (Integer set : shelf.sets()) {
            for (List<Integer> smaller : List.copyOf(subsets)) {
                List<Integer> larger = new ArrayList<>(smaller);
                larger.add(set);
                subsets.add(larger);
            }
        }
        return subsets;
    }

    /** How many units of each model some sets keep for themselves. */
    private static Map<Integer, Long> members(RandomShelf shelf, List<Integer> sets) {
        return sets.stream()
                .flatMap(set -> shelf.members(set).stream())
                .collect(Collectors.groupingBy(shelf::model, Collectors.counting()));
    }

    /**
     * The engine's least total.
     *
     * @param sets that may go whole where they are free
     * @param kept how many units of each model may not go alone
     */
    private static Optional<BigDecimal> least(
            RandomShelf shelf,
            Map<Integer, Integer> wanted,
            Days days,
            boolean insured,
            Iterable<Integer> sets,
            Map<Integer, Long> kept) {
        List<Integer> free = shelf.free(days.first(), days.last());
        List<String> rentals = new ArrayList<>();
        for (Integer set : sets) {
            List<Integer> members = shelf.members(set);
            if (!free.containsAll(members)) {
                return kept.isEmpty()
                        ? least(shelf, wanted, days, insured, without(sets, set), kept)
                        : Optional.empty();
            }
            String covers = members.stream()
                    .map(shelf::model)
                    .filter(wanted::containsKey)
                    .map(model -> "\"m" + model + "\": 1")
                    .collect(Collectors.joining(", "));
            if (!covers.isEmpty()) {
                rentals.add(rental(shelf, "set" + set, covers, 1, insured));
            }
        }
        wanted.forEach((model, count) -> {
            long have = free.stream().filter(unit -> shelf.model(unit) == model).count() - kept.getOrDefault(model, 0L);
            if (have > 0) {
                rentals.add(rental(shelf, "model" + model, "\"m" + model + "\": 1", have, insured));
            }
        });
        String needs = wanted.entrySet().stream()
                .map(need -> "{\"slot\": \"m" + need.getKey() + "\", \"count\": " + need.getValue() + ", \"dates\": "
                        + days.spans(false) + "}")
                .collect(Collectors.joining(", "));
        String request = "{\"job\": \"package\", \"currency\": \"EUR\", \"schedule\": " + days.spans(true)
                + ", \"needs\": [" + needs + "], \"rentals\": [" + String.join(", ", rentals) + "]}";
        Question question = CostingRequestReader.read(request.getBytes(StandardCharsets.UTF_8))
                .fold(read -> read, faults -> {
                    throw new AssertionError(faults + " in " + request);
                });
        return LeastCost.best(question, () -> false).map(best -> {
            assertEquals(best.total(), best.lowerBound(), request);
            return best.total().major();
        });
    }

    private static List<Integer> without(Iterable<Integer> sets, Integer one) {
        List<Integer> others = new ArrayList<>();
        sets.forEach(others::add);
        others.remove(one);
        return others;
    }

    private static String rental(RandomShelf shelf, String code, String covers, long copies, boolean insured) {
        return "{\"id\": \"" + code + "\", \"supplier\": \"The house\", \"covers\": {" + covers + "}, \"copies\": "
                + copies + ", " + shelf.terms(code, insured) + "}";
    }
}
