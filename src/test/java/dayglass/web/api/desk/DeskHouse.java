package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import dayglass.support.TestClock;
import java.nio.file.Path;

/**
 * A small invented house on a Wednesday: units 1 and 2 are Heron 40, 3 and 4 Heron 75, 5 is a Gannet 40; 1 and 3 are the
 * set pier. A day of a Heron 40 is 100.00 and a week 300.00, of a Heron 75 120.00 and 360.00; the set is 180.00 and
 * 500.00. A waiver of 10 % stands on the hire and a tax of 20 % on both. Another house lets a Heron 75 for 150.00 a day.
 */
public final class DeskHouse implements AutoCloseable {
    public static final String TODAY = "2027-03-31";

    private static final String ADD_ONS = """
            "addOns": [{"name": "waiver", "percent": "10", "on": ["hire"]},
                       {"name": "sales tax", "percent": "20", "on": ["hire", "waiver"]}],
            "marks": {"waiver": "waiver", "sales tax": "tax"}""";

    public final TestClock clock = new TestClock(TODAY + "T09:00:00Z");
    public final Served served;

    public DeskHouse(Path folder) {
        served = Served.in(folder, clock);
        model("Heron 40", "40");
        model("Heron 75", "75");
        model("Gannet 40", "40");
        unit("H40-1", 1);
        unit("H40-2", 1);
        unit("H75-1", 2);
        unit("H75-2", 2);
        unit("G40-1", 3);
        made("/api/lens-sets", "{\"name\": \"pier\", \"members\": [1, 3]}");
        made("/api/suppliers", "{\"name\": \"The house\", \"house\": true}");
        made("/api/suppliers", "{\"name\": \"Quay Hire\"}");
        made(
                "/api/rate-cards",
                "{\"supplierId\": 1, \"name\": \"Ours\", \"currency\": \"EUR\", \"effectiveFrom\": \"2027-01-01\","
                        + " \"rates\": [" + rate("h40", "\"model\": 1", "100.00", "300.00") + ","
                        + rate("h75", "\"model\": 2", "120.00", "360.00") + ","
                        + rate("g40", "\"model\": 3", "90.00", "270.00") + ","
                        + rate("pier", "\"set\": 1", "180.00", "500.00") + "]}");
        made(
                "/api/rate-cards",
                "{\"supplierId\": 2, \"name\": \"Theirs\", \"currency\": \"EUR\", \"effectiveFrom\": \"2027-01-01\","
                        + " \"rates\": [{\"id\": \"q75\", \"lets\": {\"model\": 2},"
                        + " \"blocks\": [{\"days\": 1, \"price\": \"150.00\"}]}]}");
    }

    private static String rate(String id, String lets, String day, String week) {
        return "{\"id\": \"" + id + "\", \"lets\": {" + lets + "}, \"blocks\": [{\"days\": 1, \"price\": \"" + day
                + "\"}, {\"days\": 7, \"price\": \"" + week + "\"}], " + ADD_ONS + "}";
    }

    void model(String name, String focal) {
        made(
                "/api/lens-models",
                "{\"maker\": \"Marrow\", \"name\": \"" + name + "\", \"kind\": \"spherical prime\", \"focal\": \""
                        + focal + "\", \"imageCircle\": \"46\"}");
    }

    void unit(String tag, int model) {
        made(
                "/api/units",
                "{\"tag\": \"" + tag + "\", \"modelId\": " + model
                        + ", \"accessories\": [\"front cap\", \"case\"], \"value\": {\"amount\": \"4000.00\","
                        + " \"currency\": \"EUR\", \"setOn\": \"2027-01-01\"}}");
    }

    public Reply made(String address, String body) {
        Reply reply = served.post(address, body);
        assertTrue(reply.status() == 201, reply.text());
        return reply;
    }

    public Reply price(String dates, String lines, String more) {
        return served.post("/api/packages/price", asked(dates, lines, more));
    }

    public static String asked(String dates, String lines, String more) {
        return "{\"dates\": \"" + dates + "\", \"lines\": [" + lines + "]" + more + "}";
    }

    public Reply quote(String dates, String lines, String more) {
        return served.post("/api/quotes", quoteBody(dates, lines, more));
    }

    public static String quoteBody(String dates, String lines, String more) {
        return "{\"customer\": {\"name\": \"Nell Orrin\", \"production\": \"Winter Quarry\"}, \"dates\": \"" + dates
                + "\", \"lines\": [" + lines + "]" + more + "}";
    }

    public Reply confirmed(String dates, String lines) {
        Reply quote = quote(dates, lines, "");
        assertTrue(quote.status() == 201, quote.text());
        return act(quote, "/api/quotes", "confirm", "{}");
    }

    /** Does something to what an answer shows, by its version. */
    public Reply act(Reply shown, String path, String deed, String body) {
        return served.post(path + "/" + shown.id() + "/" + deed, body, "If-Match", shown.etag());
    }

    public Reply rental(Reply shown, String deed, String body) {
        return act(shown, "/api/rentals", deed, body);
    }

    public static String units(int... ids) {
        StringBuilder units = new StringBuilder();
        for (int id : ids) {
            units.append(units.isEmpty() ? "" : ", ")
                    .append("{\"unitId\": ")
                    .append(id)
                    .append(", \"accessories\": [\"front cap\"]}");
        }
        return "{\"units\": [" + units + "]}";
    }

    @Override
    public void close() {
        served.close();
    }
}
