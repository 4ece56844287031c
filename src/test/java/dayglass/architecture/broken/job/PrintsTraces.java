package dayglass.architecture.broken.job;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class PrintsTraces {
    static void trace(Exception exception) {
        exception.printStackTrace();
    }
}
