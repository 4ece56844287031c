package dayglass.web.api.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What a person types as still to come, and what the cost report makes of it; figures are worked by hand. */
class ToCompleteTest extends FreshBooks {
    @BeforeEach
    void fill() {
        post("estimate", "2027-04-05", "710", "", "1000.00");
        post("commitment", "2027-04-06", "710", "1", "300.00");
        post("actual", "2027-04-07", "710", "2", "200.00");
        post("estimate", "2027-04-05", "720", "", "50.00");
    }

    private void post(String kind, String date, String code, String episode, String net) {
        Reply reply = served.post(
                job + "/book-entries",
                "{\"kind\": \"" + kind + "\", \"date\": \"" + date + "\", \"costCode\": \"" + code + "\""
                        + (episode.isEmpty() ? "" : ", \"episode\": \"" + episode + "\"")
                        + ", \"description\": \"glass\", \"net\": \"" + net + "\"}");
        assertEquals(201, reply.status(), reply.text());
    }

    private Reply say(String date, String more) {
        return served.post(
                job + "/to-complete", "{\"date\": \"" + date + "\", \"note\": \"as the crew expects\"" + more + "}");
    }

    private JsonNode report(String query) {
        return served.get(job + "/cost-report" + query).json();
    }

    /** To complete, final cost and variance of a row; checks that final cost is the sum of its four parts. */
    private static String figures(JsonNode report, String name) {
        JsonNode found = report.get("total");
        for (JsonNode row : report.get("rows")) {
            found = row.get("name").asString().equals(name) ? row.get("figures") : found;
        }
        java.math.BigDecimal sum = java.math.BigDecimal.ZERO;
        for (String part : new String[] {"committed", "actual", "accrued", "toComplete"}) {
            sum = sum.add(found.get(part)
                    .decimalValue(new java.math.BigDecimal(found.get(part).asString())));
        }
        assertEquals(sum.toPlainString(), found.get("finalCost").asString());
        return found.get("toComplete").asString() + " " + found.get("finalCost").asString() + " "
                + found.get("variance").asString();
    }

    @Test
    void aTypedFigureStandsInPlaceOfTheOneThatIsWorkedOut() {
        assertEquals("500.00 1000.00 0.00", figures(report(""), "710"));
        Reply said = say("2027-04-08", ", \"costCode\": \"710\", \"net\": \"650.00\", \"tax\": \"65.00\"");
        assertEquals(201, said.status(), said.text());
        assertEquals("650.00 1150.00 -150.00", figures(report(""), "710"));
        assertEquals("715.00 1215.00 -215.00", figures(report("?basis=gross"), "710"));
        assertEquals("50.00 50.00 0.00", figures(report(""), "720"), "of another code it is worked out still");
        assertEquals("700.00 1200.00 -150.00", figures(report(""), "total"));
        assertEquals("500.00 1000.00 0.00", figures(report("?until=2027-04-07"), "710"), "not before its day");
        post("commitment", "2027-04-09", "710", "1", "100.00");
        assertEquals("650.00 1250.00 -250.00", figures(report(""), "710"), "it is beyond what is committed");
    }

    @Test
    void byEpisodeItStandsOnItsRowAndTheLastOneByItsDayCounts() {
        say("2027-04-09", ", \"costCode\": \"710\", \"episode\": \"2\", \"net\": \"80.00\"");
        say("2027-04-08", ", \"costCode\": \"710\", \"episode\": \"2\", \"net\": \"70.00\"");
        say("2027-04-08", ", \"costCode\": \"710\", \"episode\": \"1\", \"net\": \"5.00\"");
        assertEquals("85.00 585.00 415.00", figures(report(""), "710"), "for the whole code");
        assertEquals("80.00 280.00 -280.00", figures(report("?by=episode"), "2"));
        assertEquals("5.00 305.00 -305.00", figures(report("?by=episode"), "1"));
        assertEquals("50.00 50.00 1000.00", figures(report("?by=episode"), ""), "720 alone is worked out there");
        assertEquals("75.00 575.00 425.00", figures(report("?until=2027-04-08"), "710"));
        for (String by : new String[] {"code", "episode", "supplier"}) {
            assertEquals("135.00 635.00 415.00", figures(report("?by=" + by), "total"), by);
        }
    }

