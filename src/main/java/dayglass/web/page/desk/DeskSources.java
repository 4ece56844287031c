package dayglass.web.page.desk;

import dayglass.catalogue.PurchaseOffers;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Suppliers;
import dayglass.desk.rental.Desk;
import dayglass.house.Household;
import dayglass.inventory.Shelf;
import dayglass.inventory.booking.Whereabouts;
import dayglass.shelf.table.CardTables;
import java.time.Clock;
import java.time.LocalDate;

/** What the desk shows and does, from the features. */
public record DeskSources(
        Suppliers suppliers,
        RateCards cards,
        PurchaseOffers offers,
        Shelf shelf,
        CardTables tables,
        Desk desk,
        Whereabouts whereabouts,
        Household household,
        Clock clock) {

    /** Today on the house's clock. */
    public LocalDate today() {
        return clock.instant().atZone(household.settings().now().facts().zone()).toLocalDate();
    }
}
