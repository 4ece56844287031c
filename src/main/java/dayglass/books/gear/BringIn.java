package dayglass.books.gear;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.entry.Posted;
import dayglass.books.gear.GearEntries.Line;
import dayglass.books.gear.GearEntries.Origin;
import dayglass.books.gear.GearEntries.Source;
import dayglass.house.HouseSettings;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.life.LettingIncome;
import dayglass.inventory.life.Lettings;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Brings in what settled rentals earned with gear and what finished visits to the bench cost. Each entry remembers where it
 * came from, and what is posted is always what is missing of that: never a sum twice, and what was taken back, or is told
 * otherwise since, is made good by the next time. What was before the gear's first day of service is not these books'.
 */
public record BringIn(GearBooks gear, LettingIncome lettings, Occupations occupations, HouseSettings settings) {

    /**
     * What would be posted.
     *
     * @param day of the fact; the entry bears the day on which it is brought in
     * @param missing as it would stand in the books, income below zero
     */
    public record Item(Stored<Gear.Id, Gear> gear, Source source, LocalDate day, String description, Money missing) {
        /** Nothing is converted here: what is in another currency than the books is entered by hand, with its rate. */
        public boolean postable() {
            return missing.currency().equals(gear.facts().price().currency());
        }
    }

    private record Fact(LocalDate day, String description, Money amount) {}

    /** What is missing of facts up to a day, gear by gear. */
    public List<Item> missing(Job.Id job, LocalDate through) {
        List<Item> items = new ArrayList<>();
        for (Stored<Gear.Id, Gear> each : gear.gear().of(job)) {
            GearEntries entries = gear.gear().entries(each);
            if (!entries.gone()) {
                items.addAll(missing(each, entries, through));
            }
        }
        return items;
    }

    private List<Item> missing(Stored<Gear.Id, Gear> of, GearEntries entries, LocalDate through) {
        Map<Source, Fact> facts = facts(of.facts().unit());
        Map<Source, List<Line>> posted = entries.broughtIn();
        posted.forEach((source, lines) -> facts.computeIfAbsent(source, gone -> noMore(lines)));
        List<Item> items = new ArrayList<>();
        facts.forEach((source, fact) -> {
            List<Line> lines = posted.getOrDefault(source, List.of());
            Money missing = lines.stream()
                    .map(line -> line.posted().entry().amounts().baseNet())
                    .reduce(fact.amount(), Money::minus);
            boolean ours =
                    !fact.day().isBefore(of.facts().inService()) && !fact.day().isAfter(through);
            if (ours && missing.signum() != 0) {
                String words = fact.description() + (lines.isEmpty() ? "" : ", set right");
                items.add(new Item(of, source, fact.day(), words, missing));
            }
        });
        return items;
    }

    private static Fact noMore(List<Line> lines) {
        Posted first = lines.get(0).posted();
        return new Fact(
                first.entry().service().from(),
                "no more told: entry " + first.id().number(),
                Money.zero(first.entry().amounts().baseNet().currency()));
    }

    private Map<Source, Fact> facts(Unit.Id unit) {
        Map<Source, Fact> facts = new LinkedHashMap<>();
        for (Lettings.Share share : lettings.of(unit).shares()) {
            if (share.settled()) {
                facts.put(
                        new Source(Origin.RENTAL, share.rental()),
                        new Fact(
                                share.on(),
                                "let on " + share.words(),
                                share.amount().times(-1)));
            }
        }
        Occupations.Which visits = new Occupations.Which(
                Optional.of(Occupation.Kind.BENCH), Optional.of(unit), Optional.empty(), Optional.empty());
        for (Stored<Occupation.Id, Occupation> visit : occupations.list(visits, Optional.empty(), Integer.MAX_VALUE)) {
            cost(visit.facts())
                    .ifPresent(cost -> facts.put(
                            new Source(Origin.BENCH, visit.id().number()),
                            new Fact(
                                    day(visit.facts()),
                                    "bench: " + visit.facts().subject(),
                                    cost)));
        }
        return facts;
    }

    private static Optional<Money> cost(Occupation visit) {
        return visit.cancelled()
                ? Optional.empty()
                : visit.bench().filter(BenchWork::done).flatMap(BenchWork::cost);
    }

    /** The day on which it went to the bench, as the unit's own page tells it. */
    private LocalDate day(Occupation visit) {
        return visit.stay().out().atZone(settings.now().facts().zone()).toLocalDate();
    }

    /** Posts what is missing up to a day, dated that day; refused where nothing is. */
    public Outcome<List<Posted>> bringIn(Job.Id job, LocalDate through) {
        return gear.books().house().transactions().atomically(() -> {
            List<Posted> all = new ArrayList<>();
            for (Item item : missing(job, through)) {
                Outcome<List<Posted>> posted = item.postable() ? post(item, through) : Outcome.done(List.of());
                if (posted instanceof Outcome.Refused<List<Posted>> refused) {
                    return refused;
                }
                posted.map(all::addAll);
            }
            return all.isEmpty()
                    ? Outcome.refused(
                            Problem.Code.CANNOT_BE_DONE,
                            "Nothing is missing up to that day: what the desk and the bench tell is in the books.")
                    : Outcome.done(List.copyOf(all));
        });
    }

    private Outcome<List<Posted>> post(Item item, LocalDate date) {
        Gear facts = item.gear().facts();
        GearBooks.Paper paper = new GearBooks.Paper(date, item.missing(), "", item.description());
        return gear.post(
                        item.gear().id(),
                        item.source().origin().deed(),
                        List.of(gear.entry(facts, paper).serving(DateRange.inclusive(item.day(), item.day()))))
                .map(posted -> {
                    posted.forEach(each -> gear.gear().cameFrom(item.source(), each));
                    return posted;
                });
    }
}
