package dayglass.web.page.desk.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.web.api.desk.DeskHouse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of a package as it answers without a script. */
class PackagePageTest {
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

    private static String page(String query) {
        Reply reply = house.served.page("/desk/package?" + query);
        assertEquals(200, reply.status(), reply.text());
        return reply.text();
    }

    @Test
    void nothingTypedIsNoFault() {
        String page = page("");
        assertFalse(page.contains("class=\"fault\"") || page.contains("role=\"alert\""), page);
        assertTrue(page.contains("Nothing asked for yet."));
    }

    @Test
    void whatIsFoundIsAddedAndTheSameAgainIsOneMore() {
        String once = page("text=heron+75&first=yes&/dates=mon");
        assertTrue(once.contains("name=\"/lines/0/model\" value=\"2\""), once);
        String twice = page("add=model/2&/lines/0/model=2&/lines/0/count=1");
        assertTrue(twice.contains("name=\"/lines/0/count\" value=\"2\""), twice);
        assertFalse(twice.contains("/lines/1/"), twice);
    }

    @Test
    void aRowTakenOutLeavesTheOthersNumberedWithoutGaps() {
        String page = page("drop=0&/lines/0/model=1&/lines/0/count=2&/lines/1/set=1&/lines/1/count=1");
        assertTrue(page.contains("name=\"/lines/0/set\" value=\"1\""), page);
        assertFalse(page.contains("/lines/1/"), page);
    }

    @Test
    void wordsThatCannotBeReadAreToldBesideThem() {
        String page = page("/dates=someday+soon&/lines/0/model=1&/lines/0/count=1");
        assertTrue(page.contains("cannot be read"), page);
        assertTrue(page.contains("The price stands here"), page);
    }

    @Test
    void twoDaysOfTheCalendarAreTheFirstAndTheLast() {
        String first = page("day=2027-04-06");
        assertTrue(first.contains("name=\"first-day\" value=\"2027-04-06\""), first);
        String both = page("day=2027-04-08&first-day=2027-04-06&/dates=2027-04-06");
        assertTrue(both.contains("value=\"2027-04-06 to 2027-04-08\""), both);
        String back = page("day=2027-04-02&first-day=2027-04-06&/dates=2027-04-06");
        assertTrue(back.contains("name=\"/dates\" value=\"2027-04-02\""), back);
    }

    /** {@link #page} asks for a page, not for an error. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "month=2027-13",
                "month=%2B999999999-12",
                "month=x",
                "day=x&first-day=y",
                "drop=x",
                "drop=99",
                "add=model",
                "add=model/x",
                "add=/////",
                "quote=x",
                "quote=999999999999999",
                "text=%25_%5C'%22%3C",
                "/lines/0/model=x&/lines/0/count=x&/dates=mon",
                "/lines/999999999/model=1&/dates=mon",
                "/lines/0/focalMm=0&/dates=mon",
                "/lines/0/model=1&/lines/0/set=1&/dates=mon",
                "/dates=1+jan+0001&/lines/0/model=1",
                "/discountPercent=200&/lines/0/model=1&/dates=mon",
                "/lines=1&/dates=mon",
                "/lines/0/model/x=1&/dates=mon"
            })
    void anAddressThatSomebodyWroteByHandStillHasItsPage(String query) {
        assertTrue(page(query).contains("What is wanted"));
    }

    @Test
    void anAlternativeLeadsToThePackageThatItProposes() {
        String page = page("/dates=mon+to+wed&/lines/0/set=1&/lines/0/count=1&/insured=yes");
        assertTrue(page.contains("Keep it 4 days longer for nothing."), page);
        String address = page.substring(page.indexOf("/desk/package?", page.indexOf("Keep it 4 days")));
        String query = address.substring("/desk/package?".length(), address.indexOf('"'))
                .replace("&amp;", "&");
        String proposed = page(query);
        assertTrue(proposed.contains("Mon 5 Apr 2027 to Sun 11 Apr 2027, 7 days of use"), proposed);
        assertTrue(proposed.contains("600.00\u00a0EUR"), proposed);
    }

    @Test
    void aFormSentTwiceIssuesOneQuote() {
        String form = "once=k-1&/dates=mon&/lines/0/model=1&/lines/0/count=1&/customer/name=Nell+Orrin";
        Reply first = house.served.form("/desk/quotes", form);
        Reply again = house.served.form("/desk/quotes", form);
        assertEquals(303, first.status(), first.text());
        assertEquals(first.header("Location"), again.header("Location"));
    }

    @Test
    void aQuoteWithoutItsCustomerKeepsWhatWasTyped() {
        Reply refused = house.served.form(
                "/desk/quotes", "once=k-2&/dates=mon&/lines/0/model=1&/lines/0/count=1&/customer/name=&promised=yes");
        assertEquals(422, refused.status(), refused.text());
        assertTrue(refused.text().contains("Nothing was promised"), refused.text());
        assertTrue(refused.text().contains("aria-invalid=\"true\""), refused.text());
        assertTrue(refused.text().contains("name=\"/lines/0/model\" value=\"1\""), refused.text());
    }

    @Test
    void aRevisionBeginsWithWhatWasPromised() {
        Reply quote = house.quote("prep 12 apr, shoot 13 to 15 apr", "{\"model\": 1, \"count\": 2}", "");
        String page = page("quote=" + quote.id());
        assertTrue(page.contains("value=\"prep 2027-04-12, 2027-04-13 to 2027-04-15\""), page);
        assertTrue(page.contains("name=\"/lines/0/count\" value=\"2\""), page);
        assertTrue(page.contains("value=\"Nell Orrin\""), page);
        Reply revised = house.served.form(
                "/desk/quotes/" + quote.id() + "/revisions",
                "version=1&once=k-3&quote=" + quote.id()
                        + "&/dates=2027-04-12+to+2027-04-13&/lines/0/model=1&/lines/0/count=1&/customer/name=Nell");
        assertEquals(303, revised.status(), revised.text());
        Reply kept = house.served.get("/api/quotes/" + quote.id());
        assertEquals(2, kept.json().get("revisions").size());
    }
}
