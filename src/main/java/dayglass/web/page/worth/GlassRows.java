package dayglass.web.page.worth;

import dayglass.base.Money;
import dayglass.catalogue.LensModel;
import dayglass.inventory.life.MoneySoFar;
import dayglass.inventory.life.Utilisation;
import dayglass.inventory.worth.Footing;
import dayglass.inventory.worth.MyGlass;
import dayglass.inventory.worth.SetWorth;
import dayglass.inventory.worth.UnitWorth;
import dayglass.inventory.worth.ValueToday;
import dayglass.inventory.worth.YearMore;
import dayglass.web.page.picture.Words;
import dayglass.web.page.worth.GlassView.Line;
import dayglass.web.page.worth.GlassView.Part;
import dayglass.web.page.worth.GlassView.Row;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts the house's glass into words. */
final class GlassRows {
    private final MyGlass.Glass glass;
    private final Map<LensModel.Id, String> models;

    GlassRows(MyGlass.Glass glass, Map<LensModel.Id, String> models) {
        this.glass = glass;
        this.models = models;
    }

    /** @param first which unit to begin with, counted from 0 */
    GlassView view(int first) {
        GlassView.Run run = GlassView.Run.from(first, glass.units().size());
        List<SetWorth> sets = run.hasEarlier() ? List.of() : glass.sets();
        return new GlassView(
                Words.day(glass.on()),
                glass.lettingRecorded(),
                sets.stream().map(this::set).toList(),
                glass.units().stream()
                        .skip(run.before())
                        .limit(run.shown())
                        .map(this::unit)
                        .toList(),
                run,
                totals(),
                (int) glass.units().stream()
                        .filter(each -> each.yearMore().isEmpty())
                        .count());
    }

