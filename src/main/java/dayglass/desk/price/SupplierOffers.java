package dayglass.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.cost.plan.Question;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What suppliers let of the models that serve a demand. */
final class SupplierOffers {
    private final Map<String, List<Rate>> rates;
    private final Map<LensModel.Id, String> modelNames;

    /** @param rates by the supplier's name */
    SupplierOffers(Map<String, List<Rate>> rates, Map<LensModel.Id, String> modelNames) {
        this.rates = rates;
        this.modelNames = modelNames;
    }

    /** By the id of their options; nobody else has the very unit that somebody wants. */
    Map<String, Offer> of(Demand demand) {
        Map<String, Offer> offers = new LinkedHashMap<>();
        rates.forEach((supplier, all) -> all.forEach(rate -> rate.lets()
                .filter(lets -> lets.kind() == Lets.Kind.MODEL)
                .map(lets -> new LensModel.Id(lets.number()))
                .filter(demand.models()::contains)
                .ifPresent(model -> {
                    Question.Rental option = new Question.Rental(
                            supplier + ", " + rate.code(),
                            supplier,
                            Map.of(demand.slot(), 1),
                            rate.copies(),
                            rate.terms(),
                            rate.available(),
                            Map.of());
                    offers.put(
                            option.id(),
                            new Offer(
                                    option,
                                    rate,
                                    demand,
                                    modelNames.getOrDefault(model, demand.label()),
                                    List.of(),
                                    Optional.of(model)));
                })));
        return offers;
    }
}
