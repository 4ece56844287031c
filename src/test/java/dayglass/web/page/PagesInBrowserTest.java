package dayglass.web.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The pages as a user has them: a real browser, a real server, a real database. */
class PagesInBrowserTest {
    /** Two days at 100.00 a day; a week is 350.00. Every total below is worked out by hand from these two. */
    private static final String REQUEST = """
            {"job": "Long Pier", "currency": "EUR",
             "schedule": [{"from": "2027-06-07", "to": "2027-06-08", "use": "shoot"}],
             "needs": [{"slot": "35 mm", "count": 1}],
             "rentals": [{"id": "pier prime", "supplier": "Ostler Glass", "covers": {"35 mm": 1},
               "blocks": [{"days": 1, "price": "100.00"}, {"days": 7, "price": "350.00"}]}]}
            """;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private final AtomicBoolean slow = new AtomicBoolean();

    @SuppressWarnings("NullAway.Init") // set before each test
    private RunningHouse house;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Browser browser;

    @BeforeEach
    void start() {
        browser = Browser.start(folder.resolve("profile"));
        house = new RunningHouse(folder, costing -> (job, stop) -> {
            while (slow.get() && !stop.stopped()) {
                Thread.onSpinWait();
            }
            return costing.cost(job, () -> false);
        });
    }

    @AfterEach
    @SuppressWarnings("NullAway") // where no browser is installed, nothing was started
    void stop() {
        if (browser != null) {
            browser.close();
        }
        if (house != null) {
            house.close();
        }
    }

    private void bringInAndCost() {
        browser.open(house.address("/"));
        browser.find("#import-text").sendKeys(REQUEST);
        browser.follow("form[action='/jobs/import'] button");
        browser.waitForAddress("/jobs/1");
        browser.click("form[action='/jobs/1/cost'] button");
        browser.waitForText("#total-now", "200.00 EUR");
    }

    private static String day(String date) {
        return ".dayframe[data-date='" + date + "']";
    }

    @Test
    void aDayPaintedByMouseShowsTheNewTotalBesideTheOld() {
        bringInAndCost();
        browser.click(day("2027-06-09"));
        browser.click("[data-paint=shoot]");
        assertEquals("shoot", browser.text(day("2027-06-09") + " .word"));
        browser.click("[data-do=save]");
        browser.waitForText("#total-now", "300.00 EUR");
        assertEquals("200.00 EUR", browser.text("#total-before"));
        assertEquals("100.00 EUR more", browser.text("#difference"));
    }

    @Test
    void aRangeOfDaysIsPaintedByKeyboardAlone() {
        bringInAndCost();
        browser.tabTo(day("2027-06-07"));
        browser.pressTimes(2, Keys.ARROW_RIGHT);
        browser.press(Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT));
        browser.press(Keys.ENTER);
        browser.press(Keys.ARROW_RIGHT);
        browser.press(Keys.ENTER);
        assertEquals("shoot", browser.text(day("2027-06-09") + " .word"));
        assertEquals("shoot", browser.text(day("2027-06-10") + " .word"));
        browser.tabTo("[data-do=save]");
        browser.press(Keys.ENTER);
        browser.waitForText("#total-now", "350.00 EUR");
        assertEquals("200.00 EUR", browser.text("#total-before"));
        assertEquals("150.00 EUR more", browser.text("#difference"));
    }

    @Test
    void aWeekIsCopiedOntoAnotherAndTakenBack() {
        bringInAndCost();
        browser.click("[data-do=after]");
        browser.click(".weekrow:nth-child(1) [data-week]");
        browser.click(".weekrow:nth-child(2) [data-week]");
        assertEquals("shoot", browser.text(day("2027-06-14") + " .word"));
        assertEquals("shoot", browser.text(day("2027-06-15") + " .word"));
        assertEquals("", browser.text(day("2027-06-16") + " .word"));
        browser.click("[data-do=undo]");
        assertEquals("", browser.text(day("2027-06-14") + " .word"));
        assertEquals("shoot", browser.text(day("2027-06-08") + " .word"));
    }

    @Test
    void aChangedRateShowsTheNewTotalBesideTheOldAndWhatChanged() {
        bringInAndCost();
        browser.write("#f-card-1-0-0", "80.00");
        browser.follow("form[action='/jobs/1/options'] button.main");
        browser.waitForText("#total-now", "160.00 EUR");
        assertEquals("200.00 EUR", browser.text("#total-before"));
        assertEquals("40.00 EUR less", browser.text("#difference"));
        browser.follow(".differs a");
        browser.waitForAddress("/costings/1/beside/2");
        assertEquals("pier prime, price of 1 day", browser.text(".grid tbody th"));
        assertEquals("100.00", browser.text(".grid tbody td:nth-child(2)"));
        assertEquals("80.00", browser.text(".grid tbody td:nth-child(3)"));
        browser.open(house.address("/costings/1"));
        assertEquals("200.00 EUR", browser.text(".verdict .sum"));
    }

    @Test
    void aFaultyPriceIsToldBesideItsFieldAndKeepsWhatWasTyped() {
        bringInAndCost();
        browser.write("#f-card-1-0-0", "eighty");
        browser.follow("form[action='/jobs/1/options'] button.main");
        assertTrue(!browser.text("#f-card-1-0-0-fault").isBlank(), "the field tells its fault");
        assertEquals("eighty", browser.find("#f-card-1-0-0").getDomProperty("value"));
        browser.open(house.address("/jobs/1"));
        assertEquals("100.00", browser.find("#f-card-1-0-0").getDomProperty("value"));
    }

    @Test
    void theBarsAreAsLongAsTheirAmountsSay() {
        bringInAndCost();
        browser.follow(".totals a[href='/costings/1']");
        browser.waitForAddress("/costings/1");
        double byDay = browser.width("[data-way=dayRateOnly] .way");
        double byWeek = browser.width("[data-way=weekRateOnly] .way");
        double best = browser.width("[data-way=best] .way");
        assertEquals("200.00", browser.text("[data-way=dayRateOnly] .amount"));
        assertEquals("350.00", browser.text("[data-way=weekRateOnly] .amount"));
        assertEquals(200.0 / 350.0, byDay / byWeek, 0.01);
        assertEquals(200.0 / 350.0, best / byWeek, 0.01);
        assertEquals("cannot be done", browser.text("[data-way=buyOnly] .amount"));
        assertTrue(browser.all("[data-way=buyOnly] .way").isEmpty(), "what cannot be done has no bar");
    }

    @Test
    void noPageScrollsSidewaysOnAPhone() {
        bringInAndCost();
        browser.beAPhone(390);
        for (String path : List.of(
                "/",
                "/jobs/1",
                "/jobs/1/remove",
                "/costings/1",
                "/costings/1/beside/1",
                "/shelf",
                "/desk",
                "/desk/cards/1",
                "/desk/cards/1/rates/1",
                "/desk/cards/1/sheet",
                "/desk/import",
                "/desk/suppliers/1/offers/new",
                "/reference",
                "/nothing-here")) {
            browser.open(house.address(path));
            assertEquals(0, browser.sidewaysScroll(), path + " scrolls sideways");
        }
    }

    @Test
    void aLongCostingShowsItsProgressAndCanBeStopped() {
        bringInAndCost();
        slow.set(true);
        browser.click("form[action='/jobs/1/cost'] button");
        browser.waitForAddress("/runs/");
        browser.waitForText("#elapsed", "2");
        browser.follow("form[action$='/stop'] button");
        browser.waitForAddress("/jobs/1");
        assertEquals("200.00 EUR", browser.text("#total-now"));
    }
}
