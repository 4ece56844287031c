package dayglass.web.error;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Problem;
import dayglass.web.WebServer;
import dayglass.wire.costing.CostingProblems;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What every refusal of one status has in common, whoever throws it. */
class ErrorsTest {
    /** RFC 9110, section 15.6.4: the server may say how long to wait. */
    @Test
    void whoeverComesAtABadTimeIsToldWhenToAskAgain() throws Exception {
        try (WebServer server = WebServer.start(
                new WebServer.Binding(WebServer.Binding.LOOPBACK, 0),
                List.of(
                        routes -> routes.get("/late", ctx -> {
                            throw Refusal.of(CostingProblems.outOfTime());
                        }),
                        routes -> routes.get("/busy", ctx -> {
                            throw Refusal.of(new Problem(Problem.Code.BUSY, "Others come first."));
                        }),
                        routes -> routes.get("/taken", ctx -> {
                            throw new Refusal(ProblemKind.ALREADY_THERE, "Another one has it.");
                        })))) {
            for (String address : List.of("/late", "/busy")) {
                HttpResponse<String> answer = get(server, address);
                assertEquals(503, answer.statusCode());
                assertTrue(Integer.parseInt(
                                answer.headers().firstValue("Retry-After").orElseThrow())
                        > 0);
            }
            assertTrue(get(server, "/taken").headers().firstValue("Retry-After").isEmpty());
        }
    }

    private static HttpResponse<String> get(WebServer server, String address) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + address))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }
}
