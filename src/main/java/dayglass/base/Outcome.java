package dayglass.base;

import java.util.function.Function;

/** What comes of an attempt that may be refused for reasons the caller must handle. */
public sealed interface Outcome<T> {
    /** It was done. */
    record Done<T>(T value) implements Outcome<T> {}

    /** It was refused, and nothing was changed. */
    record Refused<T>(Problem problem) implements Outcome<T> {}

    static <T> Outcome<T> done(T value) {
        return new Done<>(value);
    }

    static <T> Outcome<T> refused(Problem problem) {
        return new Refused<>(problem);
    }

    static <T> Outcome<T> refused(Problem.Code code, String detail) {
        return new Refused<>(new Problem(code, detail));
    }

    /** Refused for one fault of what was asked. */
    static <T> Outcome<T> faulty(String pointer, String message) {
        return new Refused<>(Problem.faulty(pointer, message));
    }

    default <R> R fold(Function<T, R> done, Function<Problem, R> refused) {
        if (this instanceof Done<T> d) {
            return done.apply(d.value());
        }
        return refused.apply(((Refused<T>) this).problem());
    }

    default <R> Outcome<R> map(Function<T, R> change) {
        return fold(value -> done(change.apply(value)), Outcome::refused);
    }

    default <R> Outcome<R> then(Function<T, Outcome<R>> next) {
        return fold(next, Outcome::refused);
    }
}
