package dayglass.web.page.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.web.page.OneBrowser;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A lens is judged in a browser; what is drawn to scale is measured in the page. */
class FitInBrowserTest extends OneBrowser {
    private static final String ASKED = "/fit?format=35+mm+full+aperture&%2Fcamera%2Fmount=PL"
            + "&%2Fdelivery%2Faspect=2.39&%2Flight%2Flux=320&%2Flight%2Fiso=800&%2Flight%2FframesPerSecond=24"
            + "&%2Flight%2FshutterAngle=180&%2Fset%2FclosestSubjectM=0.9&lens=";

    @BeforeAll
    static void fill() {
        served.post(
                "/api/lens-models",
                "{\"maker\": \"Heronsgate\", \"name\": \"Estuary 50 mm\", \"kind\": \"anamorphic prime\", \"focal\": \"50\","
                        + " \"tStop\": \"2.5\", \"squeeze\": \"2\", \"imageCircle\": \"31.5\", \"mounts\": [\"PL\"],"
                        + " \"closeFocusM\": \"0.85\", \"closeDownStops\": \"1\"}");
        served.post(
                "/api/lens-models",
                "{\"maker\": \"Brindleford\", \"name\": \"Coast 50 mm\", \"kind\": \"spherical prime\", \"focal\": \"50\","
                        + " \"mounts\": [\"PL\"]}");
    }

    private static void ask(String lens) {
        open(ASKED + lens);
    }

    private static double measured(String selector, String side) {
        return Double.parseDouble(String.valueOf(browser.run(
                "return document.querySelector(arguments[0]).getBoundingClientRect()[arguments[1]];", selector, side)));
    }

    /** 24.892 x 18.669 mm through 2x to 2.39: the whole height serves and 22.309 mm of the width. */
    @Test
    void whatIsDrawnHasTheComputedProportions() {
        ask("model+1");
        double mm = measured(".fit-sensor", "width") / 24.892;
        assertEquals(18.669, measured(".fit-sensor", "height") / mm, 0.1);
        assertEquals(2.39 * 18.669 / 2, measured(".fit-used", "width") / mm, 0.15);
        assertEquals(31.5, measured(".fit-circle", "width") / mm, 0.15);
        assertEquals(2.39, measured(".fit-seen", "width") / measured(".fit-seen", "height"), 0.02);
        assertTrue(browser.text(".fit-verdict h2").contains("Heronsgate Estuary 50 mm"));
        assertTrue(browser.text(".cautions").contains("Heavy glass"));
    }

    @Test
    void everyModelIsComparedAndWhatOneLacksIsSaid() {
        ask("");
        assertEquals(2, browser.all("main section table tbody tr").size());
        assertTrue(browser.text("main section table").contains("Brindleford Coast 50 mm lacks a T-stop"));
        ask("model+2");
        assertTrue(browser.text("main .told").contains("lacks a T-stop"));
    }

    @Test
    void aFaultStandsBesideItsFieldAndWhatWasTypedStays() {
        open(ASKED.replace("aspect=2.39", "aspect=wide") + "model+1");
        assertEquals("wide", browser.find("[name='/delivery/aspect']").getDomProperty("value"));
        assertEquals("true", browser.find("[name='/delivery/aspect']").getDomAttribute("aria-invalid"));
    }

    @Test
    void aLensOnNoShelfIsTypedOnAPhone() {
        browser.beAPhone(390);
        ask("typed&%2Flens%2Ffocal=75&%2Flens%2FtStop=2&%2Flens%2Fmounts=PL&front=typed&%2Fattachment%2Fsqueeze=1.33"
                + "&%2Fattachment%2Ffocusing=dual");
        assertTrue(browser.text(".fit-verdict").contains("squeeze"));
        assertEquals(0, browser.sidewaysScroll());
    }
}
