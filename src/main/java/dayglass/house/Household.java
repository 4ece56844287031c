package dayglass.house;

import dayglass.base.Stored;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What every room asks of the house. */
public record Household(
        HouseSettings settings, People people, Changes changes, WhoActs whoActs, KeyedAnswers keyedAnswers) {
    private static final int MOST_AT_ONCE = 200;

    /** Everybody, also those who are gone, by id. */
    public List<Stored<Person.Id, Person>> everybody() {
        List<Stored<Person.Id, Person>> all = new ArrayList<>();
        Optional<Person.Id> after = Optional.empty();
        List<Stored<Person.Id, Person>> some;
        do {
            some = people.list(after, MOST_AT_ONCE);
            all.addAll(some);
            after = some.isEmpty()
                    ? after
                    : Optional.of(some.get(some.size() - 1).id());
        } while (some.size() == MOST_AT_ONCE);
        return all;
    }

    /** What everybody is called, also those who are gone. */
    public Map<Person.Id, String> names() {
        Map<Person.Id, String> names = new HashMap<>();
        everybody().forEach(person -> names.put(person.id(), person.facts().name()));
        return names;
    }

    /** Who may act: everybody who is not gone; somebody always is there. */
    public List<Stored<Person.Id, Person>> there() {
        return everybody().stream().filter(person -> !person.facts().gone()).toList();
    }
}
