package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Random walks through the life of rentals: whatever is tried, money, bookings and deposits balance. */
class RentalWalksTest {
    private static final int RENTALS = 60;
    private static final String[] DEEDS = {
        "handover",
        "handover",
        "handover",
        "return",
        "return",
        "return",
        "undo-handover",
        "swap",
        "extend",
        "charges",
        "reversals",
        "deposit",
        "settle",
        "settle",
        "cancel",
        "order",
        "order",
        "order",
        "got",
        "got",
        "undo-got",
        "undo-order",
        "commitments",
        "commitments",
        "reversal"
    };
    private static final String BOOKS = "/api/jobs/1";

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private final Random random = new Random(20270331);
    private final Map<String, Integer> transitions = new TreeMap<>();

    @Test
    void everyTransitionIsWalkedAndEverythingBalances() {
        try (DeskHouse house = new DeskHouse(folder)) {
            house.made(
                    "/api/jobs",
                    "{\"name\": \"Winter Quarry\", \"currency\": \"EUR\", \"schedule\": [{\"from\": \"2027-04-05\","
                            + " \"use\": \"shoot\"}], \"needs\": [{\"slot\": \"75 mm\", \"count\": 1}]}");
            int invoices = 0;
            for (int number = 0; number < RENTALS; number++) {
                String count = number % 2 == 0 ? "" : ", \"count\": 3";
                Reply rental = house.confirmed("3 days from tomorrow", "{\"unit\": 2}, {\"model\": 2" + count + "}");
                assertEquals(201, rental.status(), rental.text());
                rental = walk(house, rental);
                if (rental.json().at("/ending").has("invoice")) {
                    invoices++;
                    assertEquals(invoices, rental.json().at("/ending/invoice").asInt(), "invoices have no gap");
                }
                house.clock.pass(Duration.ofDays(10));
            }
            assertEquals(brought(house), shared(house));
            assertEquals(orderedInBooks(house), committed(house));
        }
        System.getLogger("walks").log(System.Logger.Level.INFO, "transitions walked: " + transitions);
        for (String needed : new String[] {
            "confirmed handover out",
            "out handover out",
            "out return out",
            "out return back",
            "out undo-handover out",
            "out undo-handover confirmed",
            "confirmed swap confirmed",
            "out swap out",
            "confirmed extend confirmed",
            "out extend out",
            "confirmed cancel cancelled",
            "back settle settled",
            "out charges out",
            "back reversals back",
            "out deposit out",
            "confirmed order confirmed",
            "out order out",
            "confirmed got confirmed",
            "out undo-got out",
            "confirmed undo-order confirmed",
            "confirmed commitments confirmed",
            "confirmed reversal confirmed",
            "out commitments out"
        }) {
            assertTrue(transitions.containsKey(needed), needed + " was never walked: " + transitions);
        }
    }

    private Reply walk(DeskHouse house, Reply start) {
        Reply rental = start;
        for (int step = 0; step < 40 && !rental.json().has("ending"); step++) {
            house.clock.pass(Duration.ofHours(random.nextInt(9)));
            String deed = DEEDS[random.nextInt(DEEDS.length)];
            Reply done = done(house, rental, deed);
            assertTrue(
                    done.status() == 200
                            || done.status() == 201
                            || done.status() == 400
                            || done.status() == 409
                            || done.status() == 422,
                    done.text());
            Reply now = house.served.get("/api/rentals/" + rental.id());
            if (done.status() < 300) {
                transitions.merge(state(rental) + " " + deed + " " + state(now), 1, Integer::sum);
                assertEquals(done.status() == 200 ? done.text() : now.text(), now.text());
            } else {
                assertEquals(rental.json(), now.json(), "a refusal changes nothing");
            }
            rental = now;
            assertBalanced(house, rental.json());
        }
        return finished(house, rental);
    }

    private Reply done(DeskHouse house, Reply rental, String deed) {
        JsonNode standing = rental.json().at("/inBooks/0");
        return switch (deed) {
            case "reversal" ->
                standing.isMissingNode()
                        ? house.served.post("/api/book-entries/1000/reversal", "{}")
                        : reversed(house, standing);
            case "commitments" ->
                house.served.post(
                        "/api/rentals/" + rental.id() + "/commitments",
                        "{\"line\": " + rentedIn(rental.json()) + ", \"jobId\": 1, \"date\": \"2027-04-01\"}");
            default -> house.rental(rental, deed, body(deed, rental.json()));
        };
    }

    private static Reply reversed(DeskHouse house, JsonNode standing) {
        return house.served.post(
                "/api/book-entries/" + standing.get("commitment").asLong() + "/reversal",
                "{\"date\": \"2027-04-01\", \"reason\": \"taken back\"}");
    }

