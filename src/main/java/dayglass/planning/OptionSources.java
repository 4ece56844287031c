package dayglass.planning;

import dayglass.catalogue.PurchaseOffers;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Suppliers;
import dayglass.inventory.LensSets;
import dayglass.inventory.Units;

/** Where the options of a job come from. */
public record OptionSources(
        Suppliers suppliers, RateCards rateCards, PurchaseOffers purchaseOffers, Units units, LensSets lensSets) {}
