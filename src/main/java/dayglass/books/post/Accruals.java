package dayglass.books.post;

import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Kind;
import dayglass.job.Job;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was used up to the end of a period and is not invoiced: of each order the share of its chargeable days up to then,
 * less what was invoiced on it. An accrual takes as much out of what is committed, so that no sum stands in both.
 */
final class Accruals {
    private static final String NOTE = "used and not invoiced by ";

    private Accruals() {}

    /**
     * The entries that a close posts, dated its last day.
     *
     * @param orders as they stood at the end of that day
     */
    static List<Entry> at(LocalDate lastDay, Job job, List<Entries.Order> orders) {
        return orders.stream()
                .filter(order -> order.commitment().entry().amounts().net().signum() > 0)
                .flatMap(order -> of(order, lastDay, job).stream().flatMap(missing -> entries(order, missing, lastDay)))
                .toList();
    }

    private static Optional<Amounts> of(Entries.Order order, LocalDate lastDay, Job job) {
        Entry entry = order.commitment().entry();
        List<LocalDate> days = ChargeableDays.of(entry.service(), job);
        long until = days.stream().filter(day -> !day.isAfter(lastDay)).count();
        Amounts used = entry.amounts().share(BigInteger.valueOf(until), BigInteger.valueOf(days.size()));
        Amounts invoiced = entry.amounts().minus(order.open()).minus(order.accrued());
        Amounts unpaid = used.minus(invoiced);
        Amounts most = order.open().plus(order.accrued());
        Amounts wanted = unpaid.baseNet().signum() <= 0
                ? Amounts.zero(unpaid.net().currency(), unpaid.baseNet().currency())
                : unpaid.baseNet().compareTo(most.baseNet()) > 0 ? most : unpaid;
        return Optional.of(wanted.minus(order.accrued())).filter(missing -> !missing.isZero());
    }

    private static Stream<Entry> entries(Entries.Order order, Amounts missing, LocalDate lastDay) {
        Entry accrued = order.commitment()
                .entry()
                .with(Kind.ACCRUAL, missing, Entry.Links.to(order.commitment().id()))
                .on(lastDay)
                .noted(NOTE + lastDay);
        return Stream.of(accrued, accrued.with(Kind.COMMITMENT, missing.negated(), accrued.links()));
    }
}
