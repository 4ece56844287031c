package dayglass.web.page.shelf;

import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.life.LettingIncome;
import dayglass.inventory.life.UnitArchive;
import dayglass.inventory.life.UnitLife;
import dayglass.inventory.life.UnitRecords;
import dayglass.inventory.service.ServiceHistory;
import dayglass.inventory.service.ServicePlans;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** One unit: where it is, what it looks like, what lies ahead, what it cost and earned, and its life. */
public final class UnitPage {
    private final UnitArchive archive;
    private final LettingIncome letting;
    private final ServicePlans plans;
    private final Household household;
    private final Html html;

    /** Where it lies what a unit went through, and what tells what it earned and when it is due. */
    public record Sources(UnitArchive archive, LettingIncome letting, ServicePlans plans, Household household) {}

    public UnitPage(Sources sources, Html html) {
        this.archive = sources.archive();
        this.letting = sources.letting();
        this.plans = sources.plans();
        this.household = sources.household();
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/shelf/units/{id}", this::show);
    }

    private void show(Context ctx) {
        Stored<Unit.Id, Unit> unit = Requests.find(ctx, archive.shelf().units(), Unit.Id::new);
        House house = household.settings().now().facts();
        html.render(
                ctx,
                "unit.jte",
                Map.of("page", sheet(unit, house, archive.whereabouts().clock().instant())));
    }

    private UnitSheet sheet(Stored<Unit.Id, Unit> unit, House house, Instant now) {
        UnitRecords records = archive.of(unit);
        UnitLife life = UnitLife.of(records, letting.of(unit.id()), house, now);
        ZoneId zone = house.zone();
        LocalDate today = now.atZone(zone).toLocalDate();
        Map<Person.Id, String> names = household.names();
        UnitNow state = new UnitNow(records, now, zone);
        return new UnitSheet(
                unit.id().number(),
                UnitView.of(archive.shelf(), unit).label(),
                unit.facts().departure().isPresent(),
                state.words(),
                NotesView.of(unit.id(), records.notes(), household),
                service(unit.id(), records, house, now),
                ahead(unit.id(), state, now, zone),
                UnitSheet.Earnings.of(life.figures().money()),
                new UnitSheet.Use(
                        List.of(
                                UnitSheet.Share.of(
                                        "in the last 365 days", life.figures().lastYear()),
                                UnitSheet.Share.of(
                                        "since it came", life.figures().everSince())),
                        YearPicture.of(life.figures().lastYear(), today)),
                life.timeline().stream()
                        .map(event -> UnitSheet.Event.of(event, names, now, zone))
                        .toList());
    }

    private UnitSheet.Service service(Unit.Id unit, UnitRecords records, House house, Instant now) {
        return plans.of(unit)
                .map(plan -> new UnitSheet.Service(
                        new ServiceHistory(
                                        plan.facts(),
                                        records.occupations().stream()
                                                .map(Stored::facts)
                                                .toList())
                                .due(house, now)
                                .dueOn()
                                .map(day ->
                                        (day.isBefore(now.atZone(house.zone()).toLocalDate())
                                                        ? "Service is overdue since "
                                                        : "Service is due on ")
                                                + Words.day(day))
                                .orElse("Service does not fall due within what is booked"),
                        "/bench/plans/" + plan.id().number()))
                .orElse(new UnitSheet.Service("No service plan", "/bench/plans/new?unit=" + unit.number()));
    }

    private record Entry(Instant from, UnitSheet.Ahead shown) {}

    private List<UnitSheet.Ahead> ahead(Unit.Id unit, UnitNow state, Instant now, ZoneId zone) {
        List<Entry> entries = new ArrayList<>();
        for (Stored<Occupation.Id, Occupation> each : state.ahead()) {
            Occupation of = each.facts();
            entries.add(new Entry(
                    of.stay().out(),
                    new UnitSheet.Ahead(
                            "/bookings/" + each.id().number(),
                            switch (of.kind()) {
                                case BOOKING -> of.handling().isOut() ? "out" : "booked";
                                case BENCH -> "bench";
                                case ABSENCE -> "away";
                            },
                            of.subject(),
                            span(of.stay().out(), of.stay().back(), zone))));
        }
        for (Stored<Hold.Id, Hold> each : Requests.all(archive.whereabouts().holds())) {
            Hold hold = each.facts();
            if (hold.unit().equals(unit) && hold.expires().isAfter(now)) {
                entries.add(new Entry(
                        hold.out(),
                        new UnitSheet.Ahead(
                                "/holds/" + each.id().number(),
                                "hold " + hold.rank(),
                                hold.subject(),
                                span(hold.out(), hold.back(), zone) + "; lapses "
                                        + Words.moment(hold.expires(), zone))));
            }
        }
        return entries.stream()
                .sorted(Comparator.comparing(Entry::from))
                .map(Entry::shown)
                .toList();
    }

    private static String span(Instant from, Instant until, ZoneId zone) {
        return Words.moment(from, zone) + " to " + Words.moment(until, zone);
    }
}
