package dayglass.web.page.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.TestPictures;
import dayglass.support.UnitRows;
import dayglass.web.page.FreshInBrowser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Notes as they are made at the shelf: in a real browser, by choosing, dropping and pasting pictures. */
class NotePagesInBrowserTest extends FreshInBrowser {
    /** A picture given to the page as a drop or a paste gives it. */
    private static final String GIVE = """
            const bytes = Uint8Array.from(atob(arguments[1]), each => each.charCodeAt(0));
            const data = new DataTransfer();
            data.items.add(new File([bytes], arguments[2], { type: "image/png" }));
            const zone = document.querySelector("[data-drop]");
            zone.dispatchEvent(arguments[0] === "drop"
              ? new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true })
              : new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
            """;

    @BeforeEach
    void fill() {
        UnitRows.add(folder.resolve("dayglass.db"), "unit-0001");
    }

    private void open() {
        open("/shelf/units/1/notes");
    }

    private void give(String how, byte[] picture, String name) {
        browser.run(GIVE, how, Base64.getEncoder().encodeToString(picture), name);
    }

    private void fill(String finding, int severity) {
        browser.write("#f--finding", finding);
        browser.click("input[name='/severity'][value='" + severity + "']");
    }

    @Test
    void aNoteWithPicturesChosenDroppedAndPastedShowsThemAndIsResolvedByTheNext() throws Exception {
        Path file = Files.write(folder.resolve("chosen.jpg"), TestPictures.jpegWithExif(300, 200, 6));
        open();
        assertEquals("Healthy", browser.text("#condition-head"));
        fill("haze", 3);
        browser.find("#f-pictures").sendKeys(file.toString());
        give("drop", TestPictures.png(120, 80), "dropped.png");
        give("paste", TestPictures.png(100, 80), "pasted.png");
        give("drop", TestPictures.png(90, 80), "not wanted.png");
        assertEquals(4, browser.all(".chosen img").size());
        browser.click(".chosen li:last-child button");
        assertEquals("3", browser.run("return document.querySelector('#f-pictures').files.length"));
        assertEquals("300", browser.run("return document.querySelector('.chosen img').naturalHeight"));
        browser.follow("form[data-pictures] .main");
        browser.waitForText("#condition-head", "Not healthy: not to be promised");
        assertEquals(3, browser.all(".images img").size());
        assertEquals(
                "200,120,100",
                browser.run("return Array.from(document.querySelectorAll('.images img'))"
                        + ".map(each => each.naturalWidth).join()"));

        browser.click("summary");
        fill("haze", 0);
        browser.click("input[name=resolves][value='1']");
        browser.follow("form[data-pictures] .main");
        browser.waitForText("#condition-head", "Healthy");
        assertTrue(browser.text("#note-1").contains("resolved by note 2"));
        assertTrue(browser.text(".noted li:first-child").contains("resolves note 1"));
    }

    @Test
    void whatIsRefusedIsToldAndWhatWasWrittenStays() {
        open();
        fill("a dent", 2);
        browser.write("#f-words", "by the focus ring");
        browser.click("input[name='/quarantine']");
        give("drop", TestPictures.pngThatClaims(50_000, 50_000), "huge.png");
        browser.follow("form[data-pictures] .main");
        browser.waitForText(".told li", "has 50000 x 50000 pixels: send at most 64000000 in all");
        assertEquals("by the focus ring", browser.run("return document.querySelector('#f-words').value"));
        assertEquals("true", browser.run("return document.querySelector(\"[name='/quarantine']\").checked"));
        browser.follow("form[data-pictures] .main");
        browser.waitForText("#condition-head", "Quarantined: not to be promised");
    }

    @Test
    void aPhoneShowsItWithoutScrollingSideways() throws Exception {
        browser.beAPhone(390);
        open();
        fill("scratch", 2);
        give("drop", TestPictures.png(1200, 800), "wide.png");
        assertEquals(0, browser.sidewaysScroll());
        browser.photograph(Path.of("target/notes-390-form.png"));
        browser.follow("form[data-pictures] .main");
        browser.waitForText("#condition-head", "May go out with a warning");
        assertEquals(0, browser.sidewaysScroll());
        browser.photograph(Path.of("target/notes-390.png"));
    }
}
