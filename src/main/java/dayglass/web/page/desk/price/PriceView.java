package dayglass.web.page.desk.price;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.catalogue.Mark;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.price.PricedLine;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A price as it is read out.
 *
 * @param days the days of use, in words
 * @param sums what the total is made of, each with its amount
 * @param shorts what is missing, in sentences
 */
public record PriceView(
        String total,
        String days,
        List<Row> rows,
        List<Sum> sums,
        List<String> shorts,
        String replacementValue,
        List<String> withoutValue) {
    public PriceView {
        rows = List.copyOf(rows);
        sums = List.copyOf(sums);
        shorts = List.copyOf(shorts);
        withoutValue = List.copyOf(withoutValue);
    }

    /** A priced line. */
    public record Row(
            String what,
            List<UnitLink> units,
            String dates,
            String how,
            List<Sum> sums,
            String total,
            String rentedIn) {
        public Row {
            units = List.copyOf(units);
            sums = List.copyOf(sums);
        }
    }

    /** A unit by its tag. */
    public record UnitLink(long id, String tag) {}

    /** An amount and what it is for. */
    public record Sum(String name, String amount) {}

    /** As it is read out of a price. */
    public static PriceView of(PackagePrice price, Shelf shelf) {
        DateRange horizon = price.asked().schedule().horizon();
        return new PriceView(
                Words.money(price.total()),
                said(price.asked().schedule()),
                price.lines().stream().map(line -> row(line, horizon, shelf)).toList(),
                sums(price),
                shorts(price, horizon),
                Words.money(price.replacementValue()),
                price.withoutValue());
    }

    /** {@code Wed 7 Apr to Fri 16 Apr 2027, 8 days of use}. */
    static String said(Schedule schedule) {
        DateRange horizon = schedule.horizon();
        int used = schedule.spans().stream()
                .filter(span -> span.use() != DayUse.DARK)
                .mapToInt(span -> span.dates().days())
                .sum();
        String days = used == 1 ? "one day of use" : used + " days of use";
        return horizon.days() == 1
                ? Words.date(horizon.from()) + ", " + days
                : Words.date(horizon.from()) + " to " + Words.date(horizon.lastDay()) + ", " + days;
    }

    private static Row row(PricedLine line, DateRange horizon, Shelf shelf) {
        List<Sum> sums = new ArrayList<>();
        sums.add(new Sum("hire by the card", Words.amount(line.hire())));
        add(
                sums,
                "discount of " + line.off().value().stripTrailingZeros().toPlainString() + " %",
                line.discount().times(-1));
        add(sums, "trip", line.trip());
        line.addOns().forEach(addOn -> add(sums, addOn.name(), addOn.amount()));
        return new Row(
                line.what(),
                line.units().stream().map(id -> unit(id, shelf)).toList(),
                line.dates().equals(horizon) ? "" : Words.dates(line.dates()),
                line.how(),
                sums,
                Words.money(line.total()),
                line.rentedIn().map(from -> rentedIn(line, from)).orElse(""));
    }

    private static String rentedIn(PricedLine line, PricedLine.RentedIn from) {
        Money margin = line.margin().orElseThrow();
        String kept = margin.signum() < 0
                ? "the house loses " + Words.money(margin.times(-1))
                : "the house keeps " + Words.money(margin);
        return "Sub-rental from " + from.supplier() + ": costs the house " + Words.money(from.cost())
                + from.foreign()
                        .map(foreign -> " (" + Words.money(foreign.cost()) + " at "
                                + foreign.rate().toPlainString() + ")")
                        .orElse("")
                + ", " + kept
                + " before taxes.";
    }

    private static UnitLink unit(Unit.Id id, Shelf shelf) {
        return new UnitLink(
                id.number(),
                shelf.units().find(id).map(unit -> unit.facts().tag()).orElse("a unit that is gone"));
    }

    private static List<Sum> sums(PackagePrice price) {
        List<Sum> sums = new ArrayList<>();
        sums.add(new Sum("hire by the card", Words.amount(price.hire())));
        add(sums, "discount", price.discount().times(-1));
        add(sums, "trips", price.trips());
        for (Mark mark : List.of(Mark.CHARGE, Mark.WAIVER, Mark.TAX)) {
            price.addOns(mark).forEach((name, amount) -> add(sums, name, amount));
        }
        return sums;
    }

    private static void add(List<Sum> sums, String name, Money amount) {
        if (amount.signum() != 0) {
            sums.add(new Sum(name, Words.amount(amount)));
        }
    }

    /** One sentence for all that are missing alike. */
    private static List<String> shorts(PackagePrice price, DateRange horizon) {
        Map<PackagePrice.Missing, Integer> counts = new LinkedHashMap<>();
        price.shorts().forEach(missing -> counts.merge(missing, 1, Integer::sum));
        List<String> sentences = new ArrayList<>();
        counts.forEach((missing, count) -> sentences.add(missing(missing, count, horizon)));
        return sentences;
    }

    private static String missing(PackagePrice.Missing missing, int count, DateRange horizon) {
        String when = missing.dates().equals(horizon)
                ? ""
                : (missing.dates().days() == 1 ? " on " : " from ") + Words.dates(missing.dates());
        String what = (count == 1 ? "" : count + " × ")
                + missing.what().substring(0, 1).toUpperCase(Locale.ROOT)
                + missing.what().substring(1)
                + when;
        if (missing.rentedIn()) {
            return what + " is not to be had from the shelf then: it is rented in, as a line below says."
                    + (missing.remedy().isEmpty() ? "" : " " + missing.remedy());
        }
        return what + " is not to be had from the shelf then"
                + (missing.remedy().isEmpty()
                        ? ", as it is not free, and no supplier's card in force has it."
                        : ". " + missing.remedy());
    }

    /** Whether nothing of what was asked for can be had. */
    public boolean nothing() {
        return rows.isEmpty();
    }
}