    @Test
    void takingItBackWorksItOutAgainAndEverythingStaysInTheList() {
        assertEquals(422, say("2027-04-08", ", \"costCode\": \"710\"").status(), "nothing was typed");
        say("2027-04-08", ", \"costCode\": \"710\", \"net\": \"0.00\"");
        assertEquals("0.00 500.00 500.00", figures(report(""), "710"), "nothing more is expected");
        assertEquals(201, say("2027-04-09", ", \"costCode\": \"710\"").status());
        assertEquals("500.00 1000.00 0.00", figures(report(""), "710"));
        JsonNode items = served.get(job + "/to-complete").json().get("items");
        assertEquals(2, items.size());
        assertEquals("0.00", items.get(0).get("net").asString());
        assertEquals("as the crew expects", items.get(1).get("note").asString());
        assertEquals(1, items.get(1).get("by").asInt());
        assertTrue(items.get(1).get("net") == null);
        assertEquals(409, served.delete(job, "If-Match", served.get(job).etag()).status(), "the job stays");
    }

    @Test
    void aClosedPeriodAForeignCodeAndAnAmountTooLargeAreRefused() {
        assertEquals(
                200,
                served.post(job + "/periods/close", "{\"lastDay\": \"2027-04-11\"}")
                        .status());
        Reply closed = say("2027-04-11", ", \"costCode\": \"710\", \"net\": \"1.00\"");
        assertEquals(400, closed.status(), closed.text());
        assertTrue(closed.text().contains("closed period"), closed.text());
        assertEquals(
                201,
                say("2027-04-12", ", \"costCode\": \"710\", \"net\": \"1.00\"").status());
        assertEquals(
                400,
                say("2027-04-12", ", \"costCode\": \"710\", \"net\": \"100000000000.00\"")
                        .status());
        assertEquals(
                200,
                served.put(
                                job + "/cost-chart",
                                "{\"text\": \"code,name\\n710,Lenses\\n720,Filters\\n\"}",
                                "If-Match",
                                "\"0\"")
                        .status());
        Reply foreign = say("2027-04-12", ", \"costCode\": \"999\", \"net\": \"1.00\"");
        assertEquals(400, foreign.status());
        assertTrue(foreign.text().contains("not in the job's chart"), foreign.text());
    }

    @Test
    void itIsTypedOnItsPageAndToldBesideTheReport() {
        String page = "/books/" + job.substring("/api/jobs/".length());
        assertTrue(served.page(page + "/to-complete").text().contains("Nothing is typed."));
        String form = "%2Fdate=2027-04-08&%2FcostCode=710&%2Fepisode=2&%2Fnet=650&%2Fnote=as+the+crew+expects&once=";
        assertEquals(
                422,
                served.form(page + "/to-complete", form.replace("650", "6x")).status());
        assertEquals(303, served.form(page + "/to-complete", form + "a1").status());
        assertEquals(303, served.form(page + "/to-complete", form + "a1").status());
        assertEquals(1, served.get(job + "/to-complete").json().get("items").size(), "sent twice, kept once");
        String list = served.page(page + "/to-complete?costCode=710").text();
        assertTrue(list.contains("710, episode 2"), list);
        assertTrue(list.contains("as the crew expects"), list);
        String report = served.page(page).text();
        assertTrue(report.contains("Typed as to complete: 710, episode 2, 650.00 net from Thu 8 Apr 2027"), report);
        assertTrue(report.contains(page + "/to-complete?costCode=710\">650.00"), report);
    }
}
