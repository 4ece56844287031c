package dayglass.wire.verdict;

import dayglass.base.Money;
import dayglass.cost.ownership.CashFlow;
import dayglass.cost.ownership.RateOfReturn;
import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictQuestion;
import dayglass.cost.verdict.BreakEven;
import dayglass.cost.verdict.BreakEvenRule;
import dayglass.cost.verdict.NestedPermits;
import dayglass.cost.verdict.RentOrBuy;
import dayglass.wire.Json;
import java.math.BigDecimal;
import java.util.List;

/** What a verdict comes to, as it is answered. */
public final class VerdictWriter {
    private static final int DECIMALS_OF_PERCENT = 4;

    private VerdictWriter() {}

    public static Json write(Verdict verdict) {
        Json.Members members = Json.object()
                .put("currency", verdict.costOfOwning().currency().code())
                .put("verdict", verdict.word())
                .put("costOfOwning", verdict.costOfOwning().amount())
                .put("costOfRenting", verdict.costOfRenting().amount())
                .put("saving", verdict.saving().amount())
                .put(
                        "equivalentAnnualCost",
                        verdict.owning().equivalentAnnualCost().amount());
        verdict.owning().costPerDayUsed().ifPresent(cost -> members.put("costPerDayUsed", cost.amount()));
        verdict.against().paybackMonth().ifPresent(month -> members.put("paybackMonth", month));
        members.put("returns", returns(verdict.returns()))
                .put("lines", lines(verdict.owning().presentByFlow()))
                .put("rounding", verdict.owning().presentRounding().amount())
                .put(
                        "rented",
                        Json.list(verdict.rented().stream()
                                .map(VerdictWriter::rented)
                                .toList()))
                .put(
                        "rentedByYear",
                        Json.texts(verdict.question().choice().presentCostOfRentingByYear().stream()
                                .map(Money::amount)
                                .toList()))
                .put(
                        "months",
                        Json.list(verdict.against().months().stream()
                                .map(VerdictWriter::month)
                                .toList()))
                .put(
                        "breakEven",
                        Json.object()
                                .put("daysPerYear", breakEven(verdict.inDaysPerYear()))
                                .put("monthsOwned", breakEven(verdict.inMonthsOwned()))
                                .put("resaleValue", breakEven(verdict.inResaleValue()))
                                .put("ratePercent", breakEven(verdict.inRate()))
                                .build());
        verdict.question().writtenOff().ifPresent(off -> members.put("depreciation", writtenOff(off)));
        verdict.rule().ifPresent(ruling -> members.put("rule", rule(verdict, ruling)));
        verdict.nested().ifPresent(ruling -> members.put("nested", nested(verdict, ruling)));
        verdict.findings().ifPresent(found -> members.put("uncertainty", FindingsWriter.write(found)));
        return members.put("cautions", Json.texts(Verdict.CAUTIONS)).build();
    }

    private static Json returns(RateOfReturn returns) {
        return Json.object()
                .put(
                        "percentPerYear",
                        Json.texts(returns.percentPerYear(DECIMALS_OF_PERCENT).stream()
                                .map(BigDecimal::toPlainString)
                                .toList()))
                .put("all", returns.all())
                .build();
    }

    private static Json lines(List<CashFlow.Line> lines) {
        return Json.list(lines.stream()
                .map(line -> Json.object()
                        .put("for", line.flow().words())
                        .put("amount", line.amount().amount())
                        .build())
                .toList());
    }

    private static Json rented(RentOrBuy.Rented rented) {
        return Json.object()
                .put("job", rented.kind().name())
                .put("oneJob", rented.oneJob().amount())
                .put("aYear", rented.aYear().amount())
                .build();
    }

    private static Json month(CashFlow.Month month) {
        return Json.object()
                .put("month", month.month())
                .put("lines", lines(month.lines()))
                .put("sum", month.sum().amount())
                .put("soFar", month.soFar().amount())
                .build();
    }

    private static Json breakEven(BreakEven found) {
        Json.Members members = Json.object()
                .put(
                        "crossings",
                        Json.list(found.crossings().stream()
                                .map(VerdictWriter::crossing)
                                .toList()));
        if (!found.none().isEmpty()) {
            members.put("none", found.none());
        }
        return members.putUnlessEmpty(
                        "curve",
                        found.curve().stream().map(VerdictWriter::point).toList())
                .build();
    }

    private static Json crossing(BreakEven.Crossing crossing) {
        return Json.object()
                .put("at", crossing.at().toPlainString())
                .put("beyond", crossing.owningIsCheaperBeyond() ? "buy" : "rent")
                .put("before", point(crossing.before()))
                .put("after", point(crossing.after()))
                .build();
    }

    private static Json point(BreakEven.Point point) {
        return Json.object()
                .put("place", point.place().toPlainString())
                .put("owning", point.owning().amount())
                .put("renting", point.renting().amount())
                .build();
    }

    private static Json writtenOff(VerdictQuestion.WrittenOff off) {
        Json.Members members = Json.object().put("method", off.method());
        if (!off.source().isEmpty()) {
            members.put("source", off.source());
        }
        return members.put(
                        "years",
                        Json.texts(off.years().stream().map(Money::amount).toList()))
                .build();
    }

    private static Json rule(Verdict verdict, BreakEvenRule.Ruling ruling) {
        Json.Members members = Json.object();
        ruling.buysOn().ifPresent(day -> members.put("buysOn", day.toString()));
        return members.put("rentPaid", ruling.rentPaid().amount())
                .put("cost", ruling.cost().amount())
                .put("hindsight", ruling.hindsight().amount())
                .put("guaranteed", verdict.ruleIsGuaranteed())
                .build();
    }

    private static Json nested(Verdict verdict, NestedPermits.Ruling ruling) {
        Json.Members members = Json.object();
        ruling.buysOn().ifPresent(day -> members.put("buysOn", day.toString()));
        return members.put(
                        "taken",
                        Json.list(ruling.taken().stream()
                                .map(VerdictWriter::taken)
                                .toList()))
                .put("cost", ruling.cost().amount())
                .put("hindsight", ruling.hindsight().amount())
                .put("hindsightAnyDay", ruling.hindsightAnyDay().amount())
                .put("factor", ruling.kinds())
                .put("guaranteed", verdict.ruleIsGuaranteed())
                .build();
    }

    private static Json taken(NestedPermits.Taken taken) {
        Json.Members members = Json.object().put("on", taken.on().toString());
        taken.days()
                .ifPresent(days -> members.put("from", days.from().toString())
                        .put("to", days.lastDay().toString()));
        return members.put("price", taken.price().amount()).build();
    }
}
