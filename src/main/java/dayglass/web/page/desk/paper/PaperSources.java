package dayglass.web.page.desk.paper;

import dayglass.desk.price.PricedLine;
import dayglass.desk.quote.Customer;
import dayglass.desk.quote.Promise;
import dayglass.desk.rental.Desk;
import dayglass.desk.rental.Rental;
import dayglass.house.House;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.web.page.picture.Words;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the papers are made from, and how they say alike what all of them say. */
public record PaperSources(Desk desk, Shelf shelf, Household household) {
    House house() {
        return household.settings().now().facts();
    }

    Heading heading(String title, List<Heading.Fact> facts) {
        return new Heading(title, house().name(), facts);
    }

    String person(Person.Id id) {
        Map<Person.Id, String> names = household.names();
        return Optional.ofNullable(names.get(id)).orElse("person " + id.number());
    }

    /** On the house's clock. */
    String moment(Instant moment) {
        return Words.moment(moment, house().zone());
    }

    static List<Heading.Fact> customer(Customer customer) {
        return List.of(
                new Heading.Fact("For", customer.name()),
                new Heading.Fact("Contact", customer.contact()),
                new Heading.Fact("Production", customer.production()));
    }

    /** The days with what they are used for, as the price counts them. */
    static Heading.Fact days(Promise promise) {
        return new Heading.Fact("Days of use", daysOf(promise));
    }

    /** The same of a rental, with the last day to which any of it is kept longer. */
    static Heading.Fact days(Rental rental) {
        return new Heading.Fact(
                "Days of use",
                daysOf(rental.promise())
                        + rental.keptTo()
                                .map(last -> "; kept to " + Words.date(last))
                                .orElse(""));
    }

    private static String daysOf(Promise promise) {
        return promise.price().asked().schedule().spans().stream()
                .map(span -> span.use().word() + " " + Words.dates(span.dates()) + " ("
                        + Words.days(span.dates().days()) + ")")
                .collect(Collectors.joining("; "));
    }

    /** Below a line that is let: its units by tag and serial, its days, and how its hire comes about. */
    List<String> notes(PricedLine line) {
        String days = Words.dates(line.dates()) + " (" + Words.days(line.dates().days()) + ")";
        String off = line.discount().signum() == 0
                ? ""
                : "; discount " + line.off().value().stripTrailingZeros().toPlainString() + " % of the hire";
        if (line.rentedIn().isPresent()) {
            // How its hire comes about is what the supplier asks, which is the house's affair.
            return List.of("rented in for you; " + days + off);
        }
        String units = line.units().stream()
                .flatMap(unit -> shelf.units().find(unit).stream())
                .map(unit -> named(unit.facts(), line.what()))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        return List.of((units.isEmpty() ? "" : units + "; ") + days + "; hire: " + line.how() + off);
    }

    /** Its tag, unless the line says it already, and its serial. */
    private static String named(Unit unit, String line) {
        String tag = line.contains("(" + unit.tag() + ")") ? "" : unit.tag();
        return unit.serial()
                .map(serial -> tag.isEmpty() ? "serial " + serial : tag + " (serial " + serial + ")")
                .orElse(tag);
    }
}
