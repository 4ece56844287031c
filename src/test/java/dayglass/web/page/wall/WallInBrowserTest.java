package dayglass.web.page.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.web.page.Browser;
import dayglass.web.page.OneBrowser;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The wall with 200 units over the last Sunday of October, on which Paris puts its clocks back; and the scan. */
class WallInBrowserTest extends OneBrowser {
    private static final int UNITS = 200;
    private static final int SETS = 20;
    private static final int IN_A_SET = 8;

    @BeforeAll
    static void fill() {
        served.put(
                "/api/house",
                "{\"name\": \"The house\", \"timeZone\": \"Europe/Paris\", \"currency\": \"EUR\", \"outTime\": \"15:00\","
                        + " \"backTime\": \"10:00\", \"turnaroundMinutes\": 240}",
                "If-Match",
                "*");
        for (int unit = 1; unit <= UNITS; unit++) {
            served.post(
                    "/api/units",
                    "{\"tag\": \"W-" + (1000 + unit) + "\", \"serial\": \"9" + unit
                            + "\", \"holding\": {\"kind\": \"owned\"}}");
        }
        for (int set = 0; set < SETS; set++) {
            StringBuilder members = new StringBuilder();
            for (int member = 1; member <= IN_A_SET; member++) {
                members.append(members.length() == 0 ? "" : ", ").append(set * IN_A_SET + member);
            }
            served.post(
                    "/api/lens-sets",
                    "{\"name\": \"Set " + (char) ('A' + set) + "\", \"matched\": true, \"members\": [" + members
                            + "]}");
        }
        enter("bookings", 1, "2027-10-30T15:00", "2027-11-01T10:00", "Lantern Weir");
        for (int unit = 2; unit <= UNITS; unit += 3) {
            enter(
                    "bookings",
                    unit,
                    "2027-10-2" + (5 + unit % 4) + "T15:00",
                    "2027-11-0" + (2 + unit % 6) + "T10:00",
                    "Salt Lane");
            enter(
                    "bench-visits",
                    unit,
                    "2027-11-0" + (8 + unit % 2) + "T08:00",
                    "2027-11-11T17:00",
                    "clean and collimate");
        }
        enter("absences", 3, "2027-11-01T09:00", "2027-11-19T17:00", "at the maker's");
        served.post(
                "/api/holds",
                "{\"unitId\": 4, \"firstDay\": \"2027-11-03\", \"lastDay\": \"2027-11-09\", \"expires\":"
                        + " \"2099-01-01T10:00\", \"subject\": \"Winter Quarry\"}");
    }

    private static void enter(String what, int unit, String out, String back, String subject) {
        Reply reply = served.post(
                "/api/" + what,
                "{\"unitIds\": [" + unit + "], \"out\": \"" + out + "\", \"back\": \"" + back + "\", \"subject\": \""
                        + subject + "\"}");
        assertEquals(201, reply.status(), reply.text());
    }

    private static String address(String path) {
        return "http://127.0.0.1:" + served.port() + path;
    }

    @Test
    void twoHundredUnitsStandOnTheWallAndATimeOfDayKeepsItsPlaceAcrossTheChangeOfClocks() throws Exception {
        browser.open(address("/wall?from=2027-10-25&weeks=4"));
        assertEquals(UNITS, browser.all(".wall-line:not(.wall-head)").size());
        assertEquals(SETS + 1, browser.all(".wall-set").size());
        // Columns of 30: out on the sixth day at 15:00, back on the eighth at 10:00, four hours of turnaround.
        String bar = "return [...document.querySelectorAll('a.wall-tag')].find(tag => tag.textContent === 'W-1001')"
                + ".parentElement.querySelectorAll('.wall-bar rect')[arguments[0]].getAttribute(arguments[1])";
        assertEquals("169", browser.run(bar, 0, "x"));
        assertEquals("54", browser.run(bar, 0, "width"));
        assertEquals("223", browser.run(bar, 1, "x"));
        assertEquals("5", browser.run(bar, 1, "width"));
        assertEquals(0, browser.sidewaysScroll());
        keep("wall-1440.png");
    }

    /** Tags and days stay in sight while the wall moves under them. */
    @Test
    void tagsAndDaysStayInSight() {
        browser.open(address("/wall?from=2027-10-25&weeks=13"));
        browser.run("const wall = document.querySelector('.wall'); wall.scrollTo(900, 1500);");
        String place = "const wall = document.querySelector('.wall').getBoundingClientRect();"
                + "const it = document.querySelectorAll(arguments[0])[arguments[1]].getBoundingClientRect();"
                + "return Math.round(arguments[2] === 'left' ? it.left - wall.left : it.top - wall.top);";
        assertTrue(pixels(browser.run(place, ".wall-line .wall-tag", 60, "left")) <= 1);
        assertTrue(pixels(browser.run(place, ".wall-head", 0, "top")) <= 1);
    }

    private static int pixels(Object told) {
        return Integer.parseInt(String.valueOf(told));
    }

    @Test
    void wordsAndWeeksNarrowIt() {
        browser.open(address("/wall?from=2027-10-27&weeks=2&words=set%20b"));
        assertEquals(IN_A_SET, browser.all(".wall-line:not(.wall-head)").size());
        assertEquals(14, browser.all(".wall-head .number").size());
        browser.open(address("/wall?from=rubbish&weeks=99&words=nothing%20like%20this"));
        assertTrue(browser.text("main").contains("Nothing has these words"));
    }

    @Test
    void onAPhoneThePageDoesNotMoveSideways() throws Exception {
        try (Browser phone = Browser.start(folder.resolve("phone"))) {
            phone.beAPhone(390);
            phone.open(address("/wall?from=2027-10-25&weeks=2"));
            assertEquals(0, phone.sidewaysScroll());
            phone.photograph(Files.createDirectories(Path.of("target/pictures")).resolve("wall-390.png"));
        }
    }

    @Test
    void aTagThatIsScannedOpensItsUnitFromAnyPage() {
        browser.open(address("/house"));
        browser.press("W-1042\n");
        browser.waitForAddress("/shelf/units/42");
        browser.open(address("/wall"));
        browser.write("#scan", "917\n");
        browser.waitForAddress("/shelf/units/17");
        browser.open(address("/scan?tag=W-117"));
        assertTrue(browser.text("main").contains("W-1170"), browser.text("main"));
        browser.open(address("/scan?tag=unknown"));
        assertTrue(browser.text("main").contains("Nothing on the shelf looks like it"));
    }

    private static void keep(String name) throws Exception {
        browser.photograph(Files.createDirectories(Path.of("target/pictures")).resolve(name));
    }
}
