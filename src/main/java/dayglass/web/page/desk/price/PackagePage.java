package dayglass.web.page.desk.price;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.cost.Schedule;
import dayglass.desk.find.Find;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.price.PricePackage;
import dayglass.desk.quote.Quote;
import dayglass.desk.words.DateWords;
import dayglass.inventory.booking.Stay;
import dayglass.shelf.desk.PackageJson;
import dayglass.shelf.desk.QuoteJson;
import dayglass.web.page.Html;
import dayglass.web.page.desk.DeskSources;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A package as it is asked for: found, counted, dated and priced while it is typed. All of it stands in the address, so
 * that it works without a script, and a link brings it back.
 */
public final class PackagePage {
    private static final String PATH = "/desk/package";
    private static final String DATES = "/dates";
    private static final String LINES = "/lines";
    private static final int MOST_YEARS = 10;

    private final DeskSources sources;
    private final Html html;
    private final PackageWords words;

    public PackagePage(DeskSources sources, Html html) {
        this.sources = sources;
        this.html = html;
        this.words = new PackageWords(sources.shelf());
    }

    public void route(RoutesConfig routes) {
        routes.get(PATH, ctx -> html.render(ctx, "package.jte", Map.of("page", view(typed(ctx)))));
    }

    /** The page again with what is wrong with a promise. */
    public void refused(Context ctx, Form form) {
        html.renderFaulty(ctx, "package.jte", Map.of("page", view(form)));
    }

    private Form typed(Context ctx) {
        Form form = FormJson.compact(Form.sent(ctx.queryParamMap()));
        Optional<Stored<Quote.Id, Quote>> quote = quote(form);
        Form filled = quote.isPresent() && form.rows(LINES) == 0 && !form.has(DATES) ? ofQuote(quote.get()) : form;
        return acted(filled);
    }

    private Optional<Stored<Quote.Id, Quote>> quote(Form form) {
        String number = form.value("quote");
        return number.matches("[0-9]{1,15}")
                ? sources.desk().quotes().find(new Quote.Id(Long.parseLong(number)))
                : Optional.empty();
    }

    /** What a quote promises now, to be promised otherwise. */
    private static Form ofQuote(Stored<Quote.Id, Quote> quote) {
        PackageAsked asked = quote.facts().now().price().asked();
        Form form = FormJson.form(QuoteJson.wanted(quote.facts()))
                .with(DATES, DateWords.say(asked.schedule()))
                .with("quote", String.valueOf(quote.id().number()))
                .with("version", String.valueOf(quote.version()));
        Form plain = Form.EMPTY;
        for (Map.Entry<String, String> field : form.values().entrySet()) {
            if (!field.getKey().startsWith("/schedule/")) {
                plain = plain.with(field.getKey(), field.getValue());
            }
        }
        return plain;
    }

    /** Does what a button asked for. */
    private Form acted(Form form) {
        Form after = form;
        if (form.has("add")) {
            after = WishField.added(after, form.value("add")).with("text", "");
        } else if (form.has("first") && form.has("text")) {
            List<Find> finds = finds(after);
            after = finds.isEmpty()
                    ? after
                    : WishField.added(after, WishField.value(finds.get(0).wish()))
                            .with("text", "");
        } else if (form.has("drop")) {
            after = dropped(after, form.value("drop"));
        } else if (form.has("day")) {
            after = chosen(after, form.value("day"));
        }
        return after;
    }

    private static Form dropped(Form form, String row) {
        Form left = Form.EMPTY;
        for (Map.Entry<String, String> field : form.values().entrySet()) {
            if (!field.getKey().startsWith(LINES + "/" + row + "/")) {
                left = left.with(field.getKey(), field.getValue());
            }
        }
        return FormJson.compact(left);
    }

    /** The first day chosen, or the last one where the first was chosen before. */
    private static Form chosen(Form form, String day) {
        String first = form.value("first-day");
        boolean second = !first.isBlank() && first.compareTo(day) <= 0;
        return second
                ? form.with(DATES, first.equals(day) ? day : first + " to " + day)
                        .with("first-day", "")
                : form.with(DATES, day).with("first-day", day);
    }

    private Optional<Schedule> schedule(Form form) {
        return form.has(DATES)
                ? DateWords.read(form.value(DATES), sources.today())
                        .<Optional<Schedule>>fold(Optional::of, problem -> Optional.empty())
                : Optional.empty();
    }

    private List<Find> finds(Form form) {
        Optional<Stay> stay =
                schedule(form).map(Schedule::horizon).map(sources.desk().pricing()::stay);
        return sources.desk().finder().find(form.value("text"), stay);
    }

    private PackageView view(Form form) {
        Optional<Schedule> schedule = schedule(form);
        LocalDate today = sources.today();
        Optional<Outcome<PricePackage.Said>> priced = priced(form);
        Optional<PricePackage.Said> said =
                priced.flatMap(outcome -> outcome.fold(Optional::of, problem -> Optional.empty()));
        Optional<PackagePrice> price = said.map(PricePackage.Said::price);
        Form told = priced.filter(outcome -> !form.faulty())
                .map(outcome -> outcome.fold(found -> form, form::with))
                .orElse(form);
        return new PackageView(
                told,
                finds(form).stream().map(PackageView.Found::of).toList(),
                words.rows(form),
                schedule.map(PriceView::said).orElse(""),
                DayCalendar.of(month(form, schedule, today), schedule, today),
                price.map(found -> PriceView.of(found, sources.shelf())),
                said.map(found -> alternatives(form, found)).orElse(List.of()),
                usual(price));
    }

    /** Empty where nothing is wrong with what is typed, and something is not typed yet. */
    private Optional<Outcome<PricePackage.Said>> priced(Form form) {
        if (!form.has(DATES)) {
            return Optional.empty();
        }
        if (form.rows(LINES) == 0) {
            return DateWords.read(form.value(DATES), sources.today())
                    .fold(days -> Optional.empty(), problem -> Optional.of(Outcome.refused(problem)));
        }
        return Optional.of(FormJson.read(form, PackageJson.reader(sources.today()))
                .outcome()
                .then(sources.desk().pricing()::withAlternatives));
    }

    /** The month that a button asked for, else that of the first day; whoever writes another into the address gets this. */
    private static YearMonth month(Form form, Optional<Schedule> schedule, LocalDate today) {
        YearMonth usual =
                YearMonth.from(schedule.map(days -> days.horizon().from()).orElse(today));
        try {
            YearMonth asked = form.has("month") ? YearMonth.parse(form.value("month")) : usual;
            return Math.abs(asked.getYear() - today.getYear()) <= MOST_YEARS ? asked : usual;
        } catch (DateTimeParseException notOne) {
            return usual;
        }
    }

    private static List<PackageView.Said> alternatives(Form form, PricePackage.Said said) {
        return said.alternatives().stream()
                .map(other -> PackageView.Said.of(form, other, said.price()))
                .toList();
    }

    private PackageView.Usual usual(Optional<PackagePrice> price) {
        var rules = sources.desk().rules().now().facts();
        return new PackageView.Usual(
                sources.today().plusDays(rules.validDays()).toString(),
                price.map(found -> rules.deposit().of(found.replacementValue()).amount())
                        .orElse(""),
                sources.household().settings().now().facts().currency().code());
    }
}
