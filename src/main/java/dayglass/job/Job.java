package dayglass.job;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A production's need of lenses over its schedule.
 *
 * @param discountRate a year
 * @param cashLimit the most that purchases may take in outlays; empty for no limit
 * @param sources where what is needed could come from
 */
public record Job(
        String name,
        Currency currency,
        Percent discountRate,
        Optional<Money> cashLimit,
        Schedule schedule,
        List<Question.Need> needs,
        Sources sources) {
    public Job {
        needs = List.copyOf(needs);
    }

    /** The number of a job. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * What a job considers, each in the user's order and none twice.
     *
     * @param rateCards any card of a succession stands for the one in force on the job's first day
     * @param units of the house's own shelf, each by itself
     * @param lensSets whole sets of the shelf
     * @param leftOut ids of options that these would bring and that the user does not want considered
     */
    public record Sources(
            List<RateCard.Id> rateCards,
            List<PurchaseOffer.Id> purchaseOffers,
            List<Unit.Id> units,
            List<LensSet.Id> lensSets,
            List<String> leftOut) {
        public static final Sources NONE = new Sources(List.of(), List.of(), List.of(), List.of(), List.of());

        public Sources {
            rateCards = List.copyOf(rateCards);
            purchaseOffers = List.copyOf(purchaseOffers);
            units = List.copyOf(units);
            lensSets = List.copyOf(lensSets);
            leftOut = List.copyOf(leftOut);
        }
    }

    public Job considering(Sources others) {
        return new Job(name, currency, discountRate, cashLimit, schedule, needs, others);
    }

    public Job renamed(String newName) {
        return new Job(newName, currency, discountRate, cashLimit, schedule, needs, sources);
    }
}
