package dayglass.architecture.broken.app;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class Start {}
