package dayglass.wire;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import java.util.List;
import java.util.function.Function;

/** What comes of reading a text: the value, or everything that is wrong with it. */
public sealed interface Checked<T> {
    record Good<T>(T value) implements Checked<T> {}

    /**
     * Everything that is wrong.
     *
     * @param faults at least one, in the order in which they were found
     */
    record Faulty<T>(List<Fault> faults) implements Checked<T> {
        public Faulty {
            faults = List.copyOf(faults);
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("without a fault nothing is faulty");
            }
        }
    }

    static <T> Checked<T> faulty(Fault fault) {
        return new Faulty<>(List.of(fault));
    }

    /** Both cases, each handled. */
    default <R> R fold(Function<T, R> good, Function<List<Fault>, R> faulty) {
        if (this instanceof Good<T> g) {
            return good.apply(g.value());
        }
        return faulty.apply(((Faulty<T>) this).faults());
    }

    /** The value, or a refusal that names all that is wrong. */
    default Outcome<T> outcome() {
        return fold(Outcome::done, faults -> Outcome.refused(Problem.faulty(faults)));
    }

    /** Goes on with the value, where there is one. */
    default <R> Checked<R> then(Function<T, Checked<R>> next) {
        return fold(next, Faulty::new);
    }
}
