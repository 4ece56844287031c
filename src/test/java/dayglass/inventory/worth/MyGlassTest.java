package dayglass.inventory.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.app.Rooms;
import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.cost.verdict.Choices;
import dayglass.cost.verdict.RentOrBuy;
import dayglass.house.Person;
import dayglass.inventory.Holding;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.life.LettingIncome;
import dayglass.inventory.life.Lettings;
import dayglass.inventory.life.MoneySoFar;
import dayglass.shelf.LensModelJson;
import dayglass.support.Served;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On a shelf of its own, on 30 June 2027 at noon in UTC. */
class MyGlassTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new AssertionError(problem.toString());
        });
    }

    private static Unit unit(String tag, Holding holding, Map<String, Integer> serves) {
        Unit plain = Unit.serving(tag, new Unit.Use(serves, List.of()));
        return new Unit(
                tag,
                plain.model(),
                plain.serial(),
                holding,
                Optional.of(new Unit.Value(Choices.euros("12000"), LocalDate.of(2026, 1, 1))),
                plain.papers(),
                plain.accessories(),
                plain.use(),
                plain.departure());
    }

    private static Holding bought() {
        return new Holding.Owned(Optional.of(LocalDate.of(2025, 6, 30)), Optional.of(Choices.euros("10000")), "", "");
    }

    private static void was(
            Rooms rooms, Unit.Id unit, Occupation.Kind kind, String out, String back, Optional<BenchWork> work) {
        Instant from = Instant.parse(out);
        Instant until = Instant.parse(back);
        Occupation.Handling handling = kind == Occupation.Kind.BOOKING
                ? new Occupation.Handling(Optional.of(from), Optional.of(until))
                : Occupation.Handling.NOT_YET;
        done(rooms.whereAreUnits()
                .occupations()
                .add(new Occupation(
                        unit,
                        kind,
                        Stay.of(from, until, Duration.ZERO),
                        "Lantern Weir",
                        false,
                        handling,
                        new Occupation.Entered(new Person.Id(1), from),
                        work)));
    }

    private static Unit.Id add(Rooms rooms, Unit unit) {
        return done(rooms.shelf().units().add(unit)).id();
    }

    /** Out twice for three days within the year and once before it; 400 on the bench in its two years. */
    private static Unit.Id usedUnit(Rooms rooms) {
        Unit.Id unit = add(rooms, unit("Q-1", bought(), Map.of("50 mm", 1)));
        was(rooms, unit, Occupation.Kind.BOOKING, "2025-09-01T15:00:00Z", "2025-09-10T10:00:00Z", Optional.empty());
        was(rooms, unit, Occupation.Kind.BOOKING, "2026-09-01T15:00:00Z", "2026-09-05T10:00:00Z", Optional.empty());
        was(rooms, unit, Occupation.Kind.BOOKING, "2027-03-01T15:00:00Z", "2027-03-05T10:00:00Z", Optional.empty());
        was(
                rooms,
                unit,
                Occupation.Kind.BENCH,
                "2026-10-05T08:00:00Z",
                "2026-10-06T08:00:00Z",
                Optional.of(new BenchWork("", "iris cleaned", "", Optional.of(Choices.euros("400")), true)));
        return unit;
    }

    private static void card(Rooms rooms, String from, String dayRate) {
        card(rooms, new Supplier("Quay Hire"), from, rate("quay-50", dayRate, Map.of("50 mm", 1), Optional.empty()));
    }

    private static Rate rate(String code, String dayRate, Map<String, Integer> covers, Optional<Lets> lets) {
        return new Rate(code, covers, 1, Choices.days(dayRate), List.of(), lets, Map.of());
    }

    private static void card(Rooms rooms, Supplier of, String from, Rate... rates) {
        Stored<Supplier.Id, Supplier> supplier = rooms.sources()
                .suppliers()
                .named(of.name())
                .orElseGet(() -> done(rooms.sources().suppliers().add(of)));
        done(rooms.sources()
                .rateCards()
                .add(new RateCard(supplier.id(), "spring", Currency.of("EUR"), LocalDate.parse(from), List.of(rates))));
    }

    /** A rate for the model goes before its slots; one for another model, and the house's own cards, say nothing. */
    @Test
    void whatOthersLetTheModelForCountsAndWhatTheHouseLetsItForDoesNot() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-06-30")) {
            LensModel.Id model = model(rooms, "Coast 50 mm");
            LensModel.Id another = model(rooms, "Coast 75 mm");
            Unit plain = unit("Q-1", bought(), Map.of());
            Unit.Id unit = add(
                    rooms,
                    new Unit(
                            plain.tag(),
                            Optional.of(model),
                            plain.serial(),
                            plain.holding(),
                            plain.value(),
                            plain.papers(),
                            plain.accessories(),
                            plain.use(),
                            plain.departure()));
            was(rooms, unit, Occupation.Kind.BOOKING, "2027-03-01T15:00:00Z", "2027-03-05T10:00:00Z", Optional.empty());
            card(
                    rooms,
                    new Supplier("Gannet Yard", true),
                    "2027-01-01",
                    rate("own", "10", Map.of(), Optional.of(new Lets(Lets.Kind.MODEL, model.number()))));
            card(
                    rooms,
                    new Supplier("Quay Hire"),
                    "2027-01-01",
                    rate("other", "20", Map.of("50 mm", 1), Optional.of(new Lets(Lets.Kind.MODEL, another.number()))),
                    rate("fitting", "70", Map.of(), Optional.of(new Lets(Lets.Kind.MODEL, model.number()))));
            YearMore year = only(rooms.myGlass()).yearMore().orElseThrow();
            assertEquals(List.of("fitting"), year.from());
            assertEquals(Choices.euros("210.00"), year.rented().get(0).oneJob());
        }
    }

    private static LensModel.Id model(Rooms rooms, String name) {
        LensModel made = LensModelJson.reader()
                .read(("{\"maker\": \"Brindleford\", \"name\": \"" + name + "\", \"kind\": \"spherical prime\"}")
                        .getBytes(StandardCharsets.UTF_8))
                .fold(facts -> facts, faults -> {
                    throw new AssertionError(faults.toString());
                });
        return done(rooms.shelf().models().add(made)).id();
    }

    private static UnitWorth only(MyGlass glass) {
        return glass.by(Footing.USUAL).units().get(0);
    }

    @Test
    void aYearMoreGoesByTheLastYearsOwnUseAtTheCardInForce() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-06-30")) {
            usedUnit(rooms);
            card(rooms, "2026-01-01", "90");
            card(rooms, "2027-06-01", "110");
            card(rooms, "2027-07-01", "130");
            UnitWorth worth = only(rooms.myGlass());
            assertEquals(Choices.euros("8281.00"), worth.today().orElseThrow());
            YearMore year = worth.yearMore().orElseThrow();
            assertEquals(List.of("quay-50"), year.from());
            RentOrBuy.Rented rented = year.rented().get(0);
            assertEquals("3 days", rented.kind().name());
            assertEquals(Choices.euros("330.00"), rented.oneJob());
            assertEquals(Choices.euros("660.00"), rented.aYear());
            assertEquals(6, worth.lastYear().out().size());
            assertEquals(
                    List.of(Choices.euros("10400.00")),
                    MoneySoFar.totals(worth.money().cost()));
            Money service = year.lines().stream()
                    .filter(line -> line.words().startsWith("service"))
                    .findFirst()
                    .orElseThrow()
                    .amount();
            // 400 over 731 days is 199.73 a year, half a year from now at 6 per cent.
            assertEquals(-199.73 / Math.sqrt(1.06), service.major().doubleValue(), 0.01);
        }
    }

    @Test
    void withoutARateTheRuleOfThumbSpeaksAndWithoutThatNobody() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-06-30")) {
            usedUnit(rooms);
            YearMore year = only(rooms.myGlass()).yearMore().orElseThrow();
            assertEquals(List.of(), year.from());
            assertEquals(Choices.euros("900.00"), year.rented().get(0).oneJob());
            Footing usual = Footing.USUAL;
            Footing noThumb = new Footing(
                    usual.discountRate(),
                    usual.lossPerYear(),
                    usual.sellingCost(),
                    usual.insurancePerYear(),
                    Optional.empty());
            UnitWorth unknown = rooms.myGlass().by(noThumb).units().get(0);
            assertEquals(Optional.empty(), unknown.yearMore());
            assertTrue(unknown.unknown().contains("no card in force"), unknown.unknown());
        }
    }

    /** Whoever records letting says which bookings were lettings: they earn, and are no use of the house's own. */
    @Test
    void aLettingEarnsAndIsNoOwnUse() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-06-30")) {
            usedUnit(rooms);
            Set<Occupation.Id> all = Set.of(new Occupation.Id(2), new Occupation.Id(3));
            Occupation.Id one = new Occupation.Id(2);
            Lettings lettings = new Lettings(
                    List.of(
                            new Lettings.Share(
                                    1, "rental 1", LocalDate.of(2025, 9, 10), one, Choices.euros("700"), true),
                            new Lettings.Share(
                                    2, "rental 2", LocalDate.of(2027, 3, 5), one, Choices.euros("500"), true),
                            new Lettings.Share(
                                    3, "rental 3", LocalDate.of(2027, 6, 5), one, Choices.euros("90"), false)),
                    all);
            LettingIncome letting = new LettingIncome() {
                @Override
                public Optional<Map<Unit.Id, Lettings>> all(List<Stored<Unit.Id, Unit>> units) {
                    return Optional.of(Map.of(new Unit.Id(1), lettings));
                }

                @Override
                public Lettings of(Unit.Id unit) {
                    return lettings;
                }
            };
            MyGlass glass = new MyGlass(
                    rooms.unitArchive(),
                    rooms.sources().suppliers(),
                    rooms.sources().rateCards(),
                    letting);
            assertTrue(glass.by(Footing.USUAL).lettingRecorded());
            UnitWorth worth = only(glass);
            assertEquals(
                    List.of(Choices.euros("1200.00")),
                    MoneySoFar.totals(worth.money().earned()));
            assertEquals(
                    List.of(Choices.euros("90.00")),
                    MoneySoFar.totals(worth.money().promised()));
            YearMore year = worth.yearMore().orElseThrow();
            assertEquals(List.of(), year.rented());
            assertTrue(
                    year.lines().stream()
                            .anyMatch(line -> line.words().startsWith("letting")
                                    && line.amount().compareTo(Choices.euros("480")) > 0
                                    && line.amount().compareTo(Choices.euros("500")) < 0),
                    year.lines().toString());
        }
    }

    @Test
    void onlyWhatTheHouseOwnsTodayIsThereAndASetIsItsOwnMembers() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-06-30")) {
            Unit.Id own = usedUnit(rooms);
            Unit.Id other = add(rooms, unit("Q-2", bought(), Map.of()));
            Unit.Id lent = add(
                    rooms,
                    unit(
                            "Q-3",
                            new Holding.Consigned("Ruth Ellersby", "", LocalDate.of(2026, 1, 1), Optional.empty()),
                            Map.of()));
            Unit.Id unpriced = add(rooms, unit("Q-4", Holding.Owned.UNRECORDED, Map.of()));
            done(rooms.shelf().sets().add(new LensSet("pair", true, List.of(own, other, lent), Map.of())));
            done(rooms.shelf().sets().add(new LensSet("single", false, List.of(unpriced), Map.of())));
            MyGlass.Glass glass = rooms.myGlass().by(Footing.USUAL);
            assertFalse(glass.lettingRecorded());
            assertEquals(
                    List.of("Q-1", "Q-2", "Q-4"),
                    glass.units().stream()
                            .map(each -> each.unit().facts().tag())
                            .toList());
            SetWorth pair = glass.sets().get(0);
            assertEquals(1, pair.others());
            assertEquals(Choices.euros("16562.00"), pair.today().orElseThrow());
            assertEquals(List.of(Choices.euros("20400.00")), pair.cost());
            assertEquals(6, pair.daysOut());
            assertEquals(
                    glass.units()
                            .get(0)
                            .gain()
                            .orElseThrow()
                            .plus(glass.units().get(1).gain().orElseThrow()),
                    pair.gain().orElseThrow());
            assertEquals(Optional.empty(), glass.sets().get(1).today());
            assertEquals("", glass.sets().get(1).word());
        }
    }
}
