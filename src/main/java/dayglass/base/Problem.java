package dayglass.base;

import java.util.List;

/**
 * An expected refusal.
 *
 * @param detail what stands in the way and how to mend it, for people
 * @param faults what is wrong with the input, where it is the input
 */
public record Problem(Code code, String detail, List<Fault> faults) {
    /** The kinds of refusal. */
    public enum Code {
        /** The input breaks its own rules. */
        FAULTY,
        /** There is no such thing. */
        NOT_FOUND,
        /** Another thing has the name, tag or date that must be its own. */
        ALREADY_THERE,
        /** Something else still points to it. */
        STILL_USED,
        /** It is in another place at that time. */
        TAKEN,
        /** It was changed since the version that the change was based on. */
        STALE,
        /** The input is good, yet it cannot be done. */
        CANNOT_BE_DONE,
        /** Too much is being done already; it may be tried again. */
        BUSY
    }

    public Problem {
        faults = List.copyOf(faults);
    }

    public Problem(Code code, String detail) {
        this(code, detail, List.of());
    }

    public static Problem faulty(List<Fault> faults) {
        return new Problem(Code.FAULTY, "The request has faults; nothing was done.", faults);
    }

    /** With one fault alone. */
    public static Problem faulty(String pointer, String message) {
        return faulty(List.of(new Fault(pointer, message)));
    }
}
