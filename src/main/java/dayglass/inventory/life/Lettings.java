package dayglass.inventory.life;

import dayglass.base.Money;
import dayglass.inventory.booking.Occupation;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The lettings of one unit.
 *
 * @param shares what each brings it, in the order of the rentals
 * @param bookings those that were lettings, and so no use of the house's own
 */
public record Lettings(List<Share> shares, Set<Occupation.Id> bookings) {
    public static final Lettings NONE = new Lettings(List.of(), Set.of());

    public Lettings {
        shares = List.copyOf(shares);
        bookings = Set.copyOf(bookings);
    }

    /**
     * A unit's share of one rental.
     *
     * @param rental the number that the desk gave it
     * @param words which rental, and whose: {@code rental 12, Nell Orrin}
     * @param on the day on which it was settled, else the last day of use that is promised
     * @param booking one of the unit's on it
     * @param settled it is earned; otherwise it is promised
     */
    public record Share(
            long rental, String words, LocalDate on, Occupation.Id booking, Money amount, boolean settled) {}

    /** What settled rentals brought. */
    public List<MoneySoFar.Line> earned() {
        return lines(true);
    }

    /** What rentals that are not settled yet will bring as they stand. */
    public List<MoneySoFar.Line> promised() {
        return lines(false);
    }

    private List<MoneySoFar.Line> lines(boolean settled) {
        return shares.stream()
                .filter(share -> share.settled() == settled)
                .map(share -> new MoneySoFar.Line(Optional.of(share.on()), "let on " + share.words(), share.amount()))
                .toList();
    }
}
