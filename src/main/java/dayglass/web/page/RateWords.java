package dayglass.web.page;

import dayglass.catalogue.Mark;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.Rate;
import dayglass.cost.rental.RentalTerms;
import dayglass.web.page.picture.Words;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Terms in words. */
public final class RateWords {
    private RateWords() {}

    /** {@code 7 days}, {@code 3 days from a Friday}. */
    public static String block(RentalTerms.Block block) {
        return Words.days(block.days())
                + block.startsOn()
                        .map(day -> " from a " + day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                        .orElse("");
    }

    /** Everything that a rate says besides its blocks. */
    public static String terms(Rate rate) {
        RentalTerms terms = rate.terms();
        List<String> said = new ArrayList<>();
        if (rate.copies() > 1) {
            said.add("up to " + rate.copies() + " copies");
        }
        terms.extraDay()
                .ifPresent(extra ->
                        said.add("each day after " + extra.afterDays() + " at " + Words.amount(extra.price())));
        terms.dayFactors().entrySet().stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .forEach(each -> said.add(
                        each.getKey().word() + " days × " + each.getValue().toPlainString()));
        terms.longHire()
                .forEach(each -> said.add(
                        each.percent().value().toPlainString() + " % off from " + Words.days(each.fromDays())));
        if (terms.minimumCharge().signum() > 0) {
            said.add("at least " + Words.amount(terms.minimumCharge()));
        }
        if (terms.perTrip().signum() > 0) {
            said.add(Words.amount(terms.perTrip()) + " a trip");
        }
        terms.addOns().forEach(each -> said.add(addOn(rate, each)));
        if (!rate.available().isEmpty()) {
            said.add("to be had " + Words.dates(rate.available()));
        }
        return String.join("; ", said);
    }

    /** {@code damage cover 12 % on hire (waiver)}; that it is a plain charge is not said. */
    public static String addOn(Rate rate, RentalTerms.AddOn addOn) {
        Mark mark = rate.mark(addOn.name());
        return addOn.name() + " " + addOn.percent().value().toPlainString() + " % on "
                + addOn.on().stream().sorted().collect(Collectors.joining(", "))
                + (mark == Mark.CHARGE ? "" : " (" + mark.word() + ")");
    }

    public static String offer(PurchaseOffer offer) {
        List<String> said = new ArrayList<>();
        said.add("kept " + offer.offer().terms().termMonths() + " months");
        offer.offer().availableFrom().ifPresent(from -> said.add("there from " + Words.date(from)));
        offer.validUntil().ifPresent(last -> said.add("valid until " + Words.date(last)));
        offer.offer()
                .terms()
                .letting()
                .ifPresent(letting -> said.add("let " + letting.daysPerYear().toPlainString() + " days a year at "
                        + Words.amount(letting.dayRate())));
        return String.join("; ", said);
    }
}
