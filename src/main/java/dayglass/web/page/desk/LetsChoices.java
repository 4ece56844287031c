package dayglass.web.page.desk;

import dayglass.catalogue.Lets;
import dayglass.inventory.Shelf;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What a rate can be for, to choose from: each kind by its names. */
public record LetsChoices(List<Choice> models, List<Choice> sets, List<Choice> units) {
    public LetsChoices {
        models = List.copyOf(models);
        sets = List.copyOf(sets);
        units = List.copyOf(units);
    }

    /** Units that have left for good are no more to choose. */
    static LetsChoices of(Shelf shelf) {
        return new LetsChoices(
                sorted(shelf.modelNames().entrySet().stream()
                        .map(each -> choice(Lets.Kind.MODEL, each.getKey().number(), each.getValue()))),
                sorted(Requests.all(shelf.sets()).stream()
                        .map(set -> choice(
                                Lets.Kind.SET, set.id().number(), set.facts().name()))),
                sorted(Requests.all(shelf.units()).stream()
                        .filter(unit -> unit.facts().departure().isEmpty())
                        .map(unit -> choice(
                                Lets.Kind.UNIT, unit.id().number(), unit.facts().tag()))));
    }

    private static Choice choice(Lets.Kind kind, long number, String name) {
        return new Choice(RateForm.value(new Lets(kind, number)), name);
    }

    private static List<Choice> sorted(Stream<Choice> choices) {
        return choices.sorted(Comparator.comparing(Choice::label)).toList();
    }

    /** Whether a form's value is among them; one that is not (a unit that has left) must not be lost on saving. */
    public boolean has(String value) {
        return Stream.of(models, sets, units)
                .flatMap(List::stream)
                .anyMatch(choice -> choice.value().equals(value));
    }
}
