package dayglass.desk.rental;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.PricedLine;
import dayglass.desk.price.Wish;
import dayglass.desk.quote.Promise;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Availability;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.FreeDays;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Books what a promise names, all or none. Where a unit was taken meanwhile another of its model goes, if the customer
 * did not ask for that very one; else it is said who has it and what else is free.
 */
final class Booked {
    private static final int MOST_NAMED = 5;

    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final Promise promise;
    private final String subject;
    private final List<Rental.Placed> placed = new ArrayList<>();

    Booked(Shelf shelf, Whereabouts whereabouts, Promise promise, String subject) {
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.promise = promise;
        this.subject = subject;
    }

    /** What is booked; to be asked inside a transaction, which takes everything back where it is refused. */
    Outcome<List<Rental.Placed>> all() {
        List<PricedLine> lines = promise.price().lines();
        for (int line = 0; line < lines.size(); line++) {
            for (Unit.Id unit : lines.get(line).units()) {
                Optional<Problem> refusal = place(line, lines.get(line), unit);
                if (refusal.isPresent()) {
                    return Outcome.refused(refusal.get());
                }
            }
        }
        return Outcome.done(List.copyOf(placed));
    }

    private Optional<Problem> place(int line, PricedLine priced, Unit.Id unit) {
        Outcome<Occupation.Id> booked = book(priced, unit);
        return booked.fold(
                booking -> {
                    put(line, unit, booking);
                    return Optional.empty();
                },
                problem -> other(line, priced, unit, problem));
    }

    private void put(int line, Unit.Id unit, Occupation.Id booking) {
        placed.add(new Rental.Placed(line, unit, booking, false, Optional.empty(), Optional.empty()));
    }

    private Outcome<Occupation.Id> book(PricedLine priced, Unit.Id unit) {
        Stay stay = stay(priced);
        return whereabouts
                .bookUnits()
                .add(
                        List.of(unit),
                        new BookUnits.Entry(
                                Occupation.Kind.BOOKING, stay.out(), stay.back(), subject, Optional.empty()))
                .map(all -> all.get(0).id());
    }

    private Stay stay(PricedLine priced) {
        return FreeDays.use(
                priced.dates().from(),
                priced.dates().lastDay(),
                whereabouts.settings().now().facts());
    }

    private Optional<Problem> other(int line, PricedLine priced, Unit.Id unit, Problem problem) {
        Optional<LensModel.Id> model =
                shelf.units().find(unit).flatMap(found -> found.facts().model());
        List<Availability.OfUnit> free = free(priced);
        if (!askedForItself(priced, unit) && model.isPresent()) {
            for (Availability.OfUnit candidate : free) {
                if (candidate.unit().model().equals(model)) {
                    Outcome<Occupation.Id> booked =
                            book(priced, candidate.unit().unit());
                    if (booked.<Boolean>fold(done -> true, refused -> false)) {
                        booked.map(booking -> {
                            put(line, candidate.unit().unit(), booking);
                            return booking;
                        });
                        return Optional.empty();
                    }
                }
            }
        }
        return Optional.of(new Problem(problem.code(), problem.detail() + instead(free, model)));
    }

    private List<Availability.OfUnit> free(PricedLine priced) {
        Set<Unit.Id> promised = new HashSet<>();
        promise.price().lines().forEach(line -> promised.addAll(line.units()));
        return whereabouts.availability().during(stay(priced), Optional.empty()).units().stream()
                .filter(Availability.OfUnit::free)
                .filter(each -> !promised.contains(each.unit().unit()))
                .filter(each -> placed.stream()
                        .noneMatch(one -> one.unit().equals(each.unit().unit())))
                .toList();
    }

    /** A customer who asked for a unit, or for a matched set, gets that and nothing like it. */
    private boolean askedForItself(PricedLine priced, Unit.Id unit) {
        PackageAsked.Asked asked = promise.price().asked().lines().get(priced.line());
        Wish wish = asked.wish();
        return wish.fold(
                        model -> false,
                        set -> shelf.sets()
                                .find(set.set())
                                .map(found -> found.facts().matched())
                                .orElse(true),
                        one -> true,
                        any -> false)
                || shelf.units().find(unit).isEmpty();
    }

    /** Free units of the same kind and focal length. */
    private String instead(List<Availability.OfUnit> free, Optional<LensModel.Id> model) {
        Optional<LensModel> wanted =
                model.flatMap(id -> shelf.models().find(id)).map(Stored::facts);
        List<String> names = free.stream()
                .filter(each -> each.unit()
                        .model()
                        .flatMap(id -> shelf.models().find(id))
                        .map(Stored::facts)
                        .filter(other ->
                                wanted.filter(like -> alike(like, other)).isPresent())
                        .isPresent())
                .map(each -> each.unit().tag())
                .limit(MOST_NAMED)
                .toList();
        return names.isEmpty() ? " Nothing like it is free then." : " Free instead: " + String.join(", ", names) + ".";
    }

    private static boolean alike(LensModel one, LensModel other) {
        return one.kind() == other.kind()
                && one.record().focalMm().equals(other.record().focalMm());
    }
}
