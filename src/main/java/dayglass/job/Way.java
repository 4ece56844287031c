package dayglass.job;

import dayglass.catalogue.LensModel;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One way of getting a job's picture.
 *
 * @param name its own among the job's ways
 * @param pieces at least one, no two from one source
 */
public record Way(Job.Id job, String name, String note, List<Piece> pieces) {
    public Way {
        pieces = List.copyOf(pieces);
    }

    /** The number of a way. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * What comes from one source.
     *
     * @param glass that it brings at once; where it is empty, a unit brings its own model, a set those of its members,
     *     and of anything else nothing is known
     */
    public record Piece(Source source, List<Brought> glass) {
        public Piece {
            glass = List.copyOf(glass);
        }
    }

    /**
     * Some glass of one kind.
     *
     * @param lens or the taking lens
     * @param front an attachment or filter before it
     */
    public record Brought(LensModel.Id lens, Optional<LensModel.Id> front, int count) {}

    /** Where a piece comes from. */
    public sealed interface Source {
        /** The four cases, each handled. */
        default <R> R fold(
                Function<Bought, R> bought,
                Function<Rented, R> rented,
                Function<OwnUnit, R> unit,
                Function<OwnSet, R> set) {
            if (this instanceof Bought it) {
                return bought.apply(it);
            }
            if (this instanceof Rented it) {
                return rented.apply(it);
            }
            return this instanceof OwnUnit it ? unit.apply(it) : set.apply((OwnSet) this);
        }
    }

    public record Bought(PurchaseOffer.Id offer) implements Source {}

    /**
     * One rate of a card.
     *
     * @param card any of its succession
     */
    public record Rented(RateCard.Id card, String rate) implements Source {}

    public record OwnUnit(Unit.Id unit) implements Source {}

    public record OwnSet(LensSet.Id set) implements Source {}
}
