package dayglass.web.page.desk.rental;

import dayglass.base.Stored;
import dayglass.desk.quote.Customer;
import dayglass.desk.quote.Promise;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Rental;
import dayglass.house.Person;
import dayglass.inventory.Shelf;
import dayglass.web.page.Label;
import dayglass.web.page.desk.price.PriceView;
import dayglass.web.page.picture.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A quote with its revisions, the one that is looked at in full.
 *
 * @param revision the number of that one, from 1
 * @param open whether something can still be decided
 * @param rental the number of the rental that came of it; 0 for none
 */
public record QuoteView(
        long id,
        long version,
        long number,
        Label label,
        String state,
        boolean open,
        boolean expired,
        int revision,
        List<Revision> revisions,
        PriceView price,
        List<String> says,
        String terms,
        long rental) {
    public QuoteView {
        revisions = List.copyOf(revisions);
        says = List.copyOf(says);
    }

    /** A revision by its number, when it was issued and what it came to. */
    public record Revision(int number, String issued, String total) {}

    /** A row of the list of quotes. */
    public record Row(
            long id,
            long number,
            String customer,
            String production,
            String days,
            String total,
            String state,
            String until) {
        static Row of(Stored<Quote.Id, Quote> quote, LocalDate today) {
            Quote facts = quote.facts();
            Promise now = facts.now();
            return new Row(
                    quote.id().number(),
                    facts.number(),
                    facts.customer().name(),
                    facts.customer().production(),
                    Words.dates(now.price().asked().schedule().horizon()),
                    Words.money(now.price().total()),
                    facts.state(today),
                    Words.day(now.validUntil()));
        }
    }

    /** What surrounds a quote. */
    record Around(
            Shelf shelf, Map<Person.Id, String> names, LocalDate today, Optional<Stored<Rental.Id, Rental>> rental) {}

    static QuoteView of(Stored<Quote.Id, Quote> quote, int revision, Around around) {
        Quote facts = quote.facts();
        Promise promise = facts.revisions().get(revision - 1);
        return new QuoteView(
                quote.id().number(),
                quote.version(),
                facts.number(),
                label(facts, promise, revision),
                facts.state(around.today()),
                facts.decision() == Quote.Decision.OPEN,
                facts.expired(around.today()),
                revision,
                revisions(facts),
                PriceView.of(promise.price(), around.shelf()),
                says(facts, promise, around),
                promise.terms(),
                around.rental().map(rental -> rental.id().number()).orElse(0L));
    }

    private static Label label(Quote quote, Promise promise, int revision) {
        return new Label(
                "Quote " + quote.number() + (quote.revisions().size() > 1 ? ", revision " + revision : ""),
                fields(quote.customer(), promise));
    }

    static List<Label.Field> fields(Customer customer, Promise promise) {
        List<Label.Field> fields = new ArrayList<>();
        fields.add(new Label.Field("customer", customer.name()));
        if (!customer.production().isEmpty()) {
            fields.add(new Label.Field("production", customer.production()));
        }
        fields.add(new Label.Field(
                "used", Words.dates(promise.price().asked().schedule().horizon())));
        fields.add(new Label.Field("comes to", Words.money(promise.price().total())));
        return fields;
    }

    private static List<Revision> revisions(Quote quote) {
        List<Revision> revisions = new ArrayList<>();
        for (Promise promise : quote.revisions()) {
            revisions.add(new Revision(
                    revisions.size() + 1,
                    Words.day(promise.issuedOn()),
                    Words.money(promise.price().total())));
        }
        return revisions;
    }

    private static List<String> says(Quote quote, Promise promise, Around around) {
        List<String> says = new ArrayList<>();
        says.add("Issued on " + Words.date(promise.issuedOn()) + " by "
                + around.names().getOrDefault(promise.issuedBy(), "somebody who is gone") + ", stands until "
                + Words.date(promise.validUntil()) + ".");
        says.add(
                promise.price().asked().insured()
                        ? "Proof of insurance is to be brought; no waiver is charged."
                        : "No proof of insurance: where the card has a waiver it is charged. A waiver is no insurance.");
        says.add("Deposit at the handover: " + Words.money(promise.deposit()) + ". Replacement value "
                + Words.money(promise.price().replacementValue()) + ".");
        if (!promise.price().asked().reason().isEmpty()) {
            says.add("Discount: " + promise.price().asked().reason() + ".");
        }
        if (!quote.customer().contact().isEmpty()) {
            says.add("Reached at " + quote.customer().contact() + ".");
        }
        if (!quote.why().isEmpty()) {
            says.add("Declined: " + quote.why());
        }
        return says;
    }
}
