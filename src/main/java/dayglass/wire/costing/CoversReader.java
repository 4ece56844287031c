package dayglass.wire.costing;

import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.LinkedHashMap;
import java.util.Map;

/** How many of each slot one copy of an option serves: an object whose members are slots. */
public final class CoversReader {
    /** Served of one slot, at most. */
    public static final int MOST_SERVED = 100;

    private static final Reader<Integer> COUNT = Readers.whole(1, MOST_SERVED);

    private CoversReader() {}

    public static Reader<Map<String, Integer>> covers() {
        return Readers.notEmpty((json, place) -> json instanceof Json.Obj object
                ? members(object, place)
                : place.fault("must be an object of slots and counts, such as {\"40 mm\": 1}, not " + json.kind()));
    }

    private static Read<Map<String, Integer>> members(Json.Obj object, Place place) {
        Map<String, Integer> covers = new LinkedHashMap<>();
        object.members().forEach((slot, count) -> {
            Place at = place.member(slot);
            served(object, slot, count, at).found().ifPresent(served -> covers.put(slot, served));
        });
        return covers.size() == object.members().size() ? Read.good(covers) : Read.bad();
    }

    private static Read<Integer> served(Json.Obj object, String slot, Json count, Place at) {
        if (object.repeated().contains(slot)) {
            return at.fault("this slot is given twice: keep one");
        }
        if (!Readers.checkText(slot, Readers.MOST_NAME_CHARACTERS, at).isGood()) {
            return Read.bad();
        }
        return COUNT.read(count, at);
    }
}
