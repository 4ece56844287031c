package dayglass.web.page.desk;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.sheet.CsvText;
import dayglass.shelf.LetsNames;
import dayglass.shelf.table.CardReport;
import dayglass.shelf.table.CardTables;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Decimals;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** A table that becomes a rate card: looked at first, and made a card by a button of its own. */
final class CardImportPage {
    private final DeskSources sources;
    private final Html html;

    CardImportPage(DeskSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get("/desk/import", this::ask);
        routes.post("/desk/import", this::take);
    }

    private void ask(Context ctx) {
        String supplier = Optional.ofNullable(ctx.queryParam("supplier")).orElse("");
        Form form = Form.EMPTY
                .with("supplier", supplier)
                .with(
                        "currency",
                        sources.household().settings().now().facts().currency().code());
        html.render(ctx, "cardimport.jte", model(form));
    }

    private void take(Context ctx) {
        Form sent = Requests.form(ctx);
        byte[] bytes = Requests.fileOrText(ctx, sent, "file", "text");
        Form form = sent.with("text", new String(bytes, StandardCharsets.UTF_8));
        List<Fault> faults = new ArrayList<>();
        Optional<CardTables.Heading> heading = heading(form, faults);
        Optional<CsvText> text = CsvText.read(bytes).fold(Optional::of, problem -> {
            problem.faults().forEach(fault -> faults.add(new Fault("text", fault.message())));
            return Optional.empty();
        });
        if (heading.isEmpty() || text.isEmpty()) {
            html.renderFaulty(ctx, "cardimport.jte", model(form.with(faults)));
        } else if (form.value("do").equals("make")) {
            make(ctx, form, heading.get(), text.get());
        } else {
            look(ctx, form, heading.get(), text.get());
        }
    }

    private static Optional<CardTables.Heading> heading(Form form, List<Fault> faults) {
        OptionalLong supplier = PathNumbers.of(form.value("supplier"));
        if (supplier.isEmpty()) {
            faults.add(new Fault("supplier", "say whose card it is"));
        }
        Optional<String> name = Requests.read(form, "name", Readers.name(), faults);
        Optional<Currency> currency = Requests.read(form, "currency", Decimals.currency(), faults);
        Optional<LocalDate> from = Requests.read(form, "effectiveFrom", Readers.date(), faults);
        return faults.isEmpty()
                ? Optional.of(new CardTables.Heading(
                        new Supplier.Id(supplier.orElseThrow()),
                        name.orElseThrow(),
                        currency.orElseThrow(),
                        from.orElseThrow()))
                : Optional.empty();
    }

    private void look(Context ctx, Form form, CardTables.Heading heading, CsvText text) {
        sources.tables()
                .cards()
                .preview(heading, text)
                .fold(
                        report -> {
                            html.render(ctx, "cardimport.jte", model(form, report));
                            return report;
                        },
                        problem -> {
                            html.renderFaulty(ctx, "cardimport.jte", model(form.with(atFields(problem))));
                            return problem;
                        });
    }

    /** What was made wrong since it was looked at is looked at again. */
    private void make(Context ctx, Form form, CardTables.Heading heading, CsvText text) {
        Outcome<Stored<RateCard.Id, RateCard>> made = sources.tables().cards().bringIn(heading, text);
        made.fold(
                card -> {
                    Requests.see(ctx, "/desk/cards/" + card.id().number());
                    return card;
                },
                problem -> {
                    look(ctx, form, heading, text);
                    return problem;
                });
    }

    /** The fields of this form bear the names that the JSON has, without a slash. */
    private static Problem atFields(Problem problem) {
        return new Problem(
                problem.code(),
                problem.detail(),
                problem.faults().stream()
                        .map(fault -> new Fault(
                                fault.pointer().equals("/supplierId")
                                        ? "supplier"
                                        : fault.pointer().replaceFirst("^/", ""),
                                fault.message()))
                        .toList());
    }

    private Map<String, Object> model(Form form) {
        List<Choice> suppliers = new ArrayList<>();
        suppliers.add(new Choice("", "choose"));
        Requests.all(sources.suppliers())
                .forEach(supplier -> suppliers.add(new Choice(
                        String.valueOf(supplier.id().number()),
                        supplier.facts().name() + (supplier.facts().house() ? " (this house)" : ""))));
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("form", form);
        model.put("suppliers", suppliers);
        return model;
    }

    private Map<String, Object> model(Form form, CardReport report) {
        LetsNames names = new LetsNames(sources.shelf());
        Map<String, Object> model = model(form);
        model.put("report", report);
        model.put(
                "rates",
                report.rates().stream()
                        .map(line -> RateLine.of((int) line.line(), line.rate(), names))
                        .toList());
        return model;
    }
}
