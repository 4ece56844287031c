package dayglass.catalogue;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Every rate card, past and present; no two of one supplier and name begin on the same day. */
public interface RateCards extends VersionedCollection<RateCard.Id, RateCard> {
    /** The cards of this supplier and name, the earliest first. */
    List<Stored<RateCard.Id, RateCard>> succession(Supplier.Id supplier, String name);

    /** Of every card of a supplier that is not succeeded yet on a day: those in force, one a name. */
    default List<Stored<RateCard.Id, RateCard>> inForce(Supplier.Id supplier, LocalDate day) {
        return list(Optional.empty(), Integer.MAX_VALUE).stream()
                .filter(card -> card.facts().supplier().equals(supplier))
                .filter(card -> inForce(card.facts(), day)
                        .filter(now -> now.id().equals(card.id()))
                        .isPresent())
                .toList();
    }

    /** Of the cards that succeed each other, the one in force on a day: the latest that begins by then. */
    default Optional<Stored<RateCard.Id, RateCard>> inForce(RateCard card, LocalDate day) {
        return succession(card.supplier(), card.name()).stream()
                .filter(each -> !each.facts().effectiveFrom().isAfter(day))
                .reduce((earlier, later) -> later);
    }
}
