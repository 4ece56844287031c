package dayglass.books.gear;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.books.gear.GearEntries.Deed;
import dayglass.books.post.Books;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.job.Job;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Posts what is written off, what gear earns and what it costs, and what comes of its going. */
public record GearBooks(Books books, GearList gear, Units units) {

    /**
     * Something that was had or paid.
     *
     * @param net above zero either way
     * @param with whom; may be empty
     */
    public record Paper(LocalDate date, Money net, String with, String description) {}

    /** Writes off all gear of a job up to the end of a day: each by what is missing, which may be less than nothing. */
    public Outcome<List<Posted>> writeOff(Job.Id job, LocalDate through) {
        return books.house().transactions().atomically(() -> {
            List<Posted> all = new ArrayList<>();
            for (Stored<Gear.Id, Gear> each : gear.of(job)) {
                GearEntries entries = gear.entries(each);
                Outcome<List<Posted>> posted = entries.gone() ? Outcome.done(List.of()) : writeOff(each, through);
                if (posted instanceof Outcome.Refused<List<Posted>> refused) {
                    return refused;
                }
                posted.map(all::addAll);
            }
            return all.isEmpty() ? cannot("Nothing is left to write off up to that day.") : Outcome.done(all);
        });
    }

    private Outcome<List<Posted>> writeOff(Stored<Gear.Id, Gear> stored, LocalDate through) {
        GearEntries entries = gear.entries(stored);
        Gear facts = stored.facts();
        Money missing = facts.writtenOffThrough(through).minus(entries.sum(Deed.DEPRECIATION));
        if (missing.signum() == 0) {
            return Outcome.done(List.of());
        }
        LocalDate from = entries.through()
                .map(day -> day.plusDays(1))
                .filter(day -> !day.isAfter(through))
                .orElse(facts.inService().isAfter(through) ? through : facts.inService());
        Paper paper = new Paper(through, missing, "", "depreciation");
        Entry entry = entry(facts, paper).serving(DateRange.inclusive(from, through));
        return post(
                stored.id(),
                Deed.DEPRECIATION,
                List.of(entry.noted(facts.writtenOff().method())));
    }

    /** Enters what letting brought, which lowers the job's cost. */
    public Outcome<List<Posted>> let(Gear.Id id, Paper paper) {
        return enter(
                id, Deed.LETTING, new Paper(paper.date(), paper.net().times(-1), paper.with(), paper.description()));
    }

    /** Enters what service cost. */
    public Outcome<List<Posted>> service(Gear.Id id, Paper paper) {
        return enter(id, Deed.SERVICE, paper);
    }

    private Outcome<List<Posted>> enter(Gear.Id id, Deed deed, Paper paper) {
        return here(id, stored -> post(id, deed, List.of(entry(stored.facts(), paper))));
    }

    /**
     * Takes gear out of the books: writes it off up to the day, then posts what it still stood for and what was had for
     * it; together they are the loss, or below zero the gain.
     */
    public Outcome<List<Posted>> dispose(Gear.Id id, Paper paper) {
        return here(
                id,
                stored -> writeOff(stored, paper.date()).then(written -> {
                    Money left = gear.entries(stored).bookValue();
                    Money result = left.minus(paper.net());
                    String why = paper.description() + ": "
                            + (result.signum() == 0
                                    ? "neither gain nor loss"
                                    : (result.signum() > 0 ? "loss of " + result : "gain of " + result.times(-1)));
                    Paper value = new Paper(paper.date(), left, "", "what it stood for in the books");
                    Paper had = new Paper(paper.date(), paper.net().times(-1), paper.with(), "had for it");
                    return post(
                                    id,
                                    Deed.DISPOSAL,
                                    List.of(
                                            entry(stored.facts(), value).noted(why),
                                            entry(stored.facts(), had).noted(why)))
                            .map(posted -> {
                                List<Posted> all = new ArrayList<>(written);
                                all.addAll(posted);
                                return List.copyOf(all);
                            });
                }));
    }

    private Outcome<List<Posted>> here(
            Gear.Id id, java.util.function.Function<Stored<Gear.Id, Gear>, Outcome<List<Posted>>> work) {
        return books.house().transactions().atomically(() -> {
            Optional<Stored<Gear.Id, Gear>> found = gear.find(id);
            if (found.isEmpty()) {
                return Outcome.refused(Problem.Code.NOT_FOUND, "There is no gear with the id " + id.number() + ".");
            }
            return gear.entries(found.get()).gone()
                    ? cannot("It is gone from the books already: take that back first.")
                    : work.apply(found.get());
        });
    }

    Outcome<List<Posted>> post(Gear.Id id, Deed deed, List<Entry> entries) {
        return books.post().post(entries).map(posted -> {
            gear.link(id, deed, posted);
            return posted;
        });
    }

    Entry entry(Gear facts, Paper paper) {
        Unit unit = units.find(facts.unit()).orElseThrow().facts();
        Money none = Money.zero(paper.net().currency());
        return new Entry(
                Kind.ACTUAL,
                facts.job(),
                paper.date(),
                DateRange.inclusive(paper.date(), paper.date()),
                new Entry.Coding(facts.costCode(), "", paper.with()),
                new Entry.Item(
                        unit.tag() + ", " + paper.description(),
                        unit.tag(),
                        unit.serial().orElse(""),
                        BigDecimal.ONE,
                        paper.net()),
                new Entry.Sum(new Amounts(paper.net(), none, paper.net(), none), "", Exchange.none(paper.date())),
                Entry.Papers.NONE,
                Entry.Links.NONE);
    }

    private static <T> Outcome<T> cannot(String why) {
        return Outcome.refused(Problem.Code.CANNOT_BE_DONE, why);
    }
}
