package dayglass.architecture.broken.base;

import dayglass.architecture.broken.cost.KnowsCatalogue;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class KnowsCost {
    KnowsCatalogue known = new KnowsCatalogue();
}
