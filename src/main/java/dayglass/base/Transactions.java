package dayglass.base;

import java.util.function.Supplier;

/** Makes several changes one: all of them happen or none. */
@FunctionalInterface
public interface Transactions {
    /** Does the work; where it is refused or fails, every change that it made is taken back. */
    <T> Outcome<T> atomically(Supplier<Outcome<T>> work);
}
