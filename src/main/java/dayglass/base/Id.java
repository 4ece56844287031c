package dayglass.base;

/** The number by which a stored thing is known, from 1 and never used again. Each kind of thing has its own type. */
public interface Id {
    long number();
}
