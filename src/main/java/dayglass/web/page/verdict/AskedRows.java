package dayglass.web.page.verdict;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.Ownership;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.scenario.VerdictQuestion;
import dayglass.cost.verdict.JobKind;
import dayglass.cost.verdict.RentOrBuy;
import dayglass.web.page.picture.Words;
import dayglass.web.page.verdict.VerdictView.Row;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a verdict was asked with, in words: whoever reads the figures must see what they rest on. */
final class AskedRows {
    private final List<Row> rows = new ArrayList<>();

    private AskedRows() {}

    static List<Row> of(VerdictQuestion question) {
        AskedRows asked = new AskedRows();
        RentOrBuy choice = question.choice();
        asked.purchase(choice.terms());
        asked.running(choice);
        choice.jobs().forEach(asked::job);
        choice.rates().forEach(asked::rate);
        asked.percent("rents rise a year", choice.rateChangePerYear());
        asked.percent("discount rate a year", choice.discountRate());
        return asked.rows;
    }

    private void add(String label, String words) {
        rows.add(new Row(label, words, false));
    }

    private void percent(String label, Percent percent) {
        if (percent.value().signum() != 0) {
            add(label, plain(percent.value()) + " %");
        }
    }

    private void money(String label, Money amount) {
        if (amount.signum() != 0) {
            add(label, Words.money(amount));
        }
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    private void purchase(PurchaseTerms terms) {
        add("price", Words.money(terms.price()));
        percent("tax on it", terms.tax());
        terms.extras().forEach(extra -> money(extra.name(), extra.amount()));
        add("sold after", terms.termMonths() + " months");
        if (terms.resale().value() instanceof PurchaseTerms.YearlyLoss loss) {
            add("loses a year", plain(loss.loss().value()) + " %");
        } else if (terms.resale().value() instanceof PurchaseTerms.Points points) {
            add(
                    "sells for, by months",
                    points.points().stream()
                            .map(point -> point.months() + ": " + Words.amount(point.value()))
                            .collect(Collectors.joining("; ")));
        }
        percent("selling cost", terms.resale().sellingCost());
        percent("insurance a year", terms.holding().insurancePerYear());
        money("storage a year", terms.holding().storagePerYear());
        terms.service()
                .ifPresent(service ->
                        add("service", "every " + service.everyMonths() + " months, " + Words.money(service.cost())));
        terms.letting()
                .ifPresent(letting -> add(
                        "let",
                        plain(letting.daysPerYear()) + " days a year at " + Words.money(letting.dayRate())
                                + ", the owner's share "
                                + plain(letting.ownerShare().value()) + " %"));
    }

    private void running(RentOrBuy choice) {
        Ownership.Running running = choice.running();
        money("a day of own use costs", running.perDayUsed());
        money("wear a day let", running.wearPerDayLet());
        running.service()
                .ifPresent(service -> add(
                        "service by use",
                        "every " + service.everyDaysOut() + " days out, " + Words.money(service.cost())));
        choice.loan()
                .ifPresent(loan -> add(
                        "loan",
                        Words.money(loan.amount()) + " at "
                                + plain(loan.ratePerYear().value()) + " % a year over " + loan.months()
                                + " months, level payments"));
    }

    private void job(JobKind kind) {
        String prep = kind.prepDays() == 0 ? "" : ", " + kind.prepDays() + " of them prep";
        String week = kind.daysPerWeek() == 7 ? "" : ", " + kind.daysPerWeek() + " days a week";
        add("jobs: " + kind.name(), plain(kind.perYear()) + " a year of " + Words.days(kind.days()) + prep + week);
    }

    private void rate(RentalTerms terms) {
        List<String> parts = new ArrayList<>();
        terms.blocks()
                .forEach(block -> parts.add(Words.days(block.days()) + " " + Words.amount(block.price())
                        + block.startsOn()
                                .map(day -> " from a " + day.name().charAt(0)
                                        + day.name().substring(1).toLowerCase(java.util.Locale.ROOT))
                                .orElse("")));
        terms.extraDay().ifPresent(extra -> parts.add("a further day " + Words.amount(extra.price())));
        terms.dayFactors().entrySet().stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .forEach(factor -> parts.add(factor.getKey().word() + " day × " + plain(factor.getValue())));
        terms.longHire()
                .forEach(entry -> parts.add("from " + Words.days(entry.fromDays()) + " "
                        + plain(entry.percent().value()) + " % off"));
        if (terms.minimumCharge().signum() != 0) {
            parts.add("at least " + Words.amount(terms.minimumCharge()));
        }
        if (terms.perTrip().signum() != 0) {
            parts.add("each trip " + Words.amount(terms.perTrip()));
        }
        terms.addOns()
                .forEach(addOn ->
                        parts.add(addOn.name() + " " + plain(addOn.percent().value()) + " %"));
        add("rented at", String.join("; ", parts));
    }
}
