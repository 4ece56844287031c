package dayglass.web.page.desk.rental;

import dayglass.base.Stored;
import dayglass.desk.price.PricedLine;
import dayglass.desk.price.PricedLine.RentedIn;
import dayglass.desk.rental.OrdersInBooks.InBooks;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.SupplierOrder;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A line that is rented in, as the rental's page shows it.
 *
 * @param at the priced line, from 0
 * @param number of the order; empty where it is not ordered
 * @param got when it was in the house, by whom; empty where it is not
 * @param entry of the books; empty where it stands in none
 */
public record RentedInLine(
        int at,
        String what,
        String days,
        String supplier,
        String cost,
        String number,
        String words,
        String ordered,
        String got,
        String entry) {

    /** @param stamp who and when, as it is shown */
    static List<RentedInLine> of(
            Stored<Rental.Id, Rental> rental,
            Map<Integer, InBooks> books,
            Function<SupplierOrder.Noted, String> stamp) {
        List<PricedLine> lines = rental.facts().promise().price().lines();
        List<RentedInLine> rows = new ArrayList<>();
        for (int at = 0; at < lines.size(); at++) {
            PricedLine line = lines.get(at);
            Optional<SupplierOrder> order = rental.facts().orderOf(at);
            Optional<InBooks> entry = Optional.ofNullable(books.get(at));
            if (line.rentedIn().isPresent()) {
                RentedIn from = line.rentedIn().get();
                rows.add(new RentedInLine(
                        at,
                        line.what(),
                        Words.dates(line.dates()),
                        from.supplier(),
                        Words.money(from.billed()),
                        order.map(SupplierOrder::number).orElse(""),
                        order.map(SupplierOrder::words).orElse(""),
                        order.map(SupplierOrder::ordered).map(stamp).orElse(""),
                        order.flatMap(SupplierOrder::got).map(stamp).orElse(""),
                        entry.map(each -> String.valueOf(each.entry())).orElse("")));
            }
        }
        return rows;
    }

    public boolean isOrdered() {
        return !number.isEmpty();
    }

    public boolean isGot() {
        return !got.isEmpty();
    }
}
