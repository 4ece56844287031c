package dayglass.web.api.planning.ways;

import dayglass.base.Money;
import dayglass.catalogue.LensModel.Look;
import dayglass.cost.plan.Answer;
import dayglass.job.Way;
import dayglass.optics.check.Fit;
import dayglass.planning.glass.JudgedGlass;
import dayglass.planning.glass.SlotReport;
import dayglass.planning.ways.Bought;
import dayglass.planning.ways.Completion;
import dayglass.planning.ways.Frontier;
import dayglass.planning.ways.OptionsSheet;
import dayglass.planning.ways.Payback;
import dayglass.planning.ways.SheetRow;
import dayglass.planning.ways.Taken;
import dayglass.shelf.LensModelJson;
import dayglass.wire.Json;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An options sheet on the wire. */
final class OptionsSheetJson {
    private static final int LOOK_DECIMALS = 2;

    private OptionsSheetJson() {}

    static Json write(OptionsSheet sheet) {
        // Asked for before the rows, so that a sheet that says it is done has them all.
        boolean over = sheet.over();
        List<SheetRow> rows = sheet.rows();
        Set<Way.Id> unbeaten = Frontier.of(rows);
        return Json.object()
                .put("number", sheet.number())
                .put("jobId", sheet.job().number())
                .put("startedAt", sheet.startedAt().toString())
                .put("ways", sheet.ways())
                .put("ready", rows.size())
                .put("done", over && !sheet.failed())
                .put("failed", sheet.failed())
                .put(
                        "rows",
                        Json.list(rows.stream()
                                .map(row -> row(row, unbeaten.contains(row.way())))
                                .toList()))
                .put("cautions", Json.texts(Fit.CAUTIONS))
                .build();
    }

    private static Json row(SheetRow row, boolean unbeaten) {
        Json.Members members = Json.object()
                .put("wayId", row.way().number())
                .put("name", row.described().name());
        row.picture().worst().ifPresent(verdict -> members.put("verdict", verdict.words()));
        members.put(
                        "slots",
                        Json.list(row.picture().slots().stream()
                                .map(OptionsSheetJson::slot)
                                .toList()))
                .put(
                        "glass",
                        Json.list(row.picture().glass().stream()
                                .map(OptionsSheetJson::glass)
                                .toList()))
                .put("remarks", Json.texts(row.picture().remarks()));
        row.picture().look().ifPresent(look -> members.put("look", score(look)));
        row.picture().lowest().ifPresent(lowest -> members.put("lowestLook", lowest.name()));
        row.cost()
                .map(SheetRow.Cost::payable)
                .or(row::bought)
                .ifPresent(money -> members.put("currency", money.currency().code()));
        row.cost().ifPresent(cost -> cost(members, cost));
        row.costs().bought().ifPresent(bought -> members.put("ifBought", bought(bought)));
        row.payback().ifPresent(payback -> payback(members, payback));
        if (!row.problem().isEmpty()) {
            members.put("problem", row.problem());
        }
        return members.put("unbeaten", unbeaten).build();
    }

    private static Json slot(SlotReport slot) {
        Json.Members members = Json.object().put("slot", slot.slot());
        slot.verdict().ifPresent(verdict -> members.put("verdict", verdict.words()));
        return members.put("by", Json.texts(slot.by()))
                .put("reasons", Json.texts(slot.reasons()))
                .build();
    }

    private static Json glass(JudgedGlass glass) {
        Json.Members members = Json.object().put("name", glass.name()).put("count", glass.count());
        glass.verdict().ifPresent(verdict -> members.put("verdict", verdict.words()));
        glass.look().score().ifPresent(score -> members.put("look", score(score)));
        return members.put(
                        "ungraded",
                        Json.texts(glass.look().ungraded().stream()
                                .map(OptionsSheetJson::member)
                                .toList()))
                .build();
    }

    private static String member(Look look) {
        return LensModelJson.memberOf(look);
    }

    private static String score(BigDecimal score) {
        return score.setScale(LOOK_DECIMALS, RoundingMode.HALF_UP).toPlainString();
    }

    private static void cost(Json.Members members, SheetRow.Cost cost) {
        Answer.Comparison comparison = cost.comparison();
        members.put("costingId", cost.costing().number())
                .put("bought", total(comparison.buyOnly()))
                .put("byDay", total(comparison.dayRateOnly()))
                .put("byWeek", total(comparison.weekRateOnly()))
                .put("rented", total(comparison.rentOnly()))
                .put("best", cost.total().amount())
                .put("optimal", cost.optimal())
                .put("cashNeeded", cost.payable().amount());
        cost.withinBudget().ifPresent(within -> members.put("withinBudget", within));
        members.put(
                "takes",
                Json.list(cost.taken().stream().map(OptionsSheetJson::taken).toList()));
        members.put(
                "completedBy",
                Json.list(cost.completions().stream()
                        .map(each -> (Json) Json.object()
                                .put("slot", each.slot())
                                .put("days", each.days())
                                .put(
                                        "by",
                                        Json.list(each.by().stream()
                                                .map(OptionsSheetJson::by)
                                                .toList()))
                                .build())
                        .toList()));
    }

    private static Json taken(Taken taken) {
        Json.Members members = Json.object()
                .put("option", taken.option())
                .put("how", taken.how().word())
                .put("periods", taken.periods());
        if (taken.how() == Taken.How.RENTED) {
            members.put("days", taken.days());
        }
        return members.build();
    }

    private static Json by(Completion.By by) {
        Json.Members members = Json.object().put("option", by.option()).put("glass", Json.texts(by.glass()));
        by.verdict().ifPresent(verdict -> members.put("verdict", verdict.words()));
        return members.put("reasons", Json.texts(by.reasons())).build();
    }

    private static Json bought(Bought bought) {
        return Json.object()
                .put("total", bought.total().amount())
                .put("cash", bought.cash().amount())
                .put("beyondCashLimit", bought.beyondCash())
                .put("completedByRenting", bought.completedByRenting())
                .build();
    }

    private static Json total(Answer.Row row) {
        Optional<Money> total = row.total();
        return total.<Json>map(money -> Json.text(money.amount())).orElseGet(Json::nothing);
    }

    private static void payback(Json.Members members, Payback payback) {
        payback.shootDays()
                .ifPresentOrElse(
                        days -> members.put("buyingPaysFromShootDays", days),
                        () -> members.put("buyingPaysNot", payback.why()));
    }
}
