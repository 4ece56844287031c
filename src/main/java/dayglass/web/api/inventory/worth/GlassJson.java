package dayglass.web.api.inventory.worth;

import dayglass.base.Money;
import dayglass.inventory.life.MoneySoFar;
import dayglass.inventory.life.Utilisation;
import dayglass.inventory.worth.MyGlass;
import dayglass.inventory.worth.SetWorth;
import dayglass.inventory.worth.UnitWorth;
import dayglass.inventory.worth.ValueToday;
import dayglass.inventory.worth.YearMore;
import dayglass.shelf.FootingJson;
import dayglass.shelf.MoneyJson;
import dayglass.wire.Json;
import java.util.List;

/** What the house's own glass is worth, as it is answered. */
final class GlassJson {
    private GlassJson() {}

    static Json write(MyGlass.Glass glass) {
        Json.Members footing = Json.object();
        FootingJson.write(footing, glass.footing());
        return Json.object()
                .put("on", glass.on().toString())
                .put("footing", footing.build())
                .put("lettingRecorded", glass.lettingRecorded())
                .put(
                        "units",
                        Json.list(glass.units().stream().map(GlassJson::unit).toList()))
                .put("sets", Json.list(glass.sets().stream().map(GlassJson::set).toList()))
                .build();
    }

    private static Json unit(UnitWorth worth) {
        Json.Members members = Json.object()
                .put("unitId", worth.unit().id().number())
                .put("tag", worth.unit().facts().tag())
                .put("cost", lines(worth.money().cost()))
                .put("costSum", amounts(MoneySoFar.totals(worth.money().cost())))
                .put("earned", lines(worth.money().earned()))
                .put("earnedSum", amounts(MoneySoFar.totals(worth.money().earned())))
                .put("promised", lines(worth.money().promised()))
                .put("promisedSum", amounts(MoneySoFar.totals(worth.money().promised())))
                .put("lastYear", use(worth.lastYear()))
                .put("everSince", use(worth.everSince()));
        worth.value().ifPresent(value -> members.put("value", value(value)));
        worth.yearMore().ifPresent(year -> members.put("yearMore", yearMore(year)));
        if (!worth.unknown().isEmpty()) {
            members.put("unknown", worth.unknown());
        }
        return members.build();
    }

    private static Json set(SetWorth worth) {
        Json.Members members = Json.object()
                .put("lensSetId", worth.set().id().number())
                .put("name", worth.set().facts().name())
                .put(
                        "unitIds",
                        Json.list(worth.members().stream()
                                .map(each -> Json.number(each.unit().id().number()))
                                .toList()))
                .put("others", worth.others())
                .put("costSum", amounts(worth.cost()))
                .put("earnedSum", amounts(worth.earned()))
                .put("promisedSum", amounts(worth.promised()))
                .put("daysOut", worth.daysOut())
                .put("daysAvailable", worth.daysAvailable());
        worth.today().ifPresent(today -> members.put("today", MoneyJson.write(today)));
        worth.gain()
                .ifPresent(gain -> members.put("gain", MoneyJson.write(gain)).put("verdict", worth.word()));
        return members.build();
    }

    private static Json lines(List<MoneySoFar.Line> lines) {
        return Json.list(lines.stream()
                .map(line -> {
                    Json.Members members = Json.object();
                    line.on().ifPresent(day -> members.put("on", day.toString()));
                    return members.put("for", line.what())
                            .put("amount", line.amount().amount())
                            .put("currency", line.amount().currency().code())
                            .build();
                })
                .toList());
    }

    private static Json amounts(List<Money> amounts) {
        return Json.list(amounts.stream().map(MoneyJson::write).toList());
    }

    private static Json use(Utilisation use) {
        Json.Members members = Json.object().put("daysOut", use.out().size()).put("daysAvailable", use.daysAvailable());
        use.percent().ifPresent(percent -> members.put("percent", percent.toPlainString()));
        return members.build();
    }

    private static Json value(ValueToday value) {
        return Json.object()
                .put("currency", value.today().currency().code())
                .put("paid", value.paid().amount())
                .put("boughtOn", value.boughtOn().toString())
                .put("months", value.months())
                .put("ownSales", value.sales())
                .put("today", value.today().amount())
                .put("inAYear", value.inAYear().amount())
                .build();
    }

    private static Json yearMore(YearMore year) {
        return Json.object()
                .put("verdict", year.word())
                .put("currency", year.gain().currency().code())
                .put("gain", year.gain().amount())
                .put(
                        "lines",
                        Json.list(year.lines().stream()
                                .map(line -> Json.object()
                                        .put("for", line.words())
                                        .put("amount", line.amount().amount())
                                        .build())
                                .toList()))
                .put(
                        "rented",
                        Json.list(year.rented().stream()
                                .map(each -> Json.object()
                                        .put("job", each.kind().name())
                                        .put("perYear", each.kind().perYear().toPlainString())
                                        .put("oneJob", each.oneJob().amount())
                                        .put("aYear", each.aYear().amount())
                                        .build())
                                .toList()))
                .put("rates", Json.texts(year.from()))
                .build();
    }
}
