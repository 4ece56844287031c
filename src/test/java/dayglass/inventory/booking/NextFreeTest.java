package dayglass.inventory.booking;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Against a search second by second. */
class NextFreeTest {
    private static final int HORIZON = 400;

    @Provide
    Arbitrary<Stay> stays() {
        return Arbitraries.integers()
                .between(0, 100)
                .flatMap(out -> Arbitraries.integers()
                        .between(1, 20)
                        .flatMap(length ->
                                Arbitraries.integers().between(0, 3).map(turnaround -> stay(out, length, turnaround))));
    }

    private static Stay stay(int out, int length, int turnaround) {
        return new Stay(
                Instant.ofEpochSecond(out),
                Instant.ofEpochSecond((long) out + length),
                Instant.ofEpochSecond((long) out + length + turnaround));
    }

    @Property
    boolean itIsTheFirstSecondFromWhichNothingIsInTheWay(
            @ForAll List<@net.jqwik.api.From("stays") Stay> some, @ForAll("stays") Stay wanted) {
        List<Stay> taken = new ArrayList<>(some);
        taken.sort(Comparator.comparing(Stay::out));
        Instant found = NextFree.from(wanted, taken);
        for (int later = 0; later < HORIZON; later++) {
            Stay shifted = wanted.from(wanted.out().plusSeconds(later));
            if (taken.stream().noneMatch(shifted::overlaps)) {
                return found.equals(shifted.out());
            }
        }
        return false;
    }

    /** Half-open: what begins when another is free again does not overlap it. */
    @Property
    boolean twoStaysOverlapWhereTheyShareASecond(@ForAll("stays") Stay one, @ForAll("stays") Stay other) {
        boolean shared = false;
        for (long second = 0; second < HORIZON; second++) {
            shared |= holds(one, second) && holds(other, second);
        }
        return shared == one.overlaps(other);
    }

    private static boolean holds(Stay stay, long second) {
        return second >= stay.out().getEpochSecond() && second < stay.freeAt().getEpochSecond();
    }
}
