package dayglass.architecture.broken.wire;

import dayglass.architecture.broken.desk.SeesApp;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class KnowsDesk {
    SeesApp known = new SeesApp();
}
