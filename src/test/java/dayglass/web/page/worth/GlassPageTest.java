package dayglass.web.page.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.web.page.OneBrowser;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page of the house's glass where there is more than is shown at once. */
class GlassPageTest extends OneBrowser {
    private static final int UNITS = 230;

    @BeforeAll
    static void putGlassOnTheShelf() {
        for (int unit = 1; unit <= UNITS; unit++) {
            Reply added = served.post(
                    "/api/units", "{\"tag\": \"P-%03d\", \"holding\": {\"kind\": \"owned\"}}".formatted(unit));
            assertEquals(201, added.status(), added.text());
        }
    }

    @ParameterizedTest
    @CsvSource({
        // asked for, first, last
        "'', 1, 100",
        "?first=100, 101, 200",
        "?first=150, 101, 200",
        "?first=200, 201, 230",
        "?first=99999, 201, 230",
        "?first=none, 1, 100",
        "?first=-5, 1, 100"
    })
    void aHundredUnitsAreShownAtOnce(String query, int first, int last) {
        Reply page = served.page("/shelf/my-glass" + query);
        assertEquals(200, page.status());
        assertTrue(page.text().contains(first + " to " + last + " of 230, by tag"), page.text());
        for (int unit = 1; unit <= UNITS; unit++) {
            assertEquals(
                    unit >= first && unit <= last, page.text().contains(">P-%03d<".formatted(unit)), "unit " + unit);
        }
        assertEquals(first > 1, page.text().contains("Units before these"));
        assertEquals(last < UNITS, page.text().contains("Further units"));
    }

    @Test
    void whatAllIsWeighedByGoesOnToTheFurtherUnits() {
        Reply page = served.page("/shelf/my-glass?/discountRatePercent=7.25");
        assertTrue(page.text().contains("%2FdiscountRatePercent=7.25&amp;"), page.text());
        assertTrue(page.text().contains("first=100\">Further units"), page.text());
        Reply further = served.page("/shelf/my-glass?%2FdiscountRatePercent=7.25&first=100");
        assertTrue(further.text().contains("value=\"7.25\""), further.text());
        assertFalse(further.text().contains("class=\"fault\""), further.text());
    }

    /** What is closed on the screen hides its lines on paper, and not the glass itself. */
    @Test
    void aPrintedPageHasEveryUnitOnIt() {
        open("/shelf/my-glass?first=200");
        browser.showAsPrinted(true);
        try {
            assertEquals(
                    "30",
                    String.valueOf(browser.run("return String([...document.querySelectorAll('.glass-list summary')]"
                            + ".filter(row => row.offsetHeight > 0).length)")));
        } finally {
            browser.showAsPrinted(false);
        }
    }
}