    /** The line that is rented in; the first, which is not, where there is none. */
    private static int rentedIn(JsonNode rental) {
        JsonNode lines = rental.at("/promise/price/lines");
        for (int line = 0; line < lines.size(); line++) {
            if (lines.get(line).has("rentedIn")) {
                return line;
            }
        }
        return 0;
    }

    /** What rentals say of their orders in the books. */
    private static BigDecimal orderedInBooks(DeskHouse house) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int number = 1; number <= RENTALS; number++) {
            JsonNode rental = house.served.get("/api/rentals/" + number).json();
            for (JsonNode standing : rental.path("inBooks")) {
                sum = sum.add(amount(
                        rental, "/promise/price/lines/" + standing.get("line").asInt() + "/rentedIn/cost"));
            }
        }
        return sum;
    }

    /** What the books themselves say is committed. */
    private static BigDecimal committed(DeskHouse house) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode order : house.served.get(BOOKS + "/commitments").json().get("items")) {
            sum = sum.add(amount(order, "/openNet"));
        }
        return sum;
    }

    private Reply finished(DeskHouse house, Reply walked) {
        Reply rental = walked;
        for (JsonNode placed : walked.json().get("placed")) {
            boolean out = placed.has("out") && !placed.has("back") && !placed.has("replaced");
            if (out && !rental.json().has("ending")) {
                rental = house.rental(
                        rental, "return", DeskHouse.units(placed.get("unitId").asInt()));
            }
        }
        if (state(rental).equals("confirmed")) {
            for (JsonNode standing : rental.json().path("inBooks")) {
                assertEquals(422, house.rental(rental, "cancel", "{}").status(), "an order stands in the books");
                assertEquals(201, reversed(house, standing).status());
            }
            rental = house.rental(rental, "cancel", "{}");
        } else if (state(rental).equals("back")) {
            rental = house.rental(rental, "settle", "{\"keep\": \"0.00\"}");
        }
        assertBalanced(house, rental.json());
        assertInvoiced(house, rental.json());
        return rental;
    }

    /** The lines of an invoice come to what is owed, part by part; one is there exactly where it has a number. */
    private static void assertInvoiced(DeskHouse house, JsonNode rental) {
        Reply invoice = house.served.get("/api/rentals/" + rental.get("id").asInt() + "/invoice");
        if (!rental.at("/ending").has("invoice")) {
            assertEquals(404, invoice.status());
            return;
        }
        BigDecimal net = BigDecimal.ZERO;
        Map<String, BigDecimal> taxes = new TreeMap<>();
        for (String lines : new String[] {"hired", "charged"}) {
            for (JsonNode line : invoice.json().get(lines)) {
                BigDecimal sum = BigDecimal.ZERO;
                for (JsonNode part : line.get("parts")) {
                    sum = sum.add(amount(part, "/amount"));
                    if (part.get("kind").asString().equals("tax")) {
                        taxes.merge(part.get("name").asString(), amount(part, "/amount"), BigDecimal::add);
                    }
                }
                assertEquals(amount(line, "/total"), sum);
                net = net.add(amount(line, "/net"));
            }
        }
        Map<String, BigDecimal> said = new TreeMap<>();
        invoice.json()
                .get("taxes")
                .properties()
                .forEach(tax ->
                        said.put(tax.getKey(), new BigDecimal(tax.getValue().asString())));
        assertEquals(taxes, said);
        assertEquals(amount(invoice.json(), "/net"), net);
        BigDecimal total = taxes.values().stream().reduce(net, BigDecimal::add);
        assertEquals(amount(rental, "/owed"), total);
        assertEquals(amount(invoice.json(), "/total"), total);
        assertEquals(amount(rental, "/toPay"), amount(invoice.json(), "/toPay"));
    }

    private static String state(Reply rental) {
        return rental.json().get("state").asString();
    }

    private String body(String deed, JsonNode rental) {
        JsonNode placed = rental.get("placed");
        int unit = placed.get(random.nextInt(placed.size())).get("unitId").asInt();
        return switch (deed) {
            case "handover", "return" -> DeskHouse.units(unit);
            case "undo-handover" -> "{\"unitId\": " + unit + "}";
            case "swap" -> "{\"unitId\": " + unit + ", \"by\": " + (1 + random.nextInt(5)) + "}";
            case "extend" -> "{\"lastDay\": \"" + lastDay(rental) + "\"}";
            case "charges" -> "{\"kind\": \"cleaning\", \"words\": \"salt\", \"amount\": \"12.34\", \"taxed\": true}";
            case "reversals" -> "{\"charge\": " + random.nextInt(3) + ", \"why\": \"mistaken\"}";
            case "deposit" -> "{\"taken\": \"" + random.nextInt(500) + ".50\"}";
            case "order" -> "{\"line\": " + rentedIn(rental) + ", \"number\": \"PO-" + random.nextInt(99) + "\"}";
            case "got", "undo-got", "undo-order" -> "{\"line\": " + rentedIn(rental) + "}";
            case "settle" -> "{\"keep\": \"" + (random.nextBoolean() ? "0.00" : "25.00") + "\"}";
            default -> "{}";
        };
    }

    private String lastDay(JsonNode rental) {
        String last = rental.at("/promise/price/lines/0/lastDay").asString();
        return LocalDate.parse(last).plusDays(1 + random.nextInt(3)).toString();
    }

    private static BigDecimal amount(JsonNode node, String pointer) {
        return new BigDecimal(node.at(pointer).asString());
    }

    /**
     * What rentals brought their own glass. Each amount of the card is whole tens, so that the waiver makes exactly 1.1 of
     * an extension's hire, and the tax stands apart.
     */
    private static BigDecimal brought(DeskHouse house) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int number = 1; number <= RENTALS; number++) {
            JsonNode rental = house.served.get("/api/rentals/" + number).json();
            if (rental.at("/ending/cancelled").asBoolean(false)) {
                continue;
            }
            for (JsonNode line : rental.at("/promise/price/lines")) {
                if (line.has("rentedIn")) {
                    continue;
                }
                sum = sum.add(amount(line, "/hire")).subtract(amount(line, "/discount"));
            }
            for (JsonNode charge : rental.get("charges")) {
                String kind = charge.get("kind").asString();
                if (kind.equals("late")) {
                    sum = sum.add(amount(charge, "/net"));
                } else if (kind.equals("extension")) {
                    sum = sum.add(amount(charge, "/net").divide(new BigDecimal("1.1")));
                }
            }
        }
        return sum.setScale(2);
    }

    private static BigDecimal shared(DeskHouse house) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode unit : house.served.get("/api/my-glass").json().get("units")) {
            for (String what : new String[] {"earnedSum", "promisedSum"}) {
                for (JsonNode each : unit.get(what)) {
                    sum = sum.add(amount(each, "/amount"));
                }
            }
        }
        return sum.setScale(2);
    }

    /** By the extensions that stand: those that nothing takes back. */
    private static LocalDate lastDay(JsonNode rental, int line) {
        LocalDate promised = LocalDate.parse(
                rental.at("/promise/price/lines/" + line + "/lastDay").asString());
        LocalDate last = promised;
        JsonNode charges = rental.get("charges");
        for (int at = 0; at < charges.size(); at++) {
            JsonNode charge = charges.get(at);
            boolean stands = charge.get("kind").asString().equals("extension")
                    && charge.get("line").asInt() == line
                    && !charge.has("reverses");
            for (JsonNode other : charges) {
                stands &= other.path("reverses").asInt(-1) != at;
            }
            if (stands) {
                last = promised.plusDays(charge.get("days").asInt());
            }
        }
        return last;
    }

    private static void assertBalanced(DeskHouse house, JsonNode rental) {
        BigDecimal charges = BigDecimal.ZERO;
        for (JsonNode charge : rental.get("charges")) {
            BigDecimal taxes = BigDecimal.ZERO;
            for (JsonNode tax : charge.get("taxes")) {
                taxes = taxes.add(amount(tax, "/amount"));
            }
            assertEquals(amount(charge, "/total"), amount(charge, "/net").add(taxes));
            charges = charges.add(amount(charge, "/total"));
        }
        boolean cancelled = rental.at("/ending/cancelled").asBoolean(false);
        BigDecimal price = cancelled ? BigDecimal.ZERO : amount(rental, "/promise/price/total");
        assertEquals(0, amount(rental, "/owed").compareTo(price.add(charges)));
        assertEquals(
                0,
                amount(rental, "/toPay").compareTo(amount(rental, "/owed").subtract(amount(rental, "/deposit/kept"))));
        if (rental.has("ending")) {
            assertEquals(
                    amount(rental, "/deposit/taken"),
                    amount(rental, "/deposit/kept").add(amount(rental, "/deposit/returned")));
        }
        for (JsonNode standing : rental.path("inBooks")) {
            assertTrue(!cancelled, "nothing that was cancelled is committed");
            boolean ordered = false;
            for (JsonNode order : rental.path("orders")) {
                ordered |= order.get("line").equals(standing.get("line"));
            }
            assertTrue(ordered, "nothing is committed that is not ordered: " + rental);
        }
        for (JsonNode placed : rental.get("placed")) {
            JsonNode booking = house.served
                    .get("/api/bookings/" + placed.get("bookingId").asInt())
                    .json();
            assertEquals(
                    placed.has("out") && !placed.has("back") && !placed.has("replaced"),
                    booking.has("wentOut") && !booking.has("cameBack"));
            assertEquals(placed.get("unitId"), booking.get("unitId"));
            if (!placed.has("back") && !placed.has("replaced") && !cancelled) {
                assertEquals(
                        lastDay(rental, placed.get("line").asInt()).plusDays(1).toString(),
                        booking.get("back").asString().substring(0, 10),
                        "booked for as long as is paid for: " + rental);
            }
        }
    }
}
