package dayglass.wire.costing;

import dayglass.base.DateRange;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalTerms;
import dayglass.wire.Decimals;
import dayglass.wire.Json;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Options as the request writes them; what equals its default is left out, so that equal options read alike. */
public final class OptionWriter {
    private OptionWriter() {}

    /** A rental option with its supplier. */
    public static Json rental(Question.Rental rental) {
        return rental(rental, Json.object().put("id", rental.id()).put("supplier", rental.supplier()));
    }

    /** A rate of a card: the same without the supplier, and with members of its own. */
    public static Json rate(Question.Rental rental, Consumer<Json.Members> own) {
        Json.Members members = Json.object().put("id", rental.id());
        own.accept(members);
        return rental(rental, members);
    }

    /** A purchase option with its supplier. */
    public static Json purchase(Question.Purchase purchase, LocalDate firstDay) {
        return purchase(
                purchase, Json.object().put("id", purchase.id()).put("supplier", purchase.supplier()), firstDay);
    }

    /** A supplier's offer: the same without the supplier. */
    public static Json offer(Question.Purchase purchase, LocalDate firstDay) {
        return purchase(purchase, Json.object().put("id", purchase.id()), firstDay);
    }

    public static Json owned(Question.Owned unit) {
        return Json.object()
                .put("id", unit.id())
                .put("covers", covers(unit.covers()))
                .putUnlessEmpty("available", spans(unit.available()))
                .build();
    }

    /** How many of each slot, by the slot's name. */
    public static Json covers(Map<String, Integer> covers) {
        Json.Members members = Json.object();
        new TreeMap<>(covers).forEach((slot, count) -> members.put(slot, count));
        return members.build();
    }

    public static List<Json> spans(List<DateRange> spans) {
        return spans.stream().map(span -> (Json) span(span).build()).toList();
    }

    static Json.Members span(DateRange dates) {
        Json.Members members = Json.object().put("from", dates.from().toString());
        return dates.days() == 1 ? members : members.put("to", dates.lastDay().toString());
    }

    static String plain(BigDecimal number) {
        return Decimals.withoutTrailingNoughts(number).toPlainString();
    }

    static void putUnlessZero(Json.Members members, String name, Percent percent) {
        if (percent.value().signum() != 0) {
            members.put(name, plain(percent.value()));
        }
    }

    private static Json rental(Question.Rental rental, Json.Members members) {
        RentalTerms terms = rental.terms();
        if (!rental.covers().isEmpty()) {
            members.put("covers", covers(rental.covers()));
        }
        putCopies(members, rental.copies());
        members.put(
                "blocks",
                Json.list(terms.blocks().stream().map(OptionWriter::block).toList()));
        terms.extraDay()
                .ifPresent(extra -> members.put(
                        "extraDay",
                        Json.object()
                                .put("afterDays", extra.afterDays())
                                .put("price", extra.price().amount())
                                .build()));
        putDayFactors(members, terms.dayFactors());
        members.putUnlessEmpty(
                "longHire",
                terms.longHire().stream().map(OptionWriter::longHire).toList());
        if (terms.minimumCharge().signum() != 0) {
            members.put("minimumCharge", terms.minimumCharge().amount());
        }
        if (terms.perTrip().signum() != 0) {
            members.put("perTrip", terms.perTrip().amount());
        }
        members.putUnlessEmpty(
                "addOns",
                terms.addOns().stream()
                        .map(addOn -> addOn(addOn, terms.addOns()))
                        .toList());
        return members.putUnlessEmpty("available", spans(rental.available())).build();
    }

    private static void putCopies(Json.Members members, int copies) {
        if (copies != 1) {
            members.put("copies", copies);
        }
    }

    private static Json block(RentalTerms.Block block) {
        Json.Members members = Json.object()
                .put("days", block.days())
                .put("price", block.price().amount());
        block.startsOn().ifPresent(day -> members.put("startsOn", day.name()));
        return members.build();
    }

