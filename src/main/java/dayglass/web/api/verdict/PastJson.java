package dayglass.web.api.verdict;

import dayglass.cost.ownership.OwnSales;
import dayglass.planning.past.OwnPast;
import dayglass.planning.past.PastJob;
import dayglass.wire.Json;
import java.util.List;

/** The house's past as it is answered; the spreads have the form that a verdict is asked in. */
final class PastJson {
    private PastJson() {}

    static Json write(OwnPast.Past past) {
        Json.Members members = Json.object()
                .put("until", past.until().toString())
                .put("jobs", Json.list(past.jobs().stream().map(PastJson::job).toList()));
        if (!past.jobs().isEmpty()) {
            members.put("perYearSpread", values(past.perYear())).put("daysSpread", values(past.lengths()));
        }
        return members.put(
                        "ownSales",
                        Json.list(past.sales().stream().map(PastJson::sale).toList()))
                .build();
    }

    private static Json job(PastJob job) {
        return Json.object()
                .put("jobId", job.id().number())
                .put("name", job.name())
                .put("from", job.dates().from().toString())
                .put("to", job.dates().lastDay().toString())
                .put("days", job.days())
                .put("prepDays", job.prepDays())
                .build();
    }

    private static Json values(List<Integer> values) {
        return Json.object()
                .put("values", Json.texts(values.stream().map(String::valueOf).toList()))
                .build();
    }

    private static Json sale(OwnSales.Sale sale) {
        return Json.object()
                .put("months", sale.months())
                .put("currency", sale.paid().currency().code())
                .put("paid", sale.paid().amount())
                .put("soldFor", sale.soldFor().amount())
                .build();
    }
}
