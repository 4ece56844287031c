package dayglass.web.page.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.FreshServer;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The desk's pages as a browser is sent them; every rate is invented. */
class DeskPagesTest extends FreshServer {
    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<String> send(String path, Map<String, String> form) throws Exception {
        String body = form.entrySet().stream()
                .map(each -> encoded(each.getKey()) + "=" + encoded(each.getValue()))
                .collect(Collectors.joining("&"));
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + path))
                .header("Accept", "text/html");
        if (!form.isEmpty()) {
            request.header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(body));
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private String page(String path) throws Exception {
        HttpResponse<String> answer = send(path, Map.of());
        assertEquals(200, answer.statusCode(), path);
        return answer.body();
    }

    private void done(String path, Map<String, String> form) throws Exception {
        HttpResponse<String> answer = send(path, form);
        assertEquals(303, answer.statusCode(), answer.body());
    }

    private JsonNode rate() {
        return served.get("/api/rate-cards/1").json().at("/rates/0");
    }

    private void makeCard() throws Exception {
        done("/desk/suppliers", Map.of("name", "Pier House", "house", "yes"));
        done("/desk/suppliers/1/cards", Map.of("name", "Singles", "currency", "EUR", "effectiveFrom", "2027-01-01"));
        served.post(
                "/api/lens-models",
                "{\"maker\": \"Marrow\", \"name\": \"Heron 40\", \"kind\": \"spherical prime\", \"focal\": \"40\"}");
    }

    private static Map<String, String> heron() {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("version", "1");
        form.put("/id", "heron");
        form.put("/lets", "model/1");
        form.put("/covers/0/slot", "");
        form.put("/covers/0/count", "");
        form.put("/blocks/0/days", "1");
        form.put("/blocks/0/price", "90.00");
        form.put("/addOns/0/name", "vat/2");
        form.put("/addOns/0/percent", "20");
        form.put("/addOns/0/on", "hire");
        form.put("/addOns/0/mark", "tax");
        form.put("/addOns/1/name", "");
        form.put("/addOns/1/mark", "");
        return form;
    }

    @Test
    void theHouseStandsFirstOnceItIsNamed() throws Exception {
        done("/desk/suppliers", Map.of("name", "Aker Glass"));
        assertTrue(page("/desk").contains("Put the house on the desk"));
        done("/desk/suppliers", Map.of("name", "Pier House", "house", "yes"));
        String desk = page("/desk");
        assertFalse(desk.contains("Put the house on the desk"));
        assertTrue(desk.indexOf("Pier House") < desk.indexOf("Aker Glass"), "the house comes first");
        HttpResponse<String> second = send("/desk/suppliers", Map.of("name", "Quay House", "house", "yes"));
        assertEquals(422, second.statusCode());
        assertTrue(second.body().contains("is this house already"), second.body());
        done("/desk/suppliers/2", Map.of("version", "1", "name", "Pier Glass"));
        assertFalse(served.get("/api/suppliers/2").json().has("house"));
        done("/desk/suppliers/1", Map.of("version", "1", "name", "Aker Glass", "house", "yes"));
        assertTrue(served.get("/api/suppliers/1").json().get("house").asBoolean());
    }

    @Test
    void theRateFormKeepsAndChangesWhatARateIsForAndItsMarks() throws Exception {
        makeCard();
        done("/desk/cards/1/rates/1", heron());
        assertEquals(1, rate().at("/lets/model").asInt());
        assertEquals("tax", rate().get("marks").get("vat/2").asString());
        assertFalse(rate().has("covers"));
        String form = page("/desk/cards/1/rates/1");
        assertTrue(form.contains("<option value=\"model/1\" selected>Marrow Heron 40</option>"), form);
        assertTrue(form.contains("<option value=\"tax\" selected>"), form);
        assertTrue(page("/desk/cards/1").contains("For Marrow Heron 40"));
        served.post("/api/units", "{\"tag\": \"H-1\"}");
        Map<String, String> changed = heron();
        changed.put("version", "2");
        changed.put("/lets", "unit/1");
        changed.put("/addOns/0/mark", "");
        done("/desk/cards/1/rates/1", changed);
        assertEquals(1, rate().at("/lets/unit").asInt());
        assertFalse(rate().has("marks"), "a charge needs no mark");
    }

    @Test
    void aFaultOfARateStandsBesideItsField() throws Exception {
        makeCard();
        Map<String, String> typed = heron();
        typed.put("/addOns/0/mark", "levy");
        typed.put("/lets", "");
        String page = send("/desk/cards/1/rates/1", typed).body();
        assertTrue(page.contains("id=\"f--addOns-0-mark-fault\""), page);
        assertTrue(page.contains("id=\"f--covers-0-slot-fault\""), page);
        typed.put("/lets", "model/x");
        assertTrue(send("/desk/cards/1/rates/1", typed).body().contains("id=\"f--lets-fault\""));
    }

    @Test
    void theCardSaysWhichIsInForceAndWhatCameBeforeAndFollows() throws Exception {
        LocalDate today = LocalDate.now(ZoneOffset.UTC);
        done("/desk/suppliers", Map.of("name", "Pier House"));
        for (LocalDate from : new LocalDate[] {today.minusDays(60), today.minusDays(30), today.plusDays(30)}) {
            done(
                    "/desk/suppliers/1/cards",
                    Map.of("name", "Singles", "currency", "EUR", "effectiveFrom", from.toString()));
        }
        assertTrue(page("/desk/cards/1").contains("No longer in force"));
        assertTrue(page("/desk/cards/3").contains("Not in force yet"));
        String card = page("/desk/cards/2");
        assertTrue(card.contains("In force today"), card);
        int before = card.indexOf("came before");
        int now = card.indexOf("in force today", before);
        assertTrue(before > 0 && now > before && card.indexOf(": follows") > now, card);
        assertTrue(page("/desk").contains(", in force today, 0 rates, EUR"));
    }

    @Test
    void theSheetSaysEveryTermOfARate() throws Exception {
        makeCard();
        String text =
                "id,maker,model,day,week,weekend,14 days,extra day after,extra day,long hire,minimum,trip,add-on 1,"
                        + "add-on 1 percent,add-on 1 of,add-on 1 is\nheron,Marrow,Heron 40,90.01,270.02,91.03,500.04,7,38.05,"
                        + "28 days: 5 %,50.06,25.07,damage cover,12.5,hire,waiver\n";
        Map<String, String> table = new LinkedHashMap<>(Map.of(
                "supplier", "1", "name", "Sheet", "currency", "EUR", "effectiveFrom", "2026-01-01", "text", text));
        table.put("do", "make");
        HttpResponse<String> made = send("/desk/import", table);
        assertEquals("/desk/cards/2", made.headers().firstValue("Location").orElse(""), made.body());
        String sheet = page("/desk/cards/2/sheet");
        for (String term : new String[] {
            "Marrow Heron 40",
            "90.01",
            "270.02",
            "91.03",
            "14 days 500.04",
            "38.05 after 7 days",
            "5 % from 28 days",
            "50.06",
            "25.07",
            "damage cover 12.5 % on hire (waiver)",
            "EUR"
        }) {
            assertTrue(sheet.contains(term), term + " is not in " + sheet);
        }
        assertEquals(
                served.get("/api/rate-cards/2/rates.csv").text(),
                page("/desk/cards/2/rates.csv"),
                "one table for both");
    }

    @Test
    void aTableIsLookedAtBeforeItIsACard() throws Exception {
        makeCard();
        Map<String, String> table = new LinkedHashMap<>(Map.of(
                "supplier",
                "1",
                "name",
                "Singles",
                "currency",
                "EUR",
                "effectiveFrom",
                "2028-01-01",
                "text",
                "id,maker,model,day\nheron,Marrow,Heron 40,\"90,00\"\n"));
        table.put("do", "look");
        String faulty = send("/desk/import", table).body();
        assertTrue(faulty.contains("<strong id=\"count-faulty\">1</strong>"), faulty);
        assertTrue(faulty.contains("4: day"), faulty);
        assertFalse(faulty.contains("id=\"make\""), "a table with faults makes no card");
        table.put("do", "make");
        assertTrue(send("/desk/import", table).body().contains("id=\"faulty\""), "asked for all the same");
        assertEquals(1, served.get("/api/rate-cards").json().get("items").size());
        table.put("do", "look");
        table.put("text", "id,maker,model,day\nheron,Marrow,Heron 40,90.00\n");
        String good = send("/desk/import", table).body();
        assertTrue(good.contains("id=\"make\""), good);
        assertTrue(good.contains("1 day 90.00"), good);
        table.put("effectiveFrom", "2027-01-01");
        HttpResponse<String> taken = send("/desk/import", table);
        assertEquals(422, taken.statusCode());
        assertTrue(taken.body().contains("already begins on 2027-01-01"), taken.body());
        table.put("effectiveFrom", "");
        table.put("supplier", "");
        HttpResponse<String> nobody = send("/desk/import", table);
        assertEquals(422, nobody.statusCode());
        assertTrue(nobody.body().contains("id=\"f-supplier-fault\""), nobody.body());
        assertTrue(nobody.body().contains("id=\"f-effectiveFrom-fault\""), nobody.body());
    }

    @Test
    void aTableOfSuppliersIsLookedAtBeforeItIsKept() throws Exception {
        String empty = page("/desk/import/suppliers");
        assertTrue(empty.contains("<textarea id=\"table-text\""), empty);
        assertTrue(page("/desk").contains("href=\"/desk/import/suppliers\""), "one comes to it");
        Map<String, String> table = new LinkedHashMap<>(Map.of("text", "name,house\nQuay House,\nQuay House,\n"));
        table.put("do", "make");
        String faulty = send("/desk/import/suppliers", table).body();
        assertTrue(faulty.contains("<strong id=\"count-faulty\">1</strong>"), faulty);
        assertTrue(faulty.contains("stands in line 2 already"), faulty);
        assertFalse(faulty.contains("id=\"make\""), "a table with faults adds nobody");
        table.put("do", "look");
        table.put("text", "name,house\nQuay House,\nPier House,yes\n");
        String good = send("/desk/import/suppliers", table).body();
        assertTrue(good.contains("Add 2 suppliers"), good);
        assertEquals(0, served.get("/api/suppliers").json().get("items").size());
        table.put("do", "make");
        assertEquals(
                "/desk",
                send("/desk/import/suppliers", table)
                        .headers()
                        .firstValue("Location")
                        .orElse(""));
        assertEquals(2, served.get("/api/suppliers").json().get("items").size());
        table.put("text", "");
        HttpResponse<String> nothing = send("/desk/import/suppliers", table);
        assertEquals(422, nothing.statusCode());
        assertTrue(nothing.body().contains("The table is empty"), nothing.body());
    }
}
