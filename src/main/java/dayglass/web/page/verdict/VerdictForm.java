package dayglass.web.page.verdict;

import dayglass.base.Fault;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The form of a verdict: what it holds at first, and the request that it stands for. */
final class VerdictForm {
    /** Rows of jobs and of blocks that the form offers. */
    static final int ROWS = 3;

    private static final String LOW = "Low";
    private static final String HIGH = "High";

    private VerdictForm() {}

    /** Sensible to begin with. Insurance, letting share and selling cost are common practice. */
    static Form first(String currency) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("/currency", currency);
        values.put("/discountRatePercent", "6");
        values.put("/purchase/price", "8000");
        values.put("/purchase/termMonths", "36");
        values.put("/purchase/resale/lossPercentPerYear", "9");
        values.put("/purchase/resale/sellingCostPercent", "8");
        values.put("/purchase/holding/insurancePercentPerYear", "1.5");
        values.put("/purchase/service/everyMonths", "18");
        values.put("/purchase/service/cost", "180");
        values.put("/jobs/0/name", "commercials");
        values.put("/jobs/0/perYear", "6");
        values.put("/jobs/0/days", "3");
        values.put("/jobs/0/perYearLow", "3");
        values.put("/jobs/0/perYearHigh", "9");
        values.put("/jobs/1/name", "short film");
        values.put("/jobs/1/perYear", "1");
        values.put("/jobs/1/days", "10");
        values.put("/jobs/1/daysPerWeek", "5");
        values.put("/jobs/1/daysLow", "8");
        values.put("/jobs/1/daysHigh", "14");
        values.put("/rates/0/blocks/0/days", "1");
        values.put("/rates/0/blocks/0/price", "120");
        values.put("/rates/0/blocks/1/days", "7");
        values.put("/rates/0/blocks/1/price", "480");
        values.put("/rates/0/perTrip", "40");
        values.put("/uncertainty/draws", "10000");
        values.put("/uncertainty/seed", "1");
        values.put("/uncertainty/resalePercent/low", "70");
        values.put("/uncertainty/resalePercent/high", "115");
        return new Form(values, List.of(), "");
    }

    /** What the form stands for: where a range is given, its most likely value is the base case's. */
    static Form request(Form sent) {
        Map<String, String> values = new LinkedHashMap<>();
        FormJson.compact(sent).values().forEach((name, value) -> {
            if (!name.endsWith(LOW) && !name.endsWith(HIGH)) {
                values.put(name, value);
            }
        });
        Form compact = FormJson.compact(sent);
        for (int row = 0; row < ROWS; row++) {
            for (String what : List.of("perYear", "days")) {
                String name = "/jobs/" + row + "/" + what;
                Ends ends = new Ends(compact.value(name + LOW), compact.value(name + HIGH));
                ends.into(values, name + "Spread", compact.value(name));
            }
        }
        String change = compact.has("/rateChangePercentPerYear") ? compact.value("/rateChangePercentPerYear") : "0";
        range(values, "/uncertainty/resalePercent", "100");
        range(values, "/uncertainty/rateChangePercentPerYear", change);
        range(values, "/uncertainty/lettingDaysPerYear", compact.value("/purchase/letting/daysPerYear"));
        if (!values.getOrDefault("/uncertainty/slipDays/high", "").isBlank()) {
            values.put("/uncertainty/slipDays/low", "0");
            values.put("/uncertainty/slipDays/likely", "0");
        }
        return new Form(values, List.of(), "");
    }

    private static void range(Map<String, String> values, String name, String likely) {
        new Ends(values.getOrDefault(name + "/low", ""), values.getOrDefault(name + "/high", ""))
                .into(values, name, likely);
    }

    /** Both ends of a range as typed. */
    private record Ends(String low, String high) {
        void into(Map<String, String> values, String name, String likely) {
            if (!low.isBlank() || !high.isBlank()) {
                values.put(name + "/low", low);
                values.put(name + "/likely", likely);
                values.put(name + "/high", high);
            }
        }
    }

    /** Back to the form's own fields: a fault of a range stands beside the end that was typed. */
    static List<Fault> placed(List<Fault> faults) {
        List<Fault> all = new ArrayList<>();
        for (Fault fault : faults) {
            String pointer = fault.pointer()
                    .replaceAll("^(/jobs/[0-9]+/(?:perYear|days))Spread/(?:low|likely)$", "$1" + LOW)
                    .replaceAll("^(/jobs/[0-9]+/(?:perYear|days))Spread/high$", "$1" + HIGH)
                    .replaceAll("/likely$", "/low");
            all.add(new Fault(pointer, fault.message()));
        }
        return all;
    }
}
