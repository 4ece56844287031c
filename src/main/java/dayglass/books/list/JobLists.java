package dayglass.books.list;

import dayglass.base.DateRange;
import dayglass.base.Stored;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.post.Books;
import dayglass.inventory.Holding;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The lists of a job as they stand now. Orders that were taken back whole are left out. */
public record JobLists(Books books, Shelf shelf) {
    /** What is hired or bought for the job, in the order in which it was ordered. */
    public List<HireLine> hire(Job.Id job) {
        return orders(job).stream().map(HireLine::of).toList();
    }

    private List<Entries.Order> orders(Job.Id job) {
        List<Entries.Order> orders = books.entries().orders(job, Optional.empty());
        Set<Entry.Id> back = new HashSet<>(books.entries()
                .reversed(orders.stream().map(order -> order.commitment().id()).toList()));
        return orders.stream()
                .filter(order -> !back.contains(order.commitment().id()))
                .toList();
    }

    /** What is ordered for the job, then the units of the shelf that it considers, for the days of its schedule. */
    public List<InsuredLine> insured(Stored<Job.Id, Job> job) {
        List<InsuredLine> lines = new ArrayList<>();
        Set<String> tags = new HashSet<>();
        for (Entries.Order order : orders(job.id())) {
            Entry entry = order.commitment().entry();
            tags.add(entry.item().tag());
            lines.add(shelf.units()
                    .tagged(entry.item().tag())
                    .map(unit -> of(unit.facts(), entry.service()))
                    .orElseGet(() -> of(entry)));
        }
        DateRange shoot = job.facts().schedule().horizon();
        job.facts().sources().units().stream()
                .flatMap(unit -> shelf.units().find(unit).stream())
                .filter(unit -> tags.add(unit.facts().tag()))
                .forEach(unit -> lines.add(of(unit.facts(), shoot)));
        return List.copyOf(lines);
    }

    private static InsuredLine of(Entry order) {
        return new InsuredLine(
                order.item().description(),
                order.item().tag(),
                order.item().serial(),
                order.coding().supplier(),
                order.service(),
                Optional.empty(),
                Optional.empty());
    }

    private InsuredLine of(Unit unit, DateRange held) {
        String model = unit.model()
                .flatMap(shelf.models()::find)
                .map(found -> found.facts().fullName())
                .orElse("");
        return new InsuredLine(
                model,
                unit.tag(),
                unit.serial().orElse(""),
                unit.holding().fold(owned -> "", Holding.RentedIn::owner, Holding.Consigned::owner),
                held,
                unit.value().map(Unit.Value::amount),
                unit.value().map(Unit.Value::setOn));
    }
}
