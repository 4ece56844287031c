package dayglass.web.page.desk.today;

import dayglass.base.Money;
import dayglass.desk.price.PackagePrice.Missing;
import dayglass.desk.price.PricedLine;
import dayglass.desk.today.Today;
import dayglass.web.page.desk.today.TodayView.Thing;
import dayglass.web.page.desk.today.TodayView.Who;
import dayglass.web.page.picture.Words;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Puts a day at the desk into words. */
final class TodayWords {
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final int USUAL_HOURS = 24;
    private static final String ADDRESS = "/desk/today?date=";

    private final Today today;
    private final ZoneId zone;
    private final LocalDate isNow;

    TodayWords(Today today, LocalDate isNow) {
        this.today = today;
        this.zone = today.zone();
        this.isNow = isNow;
    }

    TodayView view() {
        return new TodayView(
                Words.date(today.day()),
                ADDRESS + today.day().minusDays(1),
                ADDRESS + today.day().plusDays(1),
                today.day().equals(isNow),
                Words.date(isNow) + ", " + hour(today.now()),
                clocks(),
                today.out().stream().map(this::door).toList(),
                today.back().stream().map(this::door).toList(),
                today.late().stream().map(this::late).toList(),
                lateCost(),
                today.giveBack().stream().map(TodayWords::giveBack).toList(),
                today.shorts().stream().map(this::shortOf).toList(),
                today.testing().stream().map(this::test).toList());
    }

    /** An hour that occurs twice on a day is told with its offset. */
    private String hour(Instant at) {
        LocalDateTime local = at.atZone(zone).toLocalDateTime();
        boolean twice = zone.getRules().getValidOffsets(local).size() > 1;
        return HOUR.format(local) + (twice ? " (UTC" + zone.getRules().getOffset(at) + ")" : "");
    }

    private String moment(Instant at) {
        LocalDate day = at.atZone(zone).toLocalDate();
        return day.equals(today.day()) ? hour(at) : Words.date(day) + ", " + hour(at);
    }

    private String clocks() {
        long hours = Duration.between(
                        today.day().atStartOfDay(zone), today.day().plusDays(1).atStartOfDay(zone))
                .toHours();
        return hours == USUAL_HOURS ? "" : "The clocks change on this day: it has " + hours + " hours.";
    }

    private static Who who(Today.Whose whose, List<Today.Piece> pieces) {
        return who(whose, pieces.get(0).booking().number());
    }

    private static Who who(Today.Whose whose, long booking) {
        return whose.rental()
                .map(rental -> new Who(
                        "/desk/rentals/" + rental.id().number(),
                        "Rental " + rental.number(),
                        rental.customer().name()
                                + (rental.customer().production().isEmpty()
                                        ? ""
                                        : ", " + rental.customer().production())))
                .orElseGet(() -> new Who("/bookings/" + booking, whose.words(), ""));
    }

    private static Thing thing(Today.Piece piece) {
        return new Thing("/shelf/units/" + piece.unit().number(), piece.tag(), piece.model());
    }

    private static List<Thing> things(List<Today.Piece> pieces) {
        return pieces.stream().map(TodayWords::thing).toList();
    }

    private TodayView.Door door(Today.Passage each) {
        LocalDate day = each.at().atZone(zone).toLocalDate();
        return new TodayView.Door(
                hour(each.at()),
                day.equals(today.day()) ? "" : Words.date(day),
                each.done(),
                who(each.whose(), each.pieces()),
                things(each.pieces()));
    }

    private TodayView.Late late(Today.Late each) {
        return new TodayView.Late(
                moment(each.due()),
                by(Duration.between(each.due(), today.now())),
                who(each.whose(), each.pieces()),
                things(each.pieces()),
                each.costs().stream()
                        .map(cost -> cost.words() + ": " + Words.money(cost.net())
                                + (cost.taxes().isEmpty() ? "" : ", with its taxes " + Words.money(cost.total())))
                        .toList());
    }

