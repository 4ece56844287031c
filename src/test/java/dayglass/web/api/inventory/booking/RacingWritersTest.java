package dayglass.web.api.inventory.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Served;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two writers go for the same 10,000 slots over HTTP, each in an order of its own. */
class RacingWritersTest {
    private static final int UNITS = 100;
    private static final int SLOTS_A_UNIT = 100;

    @TempDir
    Path folder;

    @Test
    void everySlotIsHadOnceAndNobodyIsToldThatTheDatabaseIsBusy() throws Exception {
        try (Served served = Served.in(folder)) {
            for (int unit = 1; unit <= UNITS; unit++) {
                served.post("/api/units", "{\"tag\": \"R-" + unit + "\", \"holding\": {\"kind\": \"owned\"}}");
            }
            ExecutorService writers = Executors.newFixedThreadPool(2);
            List<Future<Map<Integer, Integer>>> told = new ArrayList<>();
            for (int writer = 1; writer <= 2; writer++) {
                int seed = writer;
                told.add(writers.submit(() -> write(served.port(), seed)));
            }
            Map<Integer, Integer> statuses = new TreeMap<>();
            for (Future<Map<Integer, Integer>> each : told) {
                each.get().forEach((status, count) -> statuses.merge(status, count, Integer::sum));
            }
            writers.shutdown();
            int slots = UNITS * SLOTS_A_UNIT;
            assertEquals(Map.of(201, slots, 409, slots), statuses);
        }
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("dayglass.db"));
                Statement statement = sql.createStatement();
                ResultSet row = statement.executeQuery("SELECT (SELECT count(*) FROM occupation), (SELECT count(*) FROM"
                        + " occupation a JOIN occupation b ON a.unit_id = b.unit_id AND a.id < b.id AND a.starts_at <"
                        + " b.free_at AND b.starts_at < a.free_at)")) {
            assertTrue(row.next());
            assertEquals(UNITS * SLOTS_A_UNIT, row.getInt(1));
            assertEquals(0, row.getInt(2));
        }
    }

    private static Map<Integer, Integer> write(int port, int seed) throws Exception {
        HttpClient client = HttpClient.newHttpClient();
        List<Integer> slots = new ArrayList<>();
        for (int slot = 0; slot < UNITS * SLOTS_A_UNIT; slot++) {
            slots.add(slot);
        }
        Collections.shuffle(slots, new Random(seed));
        Map<Integer, Integer> statuses = new TreeMap<>();
        LocalDateTime begin = LocalDateTime.of(2027, 1, 4, 15, 0);
        for (int slot : slots) {
            LocalDateTime out = begin.plusDays(slot / UNITS);
            String body = "{\"unitIds\": [" + (1 + slot % UNITS) + "], \"out\": \"" + out + "\", \"back\": \""
                    + out.plusHours(23) + "\", \"subject\": \"writer " + seed + "\"}";
            HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/bookings"))
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(body))
                    .build();
            int status =
                    client.send(request, HttpResponse.BodyHandlers.discarding()).statusCode();
            statuses.merge(status, 1, Integer::sum);
        }
        return statuses;
    }
}
