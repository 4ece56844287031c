package dayglass.wire.costing;

import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.wire.Json;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/**
 * A question as the request that asks it, in one form only: members in a fixed order, defaults left out. Reading it
 * gives an equal question. Stock that options share has no place on the wire and is not written.
 */
public final class CostingRequestWriter {
    private CostingRequestWriter() {}

    public static Json write(Question question) {
        Json.Members members = Json.object()
                .put("job", question.job())
                .put("currency", question.currency().code());
        OptionWriter.putUnlessZero(members, "discountRatePercent", question.discountRate());
        question.cashLimit().ifPresent(limit -> members.put("cashLimit", limit.amount()));
        LocalDate firstDay = question.schedule().horizon().from();
        return members.put("schedule", schedule(question.schedule()))
                .put("needs", needs(question.needs()))
                .putUnlessEmpty(
                        "rentals",
                        question.rentals().stream().map(OptionWriter::rental).toList())
                .putUnlessEmpty(
                        "purchases",
                        question.purchases().stream()
                                .map(purchase -> OptionWriter.purchase(purchase, firstDay))
                                .toList())
                .putUnlessEmpty(
                        "owned",
                        question.owned().stream().map(OptionWriter::owned).toList())
                .build();
    }

    public static Json schedule(Schedule schedule) {
        return Json.list(schedule.spans().stream()
                .map(span -> OptionWriter.span(span.dates())
                        .put("use", span.use().word())
                        .build())
                .toList());
    }

    public static Json needs(List<Question.Need> needs) {
        return Json.list(needs.stream().map(CostingRequestWriter::need).toList());
    }

    private static Json need(Question.Need need) {
        Json.Members members = Json.object().put("slot", need.slot()).put("count", need.count());
        if (!need.dates().isEmpty()) {
            return members.put("dates", Json.list(OptionWriter.spans(need.dates())))
                    .build();
        }
        if (!need.on().equals(NeedsReader.DEFAULT_ON)) {
            members.put(
                    "on",
                    Json.texts(Arrays.stream(DayUse.values())
                            .filter(need.on()::contains)
                            .map(DayUse::word)
                            .toList()));
        }
        return members.build();
    }
}
