package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A lens is judged over HTTP; every answer is held to the contract. */
class FitApiTest extends OneServer {
    private static final Path EXAMPLE =
            Path.of("src/test/resources/dayglass/optics/examples/attachment-in-low-light.json");

    @Test
    void aLensIsJudged() throws IOException {
        Reply reply = served.post("/api/fits", Files.readString(EXAMPLE));
        assertEquals(200, reply.status(), reply.text());
        assertEquals("does not fit", reply.json().get("overall").asString());
        assertEquals("551.4", reply.json().get("luxNeeded").asString());
    }

    @Test
    void aZoomHasTwoViews() throws IOException {
        String zoom = Files.readString(EXAMPLE)
                .replace("\"focal\": \"75\"", "\"minFocal\": \"50\", \"maxFocal\": \"85\"")
                .replace("\"lux\"", "\"filterStops\": \"0.3\", \"lux\"")
                .replace(", \"filterStops\": \"0\"", "");
        Reply reply = served.post("/api/fits", zoom);
        assertEquals(200, reply.status(), reply.text());
        assertEquals(2, reply.json().get("view").size());
    }

    @Test
    void aFaultyRequestIsToldItsFaults() {
        Reply reply = served.post("/api/fits", "{\"camera\": {\"mount\": \"none\"}}");
        assertEquals(400, reply.status());
        assertTrue(reply.text().contains("/camera/mount"), reply.text());
        assertEquals(
                415, served.post("/api/fits", "x", "Content-Type", "text/plain").status());
        assertEquals(405, served.get("/api/fits").status());
    }
}
