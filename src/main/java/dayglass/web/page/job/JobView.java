package dayglass.web.page.job;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.web.page.Label;
import dayglass.web.page.RateWords;
import dayglass.web.page.picture.Strip;
import dayglass.web.page.picture.Words;
import java.util.List;

/**
 * What the page of a job shows.
 *
 * @param others what the house knows and this job does not consider
 */
public record JobView(
        long id,
        long version,
        Label label,
        Totals totals,
        Strip strip,
        String schedule,
        List<NeedRow> needs,
        List<CardView> cards,
        List<OptionRow> offers,
        List<OptionRow> units,
        List<OptionRow> sets,
        List<Other> others) {

    public JobView {
        needs = List.copyOf(needs);
        cards = List.copyOf(cards);
        offers = List.copyOf(offers);
        units = List.copyOf(units);
        sets = List.copyOf(sets);
        others = List.copyOf(others);
    }

    public record NeedRow(int number, String slot, int count, String when) {}

    /**
     * A supplier's card with its rates.
     *
     * @param named the id of the card that the job names, of whose succession this one is in force
     */
    public record CardView(long id, long named, long version, String title, String since, List<OptionRow> rates) {
        public CardView {
            rates = List.copyOf(rates);
        }
    }

    /**
     * An option.
     *
     * @param version of the offer whose price it is; 0 where the price is not its own
     * @param link where all its facts can be changed
     * @param terms what is not shown as a price, in words
     */
    public record OptionRow(
            String code,
            boolean kept,
            String covers,
            List<Price> prices,
            String terms,
            long id,
            long version,
            String link) {
        public OptionRow {
            prices = List.copyOf(prices);
        }
    }

    /** A price that can be changed in place. */
    public record Price(String field, String label, String amount) {}

    public record Other(String value, String name) {}

    static OptionRow rate(Job job, RateCard.Id card, int at, dayglass.catalogue.Rate rate) {
        List<Price> prices = new java.util.ArrayList<>();
        for (int block = 0; block < rate.terms().blocks().size(); block++) {
            prices.add(new Price(
                    priceField(card, at, block),
                    RateWords.block(rate.terms().blocks().get(block)),
                    rate.terms().blocks().get(block).price().amount()));
        }
        return new OptionRow(
                rate.code(),
                kept(job, rate.code()),
                Words.covers(rate.covers()),
                prices,
                RateWords.terms(rate),
                card.number(),
                0,
                "/desk/cards/" + card.number());
    }

    static String priceField(RateCard.Id card, int rate, int block) {
        return "card/" + card.number() + "/" + rate + "/" + block;
    }

    static String offerField(PurchaseOffer.Id offer) {
        return "offer/" + offer.number();
    }

    static OptionRow offer(Job job, String supplier, Stored<PurchaseOffer.Id, PurchaseOffer> offer) {
        PurchaseOffer.Offer facts = offer.facts().offer();
        return new OptionRow(
                facts.code(),
                kept(job, facts.code()),
                Words.covers(facts.covers()) + ", " + supplier,
                List.of(new Price(
                        offerField(offer.id()),
                        "price before tax",
                        facts.terms().price().amount())),
                RateWords.offer(offer.facts()),
                offer.id().number(),
                offer.version(),
                "/desk/offers/" + offer.id().number());
    }

    static OptionRow unit(Job job, Stored<Unit.Id, Unit> unit) {
        Unit facts = unit.facts();
        return new OptionRow(
                facts.tag(),
                kept(job, facts.tag()),
                Words.covers(facts.use().covers()),
                List.of(),
                there(facts),
                unit.id().number(),
                0,
                "/shelf/units/" + unit.id().number());
    }

    private static String there(Unit unit) {
        List<DateRange> available = unit.use().available();
        String windows = available.isEmpty() ? "always there" : "there " + Words.dates(available);
        return windows
                + unit.heldTo()
                        .map(last -> ", up to " + Words.shortDate(last) + " " + last.getYear())
                        .orElse("");
    }

    static OptionRow set(Job job, Stored<LensSet.Id, LensSet> set, List<Unit> members) {
        LensSet facts = set.facts();
        return new OptionRow(
                facts.name(),
                kept(job, facts.name()),
                Words.covers(facts.covers(members)),
                List.of(),
                "while it goes out whole, its " + members.size() + " units serve in it alone",
                set.id().number(),
                0,
                "/shelf/sets/" + set.id().number());
    }

    static NeedRow need(int number, Question.Need need) {
        return new NeedRow(number, need.slot(), need.count(), Words.when(need));
    }

    private static boolean kept(Job job, String code) {
        return !job.sources().leftOut().contains(code);
    }

    static Label label(Job job) {
        Currency currency = job.currency();
        return new Label(
                job.name(),
                List.of(
                        new Label.Field("dates", Words.dates(job.schedule().horizon())),
                        new Label.Field("uses", Strip.uses(job.schedule())),
                        new Label.Field("currency", currency.code()),
                        new Label.Field(
                                "cash for purchases",
                                job.cashLimit().map(Words::amount).orElse("no limit"))));
    }
}
