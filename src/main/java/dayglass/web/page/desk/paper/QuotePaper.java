package dayglass.web.page.desk.paper;

import dayglass.catalogue.Mark;
import dayglass.desk.paper.Item;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.quote.Promise;
import dayglass.desk.quote.Quote;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A revision of a quote as it is printed. */
final class QuotePaper {
    private final PaperSources sources;
    private final Quote quote;
    private final int revision;
    private final Promise promise;
    private final PackagePrice price;

    /**
     * Of one revision.
     *
     * @param revision from 1 on
     */
    QuotePaper(PaperSources sources, Quote quote, int revision) {
        this.sources = sources;
        this.quote = quote;
        this.revision = revision;
        this.promise = quote.revisions().get(revision - 1);
        this.price = promise.price();
    }

    Map<String, Object> model() {
        return Map.of(
                "heading", heading(),
                "table", table(),
                "sums", sums(),
                "shorts", shorts(),
                "cover", cover(),
                "insurance", insurance(),
                "reason", price.discount().signum() == 0 ? "" : price.asked().reason(),
                "terms", promise.terms());
    }

    private Heading heading() {
        List<Heading.Fact> facts = new ArrayList<>(PaperSources.customer(quote.customer()));
        facts.add(PaperSources.days(promise));
        facts.add(new Heading.Fact(
                "Issued", Words.date(promise.issuedOn()) + " by " + sources.person(promise.issuedBy())));
        facts.add(new Heading.Fact("State", state()));
        facts.add(new Heading.Fact("Prices", "by the rate cards in force on " + Words.day(price.pricedOn())));
        return sources.heading("Quote " + quote.number() + ", revision " + revision, facts);
    }

    private String state() {
        if (revision < quote.revisions().size()) {
            return "replaced by revision " + quote.revisions().size();
        }
        String until = Words.date(promise.validUntil());
        String state = quote.state(sources.desk().pricing().today());
        return switch (state) {
            case "open" -> "open: can be taken up until " + until;
            case "expired" -> "expired: it could be taken up until " + until;
            default -> state;
        };
    }

    private AmountTable table() {
        List<Item> items = price.lines().stream().map(Item::of).toList();
        return AmountTable.of(items, price.lines().stream().map(sources::notes).toList(), price.currency(), 1);
    }

    private List<Sum> sums() {
        List<Sum> sums = new ArrayList<>();
        sums.add(Sum.of("Hire", price.hire()));
        if (price.discount().signum() != 0) {
            sums.add(Sum.of("Discount", price.discount().times(-1)));
        }
        if (price.trips().signum() != 0) {
            sums.add(Sum.of("Trips", price.trips()));
        }
        price.addOns(Mark.CHARGE).forEach((name, amount) -> sums.add(Sum.of("Charge: " + name, amount)));
        price.addOns(Mark.WAIVER).forEach((name, amount) -> sums.add(Sum.of("Waiver: " + name, amount)));
        sums.add(Sum.of("Before tax", price.net()));
        price.taxes().forEach((name, amount) -> sums.add(Sum.of("Tax: " + name, amount)));
        sums.add(Sum.strong("Total", price.total()));
        sums.add(Sum.of("Deposit, at the handover", promise.deposit()));
        return sums;
    }

    private List<String> shorts() {
        return price.shorts().stream()
                .map(missing -> missing.what() + ", " + Words.dates(missing.dates()) + ": "
                        + (missing.rentedIn()
                                ? "not free here; rented in for you, and in the price"
                                : "cannot be supplied, and is not in the price"))
                .toList();
    }

    /** Who bears damage and loss. */
    private String cover() {
        if (price.asked().insured()) {
            return "Proof of insurance is to be brought before the handover; no waiver is charged.";
        }
        return price.addOns(Mark.WAIVER).isEmpty()
                ? "This price holds neither a waiver nor proof of insurance: damage and loss are the customer's to bear."
                : "The price holds a waiver. A waiver is no insurance: it limits what the house asks for some damage."
                        + " Loss, theft, water, missing parts and negligence are usually left out, and a share stays"
                        + " with the customer; what holds is in the terms.";
    }

    /** For the certificate of insurance. */
    private List<String> insurance() {
        List<String> words = new ArrayList<>();
        words.add("Replacement value in total: " + Words.money(price.replacementValue()));
        if (!price.withoutValue().isEmpty()) {
            words.add("Not in it, because no value in " + price.currency() + " is recorded: "
                    + String.join(", ", price.withoutValue()) + ". Ask before the certificate is made out.");
        }
        if (price.lines().stream().anyMatch(line -> line.rentedIn().isPresent())) {
            words.add("Not in it: what is rented in. Ask for its value before the certificate is made out.");
        }
        return words;
    }
}
