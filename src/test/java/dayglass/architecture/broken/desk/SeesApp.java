package dayglass.architecture.broken.desk;

import dayglass.architecture.broken.app.Start;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class SeesApp {
    Start seen = new Start();
}
