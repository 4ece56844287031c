package dayglass.desk.price;

import dayglass.base.Currency;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.catalogue.Supplier;
import dayglass.cost.plan.Question;
import dayglass.desk.DeskRules;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What suppliers let of the models that serve a demand, in the house's currency. */
final class SupplierOffers {
    private final List<Theirs> theirs;
    private final Serving serving;
    private final Currency currency;
    private final DeskRules rules;

    /** @param rules have the budget rates of other currencies; what has none is not offered */
    SupplierOffers(List<Theirs> theirs, Serving serving, Currency currency, DeskRules rules) {
        this.theirs = List.copyOf(theirs);
        this.serving = serving;
        this.currency = currency;
        this.rules = rules;
    }

    /** A rate of a supplier's card, in the currency of the card. */
    record Theirs(Supplier supplier, Currency currency, Rate rate) {
        private Optional<LensModel.Id> servedModel(Demand demand) {
            return rate.lets()
                    .filter(lets -> lets.kind() == Lets.Kind.MODEL)
                    .map(lets -> new LensModel.Id(lets.number()))
                    .filter(demand.models()::contains);
        }
    }

    /** By the id of their options; nobody else has the very unit that somebody wants. */
    Map<String, Offer> of(Demand demand) {
        Map<String, Offer> offers = new LinkedHashMap<>();
        for (Theirs each : theirs) {
            each.servedModel(demand)
                    .flatMap(model -> offer(each, demand, model, offers.size()))
                    .ifPresent(offer -> offers.put(offer.option().id(), offer));
        }
        return offers;
    }

    /** What would make more offers: budget rates that are not set; empty where none is wanting. */
    String remedy(Demand demand) {
        return theirs.stream()
                .filter(each -> each.servedModel(demand).isPresent() && !usable(each))
                .map(each -> each.supplier().name() + " lets it in " + each.currency()
                        + ", for which there is no budget" + " rate: set one among the desk's rules.")
                .distinct()
                .collect(Collectors.joining(" "));
    }

    private boolean usable(Theirs each) {
        return each.currency().equals(currency)
                || rules.budgetRate(each.currency()).isPresent();
    }

    /** Its number keeps apart what two cards of a supplier call alike. */
    private Optional<Offer> offer(Theirs from, Demand demand, LensModel.Id model, int number) {
        if (!usable(from)) {
            return Optional.empty();
        }
        Optional<Offer.Foreign> foreign = from.currency().equals(currency)
                ? Optional.empty()
                : rules.budgetRate(from.currency()).map(at -> new Offer.Foreign(from.rate(), at));
        Rate rate =
                foreign.map(each -> each.at().convert(each.rate(), currency)).orElse(from.rate());
        String supplier = from.supplier().name();
        Question.Rental option = new Question.Rental(
                number + ", " + supplier + ", " + rate.code(),
                supplier,
                Map.of(demand.slot(), 1),
                rate.copies(),
                rate.terms(),
                rate.available(),
                Map.of());
        String what = serving.name(model).orElse(demand.label());
        return Optional.of(new Offer(option, rate, demand, what, List.of(), foreign));
    }
}
