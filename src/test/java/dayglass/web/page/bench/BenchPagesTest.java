package dayglass.web.page.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** The bench's pages as a browser is sent them. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class BenchPagesTest extends OneServer {
    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<String> send(String path, String form) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + path))
                .header("Accept", "text/html");
        if (!form.isEmpty()) {
            request.header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(form));
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    @Order(1)
    void anEmptyBenchTeachesWhatAPlanIs() throws Exception {
        assertTrue(send("/bench", "").body().contains("No unit has a service plan yet"));
    }

    @Test
    @Order(2)
    void aPlanIsWrittenRefusedBesideItsFieldAndShownByWhenItIsDue() throws Exception {
        long unit = served.post("/api/units", "{\"tag\": \"B-1\", \"holding\": {\"kind\": \"owned\"}}")
                .id();
        assertTrue(send("/bench/plans/new?unit=" + unit, "").body().contains("selected>B-1"));
        LocalDate lastDone = LocalDate.now(ZoneOffset.UTC).minusMonths(30);
        HttpResponse<String> refused = send("/bench/plans/new", "/unitId=" + unit + "&/lastDoneOn=" + lastDone);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("say months, days out, or both"), refused.body());
        HttpResponse<String> kept = send(
                "/bench/plans/new", "/unitId=" + unit + "&/everyMonths=24&/everyDaysOut=90&/lastDoneOn=" + lastDone);
        assertEquals(303, kept.statusCode());
        String bench = send("/bench", "").body();
        assertTrue(bench.contains("Overdue"), bench);
        assertTrue(bench.contains("24 months; 0 of 90 days out"), bench);
        assertTrue(bench.contains("every 24 months or 90 days out"), bench);
    }

    @Test
    @Order(3)
    void anOpenVisitIsShownUntilItIsFinished() throws Exception {
        LocalDate yesterday = LocalDate.now(ZoneOffset.UTC).minusDays(1);
        served.post(
                "/api/bench-visits",
                "{\"unitIds\": [1], \"out\": \"" + yesterday + "T08:00\", \"back\": \"" + yesterday
                        + "T09:00\", \"subject\": \"collimate\"}");
        String bench = send("/bench", "").body();
        assertTrue(bench.contains("its time is over: say what was done"), bench);
    }

    @Test
    @Order(4)
    void aPlanIsRemovedAfterAQuestion() throws Exception {
        assertTrue(send("/bench/plans/1/remove", "").body().contains("Remove the service plan of B-1?"));
        assertEquals(303, send("/bench/plans/1/remove", "version=1").statusCode());
        assertTrue(send("/bench", "").body().contains("No unit has a service plan yet"));
    }
}
