package dayglass.web.page.bench;

import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.Whereabouts;
import dayglass.inventory.service.DueList;
import dayglass.inventory.service.ServicePlans;
import dayglass.web.page.Html;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The bench: what falls due and which visits are open. */
public final class BenchPages {
    private static final int SOON_WEEKS = 4;
    private static final Duration LOOKED_BACK = Duration.ofDays(366);
    private static final int MOST_VISITS = 10_000;

    private final DueList dueList;
    private final Whereabouts whereabouts;
    private final Units units;
    private final Html html;
    private final PlanPages plans;

    /** What falls due, and the plans that say so. */
    public record Service(ServicePlans plans, DueList dueList) {}

    public BenchPages(Service service, Whereabouts whereabouts, Units units, Html html) {
        this.dueList = service.dueList();
        this.whereabouts = whereabouts;
        this.units = units;
        this.html = html;
        this.plans = new PlanPages(service.plans(), units, html);
    }

    /** Rows under one heading. */
    public record Group(String title, List<DueRow> rows) {
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /** A visit that is not finished. */
    public record Visit(long id, long unit, String tag, String subject, String when, String state) {}

    public void route(RoutesConfig routes) {
        routes.get("/bench", this::bench);
        plans.route(routes);
    }

    private void bench(Context ctx) {
        Instant now = whereabouts.clock().instant();
        ZoneId zone = whereabouts.settings().now().facts().zone();
        LocalDate today = now.atZone(zone).toLocalDate();
        List<DueRow> rows = dueList.rows(now).stream()
                .map(row -> DueRow.of(row, today, zone))
                .toList();
        html.render(
                ctx,
                "bench.jte",
                Map.of("groups", groups(rows, today), "visits", visits(now, zone), "today", Words.date(today)));
    }

    private static List<Group> groups(List<DueRow> rows, LocalDate today) {
        LocalDate soon = today.plusWeeks(SOON_WEEKS);
        Group overdue = new Group(
                "Overdue", rows.stream().filter(row -> row.isDueBefore(today)).toList());
        Group next = new Group(
                "In the next four weeks",
                rows.stream()
                        .filter(row -> !row.isDueBefore(today) && row.isDueBefore(soon))
                        .toList());
        Group later = new Group(
                "Later",
                rows.stream()
                        .filter(row -> row.dueOn().isPresent() && !row.isDueBefore(soon))
                        .toList());
        Group open = new Group(
                "Not within what is booked",
                rows.stream().filter(row -> row.dueOn().isEmpty()).toList());
        List<Group> all = new ArrayList<>(List.of(overdue, next, later, open));
        all.removeIf(group -> group.rows().isEmpty());
        return all;
    }

    private List<Visit> visits(Instant now, ZoneId zone) {
        Occupations.Which which = new Occupations.Which(
                Optional.of(Kind.BENCH), Optional.empty(), Optional.of(now.minus(LOOKED_BACK)), Optional.empty());
        return whereabouts.occupations().list(which, Optional.empty(), MOST_VISITS).stream()
                .filter(visit -> !visit.facts().cancelled()
                        && visit.facts().bench().filter(BenchWork::done).isEmpty())
                .sorted(Comparator.comparing(visit -> visit.facts().stay().out()))
                .map(visit -> visit(visit, now, zone))
                .toList();
    }

    private Visit visit(Stored<Occupation.Id, Occupation> visit, Instant now, ZoneId zone) {
        Occupation facts = visit.facts();
        Unit.Id unit = facts.unit();
        boolean begun = !facts.stay().out().isAfter(now);
        boolean over = !facts.stay().back().isAfter(now);
        return new Visit(
                visit.id().number(),
                unit.number(),
                units.find(unit).map(found -> found.facts().tag()).orElse(""),
                facts.subject(),
                Words.moment(facts.stay().out(), zone) + " to "
                        + Words.moment(facts.stay().back(), zone),
                over ? "its time is over: say what was done" : begun ? "on the bench" : "planned");
    }
}
