package dayglass.web.page.booking;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Availability;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.page.Requests;
import dayglass.web.page.booking.FreeView.OneModel;
import dayglass.web.page.booking.FreeView.OneSet;
import dayglass.web.page.booking.FreeView.OneUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Asks what is free and says it in words, with what stands in the way of the others. */
final class FreeSearch {
    private final Shelf shelf;
    private final Whereabouts whereabouts;

    FreeSearch(Shelf shelf, Whereabouts whereabouts) {
        this.shelf = shelf;
        this.whereabouts = whereabouts;
    }

    /**
     * What is free among the units that have the words.
     *
     * @param out before {@code back}
     */
    FreeView during(Instant out, Instant back, String words) {
        Wording wording = new Wording(
                whereabouts.clock().instant(),
                whereabouts.settings().now().facts().zone());
        Availability availability = whereabouts.availability();
        Stay stay = availability.stay(out, back);
        Availability.Answer answer = availability.during(stay, Optional.empty());
        Map<LensModel.Id, String> models = shelf.modelNames();
        Map<LensSet.Id, String> sets = new HashMap<>();
        Requests.all(shelf.sets()).forEach(set -> sets.put(set.id(), set.facts().name()));
        Map<Unit.Id, Occupation> taken = taken(stay);
        Map<Unit.Id, OneUnit> shown = new LinkedHashMap<>();
        List<OneUnit> free = new ArrayList<>();
        List<OneUnit> others = new ArrayList<>();
        for (Availability.OfUnit unit : answer.units()) {
            OneUnit one = one(
                    unit,
                    unit.unit().model().map(models::get).orElse(""),
                    unit.unit().set().map(sets::get).orElse(""),
                    Optional.ofNullable(taken.get(unit.unit().unit())).map(of -> inTheWay(of, wording)),
                    wording);
            if (one.has(words)) {
                shown.put(unit.unit().unit(), one);
                (unit.free() ? free : others).add(one);
            }
        }
        return new FreeView(
                wording.moment(out) + " to " + wording.moment(back),
                free,
                models(shown.values().stream().toList(), free),
                sets(answer, shown, sets, wording),
                others);
    }

    /** What begins last before the stay is over is what is told: as nothing overlaps, one is enough. */
    private Map<Unit.Id, Occupation> taken(Stay stay) {
        Map<Unit.Id, Occupation> taken = new HashMap<>();
        for (Stored<Occupation.Id, Occupation> each : whereabouts.occupations().between(stay.out(), stay.freeAt())) {
            if (each.facts().stay().overlaps(stay)) {
                taken.merge(
                        each.facts().unit(),
                        each.facts(),
                        (one, other) -> one.stay().out().isBefore(other.stay().out()) ? one : other);
            }
        }
        return taken;
    }

    private static String inTheWay(Occupation of, Wording wording) {
        if (of.handling().isOut()) {
            return "\"" + of.subject() + "\" has it: " + wording.state(of) + ".";
        }
        String how = switch (of.kind()) {
            case BOOKING -> "Booked for \"" + of.subject() + "\"";
            case BENCH -> "On the bench (" + of.subject() + ")";
            case ABSENCE -> "Away (" + of.subject() + ")";
        };
        return how + " from " + wording.moment(of.stay().out()) + " to "
                + wording.moment(of.stay().back()) + ".";
    }

    private static OneUnit one(
            Availability.OfUnit unit, String model, String set, Optional<String> taken, Wording wording) {
        List<String> why = new ArrayList<>();
        taken.ifPresent(why::add);
        why.addAll(unit.obstacles());
        return new OneUnit(
                unit.unit().unit().number(),
                unit.unit().tag(),
                model,
                set,
                why,
                why.isEmpty() ? unit.warnings() : List.of(),
                unit.obstacles().isEmpty()
                        ? unit.nextFree().map(wording::moment).orElse("")
                        : "");
    }

    private static List<OneModel> models(List<OneUnit> all, List<OneUnit> free) {
        Set<Long> ids = free.stream().map(OneUnit::id).collect(Collectors.toSet());
        Map<String, OneModel> models = new TreeMap<>();
        for (OneUnit unit : all) {
            long one = ids.contains(unit.id()) ? 1 : 0;
            models.merge(
                    unit.model(),
                    new OneModel(unit.model(), one, 1),
                    (some, more) -> new OneModel(some.name(), some.free() + more.free(), some.all() + more.all()));
        }
        models.remove("");
        return List.copyOf(models.values());
    }

    private static List<OneSet> sets(
            Availability.Answer answer, Map<Unit.Id, OneUnit> shown, Map<LensSet.Id, String> names, Wording wording) {
        List<OneSet> sets = new ArrayList<>();
        for (Availability.OfSet set : answer.sets()) {
            List<Availability.OfUnit> members = answer.units().stream()
                    .filter(unit -> unit.unit().set().equals(Optional.of(set.set())))
                    .toList();
            boolean onlyTaken =
                    members.stream().allMatch(unit -> unit.obstacles().isEmpty());
            if (members.stream().anyMatch(unit -> shown.containsKey(unit.unit().unit()))) {
                sets.add(new OneSet(
                        set.set().number(),
                        names.getOrDefault(set.set(), ""),
                        set.freeMembers(),
                        set.members(),
                        set.nextFree()
                                .filter(next -> onlyTaken)
                                .map(wording::moment)
                                .orElse("")));
            }
        }
        return sets;
    }
}
