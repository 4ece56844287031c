package dayglass.wire.costing;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Explanation;
import dayglass.cost.rental.RentalCharge;
import dayglass.wire.Json;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A plan with its proof, its comparison and its explanation. */
public final class AnswerWriter {
    private AnswerWriter() {}

    public static Json write(Answer answer) {
        Json.Members members = Json.object()
                .put("currency", answer.total().currency().code())
                .put("total", answer.total().amount())
                .put("lowerBound", answer.lowerBound().amount())
                .put("optimal", answer.optimal())
                .put("payable", answer.payable().amount());
        putComparison(members, rows(answer.comparison()));
        return members.put("choices", list(answer.choices(), AnswerWriter::choice))
                .put("coverage", list(answer.coverage(), AnswerWriter::coverage))
                .put("cash", list(answer.cash(), AnswerWriter::cash))
                .put("explanation", explanation(answer))
                .build();
    }

    /** The rows of the comparison by their names on the wire, in their order there. */
    public static Map<String, Answer.Row> rows(Answer.Comparison comparison) {
        Map<String, Answer.Row> rows = new LinkedHashMap<>();
        rows.put("ownedOnly", comparison.ownedOnly());
        rows.put("dayRateOnly", comparison.dayRateOnly());
        rows.put("weekRateOnly", comparison.weekRateOnly());
        rows.put("rentOnly", comparison.rentOnly());
        rows.put("buyOnly", comparison.buyOnly());
        rows.put("best", comparison.best());
        return rows;
    }

    private static void putComparison(Json.Members members, Map<String, Answer.Row> rows) {
        Json.Members totals = Json.object();
        Json.Members bounds = Json.object();
        rows.forEach((name, row) -> {
            totals.put(name, amountOrNull(row.total()));
            if (row.cutShort()) {
                bounds.put(name, amountOrNull(row.bound()));
            }
        });
        members.put("comparison", totals.build());
        Json.Obj cutShort = bounds.build();
        if (!cutShort.members().isEmpty()) {
            members.put("comparisonBounds", cutShort);
        }
    }

    private static Json choice(Choice choice) {
        if (choice instanceof Choice.Rent rent) {
            return rent(rent);
        }
        if (choice instanceof Choice.Buy buy) {
            Json.Members members = Json.object()
                    .put("kind", "buy")
                    .put("option", buy.option())
                    .put("supplier", buy.supplier())
                    .put("from", buy.from().toString())
                    .put("outlay", buy.outlay().amount())
                    .put("netCost", buy.netCost().amount());
            return (buy.spare() ? members.put("spare", true) : members).build();
        }
        return Json.object().put("kind", "own").put("option", choice.option()).build();
    }

    private static Json rent(Choice.Rent rent) {
        RentalCharge charge = rent.charge();
        return Json.object()
                .put("kind", "rent")
                .put("option", rent.option())
                .put("supplier", rent.supplier())
                .put("from", rent.dates().from().toString())
                .put("to", rent.dates().lastDay().toString())
                .put("blocks", list(charge.blocks(), AnswerWriter::block))
                .put("hire", charge.hire().amount())
                .put("discount", charge.discount().amount())
                .put("raisedToMinimum", charge.raisedToMinimum().amount())
                .put("trip", charge.trip().amount())
                .put(
                        "addOns",
                        list(
                                charge.addOns(),
                                addOn -> Json.object()
                                        .put("name", addOn.name())
                                        .put("amount", addOn.amount().amount())
                                        .build()))
                .put("total", charge.total().amount())
                .build();
    }

    private static Json block(RentalCharge.BlockUsed block) {
        Json.Members members = Json.object()
                .put("from", block.from().toString())
                .put("days", block.days())
                .put("price", block.price().amount());
        return (block.extraDay() ? members.put("extraDay", true) : members).build();
    }

    private static Json coverage(Answer.Coverage coverage) {
        return Json.object()
                .put("date", coverage.date().toString())
                .put("slot", coverage.slot())
                .put("by", Json.texts(coverage.by()))
                .build();
    }

    private static Json cash(Answer.Cash cash) {
        return Json.object()
                .put("date", cash.date().toString())
                .put("amount", cash.amount().amount())
                .put("option", cash.option())
                .build();
    }

    /** The reasons bear the number of their choice, counted from 0, and its option. */
    private static Json explanation(Answer answer) {
        Explanation explanation = answer.explanation();
        List<Json> reasons = new ArrayList<>();
        for (int i = 0; i < explanation.reasons().size(); i++) {
            reasons.add(reason(i, answer.choices().get(i), explanation.reasons().get(i)));
        }
        return Json.object()
                .put("reasons", Json.list(reasons))
                .put(
                        "slotDays",
                        list(
                                explanation.slotDays(),
                                slotDay -> Json.object()
                                        .put("date", slotDay.date().toString())
                                        .put("slot", slotDay.slot())
                                        .put("amount", slotDay.amount().amount())
                                        .build()))
                .put("unshared", explanation.unshared().amount())
                .build();
    }

    private static Json reason(int number, Choice choice, Explanation.Reason reason) {
        Json.Members members = Json.object()
                .put("choice", number)
                .put("option", choice.option())
                .putUnlessEmpty(
                        "rivals",
                        reason.rivals().stream()
                                .map(rival -> (Json) Json.object()
                                        .put("blocks", rival.blocks())
                                        .put("hire", rival.hire().amount())
                                        .build())
                                .toList());
        reason.without()
                .ifPresent(without -> members.put(
                        "without",
                        Json.object()
                                .put("total", amountOrNull(without.total()))
                                .put("proved", without.proved())
                                .build()));
        return members.build();
    }

    private static Json amountOrNull(Optional<Money> amount) {
        return amount.map(money -> Json.text(money.amount())).orElseGet(Json::nothing);
    }

    private static <T> Json list(List<T> values, Function<T, Json> write) {
        return Json.list(values.stream().map(write).toList());
    }
}
