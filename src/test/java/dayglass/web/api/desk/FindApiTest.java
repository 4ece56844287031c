package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.support.Reply;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class FindApiTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    static Path folder;

    @SuppressWarnings("NullAway.Init") // set before all tests
    private static DeskHouse house;

    @BeforeAll
    static void start() {
        house = new DeskHouse(folder);
    }

    @AfterAll
    static void stop() {
        house.close();
    }

    private static Reply find(String text, String more) {
        return house.served.get("/api/finds?text=" + URLEncoder.encode(text, StandardCharsets.UTF_8) + more);
    }

    private static String names(String text) {
        List<String> names = new ArrayList<>();
        for (JsonNode item : find(text, "").json().get("items")) {
            names.add(item.get("name").asString());
        }
        return String.join("; ", names);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            pie        | pier
            h75-2      | H75-2
            H75        | H75-1; H75-2
            heron      | Marrow Heron 40; Marrow Heron 75; H40-1; H40-2; H75-1; H75-2
            her 75     | Marrow Heron 75; any 75 mm; H75-1; H75-2
            any 40 mm  | Marrow Heron 40; Marrow Gannet 40; any 40 mm; G40-1; H40-1; H40-2
            75         | Marrow Heron 75; any 75 mm; H75-1; H75-2
            33 mm      | ''
            zebra      | ''
            """)
    void everyWordMustBePartOfTheName(String text, String names) {
        assertEquals(names, names(text));
    }

    @Test
    void itSaysHowManyAreFreeThen() {
        house.confirmed("12 apr to 16 apr", "{\"unit\": 2}");
        JsonNode model = find("heron 40", "&dates=14+apr").json().get("items").get(0);
        assertEquals(1, model.get("free").asInt());
        assertEquals(2, model.get("there").asInt());
        JsonNode taken = find("h40-2", "&dates=14+apr").json().get("items").get(0);
        assertEquals(0, taken.get("free").asInt());
        JsonNode set = find("pier", "&dates=14+apr").json().get("items").get(0);
        assertEquals(2, set.get("free").asInt());
        JsonNode later = find("heron 40", "&dates=26+apr").json().get("items").get(0);
        assertEquals(2, later.get("free").asInt());
    }

    @Test
    void blankTextAndDaysThatCannotBeReadAreFaults() {
        assertEquals(400, find(" ", "").status());
        assertEquals(400, find("pier", "&dates=someday").status());
        assertEquals(400, find("x".repeat(201), "").status());
    }
}
