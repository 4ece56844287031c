package dayglass.web.page.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Served;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The house's pages: what is sent, what is shown again, and who one is. */
class HousePagesTest {
    private final HttpClient client = HttpClient.newHttpClient();

    @TempDir
    Path folder;

    private Served served;

    @BeforeEach
    void start() {
        served = Served.in(folder);
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private HttpResponse<String> get(String path, String cookie) throws Exception {
        return client.send(to(path, cookie).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest.Builder to(String path, String cookie) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + path))
                .header("Accept", "text/html")
                .header("Cookie", cookie);
    }

    private HttpResponse<String> send(String path, Map<String, String> form, String cookie) throws Exception {
        String body = form.entrySet().stream()
                .map(field -> URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return client.send(
                to(path, cookie)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private void addAda() throws Exception {
        assertEquals(
                303,
                send("/house/people", Map.of("/name", "Ada Quill", "/role", "clerk"), "")
                        .statusCode());
    }

    @Test
    void whoOneIsIsAskedOnceSeveralAreThereAndRememberedByTheBrowser() throws Exception {
        assertTrue(get("/", "").body().contains("You are Owner"));
        addAda();
        assertEquals(422, send("/desk/suppliers", Map.of("name", "Quay"), "").statusCode());
        HttpResponse<String> chosen = send("/house/you", Map.of("person", "2", "back", "/desk"), "");
        assertEquals(303, chosen.statusCode());
        assertEquals("/desk", chosen.headers().firstValue("Location").orElseThrow());
        String cookie = chosen.headers().firstValue("Set-Cookie").orElseThrow();
        assertTrue(cookie.contains("SameSite=Strict") && cookie.contains("HttpOnly"), cookie);
        assertEquals(
                303, send("/desk/suppliers", Map.of("name", "Quay"), "person=2").statusCode());
        assertTrue(get("/house/changes?noun=supplier", "person=2").body().contains("<strong>Ada Quill</strong> added"));
    }

    @Test
    void aChoiceLeadsBackToThisServerOnly() throws Exception {
        for (String back : List.of("//evil.test/", "/\\evil.test", "https://evil.test", "")) {
            assertEquals(
                    "/",
                    send("/house/you", Map.of("person", "1", "back", back), "")
                            .headers()
                            .firstValue("Location")
                            .orElseThrow(),
                    back);
        }
        assertEquals(404, send("/house/you", Map.of("person", "7"), "").statusCode());
    }

    @Test
    void settingsAndPeopleThatAreRefusedAreShownAgainWithWhatWasTyped() throws Exception {
        HttpResponse<String> zone = send(
                "/house",
                Map.of(
                        "version",
                        "1",
                        "/name",
                        "Long Pier",
                        "/timeZone",
                        "Europe/Atlantis",
                        "/currency",
                        "EUR",
                        "/outTime",
                        "15:00",
                        "/backTime",
                        "10:00",
                        "/turnaroundMinutes",
                        "soon"),
                "");
        assertEquals(422, zone.statusCode());
        assertTrue(
                zone.body().contains("id=\"f--timeZone-fault\"") && zone.body().contains("value=\"Long Pier\""));
        assertTrue(zone.body().contains("id=\"f--turnaroundMinutes-fault\""));
        HttpResponse<String> last =
                send("/house/people/1", Map.of("version", "1", "/name", "Owner", "/role", "owner", "/gone", "yes"), "");
        assertEquals(422, last.statusCode());
        assertTrue(last.body().contains("last person who is there"));
        assertEquals(
                303,
                send(
                                "/house",
                                Map.of(
                                        "version",
                                        "1",
                                        "/name",
                                        "Long Pier",
                                        "/timeZone",
                                        "Europe/Paris",
                                        "/currency",
                                        "EUR",
                                        "/outTime",
                                        "15:00",
                                        "/backTime",
                                        "10:00",
                                        "/turnaroundMinutes",
                                        "90"),
                                "")
                        .statusCode());
        String changes = get("/house/changes", "").body();
        assertTrue(changes.contains("time zone: UTC → Europe/Paris"), changes);
    }
}
