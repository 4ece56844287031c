package dayglass.web.api.planning;

import dayglass.support.Served;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A sheet of 100 ways of a job of 60 days with five slots, asked for and read over HTTP: until its first row and until it
 * is done, beside the time that the costings of its rows take when the same requests are posted one by one.
 */
public final class SheetOverHttpBenchmark {
    private static final int WAYS = 100;
    private static final int ROUNDS = 4;
    private static final List<String> SLOTS = List.of("25 mm", "35 mm", "50 mm", "75 mm", "100 mm");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final HttpClient client = HttpClient.newHttpClient();
    private final String server;

    private SheetOverHttpBenchmark(int port) {
        this.server = "http://127.0.0.1:" + port;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        try (Served served = Served.in(Files.createTempDirectory("sheet-benchmark"))) {
            new SheetOverHttpBenchmark(served.port()).run();
        }
    }

    private void run() throws IOException, InterruptedException {
        long job = job();
        for (int round = 0; round < ROUNDS; round++) {
            long began = System.nanoTime();
            String address = send("POST", "/api/jobs/" + job + "/options-sheets", "{}")
                    .headers()
                    .firstValue("Location")
                    .orElseThrow();
            double first = 0;
            JsonNode sheet = read(address);
            while (!sheet.get("done").asBoolean()) {
                Thread.sleep(100);
                sheet = read(address);
                first = first == 0 && !sheet.get("rows").isEmpty() ? since(began) : first;
            }
            double all = since(began);
            List<String> requests = new ArrayList<>();
            for (JsonNode row : sheet.get("rows")) {
                requests.add(read("/api/costings/" + row.get("costingId").asLong())
                        .get("request")
                        .toString());
            }
            began = System.nanoTime();
            for (String request : requests) {
                send("POST", "/api/costings", request);
            }
            double oneByOne = since(began);
            System.out.printf(
                    "%d rows: the first by %.2f s, all by %.2f s, which is %.1f times their costings posted one by one%n",
                    requests.size(), first, all, all / oneByOne);
        }
    }

    /** A job that considers 100 sets to rent or to buy, and a way for each of them. */
    private long job() throws IOException, InterruptedException {
        JsonNode job = JSON.readTree(send("POST", "/api/jobs/import", request()).body());
        long card = job.at("/rateCards/0").asLong();
        List<Long> lenses = new ArrayList<>();
        for (String slot : SLOTS) {
            lenses.add(JSON.readTree(send("POST", "/api/lens-models", """
                    {"maker": "Vellum", "name": "%s", "kind": "anamorphic prime", "focal": "%s", "tStop": "2.8",
                     "squeeze": "2", "imageCircle": "34", "mounts": ["PL"], "look": {"flare": 3}}""".formatted(
                                            slot, slot.substring(0, slot.indexOf(' '))))
                            .body())
                    .get("id")
                    .asLong());
        }
        String glass =
                lenses.stream().map(lens -> "{\"lensModel\": " + lens + "}").collect(Collectors.joining(", "));
        long id = job.get("id").asLong();
        send("PUT", "/api/jobs/" + id + "/brief", """
                {"picture": {"camera": {"width": "24.89", "height": "18.66", "mount": "PL"}, "delivery": {"aspect": "2.39"}},
                 "squeeze": "2", "looks": {"flare": {"grade": 4}}}""");
        for (int way = 0; way < WAYS; way++) {
            send("POST", "/api/ways", """
                    {"jobId": %d, "name": "Way %d", "pieces": [
                      {"rateCard": %d, "rate": "set %d", "glass": [%s]}, {"purchaseOffer": %d, "glass": [%s]}]}""".formatted(
                    id, way, card, way, glass, job.at("/purchaseOffers/" + way).asLong(), glass));
        }
        return id;
    }

    private static String request() {
        String covers = SLOTS.stream().map(slot -> "\"" + slot + "\": 1").collect(Collectors.joining(", "));
        String needs = SLOTS.stream()
                .map(slot -> "{\"slot\": \"" + slot + "\", \"count\": 1}")
                .collect(Collectors.joining(", "));
        String rentals = IntStream.range(0, WAYS)
                .mapToObj(way -> """
                        {"id": "set %d", "supplier": "Quay Hire", "covers": {%s}, "perTrip": "50.00",
                         "dayFactors": {"prep": "0", "dark": "0.5"},
                         "addOns": [{"name": "sales tax", "percent": "8.875", "on": ["hire", "trip"]}],
                         "blocks": [{"days": 1, "price": "%d.00"}, {"days": 7, "price": "%d.00"}, {"days": 28, "price": "%d.00"}]}""".formatted(way, covers, 190 + way, 570 + 3 * way, 1700 + 9 * way))
                .collect(Collectors.joining(",\n"));
        String purchases = IntStream.range(0, WAYS)
                .mapToObj(way -> """
                        {"id": "buy %d", "supplier": "Quay Hire", "covers": {%s}, "price": "%d.00", "termMonths": 24,
                         "resale": {"lossPercentPerYear": "12"}}""".formatted(way, covers, 9_000 + 400 * way))
                .collect(Collectors.joining(",\n"));
        return """
                {"job": "Hundred ways", "currency": "EUR", "discountRatePercent": "5",
                 "schedule": [{"from": "2027-03-01", "to": "2027-03-02", "use": "prep"},
                              {"from": "2027-03-03", "to": "2027-03-26", "use": "shoot"},
                              {"from": "2027-03-27", "to": "2027-04-01", "use": "dark"},
                              {"from": "2027-04-02", "to": "2027-04-29", "use": "shoot"}],
                 "needs": [%s], "rentals": [%s], "purchases": [%s], "owned": []}""".formatted(needs, rentals, purchases);
    }

    private JsonNode read(String address) throws IOException, InterruptedException {
        return JSON.readTree(send("GET", address, "").body());
    }

    private HttpResponse<String> send(String method, String address, String body)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server + address))
                .header("Content-Type", "application/json")
                .header("If-Match", "\"0\"");
        HttpResponse<String> response = client.send(
                request.method(method, body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
        if (response.statusCode() >= 300) {
            throw new IOException(method + " " + address + ": " + response.body());
        }
        return response;
    }

    private static double since(long began) {
        return (System.nanoTime() - began) / 1e9;
    }
}
