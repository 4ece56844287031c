package dayglass.web.page.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages of bookings as a browser without scripts is sent them; the house keeps the time of Paris. */
class BookingPagesTest extends OneServer {
    private static final ZoneId PARIS = ZoneId.of("Europe/Paris");
    private static final DateTimeFormatter TYPED = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm");

    private static int units;

    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeAll
    static void keepTheTimeOfParis() {
        assertEquals(
                200,
                served.put(
                                "/api/house",
                                "{\"name\": \"The house\", \"timeZone\": \"Europe/Paris\", \"currency\": \"EUR\","
                                        + " \"outTime\": \"15:00\", \"backTime\": \"10:00\", \"turnaroundMinutes\": 120}",
                                "If-Match",
                                "*")
                        .status());
    }

    private HttpResponse<String> get(String path) throws Exception {
        return send(HttpRequest.newBuilder(), path);
    }

    /** @param form as a browser writes it, where a blank is a plus sign */
    private HttpResponse<String> post(String path, String form) throws Exception {
        return send(
                HttpRequest.newBuilder()
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form)),
                path);
    }

    private HttpResponse<String> send(HttpRequest.Builder request, String path) throws Exception {
        return client.send(
                request.uri(URI.create("http://127.0.0.1:" + served.port() + path))
                        .header("Accept", "text/html")
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static String unit() {
        units++;
        return String.valueOf(
                served.post("/api/units", "{\"tag\": \"P-" + units + "\", \"holding\": {\"kind\": \"owned\"}}")
                        .id());
    }

    /** A kind's path below {@code /api}, and its id. */
    private static String entered(String what, String unit, String out, String back) {
        Reply reply = served.post(
                "/api/" + what,
                "{\"unitIds\": [" + unit + "], \"out\": \"" + out + "\", \"back\": \"" + back
                        + "\", \"subject\": \"Lantern Weir\"}");
        assertEquals(201, reply.status(), reply.text());
        return reply.json().get("items").get(0).get("id").asString();
    }

    private static String fromNow(int hours) {
        return TYPED.format(LocalDateTime.now(PARIS).plusHours(hours));
    }

    /** What is told beside a field. */
    private static String fault(HttpResponse<String> page, String field) {
        Matcher fault = Pattern.compile("<p class=\"fault\" id=\"" + field + "-fault\">([^<]*)</p>")
                .matcher(page.body());
        return fault.find() ? fault.group(1) : "";
    }

    private static String follow(HttpResponse<String> done) {
        assertEquals(303, done.statusCode(), done.body());
        return done.headers().firstValue("Location").orElseThrow();
    }

    @Test
    void unitsThatAreTickedAreBookedAllOrNone() throws Exception {
        String first = unit();
        String second = unit();
        String page =
                get("/shelf/free?/firstDay=2027-04-12&/lastDay=2027-04-16").body();
        assertTrue(page.contains("out 11 Apr 2027, 15:00 to 17 Apr 2027, 10:00"), page);
        HttpResponse<String> booked =
                post("/shelf/free", "/out=2027-04-11T15:00&/back=2027-04-17T10:00&/subject=Salt+Lane&unit=" + first);
        assertTrue(get(follow(booked)).body().contains("Salt Lane"));
        HttpResponse<String> refused = post(
                "/shelf/free",
                "/firstDay=2027-04-12&/lastDay=2027-04-16&madeOf=2027-04-12+2027-04-16"
                        + "&/out=2027-04-11T15:00&/back=2027-04-17T10:00&/subject=Winter+Quarry&unit="
                        + second + "&unit=" + first);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("is booked for \"Salt Lane\""), refused.body());
        assertTrue(refused.body().contains("value=\"Winter Quarry\""), "what was typed is kept");
        assertTrue(
                refused.body().contains("name=\"unit\" value=\"" + second + "\" checked"), "what was ticked is kept");
        assertFalse(get("/bookings?words=winter").body().contains("Winter Quarry</a>"), "none of them is booked");
    }

    @Test
    void nothingTickedAndNoSubjectAreToldBesideTheForm() throws Exception {
        String unit = unit();
        HttpResponse<String> nothing =
                post("/shelf/free", "/out=2027-05-11T15:00&/back=2027-05-17T10:00&/subject=Salt+Lane");
        assertEquals(422, nothing.statusCode());
        assertTrue(nothing.body().contains("tick at least one unit, or a whole set"), nothing.body());
        HttpResponse<String> nobody =
                post("/shelf/free", "/out=2027-05-11T15:00&/back=2027-05-17T10:00&/subject=&unit=" + unit);
        assertEquals("fill this in", fault(nobody, "f--subject"));
    }

    @Test
    void aWholeSetIsBookedWithAllItsMembersAndIsToldFreeOnlyWhereAllAre() throws Exception {
        String first = unit();
        String second = unit();
        long set = served.post(
                        "/api/lens-sets",
                        "{\"name\": \"Pier set\", \"matched\": true, \"members\": [" + first + ", " + second + "]}")
                .id();
        String before = get("/shelf/free?/firstDay=2027-06-08&words=pier").body();
        assertTrue(before.contains("all 2 free"), before);
        HttpResponse<String> booked = post(
                "/shelf/free",
                "/out=2027-06-07T15:00&/back=2027-06-09T10:00&/subject=Pier+Night&set=" + String.valueOf(set));
        String list = get(follow(booked)).body();
        assertEquals(2, list.split(">Pier Night</a>", -1).length - 1);
        String after = get("/shelf/free?/firstDay=2027-06-08&words=pier").body();
        assertTrue(after.contains("0 of 2 free, whole again from 9 Jun 2027, 12:00"), after);
        assertTrue(after.contains("Booked for \"Pier Night\" from 7 Jun 2027, 15:00"), after);
        assertTrue(after.contains("For as long it is next free from 9 Jun 2027, 12:00."), after);
    }

    @Test
    void otherDaysBringTheirUsualTimesAndTypedTimesStayWithTheirDays() throws Exception {
        String days = "/firstDay=2027-04-12&/lastDay=2027-04-16";
        String typed = "&/out=2027-04-12T07:00&/back=2027-04-16T20:00";
        assertTrue(get("/shelf/free?" + days + typed + "&madeOf=2027-04-12+2027-04-16")
                .body()
                .contains("out 12 Apr 2027, 07:00 to 16 Apr 2027, 20:00"));
        assertTrue(get("/shelf/free?" + days + typed + "&madeOf=2027-04-05+2027-04-09")
                .body()
                .contains("out 11 Apr 2027, 15:00 to 17 Apr 2027, 10:00"));
    }

    @ParameterizedTest
    @CsvSource({
        "/firstDay=2027-04-16&/lastDay=2027-04-12, f--lastDay, must not be before the first day",
        "/firstDay=soon, f--firstDay, 'must be a date as year-month-day, such as 2027-04-05'",
        "/firstDay=2027-04-12&/lastDay=2027-04-12&madeOf=2027-04-12+2027-04-12&/out=2027-04-12T10:00&/back=2027-04-12T09:00, f--back, must be later than out"
    })
    void faultyDaysAreToldBesideTheirField(String query, String field, String message) throws Exception {
        assertEquals(message, fault(get("/shelf/free?" + query), field));
    }

    /** Europe/Paris, IANA time zone database: clocks go forward on 28 March 2027 and back on 31 October. */
    @ParameterizedTest
    @ValueSource(strings = {"booking", "bench", "absence"})
    void aTimeThatDoesNotExistIsRefusedBesideItsField(String kind) throws Exception {
        HttpResponse<String> refused = post(
                "/bookings/new",
                "kind=" + kind + "&unit=" + unit()
                        + "&/subject=Salt+Lane&/out=2027-03-28T02:30&/back=2027-03-29T10:00");
        assertEquals(422, refused.statusCode());
        assertEquals(
                "02:30 does not exist on that day, as clocks go forward to 03:00: choose another time",
                fault(refused, "f--out"));
    }

    @Test
    void aTimeThatOccursTwiceIsAskedAbout() throws Exception {
        String unit = unit();
        String asked = "kind=booking&unit=" + unit + "&/subject=Salt+Lane&/out=2027-10-31T02:30&/back=2027-10-31T10:00";
        HttpResponse<String> refused = post("/bookings/new", asked);
        assertEquals("02:30 occurs twice on that day, as clocks go back: say which is meant", fault(refused, "f--out"));
        assertTrue(refused.body().contains("name=\"which/out\" value=\"+02:00\""), refused.body());
        String booking = follow(post("/bookings/new", asked + "&which/out=%2B01:00"));
        assertEquals(
                "2027-10-31T02:30:00+01:00",
                served.get("/api" + booking).json().get("out").asString());
        assertTrue(get(booking).body().contains("value=\"+01:00\" checked"), "it is shown as it was answered");
    }

    @Test
    void whoChangesWhatSomebodyElseChangedIsShownTheNewer() throws Exception {
        String id = entered("bookings", unit(), "2027-07-01T15:00", "2027-07-05T10:00");
        String late = "version=1&/subject=Lantern+Weir&/out=2027-07-01T15:00&/back=2027-07-09T10:00";
        String sooner = "version=1&/subject=Lantern+Weir+again&/out=2027-07-01T15:00&/back=2027-07-06T10:00";
        follow(post("/bookings/" + id, sooner));
        HttpResponse<String> stale = post("/bookings/" + id, late);
        assertEquals(422, stale.statusCode());
        assertTrue(
                stale.body()
                        .contains("It now is \"Lantern Weir again\", 1 Jul 2027, 15:00 to 6 Jul 2027, 10:00, booked."),
                stale.body());
        assertTrue(stale.body().contains("value=\"2027-07-09T10:00\""), "what was typed is kept");
        follow(post("/bookings/" + id, late.replace("version=1", "version=2")));
        assertTrue(get("/bookings/" + id).body().contains("9 Jul 2027, 10:00"));
    }

    @Test
    void aQuarantinedUnitGoesOutOnlyWithAReasonThatIsKept() throws Exception {
        String unit = unit();
        String id = entered("bookings", unit, fromNow(-1), fromNow(48));
        served.post(
                "/api/units/" + unit + "/notes",
                "{\"part\": \"focus\", \"finding\": \"play\", \"severity\": 1, \"quarantine\": true}");
        assertTrue(get("/bookings/" + id).body().contains("is in quarantine."));
        HttpResponse<String> refused = post("/bookings/" + id + "/handover", "version=1&/at=&/override=");
        assertEquals(422, refused.statusCode());
        assertEquals("say why it goes out all the same; it is kept with your name", fault(refused, "f--override"));
        follow(post("/bookings/" + id + "/handover", "version=1&/at=&/override=the+client+insists"));
        String page = get("/bookings/" + id).body();
        assertTrue(page.contains("out, due back"), page);
        assertTrue(page.contains("the client insists"), page);
        assertTrue(get("/shelf/units/" + unit).body().contains("Reason: the client insists"));
    }

    @Test
    void whatStandsInTheWayForGoodIsSaidAndRefused() throws Exception {
        String unit = unit();
        String later = entered("bookings", unit, fromNow(2), fromNow(48));
        String earlier = entered("bookings", unit, fromNow(-50), fromNow(-4));
        follow(post("/bookings/" + earlier + "/handover", "version=1&/at=" + fromNow(-49)));
        String page = get("/bookings/" + later).body();
        assertTrue(page.contains("is still out on another booking"), page);
        assertTrue(page.contains("It cannot be handed over now."), page);
        HttpResponse<String> refused = post("/bookings/" + later + "/handover", "version=1");
        assertEquals(422, refused.statusCode());
        assertTrue(get("/bookings?words=late").body().contains("late, was due back"));
    }

    /** A booking that began when its unit left, at some second, is shown to the minute and must not seem changed. */
    @Test
    void theEndOfABookingCanBeMovedAfterItsUnitWentOutBeforeItsTime() throws Exception {
        String id = entered("bookings", unit(), fromNow(5), fromNow(50));
        follow(post("/bookings/" + id + "/handover", "version=1&/at=&/override="));
        String page = get("/bookings/" + id).body();
        Matcher out = Pattern.compile("name=\"/out\" type=\"datetime-local\" value=\"([^\"]*)\"")
                .matcher(page);
        assertTrue(out.find(), page);
        follow(post(
                "/bookings/" + id, "version=2&/subject=Lantern+Weir&/out=" + out.group(1) + "&/back=" + fromNow(70)));
        HttpResponse<String> moved = post(
                "/bookings/" + id, "version=3&/subject=Lantern+Weir&/out=" + fromNow(-5) + "&/back=" + fromNow(70));
        assertTrue(moved.body().contains("It went out already, so that only its end can change."), moved.body());
    }

    @Test
    void aSetWithAMemberThatMustStayInIsNotToldWholeAgain() throws Exception {
        String sound = unit();
        String ill = unit();
        served.post(
                "/api/lens-sets",
                "{\"name\": \"Mole set\", \"matched\": true, \"members\": [" + sound + ", " + ill + "]}");
        served.post("/api/units/" + ill + "/notes", "{\"part\": \"focus\", \"finding\": \"play\", \"severity\": 3}");
        entered("bookings", sound, "2027-06-07T15:00", "2027-06-09T10:00");
        String page = get("/shelf/free?/firstDay=2027-06-08&words=mole").body();
        assertTrue(page.contains("0 of 2 free<"), page);
        assertFalse(page.contains("whole again"), page);
    }

    @Test
    void aUnitIsTakenBackNowOrAtATimeThatIsSaid() throws Exception {
        String unit = unit();
        String id = entered("bookings", unit, fromNow(-30), fromNow(20));
        follow(post("/bookings/" + id + "/handover", "version=1&/at=" + fromNow(-29)));
        HttpResponse<String> before = post("/bookings/" + id + "/return", "version=2&/at=" + fromNow(-40));
        assertTrue(before.body().contains("It cannot come back before it went out."), before.body());
        follow(post("/bookings/" + id + "/return", "version=2&/at="));
        assertTrue(get("/bookings/" + id).body().contains("back since"));
        String life = get("/shelf/units/" + unit).body();
        assertTrue(life.contains("hours early"), life);
        assertTrue(life.contains("nothing yet"), life);
    }

    @Test
    void aBenchVisitIsFinishedWithItsWorkAndCost() throws Exception {
        String unit = unit();
        String ahead = fromNow(5);
        String id = entered("bench-visits", unit, fromNow(-5), ahead);
        String visit = "version=1&/subject=collimate&/out=" + fromNow(-5)
                + "&/bench/findings=rear+group+out%0Aby+a+hair&/bench/work=shimmed&/bench/parts=&/bench/done=yes";
        HttpResponse<String> tooFine = post(
                "/bookings/" + id, visit + "&/back=" + ahead + "&/bench/cost/amount=12.345&/bench/cost/currency=EUR");
        assertEquals(422, tooFine.statusCode());
        assertFalse(fault(tooFine, "f--bench-cost-amount").isEmpty(), tooFine.body());
        HttpResponse<String> still = post("/bookings/" + id, visit + "&/back=" + ahead);
        assertTrue(fault(still, "f--back").startsWith("lies ahead, though the work is done"), still.body());
        follow(post(
                "/bookings/" + id,
                visit + "&/back=" + fromNow(-1) + "&/bench/cost/amount=165.00&/bench/cost/currency=GBP"));
        assertTrue(get("/bookings/" + id).body().contains(": done"));
        String page = get("/shelf/units/" + unit).body();
        assertTrue(page.contains("165.00\u00a0GBP"), page);
        assertTrue(page.contains("shimmed"), page);
    }

    @Test
    void aBookingIsCancelledAfterAQuestion() throws Exception {
        String id = entered("bookings", unit(), "2027-08-01T15:00", "2027-08-05T10:00");
        assertTrue(get("/bookings/" + id + "/cancel").body().contains("Cancel the booking"));
        follow(post("/bookings/" + id + "/cancel", "version=1"));
        assertTrue(get("/bookings/" + id).body().contains(": cancelled"));
    }

    @Test
    void aHoldIsEnteredChangedAndRemoved() throws Exception {
        String unit = unit();
        String hold = "/unitId=" + unit
                + "&/subject=Winter+Quarry&/out=2027-09-01T15:00&/back=2027-09-04T10:00&/rank=1"
                + "&/expires=2099-01-01T10:00";
        HttpResponse<String> refused = post("/holds/new", hold.replace("2099-01-01T10:00", "2027-03-28T02:30"));
        assertFalse(fault(refused, "f--expires").isEmpty(), refused.body());
        follow(post("/holds/new", hold));
        String page = get("/shelf/units/" + unit).body();
        Matcher link = Pattern.compile("/holds/[0-9]+").matcher(page);
        assertTrue(link.find(), page);
        assertTrue(get("/bookings?kind=hold").body().contains("hold 1, lapses 1 Jan 2099, 10:00"));
        assertTrue(get(link.group()).body().contains("value=\"Winter Quarry\""));
        follow(post(link.group() + "/remove", "version=1"));
        assertEquals(404, get(link.group()).statusCode());
    }

    @Test
    void whatIsNotThereIsSaidToBeMissing() throws Exception {
        for (String path : java.util.List.of(
                "/bookings/999",
                "/bookings/x",
                "/bookings/new?kind=lunch&unit=1",
                "/bookings/new?kind=bench&unit=999",
                "/bookings/999/cancel",
                "/shelf/units/999")) {
            assertEquals(404, get(path).statusCode(), path);
        }
    }
}
