package dayglass.inventory.life;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.Person;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Entered;
import dayglass.inventory.booking.Occupation.Handling;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Stay;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A unit's records in the making, in a house in Paris with the trade's usual times. */
final class Records {
    static final ZoneId PARIS = ZoneId.of("Europe/Paris");
    static final House HOUSE = new House(
            "The house", PARIS, Currency.of("EUR"), LocalTime.of(15, 0), LocalTime.of(10, 0), Duration.ofHours(2));
    static final Unit.Id UNIT = new Unit.Id(1);
    static final Person.Id CLERK = new Person.Id(1);

    private final Unit unit;
    private final List<Stored<Occupation.Id, Occupation>> occupations = new ArrayList<>();

    private Records(Unit unit) {
        this.unit = unit;
    }

    static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(PARIS).toInstant();
    }

    static Records bought(String on, Unit.@Nullable Departure departure) {
        return new Records(new Unit(
                "Q-1",
                Optional.empty(),
                Optional.empty(),
                new Holding.Owned(
                        Optional.of(LocalDate.parse(on)), Optional.of(Money.of("EUR", "12000.00")), "O-7", ""),
                Optional.empty(),
                Unit.Papers.NONE,
                List.of(),
                Unit.Use.NONE,
                Optional.ofNullable(departure)));
    }

    static Records ofNobodyKnowsWhen() {
        return new Records(Unit.serving("Q-1", Unit.Use.NONE));
    }

    /** Booked and gone from one moment to another; where the second is null, still out and due on 31 December 2027. */
    Records wasOut(String out, @Nullable String back) {
        Instant due = at(back == null ? "2027-12-31T10:00" : back);
        return with(
                Kind.BOOKING,
                Stay.of(at(out), due, Duration.ZERO),
                new Handling(Optional.of(at(out)), back == null ? Optional.empty() : Optional.of(due)),
                Optional.empty());
    }

    Records booked(String out, String back) {
        return with(Kind.BOOKING, Stay.of(at(out), at(back), Duration.ofHours(2)), Handling.NOT_YET, Optional.empty());
    }

    Records benched(String out, String back, @Nullable Money cost) {
        return with(
                Kind.BENCH,
                Stay.of(at(out), at(back), Duration.ZERO),
                Handling.NOT_YET,
                Optional.of(new BenchWork("rear group out", "shimmed", "", Optional.ofNullable(cost), true)));
    }

    Records away(String out, String back) {
        return with(Kind.ABSENCE, Stay.of(at(out), at(back), Duration.ZERO), Handling.NOT_YET, Optional.empty());
    }

    private Records with(Kind kind, Stay stay, Handling handling, Optional<BenchWork> bench) {
        occupations.add(new Stored<>(
                new Occupation.Id(occupations.size() + 1L),
                1,
                new Occupation(
                        UNIT, kind, stay, "Lantern Weir", false, handling, new Entered(CLERK, stay.out()), bench)));
        return this;
    }

    UnitRecords kept() {
        return new UnitRecords(unit, Optional.empty(), List.of(), occupations, List.of(), List.of(), List.of());
    }
}