    private Row unit(UnitWorth worth) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part("Cost so far", lines(worth.money().cost()), ""));
        if (!worth.money().earned().isEmpty()) {
            parts.add(new Part("Earned so far", lines(worth.money().earned()), ""));
        }
        if (!worth.money().promised().isEmpty()) {
            parts.add(new Part(
                    "Promised by rentals that are not settled",
                    lines(worth.money().promised()),
                    "It counts as earned once they are."));
        }
        parts.add(new Part(
                "Days out",
                List.of(
                        new Line("in the last 365 days", days(worth.lastYear()), false),
                        new Line("since it came", days(worth.everSince()), false)),
                ""));
        worth.value().ifPresent(value -> parts.add(value(value)));
        worth.yearMore().ifPresent(year -> {
            parts.add(yearMore(year));
            if (!year.rented().isEmpty()) {
                parts.add(rented(year));
            }
        });
        return new Row(
                worth.unit().facts().tag(),
                "/shelf/units/" + worth.unit().id().number(),
                worth.unit()
                        .facts()
                        .model()
                        .map(id -> models.getOrDefault(id, ""))
                        .orElse(""),
                sums(MoneySoFar.totals(worth.money().cost())),
                sums(MoneySoFar.totals(worth.money().earned())),
                sums(MoneySoFar.totals(worth.money().promised())),
                worth.lastYear().percent().map(percent -> percent + " %").orElse(""),
                worth.today().map(Words::money).orElse(""),
                worth.gain().map(GlassRows::signed).orElse(""),
                worth.yearMore().map(YearMore::word).orElse(""),
                worth.unknown(),
                parts);
    }

    private Row set(SetWorth worth) {
        int available = worth.daysAvailable();
        String others = worth.others() == 0 ? "" : ", and " + worth.others() + " not the house's own";
        return new Row(
                worth.set().facts().name(),
                "/shelf/sets/" + worth.set().id().number(),
                (worth.members().size() == 1 ? "1 unit" : worth.members().size() + " units") + others,
                sums(worth.cost()),
                sums(worth.earned()),
                sums(worth.promised()),
                available == 0 ? "" : tenths(1_000.0 * worth.daysOut() / available) + " %",
                worth.today().map(Words::money).orElse(""),
                worth.gain().map(GlassRows::signed).orElse(""),
                worth.word(),
                worth.gain().isEmpty() ? "it is not known of every member, or they are of several currencies" : "",
                List.of(
                        sums(
                                "Cost so far, by member",
                                worth,
                                each -> each.money().cost(),
                                worth.cost()),
                        sums(
                                "Earned so far, by member",
                                worth,
                                each -> each.money().earned(),
                                worth.earned()),
                        daysOut(worth),
                        members("Worth today, by member", worth, UnitWorth::today, worth.today()),
                        members("What a year more brings, by member", worth, UnitWorth::gain, worth.gain())));
    }

    private static Part members(
            String title, SetWorth worth, Function<UnitWorth, Optional<Money>> what, Optional<Money> together) {
        List<Line> lines = new ArrayList<>();
        for (UnitWorth each : worth.members()) {
            String amount = what.apply(each).map(Words::money).orElse("not known");
            lines.add(new Line(each.unit().facts().tag(), amount, false));
        }
        together.ifPresent(sum -> lines.add(new Line("together", Words.money(sum), true)));
        return new Part(title, lines, "");
    }

    private static Part sums(
            String title, SetWorth worth, Function<UnitWorth, List<MoneySoFar.Line>> what, List<Money> together) {
        List<Line> lines = new ArrayList<>();
        for (UnitWorth each : worth.members()) {
            String amount = sums(MoneySoFar.totals(what.apply(each)));
            lines.add(new Line(each.unit().facts().tag(), amount.isEmpty() ? "nothing" : amount, false));
        }
        lines.add(new Line("together", together.isEmpty() ? "nothing" : sums(together), true));
        return new Part(title, lines, "");
    }

    private static Part daysOut(SetWorth worth) {
        List<Line> lines = new ArrayList<>();
        for (UnitWorth each : worth.members()) {
            lines.add(new Line(each.unit().facts().tag(), days(each.lastYear()), false));
        }
        lines.add(new Line("together", worth.daysOut() + " of " + worth.daysAvailable() + " available", true));
        return new Part("Days out in the last 365 days, by member", lines, "");
    }

    private static String tenths(double tenths) {
        return BigDecimal.valueOf(Math.round(tenths), 1).toPlainString();
    }

    private static List<Line> lines(List<MoneySoFar.Line> money) {
        List<Line> lines = new ArrayList<>();
        for (MoneySoFar.Line each : money) {
            String on = each.on().map(day -> ", " + Words.day(day)).orElse("");
            lines.add(new Line(each.what() + on, Words.money(each.amount()), false));
        }
        for (Money total : MoneySoFar.totals(money)) {
            lines.add(new Line("together", Words.money(total), true));
        }
        return lines;
    }

    private static String days(Utilisation use) {
        return use.out().size() + " of " + use.daysAvailable() + " available"
                + use.percent().map(percent -> ", " + percent + " %").orElse("");
    }

    private Part value(ValueToday value) {
        String by = value.sales() == 0
                ? "loses " + glass.footing().lossPerYear().value().toPlainString() + " % a year"
                : "by " + value.sales() + (value.sales() == 1 ? " own sale" : " own sales") + " of the model";
        return new Part(
                "Worth today, before selling it",
                List.of(
                        new Line("paid on " + Words.day(value.boughtOn()), Words.money(value.paid()), false),
                        new Line(
                                value.months() + " full months ago; " + by,
                                Words.money(value.today().minus(value.paid())),
                                false),
                        new Line("today", Words.money(value.today()), true),
                        new Line("in a year", Words.money(value.inAYear()), false)),
                "");
    }

    private static Part yearMore(YearMore year) {
        List<Line> lines = new ArrayList<>();
        year.lines().forEach(line -> lines.add(new Line(line.words(), Words.amount(line.amount()), false)));
        lines.add(new Line("a year more brings", signed(year.gain()), true));
        return new Part("A year more against selling it today, at present value", lines, "");
    }

    private Part rented(YearMore year) {
        List<Line> lines = new ArrayList<>();
        year.rented()
                .forEach(each -> lines.add(new Line(
                        each.kind().perYear().toPlainString() + " × "
                                + each.kind().name() + ", each " + Words.amount(each.oneJob()),
                        Words.money(each.aYear()),
                        false)));
        String by = year.from().isEmpty()
                ? glass.footing().ruleOfThumb().map(GlassRows::thumb).orElse("")
                : "Rates of the cards in force: " + String.join(", ", year.from()) + ".";
        return new Part("The same use rented, in the year's own money", lines, by);
    }

    private static String thumb(Footing.RuleOfThumb rule) {
        return "No card has a rate for it: rule of thumb, a day "
                + rule.day().value().toPlainString() + " % of its value, a week "
                + rule.week().value().toPlainString() + " %.";
    }

    private static String signed(Money money) {
        return (money.signum() > 0 ? "+" : "") + Words.money(money);
    }

    private static String sums(List<Money> totals) {
        return totals.stream().map(Words::money).collect(Collectors.joining(" and "));
    }

    private List<GlassView.Total> totals() {
        TreeSet<String> currencies = new TreeSet<>();
        glass.units()
                .forEach(unit -> Stream.of(unit.money().cost(), unit.money().earned())
                        .flatMap(List::stream)
                        .forEach(line -> currencies.add(line.amount().currency().code())));
        return currencies.stream()
                .map(code -> new GlassView.Total(
                        code,
                        sum(code, unit -> MoneySoFar.totals(unit.money().cost()).stream()),
                        sum(code, unit -> MoneySoFar.totals(unit.money().earned()).stream()),
                        sum(code, unit -> unit.today().stream()),
                        sum(code, unit -> unit.gain().stream())))
                .toList();
    }

    private String sum(String currency, Function<UnitWorth, Stream<Money>> what) {
        return glass.units().stream()
                .flatMap(what)
                .filter(money -> money.currency().code().equals(currency))
                .reduce(Money::plus)
                .map(Words::money)
                .orElse("");
    }
}
