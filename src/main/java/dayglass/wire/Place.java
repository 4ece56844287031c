package dayglass.wire;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/** Where in a text a value stands, and where its faults are told; the pointer is spelt out only when asked for. */
public final class Place {
    private final Faults faults;
    private final @Nullable Place parent;
    private final String step;

    private Place(Faults faults, @Nullable Place parent, String step) {
        this.faults = faults;
        this.parent = parent;
        this.step = step;
    }

    /** The whole text. */
    public static Place root(Faults faults) {
        return new Place(faults, null, "");
    }

    /**
     * A place inside a larger text, for a value that is read by itself.
     *
     * @param pointer a JSON Pointer, or empty
     */
    public static Place at(String pointer, Faults faults) {
        return new Place(faults, null, pointer);
    }

    public Place member(String name) {
        return new Place(faults, this, "/" + escape(name));
    }

    /** A member's name as a step of a pointer. */
    static String escape(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    public Place entry(int index) {
        return new Place(faults, this, "/" + index);
    }

    /** Tells that the value here is at fault. */
    public <T> Read<T> fault(String message) {
        faults.add(this, message);
        return Read.bad();
    }

    /** Tells the same in the words of whoever listens. */
    public <T> Read<T> fault(String toProgram, String toPerson) {
        return fault(faults.listener() == Listener.PERSON ? toPerson : toProgram);
    }

    /** How many faults the whole text has so far. */
    public int faultsSoFar() {
        return faults.count();
    }

    /** The JSON Pointer (RFC 6901). */
    public String pointer() {
        Deque<String> steps = new ArrayDeque<>();
        for (Place place = this; place != null; place = place.parent) {
            steps.push(place.step);
        }
        return String.join("", steps);
    }
}
