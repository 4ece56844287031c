package dayglass.web.page.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.web.page.FreshInBrowser;
import org.junit.jupiter.api.Test;

/** Labels are chosen and laid out in a browser. */
class LabelsInBrowserTest extends FreshInBrowser {
    @Test
    void unitsAreTickedAndLaidOut() {
        for (int unit = 1; unit <= 5; unit++) {
            served.post("/api/units", "{\"tag\": \"L-" + unit + "\", \"holding\": {\"kind\": \"owned\"}}");
        }
        served.post("/api/units", "{\"tag\": \"Größe 6\", \"holding\": {\"kind\": \"owned\"}}");
        open("/shelf/labels?unit=2");
        assertEquals(1, browser.all(".label-sheet .label").size());
        browser.click("[data-tick=unit]");
        browser.follow("main form button.main");
        browser.waitForAddress("/shelf/labels");
        assertEquals(6, browser.all(".label-sheet .label").size());
        assertTrue(browser.text("[data-print]").contains("6 labels"));
        browser.beAPhone(390);
        browser.open(browser.address().replace("QR+code", "Code+128"));
        assertEquals(5, browser.all(".label-sheet .label").size());
        assertTrue(browser.text("main .told").contains("Größe 6"));
        assertEquals(0, browser.sidewaysScroll());
    }
}
