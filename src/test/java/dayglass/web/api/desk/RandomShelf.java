package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Served;
import dayglass.support.TestClock;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** An invented house by a seed: models, units, sets, bookings and a card with terms of all kinds, known to the test. */
final class RandomShelf implements AutoCloseable {
    static final int MODELS = 4;
    static final LocalDate FIRST = LocalDate.parse("2027-04-05");

    private static final String WAIVER = "{\"name\": \"waiver\", \"percent\": \"8.5\", \"on\": [\"hire\"]}";
    private static final String HANDLING = "{\"name\": \"handling\", \"percent\": \"3\", \"on\": [\"trip\"]}";
    private static final String TAX = "{\"name\": \"tax\", \"percent\": \"7.75\", \"on\": [\"hire\", \"trip\"";

    final Served served;
    private final List<Integer> models = new ArrayList<>();
    private final List<List<Integer>> sets = new ArrayList<>();

    private final Map<Integer, List<LocalDate>> booked = new HashMap<>();
    private final Map<String, Terms> terms = new HashMap<>();
    private final Random random;

    /** A rate without its name: as the card has it, and as one pays it who is insured. */
    private record Terms(String plain, boolean handling) {
        String of(boolean insured) {
            String addOns = (insured ? "" : WAIVER + ", ") + (handling ? HANDLING + ", " : "") + TAX
                    + (insured ? "" : ", \"waiver\"") + (handling ? ", \"handling\"" : "") + "]}";
            return plain + ", \"addOns\": [" + addOns + "]";
        }

        String marks() {
            return "\"marks\": {\"waiver\": \"waiver\", \"tax\": \"tax\"}";
        }
    }

    RandomShelf(Path folder, long seed) {
        random = new Random(seed);
        served = Served.in(folder, new TestClock("2027-03-31T09:00:00Z"));
        for (int model = 1; model <= MODELS; model++) {
            made(
                    "/api/lens-models",
                    "{\"maker\": \"Marrow\", \"name\": \"M" + model + "\", \"kind\": \"spherical prime\", \"focal\": \""
                            + (20 + model) + "\"}");
        }
        int units = 0;
        for (int model = 1; model <= MODELS; model++) {
            for (int copy = 2 + random.nextInt(3); copy > 0; copy--) {
                models.add(model);
                units++;
                made("/api/units", "{\"tag\": \"U" + units + "\", \"modelId\": " + model + "}");
            }
        }
        makeSets();
        bookings(units);
        card();
    }

    private void makeSets() {
        List<Integer> loose = new ArrayList<>(free(FIRST, FIRST));
        for (int set = 1; set <= 2; set++) {
            List<Integer> members = new ArrayList<>();
            for (int model = 1; model <= MODELS; model++) {
                int wanted = model;
                if (random.nextInt(4) > 0) {
                    loose.stream()
                            .filter(unit -> model(unit) == wanted)
                            .findFirst()
                            .ifPresent(members::add);
                }
            }
            if (members.size() >= 2) {
                loose.removeAll(members);
                sets.add(members);
                made("/api/lens-sets", "{\"name\": \"set " + set + "\", \"members\": " + members + "}");
            }
        }
    }

    private void bookings(int units) {
        for (int unit = 1; unit <= units; unit++) {
            if (random.nextInt(4) == 0) {
                LocalDate out = FIRST.plusDays(random.nextInt(30));
                LocalDate back = out.plusDays(1 + random.nextInt(4));
                booked.put(unit, List.of(out, back));
                made(
                        "/api/bookings",
                        "{\"unitIds\": [" + unit + "], \"subject\": \"elsewhere\", \"out\": \"" + out
                                + "T12:00\", \"back\": \"" + back + "T12:00\"}");
            }
        }
    }

