package dayglass.inventory.booking;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.Transactions;
import dayglass.house.House;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation.Handling;
import dayglass.inventory.booking.Occupation.Kind;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lets booked units out and takes them back. Rules that allow or refuse are asked in turn; one that is
 * not healthy, or whose service is overdue, goes out only where somebody says why, and that is kept.
 */
public final class HandOver {
    private final Occupations occupations;
    private final UnitState.Source units;
    private final Door door;
    private final BookUnits.Surroundings around;

    /** Something else that may stand against handing a unit over. */
    public interface Rule {
        /**
         * What stands against it, if anything does.
         *
         * @param at when it is to go out, now or later
         */
        Optional<Obstacle> against(UnitState unit, Instant at);

        /** The same for many units, which are read together as they stand now. */
        default Rule ofAll(Set<Unit.Id> units) {
            return this;
        }
    }

    /** What is asked before a unit leaves, and where it is written down that one left all the same. */
    public record Door(List<Rule> rules, Overrides overrides) {
        public Door {
            rules = List.copyOf(rules);
        }

        List<Obstacle> obstacles(UnitState unit, Instant at) {
            return rules.stream()
                    .flatMap(rule -> rule.against(unit, at).stream())
                    .toList();
        }
    }

    /** Where overrides are kept; none is ever changed. */
    public interface Overrides {
        void keep(KeptOverride override);

        List<KeptOverride> of(Occupation.Id occupation);
    }

    /** That somebody let a unit out that should have stayed in. */
    public record KeptOverride(Occupation.Id occupation, Person.Id by, Instant at, String obstacles, String reason) {}

    public HandOver(Occupations occupations, UnitState.Source units, Door door, BookUnits.Surroundings around) {
        this.occupations = occupations;
        this.units = units;
        this.door = door;
        this.around = around;
    }

    /**
     * Hands a booked unit over.
     *
     * @param based the booking with the version that the caller saw
     * @param moment when; before the booked time the booking begins then, if nothing else is in the way
     * @param reason why it goes out in spite of obstacles that may be overridden
     */
    public Outcome<Stored<Occupation.Id, Occupation>> out(
            Stored<Occupation.Id, Occupation> based, Instant moment, Optional<String> reason) {
        Transactions transactions = around.transactions();
        Instant at = whole(moment);
        return transactions.atomically(() -> {
            List<Obstacle> obstacles = obstacles(based, at);
            Optional<Obstacle> last =
                    obstacles.stream().filter(each -> !each.overridable()).findFirst();
            if (last.isPresent()) {
                return Outcome.refused(Problem.Code.CANNOT_BE_DONE, last.get().why());
            }
            String words =
                    String.join(" ", obstacles.stream().map(Obstacle::why).toList());
            if (!obstacles.isEmpty() && reason.isEmpty()) {
                return Outcome.refused(
                        Problem.Code.CANNOT_BE_DONE,
                        words + " Give a reason to let it out all the same; it is kept with your name.");
            }
            Occupation booking = based.facts();
            Stay stay = at.isBefore(booking.stay().out())
                    ? new Stay(at, booking.stay().back(), booking.stay().freeAt())
                    : booking.stay();
            return occupations
                    .change(new Stored<>(
                            based.id(),
                            based.version(),
                            booking.during(stay).handled(new Handling(Optional.of(at), Optional.empty()))))
                    .map(done -> {
                        if (!obstacles.isEmpty()) {
                            door.overrides()
                                    .keep(new KeptOverride(
                                            based.id(),
                                            around.whoActs().now(),
                                            around.clock().instant(),
                                            words,
                                            reason.orElseThrow()));
                        }
                        return done;
                    });
        });
    }

    /** What stands against handing the unit over at a moment, the gravest first. */
    public List<Obstacle> obstacles(Stored<Occupation.Id, Occupation> based, Instant at) {
        Occupation booking = based.facts();
        List<Obstacle> found = new ArrayList<>();
        if (booking.kind() != Kind.BOOKING || booking.cancelled()) {
            found.add(Obstacle.last("It is not booked: only a booking that stands is handed over."));
        } else if (booking.handling().wentOut().isPresent()) {
            found.add(Obstacle.last("It went out on this booking already."));
        } else if (!at.isBefore(booking.stay().back())) {
            found.add(Obstacle.last("The booked time is over; change the booking first."));
        }
        UnitState state = units.of(booking.unit(), booking.stay()).orElse(null);
        if (state == null) {
            found.add(Obstacle.last("The unit has left for good."));
            return found;
        }
        House house = around.settings().now().facts();
        state.dueBack()
                .ifPresent(due -> found.add(Obstacle.last(state.tag() + " is still out on another booking, due back "
                        + MomentWords.of(due, house.zone()) + ".")));
        LocalDate day = at.atZone(house.zone()).toLocalDate();
        state.heldTo()
                .filter(last -> day.isAfter(last))
                .ifPresent(last ->
                        found.add(Obstacle.last(state.tag() + " is held to " + MomentWords.day(last) + " only.")));
        if (!state.healthy()) {
            found.add(new Obstacle(state.ailment() + ".", true));
        }
        found.addAll(door.obstacles(state, at));
        return found;
    }

    /**
     * Takes a unit back. One that comes early is free from then on, after the turnaround; one that comes late stays
     * booked to what really was, where the next booking leaves room for it.
     */
    public Outcome<Stored<Occupation.Id, Occupation>> back(Stored<Occupation.Id, Occupation> based, Instant moment) {
        Instant at = whole(moment);
        return around.transactions().atomically(() -> {
            Occupation booking = based.facts();
            if (!booking.handling().isOut()) {
                return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "It is not out on this booking.");
            }
            Instant went = booking.handling().wentOut().orElseThrow();
            if (at.isBefore(went)) {
                return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "It cannot come back before it went out.");
            }
            Occupation back = booking.handled(new Handling(Optional.of(went), Optional.of(at)));
            Stay real = real(booking.stay(), at);
            boolean room = occupations
                    .inTheWay(booking.unit(), real, Optional.of(based.id()))
                    .isEmpty();
            return occupations.change(new Stored<>(based.id(), based.version(), room ? back.during(real) : back));
        });
    }

    /** Takes back that it was handed over: it never left. */
    public Outcome<Stored<Occupation.Id, Occupation>> undo(Stored<Occupation.Id, Occupation> based) {
        return based.facts().handling().isOut()
                ? occupations.change(
                        new Stored<>(based.id(), based.version(), based.facts().handled(Handling.NOT_YET)))
                : Outcome.refused(Problem.Code.CANNOT_BE_DONE, "It is not out on this booking.");
    }

    /** Whole seconds are kept; a part of one would make a unit come back later than it left, and yet at once. */
    private static Instant whole(Instant moment) {
        return moment.truncatedTo(ChronoUnit.SECONDS);
    }

    private static Stay real(Stay booked, Instant at) {
        Duration turnaround = Duration.between(booked.back(), booked.freeAt());
        // What comes back in the second in which it is booked from still was away for one.
        Instant end = at.isAfter(booked.out()) ? at : booked.out().plusSeconds(1);
        return Stay.of(booked.out(), end, turnaround);
    }
}
