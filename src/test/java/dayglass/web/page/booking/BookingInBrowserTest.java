package dayglass.web.page.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.TestPictures;
import dayglass.web.page.FreshInBrowser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** From what is free over the door and back to a unit's life, in a real browser. */
class BookingInBrowserTest extends FreshInBrowser {
    @BeforeEach
    void fill() {
        for (int unit = 1; unit <= 4; unit++) {
            served.post(
                    "/api/units",
                    "{\"tag\": \"B-" + unit + "\", \"holding\": {\"kind\": \"owned\", \"boughtOn\": \""
                            + LocalDate.now(ZoneOffset.UTC).minusDays(40)
                            + "\", \"price\": {\"amount\": \"12000.00\", \"currency\": \"EUR\"}}}");
        }
        served.postParts(
                "/api/units/1/notes",
                "{\"part\": \"whole\", \"finding\": \"as it came\", \"severity\": 0}",
                List.of(TestPictures.png(300, 200)));
    }

    @Test
    void twoUnitsAreFoundBookedHandedOverAndTakenBackAndItIsInTheirLife() {
        open("/shelf/free");
        assertTrue(browser.text(".free-when").startsWith("4 free of 4"), browser.text(".free-when"));
        browser.run("document.querySelector(\"input[name=unit][value='1']\").focus()");
        browser.press(Keys.SPACE);
        browser.run("document.querySelector(\"input[name=unit][value='2']\").focus()");
        browser.press(Keys.SPACE);
        browser.write("#f--subject", "Salt Lane");
        browser.followBy(Keys.ENTER);
        browser.waitForAddress("/bookings?words=Salt+Lane");
        assertEquals(2, browser.all(".grid tbody tr").size());

        browser.follow(".grid tbody th a");
        browser.waitForText(".can h1", "Salt Lane");
        browser.follow("form[action$='/handover'] button.main");
        browser.waitForText("#back-head", "Take back");
        assertTrue(browser.text(".unit-now").contains("out, due back"), browser.text(".unit-now"));
        browser.follow("form[action$='/return'] button.main");
        open("/shelf/units/1");
        String life = browser.text(".life");
        assertTrue(life.contains("came back") && life.contains("went out") && life.contains("booked"), life);
        assertTrue(life.indexOf("came back") < life.indexOf("went out"), "the newest stands first");
        assertTrue(browser.text(".unit-shares").contains("1 day out of"), browser.text(".unit-shares"));
        assertTrue(browser.all(".unit-photo img").size() == 1, "the picture of its note is shown");
        open("/shelf/units/3");
        assertTrue(browser.text(".unit-photo").contains("No picture yet"));
        assertEquals("Free", browser.text(".unit-now"));
    }

    @Test
    void aBarOfTheWallOpensItsBooking() {
        served.post(
                "/api/bookings",
                "{\"unitIds\": [1], \"firstDay\": \"2027-04-12\", \"lastDay\": \"2027-04-16\", \"subject\": \"Weir\"}");
        open("/wall?from=2027-04-12&weeks=2");
        browser.follow("a.wall-bar.booking rect");
        browser.waitForAddress("/bookings/1");
        assertEquals("Weir", browser.text(".can h1"));
    }

    @Test
    void onAPhoneNoPageMovesSideways() throws Exception {
        served.post(
                "/api/bookings",
                "{\"unitIds\": [1], \"firstDay\": \"2027-04-12\", \"lastDay\": \"2027-04-16\", \"subject\":"
                        + " \"A subject that is a good deal longer than a phone is wide, unbroken:"
                        + "WeirWeirWeirWeirWeirWeirWeirWeirWeirWeirWeir\"}");
        served.post(
                "/api/bench-visits",
                "{\"unitIds\": [2], \"out\": \"2027-04-12T09:00\", \"back\": \"2027-04-13T09:00\", \"subject\": \"oil\"}");
        browser.beAPhone(390);
        for (String path : List.of(
                "/shelf/units/1",
                "/shelf/units/1/facts",
                "/shelf/free?/firstDay=2027-04-12",
                "/bookings",
                "/bookings/1",
                "/bookings/2",
                "/bookings/2/cancel",
                "/bookings/new?kind=bench&unit=1",
                "/holds/new?unit=1")) {
            open(path);
            assertEquals(0, browser.sidewaysScroll(), path + " scrolls sideways");
            browser.photograph(Files.createDirectories(Path.of("target/pictures"))
                    .resolve("booking-390" + path.replaceAll("[^A-Za-z0-9]", "-") + ".png"));
        }
    }
}