    private void card() {
        made("/api/suppliers", "{\"name\": \"The house\", \"house\": true}");
        List<String> rates = new ArrayList<>();
        for (int model = 1; model <= MODELS; model++) {
            rates.add(rate("model", model, 5_000 + random.nextInt(5_000)));
        }
        for (int set : sets()) {
            int each = 3_500 + random.nextInt(3_500);
            rates.add(rate("set", set, each * members(set).size()));
        }
        made(
                "/api/rate-cards",
                "{\"supplierId\": 1, \"name\": \"Ours\", \"currency\": \"EUR\", \"effectiveFrom\": \"2027-01-01\","
                        + " \"rates\": [" + String.join(", ", rates) + "]}");
    }

    private String rate(String kind, int number, int day) {
        Terms made = new Terms(plain(day), random.nextBoolean());
        terms.put(kind + number, made);
        return "{\"id\": \"" + kind + number + "\", \"lets\": {\"" + kind + "\": " + number + "}, " + made.of(false)
                + ", " + made.marks() + "}";
    }

    private String plain(int day) {
        List<String> blocks = new ArrayList<>();
        blocks.add("{\"days\": 1, \"price\": \"" + amount(day) + "\"}");
        if (random.nextInt(4) > 0) {
            blocks.add("{\"days\": 7, \"price\": \"" + amount(day * (5 + random.nextInt(5)) / 2) + "\"}");
        }
        if (random.nextBoolean()) {
            blocks.add("{\"days\": 3, \"price\": \"" + amount(day * 3 / 2) + "\", \"startsOn\": \"FRIDAY\"}");
        }
        StringBuilder text = new StringBuilder("\"blocks\": [" + String.join(", ", blocks) + "]");
        if (random.nextBoolean()) {
            text.append(", \"extraDay\": {\"afterDays\": 7, \"price\": \"" + amount(day / 3) + "\"}");
        }
        if (random.nextBoolean()) {
            text.append(", \"dayFactors\": {\"prep\": \"0.5\", \"dark\": \"0.25\"}");
        }
        if (random.nextBoolean()) {
            text.append(
                    ", \"longHire\": [{\"fromDays\": 5, \"percent\": \"5\"}, {\"fromDays\": 9, \"percent\": \"12.5\"}]");
        }
        if (random.nextBoolean()) {
            text.append(", \"minimumCharge\": \"" + amount(day * 2) + "\"");
        }
        if (random.nextBoolean()) {
            text.append(", \"perTrip\": \"" + amount(500 + random.nextInt(4_000)) + "\"");
        }
        return text.toString();
    }

    /** The model of a unit, both counted from 1. */
    int model(int unit) {
        return models.get(unit - 1);
    }

    /** The numbers of all sets, from 1. */
    List<Integer> sets() {
        return IntStream.rangeClosed(1, sets.size()).boxed().toList();
    }

    /** The units of a set. */
    List<Integer> members(int set) {
        return sets.get(set - 1);
    }

    /** The members of a costing's rental that are the terms of a rate. */
    String terms(String code, boolean insured) {
        return Objects.requireNonNull(terms.get(code)).of(insured);
    }

    /** A unit leaves at 15:00 on the day before the first day of use and is back at 10:00 on the day after the last. */
    boolean free(int unit, LocalDate first, LocalDate last) {
        List<LocalDate> other = booked.get(unit);
        // Noon of a day lies before 15:00 and after 10:00 of it.
        return other == null
                || !other.get(1).isAfter(first.minusDays(1))
                || !other.get(0).isBefore(last.plusDays(1));
    }

    List<Integer> free(LocalDate first, LocalDate last) {
        return IntStream.rangeClosed(1, models.size())
                .filter(unit -> free(unit, first, last))
                .boxed()
                .collect(Collectors.toList());
    }

    private void made(String address, String body) {
        var reply = served.post(address, body);
        assertTrue(reply.status() == 201, reply.text());
    }

    private static String amount(int cents) {
        return java.math.BigDecimal.valueOf(cents, 2).toPlainString();
    }

    @Override
    public void close() {
        served.close();
    }
}
