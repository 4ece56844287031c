package dayglass.web.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.support.ui.Select;

/** The table that a house keeps now is brought onto the shelf in a real browser. */
class TablesInBrowserTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private RunningHouse house;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Browser browser;

    @BeforeEach
    void start() {
        browser = Browser.start(folder.resolve("profile"));
        house = new RunningHouse(folder);
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

    private void look(String text) {
        browser.open(house.address("/shelf/import"));
        browser.find("#table-text").sendKeys(text);
        browser.follow("form[action='/shelf/import'] button.main");
    }

    @Test
    void aTableIsLookedAtMendedAndBroughtInAndComesBackUnchanged() throws Exception {
        Path file = folder.resolve("house.csv");
        Files.writeString(
                file,
                "\uFEFFNummer;Lagerplatz;Slots\r\nq-1;B2;\"40 mm\r\n50 mm\"\r\nq-2;\"B \"\"3\"\"\";40 mm\r\n;B4;\r\n",
                StandardCharsets.UTF_8);
        browser.open(house.address("/shelf/import"));
        browser.find("#table-file").sendKeys(file.toString());
        browser.follow("form[action='/shelf/import'] button.main");
        assertTrue(browser.text(".told").contains("no column is the \"tag\""), "nobody can guess a foreign heading");
        new Select(browser.find("#f-column-1")).selectByVisibleText("tag");
        new Select(browser.find("#f-column-2")).selectByVisibleText("home shelf");
        browser.follow("button[value='look']");
        browser.waitForText("#count-added", "2");
        assertTrue(browser.text("#faulty").contains("is missing"), browser.text("#faulty"));
        assertEquals("5", browser.text("#faulty tbody td:first-child"));
        browser.follow("#bring");
        browser.waitForText("#done strong", "2 added, 0 changed.");
        browser.open(house.address("/shelf"));
        assertEquals(2, browser.all("table.grid tbody tr").size());
        browser.follow("table.grid tbody a");
        browser.follow(".unit-acts a[href$='/facts']");
        assertEquals("q-1", browser.find("#f--tag").getDomProperty("value"));
        assertEquals("B2", browser.find("#f--homeShelf").getDomProperty("value"));
        assertEquals("50 mm", browser.find("#f--covers-1-slot").getDomProperty("value"));

        look("tag,home shelf\nq-1,B2\nq-2,C1\n");
        browser.waitForText("#count-unchanged", "1");
        browser.waitForText("#count-changed", "1");
        assertTrue(browser.text("#changed").contains("B \"3\""), browser.text("#changed"));
        browser.click("input[name=applyChanges]");
        browser.follow("#bring");
        browser.waitForText("#done strong", "0 added, 1 changed.");
    }

    @Test
    void aUnitAModelAndASetAreMadeOnTheirPages() {
        browser.open(house.address("/shelf/models/new"));
        browser.write("#f--maker", "Marrow");
        browser.write("#f--name", "Heron");
        browser.write("#f--focal", "forty");
        browser.follow(".card button.main");
        assertTrue(!browser.text("#f--focal-fault").isBlank(), "the fault is told beside its field");
        browser.write("#f--focal", "40");
        browser.find("#f--mounts").sendKeys("PL\nEF");
        browser.follow(".card button.main");
        browser.waitForText(".grid tbody th", "Marrow Heron");

        browser.open(house.address("/shelf/units/new"));
        browser.write("#f--tag", "q-1");
        new Select(browser.find("#f--modelId")).selectByVisibleText("Marrow Heron");
        browser.write("#f--covers-0-slot", "40 mm");
        browser.write("#f--covers-0-count", "1");
        browser.find("#f--accessories").sendKeys("cap; front\ncase");
        browser.follow(".card button.main");
        browser.waitForText(".grid tbody th", "q-1");

        browser.open(house.address("/shelf/sets/new"));
        browser.write("#f--name", "pier");
        new Select(browser.find("#f--members-2")).selectByVisibleText("q-1");
        browser.follow(".card button.main");
        browser.waitForText(".grid tbody th", "pier");
        browser.open(house.address("/shelf/sets/1"));
        assertEquals("still in", browser.text("table.plain tbody td:last-child"));
        browser.open(house.address("/shelf?words=HERON+pier"));
        assertEquals(1, browser.all(".grid tbody tr").size());
        browser.open(house.address("/shelf?words=egret"));
        assertEquals(0, browser.all(".grid tbody tr").size());
        browser.beAPhone(390);
        for (String path : java.util.List.of(
                "/shelf",
                "/shelf/units/new",
                "/shelf/units/1",
                "/shelf/units/1/facts",
                "/shelf/units/1/remove",
                "/shelf/models",
                "/shelf/models/1",
                "/shelf/sets",
                "/shelf/sets/1",
                "/shelf/import")) {
            browser.open(house.address(path));
            assertEquals(0, browser.sidewaysScroll(), path + " scrolls sideways");
        }
    }
}
