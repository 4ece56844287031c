package dayglass.catalogue;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every rate card, past and present; no two of one supplier and name begin on the same day. */
public interface RateCards extends VersionedCollection<RateCard.Id, RateCard> {
    /** The cards of this supplier and name, the earliest first. */
    List<Stored<RateCard.Id, RateCard>> succession(Supplier.Id supplier, String name);

    /**
     * All that are in force on a day, of each supplier and name the latest that begins by then; by id, with those of their
     * rates that are for some things.
     *
     * @param things a model stands for its units too, and a unit for its model
     */
    List<Stored<RateCard.Id, RateCard>> inForce(LocalDate day, Set<Lets> things);

    /** All of a supplier that are in force on a day, by id. */
    List<Stored<RateCard.Id, RateCard>> inForce(Supplier.Id supplier, LocalDate day);

    /** Of the cards that succeed each other, the one in force on a day: the latest that begins by then. */
    default Optional<Stored<RateCard.Id, RateCard>> inForce(RateCard card, LocalDate day) {
        return succession(card.supplier(), card.name()).stream()
                .filter(each -> !each.facts().effectiveFrom().isAfter(day))
                .reduce((earlier, later) -> later);
    }
}
