package dayglass.wire;

import dayglass.base.Fault;
import java.util.List;
import java.util.function.Function;

/**
 * Makes a value of a piece of JSON, or tells at its place everything that is wrong with it. Readers are small and made
 * of one another; none stops at the first fault.
 */
@FunctionalInterface
public interface Reader<T> {
    Read<T> read(Json json, Place place);

    default <R> Reader<R> map(Function<T, R> change) {
        return (json, place) -> read(json, place).map(change);
    }

    /** Reads a whole text. */
    default Checked<T> read(byte[] bytes) {
        return JsonText.parse(bytes).then(this::readAll);
    }

    /** Reads a value by itself. */
    default Checked<T> readAll(Json json) {
        return readAt("", json);
    }

    /**
     * Reads a value by itself that stands inside a larger text.
     *
     * @param pointer where it stands: faults are told below it
     */
    default Checked<T> readAt(String pointer, Json json) {
        return readAt(pointer, json, Listener.PROGRAM);
    }

    /** The same, told to whoever listens. */
    default Checked<T> readAt(String pointer, Json json, Listener listener) {
        Faults faults = new Faults(listener);
        Read<T> read = read(json, Place.at(pointer, faults));
        List<Fault> kept = faults.kept();
        return kept.isEmpty() ? new Checked.Good<>(read.get()) : new Checked.Faulty<>(kept);
    }
}