    private static void putDayFactors(Json.Members members, Map<DayUse, BigDecimal> factors) {
        Json.Members written = Json.object();
        for (DayUse use : DayUse.values()) {
            BigDecimal factor = factors.getOrDefault(use, BigDecimal.ONE);
            if (factor.compareTo(BigDecimal.ONE) != 0) {
                written.put(use.word(), plain(factor));
            }
        }
        Json.Obj object = written.build();
        if (!object.members().isEmpty()) {
            members.put("dayFactors", object);
        }
    }

    private static Json longHire(RentalTerms.LongHire entry) {
        return Json.object()
                .put("fromDays", entry.fromDays())
                .put("percent", plain(entry.percent().value()))
                .build();
    }

    /** What it is a percentage of stands in the order of the charge: hire, trip, then the add-ons. */
    private static Json addOn(RentalTerms.AddOn addOn, List<RentalTerms.AddOn> all) {
        Set<String> on = addOn.on();
        List<String> bases = Stream.concat(
                        Stream.of(RentalTerms.AddOn.HIRE, RentalTerms.AddOn.TRIP),
                        all.stream().map(RentalTerms.AddOn::name))
                .filter(on::contains)
                .toList();
        return Json.object()
                .put("name", addOn.name())
                .put("percent", plain(addOn.percent().value()))
                .put("on", Json.texts(bases))
                .build();
    }

    private static Json purchase(Question.Purchase purchase, Json.Members members, LocalDate firstDay) {
        PurchaseTerms terms = purchase.terms();
        members.put("covers", covers(purchase.covers()));
        putCopies(members, purchase.copies());
        members.put("price", terms.price().amount());
        putUnlessZero(members, "taxPercent", terms.tax());
        members.putUnlessEmpty(
                "extras", terms.extras().stream().map(OptionWriter::extra).toList());
        if (!purchase.availableFrom().equals(firstDay)) {
            members.put("availableFrom", purchase.availableFrom().toString());
        }
        members.put("termMonths", terms.termMonths()).put("resale", resale(terms.resale()));
        Json.Obj holding = holding(terms.holding());
        if (!holding.members().isEmpty()) {
            members.put("holding", holding);
        }
        terms.service()
                .ifPresent(service -> members.put(
                        "service",
                        Json.object()
                                .put("everyMonths", service.everyMonths())
                                .put("cost", service.cost().amount())
                                .build()));
        terms.letting().ifPresent(letting -> members.put("letting", letting(letting)));
        return members.build();
    }

    private static Json extra(PurchaseTerms.Extra extra) {
        return Json.object()
                .put("name", extra.name())
                .put("amount", extra.amount().amount())
                .build();
    }

    private static Json resale(PurchaseTerms.Resale resale) {
        Json.Members members = Json.object();
        if (resale.value() instanceof PurchaseTerms.YearlyLoss loss) {
            members.put("lossPercentPerYear", plain(loss.loss().value()));
        } else if (resale.value() instanceof PurchaseTerms.Points points) {
            members.put(
                    "points",
                    Json.list(points.points().stream()
                            .sorted(Comparator.comparingInt(PurchaseTerms.Point::months))
                            .map(OptionWriter::point)
                            .toList()));
        }
        putUnlessZero(members, "sellingCostPercent", resale.sellingCost());
        return members.build();
    }

    private static Json point(PurchaseTerms.Point point) {
        return Json.object()
                .put("months", point.months())
                .put("value", point.value().amount())
                .build();
    }

    private static Json.Obj holding(PurchaseTerms.Holding holding) {
        Json.Members members = Json.object();
        putUnlessZero(members, "insurancePercentPerYear", holding.insurancePerYear());
        if (holding.storagePerYear().signum() != 0) {
            members.put("storagePerYear", holding.storagePerYear().amount());
        }
        return members.build();
    }

    private static Json letting(PurchaseTerms.Letting letting) {
        return Json.object()
                .put("daysPerYear", plain(letting.daysPerYear()))
                .put("dayRate", letting.dayRate().amount())
                .put("ownerSharePercent", plain(letting.ownerShare().value()))
                .build();
    }
}
