package dayglass.books.list;

import dayglass.base.Money;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;

/**
 * An order of a job with what came of it.
 *
 * @param open neither invoiced nor accrued, net and in the job's currency
 */
public record HireLine(Entry order, Money open) {
    static HireLine of(Entries.Order order) {
        return new HireLine(order.commitment().entry(), order.open().baseNet());
    }

    public long days() {
        return order.service().days();
    }

    /** What was invoiced or accrued on it, net and in the job's currency. */
    public Money used() {
        return order.amounts().baseNet().minus(open);
    }
}
