package dayglass.desk.quote;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.Transactions;
import dayglass.desk.DeskRules;
import dayglass.desk.KeptRules;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.price.PricePackage;
import dayglass.house.People;
import dayglass.house.Person;
import dayglass.house.Role;
import dayglass.house.WhoActs;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Issues quotes, revises them while they are open, and keeps that one was declined. */
public final class MakeQuote {
    private final Quotes quotes;
    private final PricePackage pricing;
    private final KeptRules rules;
    private final House house;

    /** Whom it asks, apart from the desk. */
    public record House(People people, WhoActs whoActs, Transactions transactions) {}

    public MakeQuote(Quotes quotes, PricePackage pricing, KeptRules rules, House house) {
        this.quotes = quotes;
        this.pricing = pricing;
        this.rules = rules;
        this.house = house;
    }

    /**
     * What a quote is to say.
     *
     * @param validUntil empty for as long as the rules say
     * @param deposit empty for what the rules say
     */
    public record Wanted(
            Customer customer, PackageAsked asked, Optional<LocalDate> validUntil, Optional<Money> deposit) {}

    /** Issues it under the next number. */
    public Outcome<Stored<Quote.Id, Quote>> issue(Wanted wanted) {
        return house.transactions()
                .atomically(() -> promise(wanted)
                        .then(promise -> quotes.add(new Quote(
                                quotes.nextNumber(), wanted.customer(), List.of(promise), Quote.Decision.OPEN, ""))));
    }

    /** Promises something else under the same number, by today's cards; an expired quote stands again. */
    public Outcome<Stored<Quote.Id, Quote>> revise(Stored<Quote.Id, Quote> based, Wanted wanted) {
        if (based.facts().decision() == Quote.Decision.ACCEPTED) {
            return Outcome.refused(
                    Problem.Code.CANNOT_BE_DONE, "It was accepted: extend or change its rental, or issue a new quote.");
        }
        return house.transactions()
                .atomically(() -> promise(wanted)
                        .then(promise -> quotes.change(new Stored<>(
                                based.id(), based.version(), based.facts().revised(wanted.customer(), promise)))));
    }

    /** Keeps that the customer does not want it. */
    public Outcome<Stored<Quote.Id, Quote>> decline(Stored<Quote.Id, Quote> based, String why) {
        return based.facts().decision() == Quote.Decision.OPEN
                ? quotes.change(
                        new Stored<>(based.id(), based.version(), based.facts().decided(Quote.Decision.DECLINED, why)))
                : Outcome.refused(
                        Problem.Code.CANNOT_BE_DONE,
                        "It was " + based.facts().decision().word() + " already.");
    }

    private Outcome<Promise> promise(Wanted wanted) {
        Optional<Problem> refusal = unexplained(wanted.asked()).or(() -> beyondFloor(wanted.asked()));
        return refusal.isPresent()
                ? Outcome.refused(refusal.get())
                : pricing.price(wanted.asked()).then(price -> promise(wanted, price));
    }

    private Outcome<Promise> promise(Wanted wanted, PackagePrice price) {
        DeskRules now = rules.now().facts();
        LocalDate validUntil = wanted.validUntil().orElse(price.pricedOn().plusDays(now.validDays()));
        if (validUntil.isBefore(price.pricedOn())) {
            return Outcome.faulty("/validUntil", "is over: choose today or a day to come");
        }
        if (price.lines().isEmpty()) {
            return Outcome.refused(
                    Problem.Code.CANNOT_BE_DONE, "None of it can be supplied then, so there is nothing to promise.");
        }
        Money deposit = wanted.deposit().orElse(now.deposit().of(price.replacementValue()));
        if (!deposit.currency().equals(price.currency())) {
            return Outcome.faulty("/deposit/currency", "must be the house's, " + price.currency());
        }
        return Outcome.done(
                new Promise(price, price.pricedOn(), house.whoActs().now(), validUntil, deposit, now.terms()));
    }

    private static Optional<Problem> unexplained(PackageAsked asked) {
        boolean off = asked.off().value().signum() > 0
                || asked.lines().stream().anyMatch(line -> line.off().value().signum() > 0);
        return off && asked.reason().isBlank()
                ? Optional.of(Problem.faulty("/discountReason", "is missing: a discount is given with its reason"))
                : Optional.empty();
    }

    private Optional<Problem> beyondFloor(PackageAsked asked) {
        Optional<Percent> most = pricing.beyondFloor(asked);
        boolean owner = house.people()
                .find(house.whoActs().now())
                .map(Stored::facts)
                .map(Person::role)
                .filter(role -> role == Role.OWNER)
                .isPresent();
        return owner
                ? Optional.empty()
                : most.map(percent -> new Problem(
                        Problem.Code.CANNOT_BE_DONE,
                        "Only an owner may take more than " + percent.value().toPlainString()
                                + " % off the card's hire."));
    }
}
