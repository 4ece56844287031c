package dayglass.architecture.broken.shelf;

import dayglass.architecture.broken.storage.SeesWeb;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class SeesStorage {
    SeesWeb seen = new SeesWeb();
}
