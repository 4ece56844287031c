package dayglass.web.api.inventory.agenda;

import dayglass.inventory.agenda.GiveBack;
import dayglass.shelf.MoneyJson;
import dayglass.web.api.house.Moments;
import dayglass.wire.Json;
import java.time.ZoneId;

/** A rented-in unit that must be given back, as it is answered. */
public final class GiveBackJson {
    private GiveBackJson() {}

    public static Json write(GiveBack each, ZoneId zone) {
        Json.Members members = Json.object()
                .put("unitId", each.unit().number())
                .put("tag", each.tag())
                .put("owner", each.rented().owner())
                .put("agreement", each.rented().agreement())
                .put("paidUpTo", each.rented().paidUpTo().toString())
                .put("dueBackOn", each.rented().dueBackOn().toString())
                .put("daysLate", each.daysLate());
        each.rented().lateDay().ifPresent(day -> members.put("lateDay", MoneyJson.write(day)));
        each.lateCost().ifPresent(cost -> members.put("lateCost", MoneyJson.write(cost)));
        each.beyond()
                .ifPresent(booking -> members.put(
                        "bookedBeyond",
                        Json.object()
                                .put("id", booking.id().number())
                                .put("subject", booking.facts().subject())
                                .put("back", Moments.text(booking.facts().stay().back(), zone))
                                .build()));
        return members.build();
    }
}
