package dayglass.web.page.desk;

import dayglass.catalogue.PurchaseOffers;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Suppliers;
import dayglass.desk.rental.Desk;
import dayglass.house.Household;
import dayglass.inventory.Shelf;
import dayglass.inventory.booking.Whereabouts;
import dayglass.shelf.table.CardTables;
import dayglass.shelf.table.SupplierTables;
import java.time.Clock;
import java.time.LocalDate;

/** What the desk shows and does, from the features. */
public record DeskSources(
        Suppliers suppliers,
        RateCards cards,
        PurchaseOffers offers,
        Shelf shelf,
        Tables tables,
        Desk desk,
        Whereabouts whereabouts,
        Household household,
        Clock clock) {

    /** What comes in as tables. */
    public record Tables(CardTables cards, SupplierTables suppliers) {}

    /** Today on the house's clock. */
    public LocalDate today() {
        return clock.instant().atZone(household.settings().now().facts().zone()).toLocalDate();
    }
}
