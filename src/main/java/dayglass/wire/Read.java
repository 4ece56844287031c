package dayglass.wire;

import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;

/** A value read, or the mark of one at fault (the fault has been told). A default counts as read. */
public final class Read<T> {
    private final Optional<T> value;

    private Read(Optional<T> value) {
        this.value = value;
    }

    public static <T> Read<T> good(T value) {
        return new Read<>(Optional.of(value));
    }

    public static <T> Read<T> bad() {
        return new Read<>(Optional.empty());
    }

    public boolean isGood() {
        return value.isPresent();
    }

    /**
     * The value; for code that knows it to be good.
     *
     * @throws NoSuchElementException where it is at fault
     */
    public T get() {
        return value.orElseThrow(() -> new NoSuchElementException("the value read is at fault"));
    }

    /** The value, or empty where it is at fault. */
    public Optional<T> found() {
        return value;
    }

    public <R> Read<R> map(Function<T, R> change) {
        return new Read<>(value.map(change));
    }
}
