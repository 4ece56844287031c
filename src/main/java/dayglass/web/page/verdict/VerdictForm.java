package dayglass.web.page.verdict;

import dayglass.base.Fault;
import dayglass.cost.ownership.OwnSales;
import dayglass.planning.past.OwnPast;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The form of a verdict: what it holds at first, and the request that it stands for. */
final class VerdictForm {
    /** Rows of jobs and of blocks that the form offers. */
    static final int ROWS = 3;

    private static final String LOW = "Low";
    private static final String HIGH = "High";
    private static final String VALUES = "Values";
    private static final String LET = "/purchase/letting/daysPerYear";
    private static final String LET_SPREAD = "/uncertainty/lettingDaysPerYear";

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

    /**
     * The same with one kind of jobs that is the house's own past: each length and each year's number as likely as it
     * was, in the middle the base case; and with what its glass sold for.
     */
    static Form own(OwnPast.Past past, String currency) {
        Map<String, String> values = new LinkedHashMap<>();
        first(currency).values().forEach((name, value) -> {
            if (!name.startsWith("/jobs/")) {
                values.put(name, value);
            }
        });
        if (!past.jobs().isEmpty()) {
            values.put("/jobs/0/name", "jobs as they were");
            values.put("/jobs/0/perYear", String.valueOf(middle(past.perYear())));
            values.put("/jobs/0/perYear" + VALUES, listed(past.perYear()));
            values.put("/jobs/0/days", String.valueOf(middle(past.lengths())));
            values.put("/jobs/0/days" + VALUES, listed(past.lengths()));
        }
        List<OwnSales.Sale> sales = past.sales().stream()
                .filter(sale -> sale.paid().currency().code().equals(currency))
                .toList();
        for (int row = 0; row < sales.size(); row++) {
            values.put(
                    "/ownSales/" + row + "/months",
                    String.valueOf(sales.get(row).months()));
            values.put("/ownSales/" + row + "/paid", sales.get(row).paid().amount());
            values.put("/ownSales/" + row + "/soldFor", sales.get(row).soldFor().amount());
        }
        return new Form(values, List.of(), "");
    }

    private static int middle(List<Integer> values) {
        return values.stream().sorted().toList().get((values.size() - 1) / 2);
    }

    private static String listed(List<Integer> values) {
        return values.stream().sorted().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** What the form stands for: where a range is given, its most likely value is the base case's. */
    static Form request(Form sent) {
        Map<String, String> values = new LinkedHashMap<>();
        FormJson.compact(sent).values().forEach((name, value) -> {
            if (!name.endsWith(LOW) && !name.endsWith(HIGH) && !name.endsWith(VALUES)) {
                values.put(name, value);
            }
        });
        Form compact = FormJson.compact(sent);
        for (int row = 0; row < ROWS; row++) {
            for (String what : List.of("perYear", "days")) {
                String name = "/jobs/" + row + "/" + what;
                String own = compact.value(name + VALUES);
                if (!own.isBlank()) {
                    values.put(name + "Spread/values", own);
                    continue;
                }
                Ends ends = new Ends(compact.value(name + LOW), compact.value(name + HIGH));
                ends.into(values, name + "Spread", compact.value(name));
            }
        }
        String change = compact.has("/rateChangePercentPerYear") ? compact.value("/rateChangePercentPerYear") : "0";
        range(values, "/uncertainty/resalePercent", "100");
        range(values, "/uncertainty/rateChangePercentPerYear", change);
        // Where nothing is let, that alone is to be told, and not that its likely value is missing too.
        String let = compact.has(LET) ? compact.value(LET) : values.getOrDefault(LET_SPREAD + "/low", "");
        range(values, LET_SPREAD, let);
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
                    .replaceAll("^(/jobs/[0-9]+/(?:perYear|days))Spread/values(?:/[0-9]+)?$", "$1" + VALUES)
                    .replaceAll("/likely$", "/low")
                    .replaceAll("^" + LET_SPREAD + "$", LET_SPREAD + "/low");
            all.add(new Fault(pointer, fault.message()));
        }
        return all;
    }
}