    /** {@code 2 days 3 hours}; the smaller only where the larger does not say enough. */
    private static String by(Duration late) {
        String minutes = late.toMinutesPart() == 1 ? "1 minute" : late.toMinutesPart() + " minutes";
        String hours = late.toHoursPart() == 1 ? "1 hour" : late.toHoursPart() + " hours";
        if (late.toDays() > 0) {
            return Words.days(Math.toIntExact(late.toDays())) + (late.toHoursPart() == 0 ? "" : " " + hours);
        }
        if (late.toHours() > 0) {
            return hours + (late.toMinutesPart() == 0 ? "" : " " + minutes);
        }
        return minutes;
    }

    private String lateCost() {
        Map<String, Money> sums = new TreeMap<>();
        today.late()
                .forEach(each ->
                        each.cost().ifPresent(cost -> sums.merge(cost.currency().code(), cost, Money::plus)));
        return sums.values().stream().map(Words::money).collect(Collectors.joining(" and "));
    }

    private static TodayView.GiveBack giveBack(dayglass.inventory.agenda.GiveBack each) {
        return new TodayView.GiveBack(
                new Thing("/shelf/units/" + each.unit().number(), each.tag(), ""),
                each.rented().owner()
                        + (each.rented().agreement().isEmpty()
                                ? ""
                                : ", agreement " + each.rented().agreement()),
                Words.date(each.rented().dueBackOn())
                        + (each.daysLate() == 0 ? "" : ", " + Words.days(each.daysLate()) + " late"),
                each.lateCost()
                        .filter(cost -> cost.signum() > 0)
                        .map(Words::money)
                        .orElse(""));
    }

    private TodayView.Shortage shortOf(Today.Shortage each) {
        long booking = each.hindered().stream()
                .findFirst()
                .map(first -> first.piece().booking().number())
                .orElse(0L);
        return new TodayView.Shortage(
                moment(each.at()),
                who(each.whose(), booking),
                counted(each.toGet().stream().map(TodayWords::toGet).toList(), " each"),
                counted(each.missing().stream().map(TodayWords::missing).toList(), ""),
                each.hindered().stream()
                        .map(hindered -> new TodayView.Hindered(
                                thing(hindered.piece()),
                                "/bookings/" + hindered.piece().booking().number(),
                                String.join(" ", hindered.why())))
                        .toList());
    }

    /** What is told several times, once with its count. */
    private static List<String> counted(List<String> words, String behind) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        words.forEach(each -> counts.merge(each, 1, Integer::sum));
        return counts.entrySet().stream()
                .map(each -> each.getValue() == 1 ? each.getKey() : each.getValue() + " × " + each.getKey() + behind)
                .toList();
    }

    private static String toGet(Today.ToGet each) {
        PricedLine line = each.line();
        return line.what() + ", " + Words.dates(line.dates())
                + line.rentedIn()
                        .map(from -> ", from " + from.supplier() + " at " + Words.money(from.cost()))
                        .orElse("")
                + each.order().map(order -> ", ordered as " + order.number()).orElse(", not ordered yet");
    }

    private static String missing(Missing missing) {
        return missing.what() + ", " + Words.dates(missing.dates()) + ": neither free nor on a supplier's card";
    }

    private TodayView.Test test(Today.ToTest each) {
        String came = each.cameBack()
                .map(at -> "came back " + Words.moment(at, zone) + ", not looked at since")
                .orElse("");
        String warned = each.warning() ? "has a warning" : "";
        return new TodayView.Test(
                thing(each.piece()),
                "/shelf/units/" + each.piece().unit().number() + "/notes",
                came + (came.isEmpty() || warned.isEmpty() ? "" : "; ") + warned,
                each.next().map(next -> moment(next.out())).orElse(""),
                each.next()
                        .map(next -> who(next.whose(), next.booking().number()))
                        .orElse(new Who("", "", "")));
    }
}
