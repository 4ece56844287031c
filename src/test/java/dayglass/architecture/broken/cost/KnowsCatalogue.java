package dayglass.architecture.broken.cost;

import dayglass.architecture.broken.catalogue.KnowsWire;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class KnowsCatalogue {
    KnowsWire known = new KnowsWire();
}
