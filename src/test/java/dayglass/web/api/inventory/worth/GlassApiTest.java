package dayglass.web.api.inventory.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** The house's glass over HTTP and on its page; days are told from today. */
class GlassApiTest extends OneServer {
    @BeforeAll
    static void putGlassOnTheShelf() {
        LocalDate bought = LocalDate.now(ZoneOffset.UTC).minusMonths(24);
        assertEquals(201, served.post("/api/units", """
                {"tag": "W-1", "holding": {"kind": "owned", "boughtOn": "%s", "price": {"amount": "10000.00", "currency": "EUR"}},
                 "value": {"amount": "12000.00", "currency": "EUR", "setOn": "2026-01-01"}}""".formatted(bought)).status());
        assertEquals(
                201,
                served.post("/api/units", "{\"tag\": \"W-2\", \"holding\": {\"kind\": \"owned\"}}")
                        .status());
        assertEquals(
                201,
                served.post("/api/lens-sets", "{\"name\": \"evening pair\", \"members\": [1, 2]}")
                        .status());
    }

    /** Never used: the year costs what it loses. 8281 less 8 per cent today, 7535.71 less 8 in a year, 180 of insurance. */
    @Test
    void aUnitThatIsNeverUsedIsToBeSold() {
        Reply reply = served.get("/api/my-glass?discountRatePercent=0");
        assertEquals(200, reply.status(), reply.text());
        JsonNode unit = reply.json().at("/units/0");
        assertEquals("8281.00", unit.at("/value/today").asString());
        assertEquals("sell", unit.at("/yearMore/verdict").asString());
        assertEquals("-865.67", unit.at("/yearMore/gain").asString());
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : unit.at("/yearMore/lines")) {
            sum = sum.add(new BigDecimal(line.get("amount").asString()));
        }
        assertEquals(new BigDecimal("-865.67"), sum);
        assertTrue(reply.json().at("/units/1/unknown").asString().contains("not recorded"), reply.text());
        assertEquals(2, reply.json().at("/sets/0/unitIds").size());
        assertEquals("0", reply.json().at("/footing/discountRatePercent").asString());
        assertEquals("9", reply.json().at("/footing/lossPercentPerYear").asString());
    }

    @ParameterizedTest
    @CsvSource({
        "sellingCostPercent=101, sellingCostPercent",
        "lossPercentPerYear=nine, lossPercentPerYear",
        "discountRatePercent=6&discountRatePercent=7, discountRatePercent",
        "taxPercent=9, taxPercent"
    })
    void aParameterThatCannotBeUsedIsNamed(String query, String named) {
        Reply reply = served.get("/api/my-glass?" + query);
        assertEquals(400, reply.status());
        assertTrue(reply.text().contains("The parameter " + named), reply.text());
    }

    @Test
    void thePageShowsTheSameAndKeepsWhatWasTyped() {
        Reply page = served.page("/shelf/my-glass?/discountRatePercent=0");
        assertEquals(200, page.status());
        assertTrue(page.text().contains("W-1"), page.text());
        assertTrue(page.text().contains("\u2212865.67"), page.text());
        assertTrue(page.text().contains("No rental is recorded yet"), page.text());
        assertTrue(page.text().contains("Not known: its price or the day it was bought is not recorded."));
        Reply faulty = served.page("/shelf/my-glass?/sellingCostPercent=101");
        assertEquals(422, faulty.status());
        assertTrue(faulty.text().contains("f--sellingCostPercent-fault"), faulty.text());
    }
}
