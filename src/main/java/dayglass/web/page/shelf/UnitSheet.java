package dayglass.web.page.shelf;

import dayglass.base.Money;
import dayglass.inventory.life.LifeEvent;
import dayglass.inventory.life.MoneySoFar;
import dayglass.inventory.life.Utilisation;
import dayglass.web.page.Label;
import dayglass.web.page.picture.Words;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the page of one unit shows.
 *
 * @param gone it has left for good
 * @param now where it is, in words
 * @param service what its service plan says
 */
public record UnitSheet(
        long id,
        Label label,
        boolean gone,
        String now,
        NotesView notes,
        Service service,
        List<Ahead> ahead,
        Earnings money,
        Use use,
        List<Event> timeline) {
    public UnitSheet {
        ahead = List.copyOf(ahead);
        timeline = List.copyOf(timeline);
    }

    /** When it is due, and where the plan is. */
    public record Service(String words, String address) {}

    /** What is entered and not over. */
    public record Ahead(String address, String what, String subject, String when) {}

    /** Where it is booked: among what is free, ticked already. */
    public String bookAddress() {
        return "/shelf/free?words=" + URLEncoder.encode(label.title(), StandardCharsets.UTF_8) + "&unit=" + id;
    }

    /** The newest picture of it. */
    public Optional<NotesView.Image> photograph() {
        return notes.notes().stream().flatMap(note -> note.images().stream()).findFirst();
    }

    /** Each amount with its day, and the sums by currency; a sum is empty where nothing is recorded. */
    public record Earnings(
            List<Amount> cost,
            String costSum,
            List<Amount> earned,
            String earnedSum,
            List<Amount> promised,
            String promisedSum) {
        public Earnings {
            promised = List.copyOf(promised);
            cost = List.copyOf(cost);
            earned = List.copyOf(earned);
        }

        static Earnings of(MoneySoFar money) {
            return new Earnings(
                    amounts(money.cost()),
                    sum(money.cost()),
                    amounts(money.earned()),
                    sum(money.earned()),
                    amounts(money.promised()),
                    sum(money.promised()));
        }

        private static List<Amount> amounts(List<MoneySoFar.Line> lines) {
            return lines.stream()
                    .map(line ->
                            new Amount(line.on().map(Words::day).orElse(""), line.what(), Words.money(line.amount())))
                    .toList();
        }

        private static String sum(List<MoneySoFar.Line> lines) {
            List<Money> totals = MoneySoFar.totals(lines);
            return totals.stream().map(Words::money).collect(Collectors.joining(" and "));
        }
    }

    /** One amount. */
    public record Amount(String on, String what, String amount) {}

    /** How much it was out, in words, and by week. */
    public record Use(List<Share> shares, YearPicture year) {
        public Use {
            shares = List.copyOf(shares);
        }
    }

    /** Days out of days available over a time. */
    public record Share(String over, String days, String percent) {
        static Share of(String over, Utilisation use) {
            String bench = use.bench().isEmpty() ? "" : ", " + use.bench().size() + " on the bench";
            return new Share(
                    over,
                    Words.days(use.out().size()) + " out of " + use.daysAvailable() + " available" + bench,
                    use.percent().map(percent -> percent + " %").orElse("never available"));
        }
    }

    /**
     * Something that happened.
     *
     * @param ahead it lies ahead
     * @param address of the booking that it belongs to; empty where there is none
     */
    public record Event(String when, boolean ahead, String what, String words, String who, String address) {
        static Event of(LifeEvent event, Map<dayglass.house.Person.Id, String> names, Instant now, ZoneId zone) {
            return new Event(
                    event.byDay() ? Words.day(event.at().atZone(zone).toLocalDate()) : Words.moment(event.at(), zone),
                    event.at().isAfter(now),
                    event.what(),
                    event.words(),
                    event.by()
                            .map(by -> names.getOrDefault(by, "person " + by.number()))
                            .orElse(""),
                    event.occupation().map(id -> "/bookings/" + id.number()).orElse(""));
        }
    }
}
