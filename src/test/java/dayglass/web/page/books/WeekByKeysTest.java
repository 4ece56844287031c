package dayglass.web.page.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import dayglass.web.page.OneBrowser;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** A week is closed in a real browser with the keyboard alone: invoice, match, post, close, export. */
class WeekByKeysTest extends OneBrowser {
    private static void set(String selector, String day) {
        // What keys a day wants depends on the language of the browser.
        browser.run("document.querySelector(arguments[0]).value = arguments[1]", selector, day);
    }

    @Test
    void anInvoiceIsMatchedPostedClosedAndExported() {
        long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        String books = "/books/" + job;
        Reply ordered = served.post("/api/jobs/" + job + "/book-entries", """
                {"kind": "commitment", "date": "2027-04-05", "supplier": "Quay House", "description": "40 mm, a week",
                  "purchaseOrder": "PO-7", "net": "720.00", "serviceFrom": "2027-04-05", "serviceTo": "2027-04-09"}""");
        assertEquals(201, ordered.status(), ordered.text());

        open(books + "/invoices?supplier=Quay+House");
        browser.tabTo("#f--number");
        browser.press("Q-118");
        set("#f--date", "2027-04-09");
        browser.tabTo("#table summary");
        browser.press(Keys.ENTER);
        browser.tabTo("#lines");
        browser.press("purchase order,net,tax\nPO-7,740.00,140.60\n");
        browser.tabTo("button[value=look]");
        browser.press(Keys.ENTER);
        browser.waitForText("#beside td:last-child", "say why it differs");
        browser.tabTo("#lines");
        browser.press(Keys.chord(Keys.CONTROL, "a"));
        browser.press("purchase order,net,tax,explanation\nPO-7,740.00,140.60,a filter more\n");
        browser.tabTo("button[value=post]");
        browser.press(Keys.ENTER);
        browser.waitForText("#posted tbody th", "Q-118");

        open(books + "/periods");
        browser.tabTo("form[action$='/close'] button");
        browser.press(Keys.ENTER);
        browser.waitForText("#acts tbody td", "closed");
        assertTrue(browser.text("main").contains("Closed through"), browser.text("main"));

        open(books + "/entries?from=2027-04-05&until=2027-04-11");
        browser.tabTo("#layout");
        browser.press(Keys.TAB);
        assertEquals("as CSV", browser.run("return document.activeElement.textContent"));
        String form = "document.activeElement.form";
        String address = browser.run("return " + form
                        + ".getAttribute('action') + '?' + new URLSearchParams(new FormData(" + form + ")).toString()")
                .toString();
        String csv = served.get(address).text();
        assertTrue(csv.contains("a filter more") && csv.contains("740.00"), csv);
        assertEquals(4, csv.split("\r\n").length, "a heading, the order, the invoice and what it drew: " + csv);
        assertEquals(0, browser.sidewaysScroll());
    }

    @Test
    void noPageOfTheBooksIsWiderThanAPhone() {
        long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        browser.beAPhone(390);
        for (String page : new String[] {"", "/entries", "/invoices", "/orders", "/periods", "/gear"}) {
            open("/books/" + job + page);
            assertEquals(0, browser.sidewaysScroll(), page);
        }
        open("/books/layouts/new");
        assertEquals(0, browser.sidewaysScroll());
    }
}
