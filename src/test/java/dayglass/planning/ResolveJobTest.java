package dayglass.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.app.Rooms;
import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.inventory.Holding;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.service.ServicePlan;
import dayglass.job.Job;
import dayglass.support.Served;
import dayglass.wire.costing.CostingRequestReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which card is in force, and why a job does not resolve; today is 2026-11-25. */
class ResolveJobTest {
    private static final Currency EUR = Currency.of("EUR");

    @TempDir
    Path folder;

    private Rooms rooms;
    private Job job;

    @BeforeEach
    void importJob() {
        rooms = Served.roomsAt(folder, "2026-11-25");
        job = done(rooms.importJob().importFrom(question("00-sample"))).facts();
    }

    @AfterEach
    void close() {
        rooms.close();
    }

    private static Question question(String name) {
        return CostingRequestReader.read(Served.example(name).getBytes(StandardCharsets.UTF_8))
                .fold(question -> question, faults -> {
                    throw new AssertionError(faults.toString());
                });
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new AssertionError(problem.toString());
        });
    }

    private String refusal(Job of) {
        return rooms.resolveJob()
                .resolve(of)
                .fold(
                        question -> {
                            throw new AssertionError("it resolves");
                        },
                        problem -> {
                            assertEquals(Problem.Code.CANNOT_BE_DONE, problem.code());
                            return problem.detail();
                        });
    }

    private Job with(Schedule schedule) {
        return new Job(
                job.name(), job.currency(), job.discountRate(), job.cashLimit(), schedule, job.needs(), job.sources());
    }

    private Job with(Job.Sources sources) {
        return new Job(
                job.name(), job.currency(), job.discountRate(), job.cashLimit(), job.schedule(), job.needs(), sources);
    }

    private Job leavingOut(String... options) {
        Job.Sources sources = job.sources();
        return with(new Job.Sources(
                sources.rateCards(), sources.purchaseOffers(), sources.units(), sources.lensSets(), List.of(options)));
    }

    private static Schedule on(String day) {
        LocalDate date = LocalDate.parse(day);
        return new Schedule(List.of(new Schedule.Span(DateRange.inclusive(date, date), DayUse.SHOOT)));
    }

    @Test
    void anImportedJobResolvesToItsRequest() {
        assertEquals(
                new String(requestOf(question("00-sample")), StandardCharsets.UTF_8),
                new String(requestOf(done(rooms.resolveJob().resolve(job))), StandardCharsets.UTF_8));
    }

    /** The sample's unit may serve from 12 April on and the job ends on the 14th; out on the 13th, it serves on the 12th. */
    @Test
    void aUnitThatIsSomewhereElseServesOnTheOtherDaysOnly() {
        assertEquals(
                List.of(DateRange.inclusive(LocalDate.of(2027, 4, 12), LocalDate.of(2027, 4, 12))),
                ownedAfterTheBench("another job"));
        assertEquals(
                List.of(DateRange.inclusive(LocalDate.of(2027, 4, 12), LocalDate.of(2027, 4, 30))),
                ownedAfterTheBench(job.name()));
    }

    private List<DateRange> ownedAfterTheBench(String forWhom) {
        BookUnits bookUnits = rooms.whereAreUnits().bookUnits();
        BookUnits.Entry entry = new BookUnits.Entry(
                Occupation.Kind.BOOKING,
                Instant.parse("2027-04-13T15:00:00Z"),
                Instant.parse("2027-04-20T10:00:00Z"),
                forWhom,
                Optional.empty());
        Stored<Occupation.Id, Occupation> booked =
                done(bookUnits.add(job.sources().units(), entry)).get(0);
        List<DateRange> windows =
                done(rooms.resolveJob().resolve(job)).owned().get(0).available();
        done(bookUnits.cancel(booked));
        return windows;
    }

    @Test
    void aUnitWhoseServiceIsOverdueByThenServesOnlyAfterAVisitThatIsPlanned() {
        Unit.Id unit = job.sources().units().get(0);
        done(rooms.servicePlans()
                .add(new ServicePlan(unit, Optional.of(12), Optional.empty(), LocalDate.of(2026, 1, 1))));
        assertEquals(List.of(), done(rooms.resolveJob().resolve(job)).owned());
        BookUnits.Entry visit = new BookUnits.Entry(
                Occupation.Kind.BENCH,
                Instant.parse("2027-02-01T09:00:00Z"),
                Instant.parse("2027-02-03T17:00:00Z"),
                "clean and adjust",
                Optional.of(Occupation.BenchWork.NOT_YET));
        done(rooms.whereAreUnits().bookUnits().add(List.of(unit), visit));
        assertEquals(1, done(rooms.resolveJob().resolve(job)).owned().size());
    }

    private static byte[] requestOf(Question question) {
        return dayglass.wire.JsonPrint.bytes(dayglass.wire.costing.CostingRequestWriter.write(question));
    }

    @ParameterizedTest
    @CsvSource({
        "2027-04-05, 1",
        "2027-05-31, 1",
        "2027-06-01, 2",
        "2027-06-02, 2",
        "2027-12-31, 2",
        "2028-01-01, 3",
        "2030-01-01, 3"
    })
    void theCardInForceIsTheLatestThatHasBegun(String firstDay, int copies) {
        Stored<RateCard.Id, RateCard> first = card();
        add(first.facts(), "2028-01-01", 3);
        add(first.facts(), "2027-06-01", 2);
        Question resolved = done(rooms.resolveJob().resolve(leavingOutAllBut(with(on(firstDay)))));
        assertEquals(copies, resolved.rentals().get(0).copies());
        assertEquals(1, resolved.rentals().size());
    }

    private Job leavingOutAllBut(Job of) {
        Job.Sources sources = of.sources();
        return new Job(
                of.name(),
                of.currency(),
                of.discountRate(),
                of.cashLimit(),
                of.schedule(),
                of.needs(),
                new Job.Sources(sources.rateCards(), List.of(), List.of(), List.of(), List.of()));
    }

    private Stored<RateCard.Id, RateCard> card() {
        return rooms.sources()
                .rateCards()
                .find(job.sources().rateCards().get(0))
                .orElseThrow();
    }

    private Stored<RateCard.Id, RateCard> add(RateCard like, String from, int copies) {
        return done(rooms.sources()
                .rateCards()
                .add(new RateCard(
                        like.supplier(),
                        like.name(),
                        like.currency(),
                        LocalDate.parse(from),
                        like.rates().stream()
                                .map(rate -> new dayglass.catalogue.Rate(
                                        rate.code(),
                                        rate.covers(),
                                        copies,
                                        rate.terms(),
                                        rate.available(),
                                        rate.lets(),
                                        rate.marks()))
                                .toList())));
    }

    @Test
    void twoCardsOfOneSuccessionCountOnce() {
        Stored<RateCard.Id, RateCard> later = add(card().facts(), "2028-01-01", 3);
        Job.Sources sources = job.sources();
        Job both = with(new Job.Sources(
                List.of(sources.rateCards().get(0), later.id()),
                sources.purchaseOffers(),
                sources.units(),
                sources.lensSets(),
                List.of()));
        assertEquals(1, done(rooms.resolveJob().resolve(both)).rentals().size());
    }

    @Test
    void withoutACardInForceItIsRefused() {
        String why = refusal(with(on("2027-04-04")));
        assertTrue(why.contains("2027-04-04") && why.contains("the earliest begins on 2027-04-05"), why);
    }

    @Test
    void anotherCurrencyIsRefusedUnlessLeftOut() {
        Supplier.Id supplier = card().facts().supplier();
        RateCard yen = new RateCard(supplier, "Yen", Currency.of("JPY"), LocalDate.parse("2026-01-01"), yenRates());
        RateCard.Id id = done(rooms.sources().rateCards().add(yen)).id();
        Job.Sources sources = new Job.Sources(List.of(id), List.of(), List.of(), List.of(), List.of());
        String why = refusal(with(sources));
        assertTrue(why.contains("EUR") && why.contains("JPY"), why);
        Job leaving = with(new Job.Sources(List.of(id), List.of(), List.of(), List.of(), List.of("yen")));
        assertEquals(List.of(), done(rooms.resolveJob().resolve(leaving)).rentals());
    }

    private static List<dayglass.catalogue.Rate> yenRates() {
        String rate = "{\"id\": \"yen\", \"covers\": {\"40 mm\": 1}, \"blocks\": [{\"days\": 1, \"price\": \"900\"}]}";
        return dayglass.wire.costing.RentalReader.rate(Currency.of("JPY"), "x")
                .read(rate.getBytes(StandardCharsets.UTF_8))
                .fold(rental -> List.of(dayglass.catalogue.Rate.of(rental)), faults -> {
                    throw new AssertionError(faults.toString());
                });
    }

    @Test
    void twoOptionsOfOneIdAreRefusedByWhereTheyComeFrom() {
        RateCard like = card().facts();
        RateCard.Id other = done(rooms.sources()
                        .rateCards()
                        .add(new RateCard(
                                like.supplier(), "Another", EUR, LocalDate.parse("2026-01-01"), like.rates())))
                .id();
        Job.Sources sources = job.sources();
        String why = refusal(with(new Job.Sources(
                List.of(sources.rateCards().get(0), other), List.of(), List.of(), List.of(), List.of())));
        assertTrue(why.contains(like.rates().get(0).code()) && why.contains("\"Another\""), why);
    }

    @ParameterizedTest
    @CsvSource({"2026-11-24, false", "2026-11-25, true", "2026-11-26, true"})
    void anOfferIsGoodUntilItsLastDay(String lastDay, boolean good) {
        PurchaseOffer.Id id = job.sources().purchaseOffers().get(0);
        Stored<PurchaseOffer.Id, PurchaseOffer> offer =
                rooms.sources().purchaseOffers().find(id).orElseThrow();
        done(rooms.sources()
                .purchaseOffers()
                .change(new Stored<>(
                        id,
                        offer.version(),
                        new PurchaseOffer(
                                offer.facts().supplier(),
                                EUR,
                                offer.facts().offer(),
                                Optional.of(LocalDate.parse(lastDay))))));
        String code = offer.facts().offer().code();
        if (good) {
            assertEquals(
                    code,
                    done(rooms.resolveJob().resolve(job)).purchases().get(0).id());
        } else {
            assertTrue(refusal(job).contains(lastDay));
            assertEquals(
                    List.of(),
                    done(rooms.resolveJob().resolve(leavingOut(code))).purchases());
        }
    }

    @Test
    void whatIsLeftOutIsNotConsidered() {
        Question all = done(rooms.resolveJob().resolve(job));
        String unit = all.owned().get(0).id();
        Question some = done(rooms.resolveJob().resolve(leavingOut(unit)));
        assertEquals(List.of(), some.owned());
        assertEquals(all.rentals().size(), some.rentals().size());
    }

    private static Unit unit(String tag, String slot, Holding holding) {
        return new Unit(
                tag,
                Optional.empty(),
                Optional.empty(),
                holding,
                Optional.empty(),
                Unit.Papers.NONE,
                List.of(),
                new Unit.Use(java.util.Map.of(slot, 1), List.of()),
                Optional.empty());
    }

    private Unit.Id shelve(Unit unit) {
        return done(rooms.shelf().units().add(unit)).id();
    }

    /** The owned options of a job of three days, 7 to 9 June 2027, as {@code id: covers @ windows}. */
    private List<String> owned(List<Unit.Id> units, List<LensSet.Id> sets, String... leftOut) {
        Schedule days = new Schedule(List.of(new Schedule.Span(
                DateRange.inclusive(LocalDate.parse("2027-06-07"), LocalDate.parse("2027-06-09")), DayUse.SHOOT)));
        Job of = new Job(
                "Long Pier",
                EUR,
                job.discountRate(),
                Optional.empty(),
                days,
                List.of(new Question.Need("40 mm", 1, java.util.Set.of(DayUse.SHOOT), List.of())),
                new Job.Sources(List.of(), List.of(), units, sets, List.of(leftOut)));
        return done(rooms.resolveJob().resolve(of)).owned().stream()
                .map(each -> each.id() + ": " + new java.util.TreeMap<>(each.covers()) + " @ "
                        + each.available().stream()
                                .map(range -> range.from() + ".." + range.lastDay())
                                .toList())
                .toList();
    }

    private static Holding rented(String from, String paidUpTo) {
        LocalDate last = LocalDate.parse(paidUpTo);
        return new Holding.RentedIn("Ostler", "", LocalDate.parse(from), last, last, Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({
        "2027-06-01, 2027-07-01, a: {40 mm=1} @ []",
        "2027-06-01, 2027-06-08, a: {40 mm=1} @ [2027-06-07..2027-06-08]",
        "2027-06-08, 2027-07-01, a: {40 mm=1} @ [2027-06-08..2027-06-09]",
        "2027-01-01, 2027-06-06, ''"
    })
    void aUnitServesOnlyWhileItIsHeld(String from, String paidUpTo, String option) {
        Unit.Id id = shelve(unit("a", "40 mm", rented(from, paidUpTo)));
        assertEquals(option.isEmpty() ? List.of() : List.of(option), owned(List.of(id), List.of()));
    }

    @Test
    void aWholeSetServesWithItsMembersWhoThenDoNotServeTwice() {
        Unit.Id a = shelve(unit("a", "40 mm", Holding.Owned.UNRECORDED));
        Unit.Id b = shelve(unit("b", "50 mm", rented("2027-06-08", "2027-06-08")));
        LensSet.Id set = done(rooms.shelf().sets().add(new LensSet("pier", true, List.of(a, b), java.util.Map.of())))
                .id();
        assertEquals(List.of("pier: {40 mm=1, 50 mm=1} @ [2027-06-08..2027-06-08]"), owned(List.of(), List.of(set)));
        // On the day in the middle the set goes out whole, so a serves alone on the others only and b not at all.
        assertEquals(
                List.of(
                        "pier: {40 mm=1, 50 mm=1} @ [2027-06-08..2027-06-08]",
                        "a: {40 mm=1} @ [2027-06-07..2027-06-07, 2027-06-09..2027-06-09]"),
                owned(List.of(a, b), List.of(set)));
        assertEquals(
                List.of("a: {40 mm=1} @ []", "b: {50 mm=1} @ [2027-06-08..2027-06-08]"),
                owned(List.of(a, b), List.of(set), "pier"));
    }

    @Test
    void whatServesNothingIsToldWithItsMend() {
        Unit.Id none = shelve(Unit.serving("bare", Unit.Use.NONE));
        String why = refusal(with(new Job.Sources(List.of(), List.of(), List.of(none), List.of(), List.of())));
        assertTrue(why.contains("unit bare") && why.contains("which slots"), why);
    }

    @Test
    void aJobThatWasExportedComesBackToTheSameShelf() {
        Unit.Id a = shelve(unit("a", "40 mm", Holding.Owned.UNRECORDED));
        LensSet.Id set = done(rooms.shelf().sets().add(new LensSet("pier", true, List.of(a), java.util.Map.of())))
                .id();
        Job own = with(new Job.Sources(List.of(), List.of(), List.of(), List.of(set), List.of()));
        Job again = done(rooms.importJob().importFrom(done(rooms.resolveJob().resolve(own))))
                .facts();
        assertEquals(List.of(set), again.sources().lensSets());
        assertEquals(List.of(), again.sources().units());
    }
}
