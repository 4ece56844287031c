package dayglass.base;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Makes several changes one: all of them happen or none. */
@FunctionalInterface
public interface Transactions {
    /** Does the work; where it is refused or fails, every change that it made is taken back. */
    <T> Outcome<T> atomically(Supplier<Outcome<T>> work);

    /** Says what the work would come to, by doing it and taking it back. */
    default <T> Outcome<T> tried(Supplier<Outcome<T>> work) {
        List<T> made = new ArrayList<>();
        Outcome<T> outcome = atomically(() -> work.get().then(value -> {
            made.add(value);
            return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "what is tried is taken back");
        }));
        return made.isEmpty() ? outcome : Outcome.done(made.get(0));
    }
}
