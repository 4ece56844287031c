package dayglass.web.api.inventory.condition;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import dayglass.support.TestPictures;
import dayglass.support.UnitRows;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Notes on a unit with their pictures, over a real server and a real database. */
class NoteApiTest {
    private static final String NOTES = "/api/units/1/notes";
    private static final String HAZE = "{\"part\": \"rear glass\", \"finding\": \"haze\", \"severity\": 3}";

    @TempDir
    Path folder;

    private Served served;

    @BeforeEach
    void start() {
        served = Served.in(folder);
        UnitRows.add(folder.resolve("dayglass.db"), "unit-0001");
        UnitRows.add(folder.resolve("dayglass.db"), "unit-0002");
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private JsonNode condition() {
        return served.get(NOTES).json().get("condition");
    }

    private static String resolving(String ids) {
        return "{\"part\": \"rear glass\", \"finding\": \"haze\", \"severity\": 0, \"words\": \"cleaned\\nby hand\","
                + " \"resolves\": [" + ids + "]}";
    }

    @Test
    void aFindingStandsUntilALaterNoteResolvesIt() {
        assertEquals("healthy", condition().get("health").asString());
        Reply noted = served.post(NOTES, HAZE);
        assertEquals(201, noted.status(), noted.text());
        assertEquals(1, noted.json().get("personId").asInt());
        assertEquals("not healthy", condition().get("health").asString());
        assertEquals("[1]", condition().get("because").toString());
        assertEquals(201, served.post(NOTES, resolving("1")).status());
        assertEquals("healthy", condition().get("health").asString());
        JsonNode items = served.get(NOTES).json().get("items");
        assertEquals(2, items.size());
        assertEquals(2, items.get(0).get("resolvedBy").asInt());
        assertEquals("cleaned\nby hand", items.get(1).get("words").asString());
        assertEquals(0, served.get("/api/units/2/notes").json().get("items").size());
    }

    @Test
    void anotherPersonsNoteBearsTheirName() {
        served.post("/api/people", "{\"name\": \"Ada Quill\", \"role\": \"clerk\"}");
        assertEquals(422, served.post(NOTES, HAZE).status());
        assertEquals(
                2,
                served.post(NOTES, HAZE, "Dayglass-Person", "2")
                        .json()
                        .get("personId")
                        .asInt());
    }

    @Test
    void onlyAStandingFindingOfTheSameUnitIsResolved() {
        served.post(NOTES, HAZE);
        served.post("/api/units/2/notes", HAZE);
        served.post(NOTES, resolving("1"));
        for (String ids : List.of("1", "2", "9", "4")) {
            Reply reply = served.post(NOTES, resolving(ids));
            assertEquals(400, reply.status(), ids);
            assertEquals("/resolves/0", reply.json().at("/faults/0/pointer").asString());
        }
        assertEquals(400, served.post(NOTES, resolving("3, 3")).status());
        assertEquals(2, served.get(NOTES).json().get("items").size());
    }

    @ParameterizedTest
    @CsvSource({
        "part, '\"elbow\"'",
        "finding, '\" \"'",
        "severity, 5",
        "severity, -1",
        "severity, '\"3\"'",
        "quarantine, 1",
        "words, '\"\\u0000\"'",
        "resolves, '[0]'",
        "colour, 1"
    })
    void aNoteWithAFault(String member, String value) {
        String body = "{"
                + "\"part\": \"iris\", \"finding\": \"oil\", \"severity\": 1"
                        .replaceAll("\"" + member + "\": [^,]+(, )?", "")
                + (member.equals("severity") ? "" : ", ") + "\"" + member + "\": " + value + "}";
        Reply reply = served.post(NOTES, body);
        assertEquals(400, reply.status(), body);
        assertTrue(reply.json().at("/faults/0/pointer").asString().startsWith("/" + member), reply.text());
    }

    @Test
    void aUnitThatIsNotThereHasNoNotes() {
        assertEquals(404, served.get("/api/units/9/notes").status());
        assertEquals(404, served.post("/api/units/9/notes", HAZE).status());
        assertEquals(
                404,
                served.postParts("/api/units/9/notes", HAZE, List.of(TestPictures.png(4, 4)))
                        .status());
    }

    private HttpResponse<byte[]> bytes(String address) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + address))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void picturesAreKeptInOrderAndServedAsWhatTheyAre() throws Exception {
        List<byte[]> sent = List.of(
                TestPictures.jpegWithExif(60, 40, 6), TestPictures.png(30, 20), TestPictures.webp("quarters-lossy"));
        JsonNode pictures = served.postParts(NOTES, HAZE, sent).json().get("pictures");
        List<String> types = List.of("image/jpeg", "image/png", "image/webp");
        assertEquals(3, pictures.size());
        for (int at = 0; at < 3; at++) {
            HttpResponse<byte[]> original =
                    bytes(pictures.get(at).get("address").asString());
            assertArrayEquals(sent.get(at), original.body());
            assertEquals(
                    types.get(at), original.headers().firstValue("Content-Type").orElseThrow());
            assertEquals(
                    "nosniff",
                    original.headers().firstValue("X-Content-Type-Options").orElseThrow());
            assertTrue(
                    original.headers().firstValue("Cache-Control").orElseThrow().contains("immutable"));
            for (JsonNode preview : pictures.get(at).get("previews")) {
                assertEquals(200, served.get(preview.asString()).status());
                assertEquals(
                        "image/jpeg",
                        served.get(preview.asString()).header("Content-Type").orElseThrow());
            }
        }
        assertEquals(40, pictures.get(0).get("width").asInt());
        String first = pictures.get(0).get("address").asString();
        assertEquals(400, served.get(first + "?width=481").status());
        assertEquals(404, served.get("/api/pictures/" + "0".repeat(64)).status());
        assertEquals(404, served.get("/api/pictures/..%2F..%2Fdayglass.db").status());
    }

    @Test
    void onePictureThatIsNoneRefusesTheNote() {
        Reply reply = served.postParts(
                NOTES, HAZE, List.of(TestPictures.png(4, 4), TestPictures.pngThatClaims(50_000, 50_000)));
        assertEquals(400, reply.status());
        assertEquals("/pictures/1", reply.json().at("/faults/0/pointer").asString());
        assertEquals(0, served.get(NOTES).json().get("items").size());
        assertEquals(
                400,
                served.postParts(NOTES, HAZE, Collections.nCopies(9, TestPictures.png(4, 4)))
                        .status());
    }

    @Test
    void partsThatAreTooLargeOrBrokenAreRefused() {
        assertEquals(
                413,
                served.postParts(NOTES, HAZE, List.of(new byte[21 * 1024 * 1024]))
                        .status());
        Reply noNote = served.raw(
                "POST",
                NOTES,
                "Content-Type: multipart/form-data; boundary=part\r\nContent-Length: 10\r\n\r\n--part--\r\n");
        assertEquals(400, noNote.status());
        Reply broken = served.raw(
                "POST", NOTES, "Content-Type: multipart/form-data; boundary=part\r\nContent-Length: 8\r\n\r\nnonsense");
        assertEquals(400, broken.status());
        assertFalse(served.get(NOTES).json().has("next"));
    }

    @Test
    void notesAreCutIntoPartsAndTheConditionIsThatOfAll() {
        for (int times = 0; times < 3; times++) {
            served.post(NOTES, HAZE);
        }
        JsonNode first = served.get(NOTES + "?limit=2").json();
        assertEquals("[3,2,1]", first.at("/condition/because").toString());
        assertEquals(
                1, served.get(first.get("next").asString()).json().get("items").size());
    }
}
