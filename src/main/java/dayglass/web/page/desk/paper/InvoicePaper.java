package dayglass.web.page.desk.paper;

import dayglass.base.Currency;
import dayglass.desk.paper.Invoice;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.Rental;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An invoice as it is printed. */
final class InvoicePaper {
    private final PaperSources sources;
    private final Invoice invoice;
    private final Rental rental;
    private final Currency currency;

    InvoicePaper(PaperSources sources, Invoice invoice) {
        this.sources = sources;
        this.invoice = invoice;
        this.rental = invoice.rental();
        this.currency = invoice.total().currency();
    }

    Map<String, Object> model() {
        List<PricedLine> lines = rental.promise().price().lines();
        return Map.of(
                "heading", heading(),
                "hired",
                        AmountTable.of(
                                invoice.hired(),
                                lines.stream().map(sources::notes).toList(),
                                currency,
                                1),
                "charged",
                        AmountTable.of(
                                invoice.charged(),
                                rental.charges().stream().map(this::notes).toList(),
                                currency,
                                1 + invoice.hired().size()),
                "sums", sums(),
                "reason",
                        invoice.hired().isEmpty()
                                        || rental.promise().price().discount().signum() == 0
                                ? ""
                                : rental.promise().price().asked().reason(),
                "hidesTaxes", invoice.hidesTaxes(),
                "terms", rental.promise().terms());
    }

    private Heading heading() {
        Rental.Ending ending = rental.ending().orElseThrow();
        List<Heading.Fact> facts = new ArrayList<>(PaperSources.customer(rental.customer()));
        facts.add(new Heading.Fact("Rental", rental.number() + (ending.cancelled() ? ", cancelled" : "")));
        facts.add(new Heading.Fact("Quote", quote()));
        facts.add(PaperSources.days(rental));
        facts.add(new Heading.Fact(
                "Issued",
                Words.date(ending.at().atZone(sources.house().zone()).toLocalDate()) + " by "
                        + sources.person(ending.by())));
        return sources.heading("Invoice " + invoice.number(), facts);
    }

    private String quote() {
        return sources.desk()
                .quotes()
                .find(rental.quote())
                .map(found -> Long.toString(found.facts().number()))
                .orElse("");
    }

    private List<String> notes(Charge charge) {
        String kind = charge.kind().word()
                + charge.unit()
                        .flatMap(sources.shelf().units()::find)
                        .map(unit -> ", " + unit.facts().tag())
                        .orElse("");
        String back = charge.reverses()
                .map(at -> "takes back line " + (1 + invoice.hired().size() + at) + "; ")
                .orElse("");
        return List.of(back + kind + ", " + sources.moment(charge.at()));
    }

    private List<Sum> sums() {
        List<Sum> sums = new ArrayList<>();
        sums.add(Sum.of(invoice.hidesTaxes() ? "Before the taxes that stand apart" : "Before tax", invoice.net()));
        invoice.taxes().forEach((code, amount) -> sums.add(Sum.of("Tax: " + code, amount)));
        sums.add(Sum.strong("Total", invoice.total()));
        sums.add(Sum.of("Deposit left", rental.deposit().taken()));
        sums.add(Sum.of("Of it kept towards the total", rental.deposit().kept()));
        sums.add(Sum.of("Of it given back", rental.deposit().returned()));
        sums.add(
                invoice.toPay().signum() < 0
                        ? Sum.strong("To be paid back", invoice.toPay().times(-1))
                        : Sum.strong("Left to pay", invoice.toPay()));
        return sums;
    }
}
