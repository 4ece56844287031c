package dayglass.inventory;

import dayglass.catalogue.LensModels;

/** What lies on the shelf: of which models, which units, in which sets. */
public record Shelf(LensModels models, Units units, LensSets sets) {}
