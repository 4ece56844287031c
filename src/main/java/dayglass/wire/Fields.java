package dayglass.wire;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The members of one object being read. Each is asked for by name; {@link #build} then tells which of those given were
 * never asked for, and makes the value where nothing inside the object is at fault.
 */
public final class Fields {
    private final Map<String, Json> members;
    private final Set<String> repeated;
    private final Place place;
    private final int faultsBefore;
    private final Set<String> known = new LinkedHashSet<>();
    private boolean allGood = true;

    private Fields(Json.Obj object, Place place) {
        this.members = object.members();
        this.repeated = object.repeated();
        this.place = place;
        this.faultsBefore = place.faultsSoFar();
    }

    /** What is made of an object's members; it ends with {@link #build}. */
    @FunctionalInterface
    public interface Body<T> {
        Read<T> read(Fields fields);
    }

    /** A reader of an object with known members only. */
    public static <T> Reader<T> object(Body<T> body) {
        return (json, place) -> json instanceof Json.Obj object
                ? body.read(new Fields(object, place))
                : place.fault("must be an object in braces, not " + json.kind());
    }

    public Place place() {
        return place;
    }

    /** True where the object gives the member, whatever its value. */
    public boolean has(String name) {
        return members.containsKey(name);
    }

    /** A member that must be there. */
    public <T> Read<T> required(String name, Reader<T> reader) {
        if (!has(name)) {
            known.add(name);
            allGood = false;
            return place.member(name).fault("is missing: add \"" + name + "\"", "fill this in");
        }
        return given(name, reader, "is null: give it a value");
    }

    /** A member that stands for a value even when left out. */
    public <T> Read<T> optional(String name, Reader<T> reader, T otherwise) {
        known.add(name);
        return has(name)
                ? given(name, reader, "is null: give it a value, or leave \"" + name + "\" out")
                : Read.good(otherwise);
    }

    private <T> Read<T> given(String name, Reader<T> reader, String ifNull) {
        known.add(name);
        Read<T> read = readGiven(name, reader, ifNull);
        allGood &= read.isGood();
        return read;
    }

    private <T> Read<T> readGiven(String name, Reader<T> reader, String ifNull) {
        Place member = place.member(name);
        if (repeated.contains(name)) {
            return member.fault("\"" + name + "\" is given twice: keep one");
        }
        Json value = members.get(name);
        if (value == null || value instanceof Json.Null) {
            return member.fault(ifNull, "fill this in");
        }
        return reader.read(value, member);
    }

    /** A member that may be left out. */
    public <T> Read<Optional<T>> optional(String name, Reader<T> reader) {
        return optional(name, reader.map(Optional::of), Optional.empty());
    }

    /**
     * Ends the object.
     *
     * @param value called only where every member is good and no fault was told since the object was begun
     */
    public <T> Read<T> build(Supplier<T> value) {
        for (String name : members.keySet()) {
            if (!known.contains(name)) {
                place.member(name)
                        .fault("is not known here: remove it, or check its spelling; known are "
                                + String.join(", ", known));
            }
        }
        return allGood && place.faultsSoFar() == faultsBefore ? Read.good(value.get()) : Read.bad();
    }
}
