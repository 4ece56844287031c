package dayglass.web.page.desk.rental;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import dayglass.web.api.desk.DeskHouse;
import dayglass.web.page.FreshInBrowser;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** In a real browser, with the keyboard alone: nothing here ever clicks. */
class RentalByKeysTest extends FreshInBrowser {
    @SuppressWarnings("NullAway.Init") // set before each test
    private DeskHouse house;

    @Override
    protected Served serve() {
        house = new DeskHouse(folder);
        return house.served;
    }

    private void act(String button) {
        browser.tabTo(button);
        browser.press(Keys.ENTER);
    }

    private static String deed(String name) {
        return "form[action$='/" + name + "'] button:not([type=button])";
    }

    private void unfold(String deed) {
        act("details:has(form[action$='/" + deed + "']) > summary");
    }

    @Test
    void aPackageIsPricedPromisedLetTakenBackChargedAndSettled() {
        open("/desk/package");
        browser.press("pier");
        browser.waitForText("#finds strong", "pier");
        browser.press(Keys.ENTER);
        browser.waitForText(".package-name", "pier");
        browser.press("gan");
        browser.waitForText("#finds strong", "Marrow Gannet 40");
        browser.press(Keys.ARROW_DOWN);
        browser.press(Keys.ENTER);
        browser.waitForText(".package-name", "Marrow Gannet 40");
        browser.tabTo("#dates");
        browser.press("5 apr to 9 apr");
        browser.waitForText(".days-read", "Mon 5 Apr 2027 to Fri 9 Apr 2027, 5 days of use");
        // By hand: the set's week 500.00 and the Gannet's 270.00, with 10 % waiver and 20 % tax on both.
        browser.waitForText("#price .sum", "1\u202f016.40 EUR");
        browser.tabTo("#customer");
        browser.press("Nell Orrin");
        act("button[name=promised]");
        browser.waitForAddress("/desk/quotes/1");
        act(deed("confirm"));
        browser.waitForAddress("/desk/rentals/1");
        browser.waitForText(".can-kind", "Rental, confirmed");

        unfold("deposit");
        browser.tabTo("#taken");
        browser.press("300.00");
        browser.press(Keys.ENTER);
        browser.waitForText(".totals dd", "300.00 EUR");

        house.clock.set("2027-04-04T15:00:00Z");
        open("/desk/rentals/1");
        browser.tabTo("form[action$='/handover'] .scan-tick input");
        for (String tag : new String[] {"H40-1", "H75-1", "G40-1"}) {
            browser.press(tag);
            browser.press(Keys.ENTER);
        }
        browser.waitForText(".scan-tick [role=status]", "G40-1 ticked, all are.");
        act(deed("handover"));
        browser.waitForText(".can-kind", "Rental, out");

        house.clock.pass(Duration.ofDays(2));
        browser.tabTo("form[action$='/return'] .scan-tick input");
        browser.press("g40-1");
        browser.press(Keys.ENTER);
        act(deed("return"));
        browser.waitForText(".rented tbody td", "back");

        // Due on the 10th at 10:00, an hour later than here in winter: three days and an hour late.
        house.clock.set("2027-04-13T11:00:00Z");
        open("/desk/rentals/1");
        browser.tabTo("form[action$='/return'] input[data-tag='H40-1']");
        browser.press(Keys.SPACE);
        browser.tabTo("form[action$='/return'] input[data-tag='H75-1']");
        browser.press(Keys.SPACE);
        browser.press(Keys.TAB);
        browser.press(Keys.SPACE);
        act(deed("return"));
        browser.waitForText(".can-kind", "Rental, back");
        browser.waitForText(".rented-things strong", "front cap went out and is not back");

        act("a[href*='kind=missing']");
        browser.tabTo("#amount");
        browser.press("15.00");
        browser.press(Keys.ENTER);
        browser.waitForText(".charge strong", "15.00 EUR");
        act(deed("settle"));
        browser.waitForText(".can-kind", "Rental, settled");

        Reply rental = served.get("/api/rentals/1");
        assertEquals("settled", rental.json().get("state").asString());
        assertEquals(1, rental.json().get("ending").get("invoice").asLong());
        assertEquals("300.00", rental.json().get("deposit").get("kept").asString());
        String late = rental.json().get("charges").get(0).get("words").asString();
        assertTrue(late.contains("4 days late"), late);
    }

    @Test
    void daysAreChosenFromTheCalendarByArrows() {
        open("/desk/package?/lines/0/model=1&/lines/0/count=1");
        browser.tabTo("#day-2027-03-31");
        browser.press(Keys.ARROW_DOWN);
        browser.press(Keys.ENTER);
        browser.waitForText(".days-read", "Wed 7 Apr 2027, one day of use");
        browser.press(Keys.ARROW_RIGHT);
        browser.press(Keys.ENTER);
        browser.waitForText(".days-read", "Wed 7 Apr 2027 to Thu 8 Apr 2027, 2 days of use");
        assertEquals("2027-04-07 to 2027-04-08", browser.run("return document.getElementById('dates').value"));
    }

    @Test
    void noPageOfTheDeskIsWiderThanAPhone() {
        house.confirmed("5 apr to 9 apr", "{\"set\": 1}, {\"model\": 2, \"count\": 3}");
        browser.beAPhone(390);
        for (String page : new String[] {
            "/desk/package?text=40&/dates=5+apr+to+9+apr&/lines/0/set=1&/lines/0/count=1",
            "/desk/quotes",
            "/desk/quotes/1",
            "/desk/rentals",
            "/desk/rentals/1",
            "/desk/rules"
        }) {
            open(page);
            assertEquals(0, browser.sidewaysScroll(), page);
        }
    }
}
