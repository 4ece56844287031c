package dayglass.web.api.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cameras, mounts and formats over HTTP. */
class GearApiTest extends OneServer {
    private static String camera(String mode, String rest) {
        return "{\"name\": \"House camera\", \"mode\": \"" + mode + "\", \"width\": \"21.45\", \"height\": \"17.90\", "
                + rest + "}";
    }

    @Test
    void aCameraIsKeptByNameAndModeAndItsMountMustBeKnown() {
        Reply first = served.post("/api/cameras", camera("6:5", "\"mount\": \"PL\""));
        assertEquals(201, first.status(), first.text());
        assertEquals(
                409,
                served.post("/api/cameras", camera("6:5", "\"mount\": \"EF\"")).status());
        assertEquals(
                201,
                served.post("/api/cameras", camera("4:3", "\"mount\": \"PL\"")).status());
        String own = camera("own", "\"mount\": \"Bayonet 9\"");
        assertEquals(
                "/mount",
                served.post("/api/cameras", own).json().at("/faults/0/pointer").asString());
        Reply mount = served.post("/api/mounts", "{\"name\": \"Bayonet 9\", \"flangeMm\": \"48.5\"}");
        assertEquals(201, mount.status(), mount.text());
        assertEquals(201, served.post("/api/cameras", own).status());
        String path = "/api/mounts/" + mount.id();
        assertEquals(409, served.delete(path, "If-Match", "*").status());
        Reply renamed = served.put(path, "{\"name\": \"Bayonet 10\", \"flangeMm\": \"48.5\"}", "If-Match", "*");
        assertEquals("/name", renamed.json().at("/faults/0/pointer").asString());
        assertEquals(
                200,
                served.put(path, "{\"name\": \"Bayonet 9\", \"flangeMm\": \"48.6\"}", "If-Match", "*")
                        .status());
        String camera = "/api/cameras/" + first.id();
        assertEquals(
                200,
                served.put(camera, camera("6:5", "\"mount\": \"LPL\""), "If-Match", "\"1\"")
                        .status());
        assertEquals("LPL", served.get(camera).json().get("mount").asString());
        assertTrue(served.get("/api/cameras").text().contains("6:5"));
        assertEquals(204, served.delete(camera, "If-Match", "\"2\"").status());
    }

    @ParameterizedTest
    @CsvSource({
        "'\"mount\": \"PL\", \"photositesWide\": 4290', /photositesHigh",
        "'\"mount\": \"PL\", \"photositesWide\": 0, \"photositesHigh\": 3', /photositesWide",
        "'\"mounts\": \"PL\"', /mount"
    })
    void aFaultyCameraIsRefusedAtItsField(String rest, String pointer) {
        Reply reply = served.post("/api/cameras", camera("faulty", rest));
        assertEquals(400, reply.status());
        assertEquals(pointer, reply.json().at("/faults/0/pointer").asString());
    }

    @Test
    void aPublishedMountIsNotDefinedAgain() {
        Reply reply = served.post("/api/mounts", "{\"name\": \"PL\", \"flangeMm\": \"52.1\"}");
        assertEquals(400, reply.status());
        assertEquals("/name", reply.json().at("/faults/0/pointer").asString());
        assertEquals(409, twice().status());
        assertTrue(served.get("/api/mounts").text().contains("Bayonet 7"));
    }

    private static Reply twice() {
        String mount = "{\"name\": \"Bayonet 7\", \"flangeMm\": \"40\", \"note\": \"measured\"}";
        Reply first = served.post("/api/mounts", mount);
        assertEquals(201, first.status());
        assertEquals(
                "measured",
                served.get("/api/mounts/" + first.id()).json().get("note").asString());
        return served.post("/api/mounts", mount);
    }

    /** The mounts that all know and the house's own are told together; 25.4 mm an inch makes the published apertures. */
    @Test
    void whatIsPublishedIsToldWithItsSource() {
        served.post("/api/mounts", "{\"name\": \"Bayonet 8\", \"flangeMm\": \"41\"}");
        Reply formats = served.get("/api/formats");
        assertTrue(formats.text().contains("Bayonet 8"), formats.text());
        assertEquals("24.892", formats.json().at("/formats/0/width").asString());
        formats.json()
                .get("formats")
                .forEach(each -> assertTrue(each.get("source").asString().length() > 5));
    }
}
