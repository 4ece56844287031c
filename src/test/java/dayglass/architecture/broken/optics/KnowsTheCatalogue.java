package dayglass.architecture.broken.optics;

import dayglass.architecture.broken.catalogue.KnowsWire;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class KnowsTheCatalogue {
    KnowsWire known = new KnowsWire();
}
