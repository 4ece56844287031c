package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Stored;
import dayglass.catalogue.Supplier;
import dayglass.catalogue.Suppliers;
import dayglass.storage.Database;
import dayglass.storage.catalogue.JooqSuppliers;
import dayglass.storage.house.JooqKeyedAnswers;
import dayglass.web.WebServer;
import dayglass.web.api.catalogue.SupplierApi;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A request with a key has one effect and one answer, on a real route that adds a supplier. */
class KeyedTest {
    private static final Instant START = Instant.parse("2027-01-01T00:00:00Z");

    private final HttpClient client = HttpClient.newHttpClient();
    private final AtomicReference<Instant> now = new AtomicReference<>(START);
    private final AtomicInteger failures = new AtomicInteger();

    @TempDir
    Path folder;

    private Database database;
    private Suppliers suppliers;
    private WebServer server;

    /** Stands where the test puts it. */
    private final class SetClock extends Clock {
        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return java.util.Objects.requireNonNull(now.get());
        }
    }

    @BeforeEach
    void start() {
        database = Database.open(folder.resolve("house.db"));
        suppliers = new JooqSuppliers(database);
        Keyed keyed = new Keyed(new JooqKeyedAnswers(database, new SetClock()));
        Resource<Supplier.Id, Supplier> resource = SupplierApi.of(suppliers);
        server = WebServer.start(new WebServer.Binding(WebServer.Binding.LOOPBACK, 0), List.of(routes -> {
            routes.post("/things", keyed.once(ctx -> {
                Stored<Supplier.Id, Supplier> added = suppliers
                        .add(new Supplier("supplier "
                                + suppliers.list(Optional.empty(), 200).size()))
                        .fold(done -> done, problem -> {
                            throw dayglass.web.error.Refusal.of(problem);
                        });
                if (failures.getAndDecrement() > 0) {
                    throw new IllegalStateException("after the work was done, on purpose");
                }
                resource.created(
                        ctx,
                        suppliers.change(new Stored<>(
                                added.id(),
                                added.version(),
                                new Supplier(Requests.body(ctx, dayglass.wire.Readers.name())))));
            }));
            routes.post("/others", keyed.once(ctx -> ctx.status(204)));
        }));
    }

    @AfterEach
    void stop() {
        server.close();
        database.close();
    }

    private HttpResponse<String> post(String path, String body, String... headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private int count() {
        return suppliers.list(Optional.empty(), 200).size();
    }

    @Test
    void sentTwiceItIsDoneOnceAndAnsweredAlikeByteForByte() throws Exception {
        HttpResponse<String> first = post("/things", "\"Quay é\"", Keyed.HEADER, "a-1");
        HttpResponse<String> second = post("/things", "\"Quay é\"", Keyed.HEADER, "a-1");
        assertEquals(201, first.statusCode(), first.body());
        assertEquals(201, second.statusCode());
        assertEquals(first.body(), second.body());
        for (String header : List.of("Content-Type", "ETag", "Location")) {
            assertTrue(first.headers().firstValue(header).isPresent(), header);
            assertEquals(first.headers().allValues(header), second.headers().allValues(header), header);
        }
        assertEquals(1, count());
    }

    @Test
    void ofManySentAtOnceOneIsDoneAndAllAreAnsweredAlike() throws Exception {
        int callers = 12;
        ExecutorService pool = Executors.newFixedThreadPool(callers);
        try {
            List<Callable<String>> calls = new ArrayList<>();
            for (int caller = 0; caller < callers; caller++) {
                calls.add(() -> {
                    HttpResponse<String> answer = post("/things", "\"Quay\"", Keyed.HEADER, "at-once");
                    return answer.statusCode() + answer.body();
                });
            }
            List<String> answers = new ArrayList<>();
            for (Future<String> answer : pool.invokeAll(calls)) {
                answers.add(answer.get());
            }
            assertEquals(1, answers.stream().distinct().count(), answers.toString());
            assertTrue(answers.get(0).startsWith("201"), answers.get(0));
        } finally {
            pool.shutdownNow();
        }
        assertEquals(1, count());
    }

    @Test
    void withoutAKeyEachIsDone() throws Exception {
        post("/things", "\"Quay\"");
        post("/things", "\"Pier\"");
        assertEquals(2, count());
    }

    @Test
    void aKeyStandsForOneRequestOnly() throws Exception {
        post("/things", "\"Quay\"", Keyed.HEADER, "a-1");
        for (HttpResponse<String> other : List.of(
                post("/things", "\"Pier\"", Keyed.HEADER, "a-1"),
                post("/things?x=1", "\"Quay\"", Keyed.HEADER, "a-1"),
                post("/others", "\"Quay\"", Keyed.HEADER, "a-1"))) {
            assertEquals(422, other.statusCode());
            assertTrue(other.body().contains("a-1"), other.body());
        }
        assertEquals(1, count());
    }

    @Test
    void aRefusalChangesNothingAndKeepsNoKey() throws Exception {
        post("/things", "\"Quay\"");
        assertEquals(400, post("/things", "\" \"", Keyed.HEADER, "a-1").statusCode());
        assertEquals(409, post("/things", "\"Quay\"", Keyed.HEADER, "a-1").statusCode());
        assertEquals(1, count());
        assertEquals(201, post("/things", "\"Pier\"", Keyed.HEADER, "a-1").statusCode());
    }

    @Test
    void aFailureTakesTheWorkBackAndKeepsNoKey() throws Exception {
        failures.set(1);
        assertEquals(500, post("/things", "\"Quay\"", Keyed.HEADER, "a-1").statusCode());
        assertEquals(0, count());
        assertEquals(201, post("/things", "\"Quay\"", Keyed.HEADER, "a-1").statusCode());
        assertEquals(1, count());
    }

    @Test
    void anAnswerIsKeptForThirtyDays() throws Exception {
        String first = post("/things", "\"Quay\"", Keyed.HEADER, "a-1").body();
        now.set(START.plus(Duration.ofDays(30)));
        assertEquals(first, post("/things", "\"Quay\"", Keyed.HEADER, "a-1").body());
        now.set(START.plus(Duration.ofDays(30)).plusSeconds(1));
        assertEquals(409, post("/things", "\"Quay\"", Keyed.HEADER, "a-1").statusCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "two words"})
    void whatIsNoKey(String key) throws Exception {
        assertEquals(400, post("/things", "\"Quay\"", Keyed.HEADER, key).statusCode());
        assertEquals(0, count());
    }

    @Test
    void aKeyOfTwoHundredCharactersIsTheLongest() throws Exception {
        assertEquals(
                201, post("/things", "\"a\"", Keyed.HEADER, "k".repeat(200)).statusCode());
        assertEquals(
                400, post("/things", "\"b\"", Keyed.HEADER, "k".repeat(201)).statusCode());
    }
}
