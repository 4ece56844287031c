package dayglass.web.api.desk;

import dayglass.desk.price.PackagePrice.Missing;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Charge;
import dayglass.desk.today.Today;
import dayglass.shelf.MoneyJson;
import dayglass.web.api.house.Moments;
import dayglass.web.api.inventory.agenda.GiveBackJson;
import dayglass.wire.Json;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;

/** What a day asks of the desk, as it is answered. */
final class TodayJson {
    private final Today today;

    TodayJson(Today today) {
        this.today = today;
    }

    Json write() {
        return Json.object()
                .put("date", today.day().toString())
                .put("now", moment(today.now()))
                .put("zone", today.zone().getId())
                .put("out", list(today.out(), this::passage))
                .put("back", list(today.back(), this::passage))
                .put("late", list(today.late(), this::late))
                .put("giveBack", list(today.giveBack(), each -> GiveBackJson.write(each, today.zone())))
                .put("short", list(today.shorts(), this::shortOf))
                .put("testing", list(today.testing(), this::toTest))
                .build();
    }

    private static <T> Json list(List<T> of, Function<T, Json> write) {
        return Json.list(of.stream().map(write).toList());
    }

    private String moment(Instant at) {
        return Moments.text(at, today.zone());
    }

    private static Json.Members whose(Json.Members members, Today.Whose whose) {
        whose.rental().ifPresent(rental -> {
            Json.Members customer = Json.object().put("name", rental.customer().name());
            if (!rental.customer().production().isEmpty()) {
                customer.put("production", rental.customer().production());
            }
            members.put(
                    "rental",
                    Json.object()
                            .put("id", rental.id().number())
                            .put("number", rental.number())
                            .put("customer", customer.build())
                            .build());
        });
        return members.put("subject", whose.words());
    }

    private static Json.Members piece(Today.Piece piece) {
        Json.Members members =
                Json.object().put("unitId", piece.unit().number()).put("tag", piece.tag());
        if (!piece.model().isEmpty()) {
            members.put("model", piece.model());
        }
        return members.put("bookingId", piece.booking().number());
    }

    private static Json pieces(List<Today.Piece> pieces) {
        return list(pieces, piece -> piece(piece).build());
    }

    private Json passage(Today.Passage each) {
        return whose(Json.object().put("at", moment(each.at())).put("done", each.done()), each.whose())
                .put("units", pieces(each.pieces()))
                .build();
    }

    private Json late(Today.Late each) {
        Json.Members members = whose(
                        Json.object().put("due", moment(each.due())).put("daysBegun", each.days()), each.whose())
                .put("units", pieces(each.pieces()))
                .put("costs", list(each.costs(), TodayJson::cost));
        each.cost().ifPresent(cost -> members.put("cost", MoneyJson.write(cost)));
        return members.build();
    }

    private static Json cost(Charge charge) {
        return Json.object()
                .put("words", charge.words())
                .put("net", MoneyJson.write(charge.net()))
                .put("total", MoneyJson.write(charge.total()))
                .build();
    }

    private Json shortOf(Today.Shortage each) {
        return whose(Json.object().put("at", moment(each.at())), each.whose())
                .put("toGet", list(each.toGet(), this::toGet))
                .put("missing", list(each.missing(), TodayJson::missing))
                .put(
                        "hindered",
                        list(
                                each.hindered(),
                                hindered -> piece(hindered.piece())
                                        .put("why", Json.texts(hindered.why()))
                                        .build()))
                .build();
    }

    private Json toGet(Today.ToGet each) {
        PricedLine line = each.line();
        Json.Members members = Json.object()
                .put("what", line.what())
                .put("firstDay", line.dates().from().toString())
                .put("lastDay", line.dates().lastDay().toString());
        line.rentedIn()
                .ifPresent(from -> members.put("supplier", from.supplier()).put("cost", MoneyJson.write(from.cost())));
        each.order()
                .ifPresent(order -> members.put(
                        "ordered",
                        Json.object()
                                .put("number", order.number())
                                .put("at", moment(order.ordered().at()))
                                .build()));
        return members.build();
    }

    private static Json missing(Missing missing) {
        return Json.object()
                .put("what", missing.what())
                .put("firstDay", missing.dates().from().toString())
                .put("lastDay", missing.dates().lastDay().toString())
                .build();
    }

    private Json toTest(Today.ToTest each) {
        Json.Members members = piece(each.piece());
        each.cameBack().ifPresent(at -> members.put("cameBack", moment(at)));
        members.put("warning", each.warning());
        each.next()
                .ifPresent(next -> members.put(
                        "next",
                        whose(
                                        Json.object()
                                                .put("out", moment(next.out()))
                                                .put("bookingId", next.booking().number()),
                                        next.whose())
                                .build()));
        return members.build();
    }
}
