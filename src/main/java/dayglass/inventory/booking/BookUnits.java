package dayglass.inventory.booking;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.Transactions;
import dayglass.house.House;
import dayglass.house.HouseSettings;
import dayglass.house.WhoActs;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Entered;
import dayglass.inventory.booking.Occupation.Handling;
import dayglass.inventory.booking.Occupation.Kind;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Enters, changes and cancels bookings, bench visits and absences. Of several units asked for together all are entered
 * or none. A booking is a promise: it is refused for a unit that may not be promised.
 */
public final class BookUnits {
    private final Occupations occupations;
    private final UnitState.Source units;
    private final HouseSettings settings;
    private final Transactions transactions;
    private final WhoActs whoActs;
    private final Clock clock;

    /** Whom it asks, apart from the collections. */
    public record Surroundings(HouseSettings settings, Transactions transactions, WhoActs whoActs, Clock clock) {}

    public BookUnits(Occupations occupations, UnitState.Source units, Surroundings surroundings) {
        this.occupations = occupations;
        this.units = units;
        this.settings = surroundings.settings();
        this.transactions = surroundings.transactions();
        this.whoActs = surroundings.whoActs();
        this.clock = surroundings.clock();
    }

    /**
     * What is to occupy a unit.
     *
     * @param out before {@code back}
     * @param bench of a bench visit
     */
    public record Entry(Kind kind, Instant out, Instant back, String subject, Optional<BenchWork> bench) {
        /** The turnaround follows what comes back from others; the bench and an absence end where they end. */
        Stay stay(House house) {
            return Stay.of(out, back, kind == Kind.BOOKING ? house.turnaround() : java.time.Duration.ZERO);
        }
    }

    /** Enters the same for each of the units. */
    public Outcome<List<Stored<Occupation.Id, Occupation>>> add(List<Unit.Id> of, Entry entry) {
        return transactions.atomically(() -> {
            Outcome<List<Stored<Occupation.Id, Occupation>>> all = Outcome.done(List.of());
            for (Unit.Id unit : of) {
                all = all.then(before -> addOne(unit, entry).map(one -> {
                    List<Stored<Occupation.Id, Occupation>> more = new ArrayList<>(before);
                    more.add(one);
                    return List.copyOf(more);
                }));
            }
            return all;
        });
    }

    private Outcome<Stored<Occupation.Id, Occupation>> addOne(Unit.Id unit, Entry entry) {
        Stay stay = entry.stay(settings.now().facts());
        return unfinished(entry)
                .or(() -> refusal(unit, entry.kind(), stay, Optional.empty()))
                .<Outcome<Stored<Occupation.Id, Occupation>>>map(Outcome::refused)
                .orElseGet(() -> occupations.add(new Occupation(
                        unit,
                        entry.kind(),
                        stay,
                        entry.subject(),
                        false,
                        Handling.NOT_YET,
                        new Entered(whoActs.now(), clock.instant()),
                        entry.bench())));
    }

    /**
     * Puts another time or subject in the place of the old.
     *
     * @param based the occupation with the version that the change was based on
     */
    public Outcome<Stored<Occupation.Id, Occupation>> change(Stored<Occupation.Id, Occupation> based, Entry entry) {
        return transactions.atomically(() -> {
            Occupation old = based.facts();
            if (old.cancelled()) {
                return cannot("It was cancelled; enter a new one.");
            }
            boolean outAlready = old.handling().wentOut().isPresent();
            if (outAlready && !entry.out().equals(old.stay().out())) {
                return cannot("It went out already, so that only its end can change.");
            }
            if (old.handling().cameBack().isPresent()) {
                return cannot("It came back already; its time is over.");
            }
            Stay stay = entry.stay(settings.now().facts());
            Optional<Problem> refusal = unfinished(entry)
                    .or(() -> stay.within(old.stay())
                            ? Optional.empty()
                            : refusal(old.unit(), old.kind(), stay, Optional.of(based.id())));
            return refusal.<Outcome<Stored<Occupation.Id, Occupation>>>map(Outcome::refused)
                    .orElseGet(() -> occupations.change(new Stored<>(
                            based.id(),
                            based.version(),
                            new Occupation(
                                    old.unit(),
                                    old.kind(),
                                    stay,
                                    entry.subject(),
                                    false,
                                    old.handling(),
                                    old.record(),
                                    entry.bench()))));
        });
    }

    /** Frees the unit; what went out must come back instead. */
    public Outcome<Stored<Occupation.Id, Occupation>> cancel(Stored<Occupation.Id, Occupation> based) {
        if (based.facts().cancelled()) {
            return cannot("It was cancelled already.");
        }
        if (based.facts().handling().wentOut().isPresent()) {
            return cannot("It went out already: take it back instead.");
        }
        return occupations.change(
                new Stored<>(based.id(), based.version(), based.facts().asCancelled()));
    }

    /** Work that is finished is over: else its end would be a guess, and the next service is counted from it. */
    private Optional<Problem> unfinished(Entry entry) {
        boolean finishedAhead = entry.bench().filter(BenchWork::done).isPresent()
                && entry.back().isAfter(clock.instant());
        return finishedAhead
                ? Optional.of(Problem.faulty(
                        "/back", "lies ahead, though the work is done: say when the visit ended, at the latest now"))
                : Optional.empty();
    }

    private Optional<Problem> refusal(Unit.Id unit, Kind kind, Stay stay, Optional<Occupation.Id> self) {
        House house = settings.now().facts();
        Optional<UnitState> state = units.of(unit, stay);
        if (state.isEmpty()) {
            return Optional.of(new Problem(
                    Problem.Code.CANNOT_BE_DONE,
                    "There is no unit with the id " + unit.number() + " on the shelf, or it has left for good."));
        }
        Optional<Problem> taken = occupations
                .inTheWay(unit, stay, self)
                .map(other -> new Problem(
                        Problem.Code.TAKEN,
                        taken(state.get().tag(), other.facts(), house) + " " + nextFree(unit, stay, house)));
        if (taken.isPresent() || kind != Kind.BOOKING) {
            return taken;
        }
        List<String> obstacles = Promise.obstacles(state.get(), stay, house, clock.instant());
        return obstacles.isEmpty()
                ? Optional.empty()
                : Optional.of(new Problem(Problem.Code.CANNOT_BE_DONE, String.join(" ", obstacles)));
    }

    private static String taken(String tag, Occupation other, House house) {
        String how = switch (other.kind()) {
            case BOOKING -> "is booked for \"" + other.subject() + "\"";
            case BENCH -> "is on the bench (" + other.subject() + ")";
            case ABSENCE -> "is away (" + other.subject() + ")";
        };
        return tag + " " + how + " from " + MomentWords.of(other.stay().out(), house.zone()) + " and free again from "
                + MomentWords.of(other.stay().freeAt(), house.zone()) + ".";
    }

    private String nextFree(Unit.Id unit, Stay stay, House house) {
        Instant next = NextFree.from(
                stay,
                occupations.ahead(List.of(unit), stay.out()).stream()
                        .map(each -> each.facts().stay())
                        .toList());
        return "For as long it is next free from " + MomentWords.of(next, house.zone()) + ".";
    }

    private static <T> Outcome<T> cannot(String detail) {
        return Outcome.refused(Problem.Code.CANNOT_BE_DONE, detail);
    }
}
