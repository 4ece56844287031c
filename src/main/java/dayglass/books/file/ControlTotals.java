package dayglass.books.file;

import dayglass.base.Money;
import dayglass.books.CostingLines;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What an export holds, so that its reader can check that all of it arrived.
 *
 * @param linesSha256 of the payable lines as CSV, in hexadecimal
 */
record ControlTotals(CostingLines lines, String linesSha256) {
    static final String FILTER = "every payable line of this costing";
    static final String WEIGHED_NOTE = "What the plan weighs, not what is paid. A purchase stands here at its net cost:"
            + " outlay, holding and service, less letting and resale, at present value. Decide by these figures and"
            + " post the payable lines; never add the two up.";

    /** By name, in order; amounts are decimals of their currency. */
    Map<String, Object> facts() {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("job", lines.job());
        facts.put("costing", lines.reference().id());
        facts.put("costedAt", lines.reference().createdAt().toString());
        facts.put("requestSha256", lines.reference().requestSha256());
        facts.put("answerSha256", lines.reference().answerSha256());
        facts.put("filter", FILTER);
        facts.put("rows", lines.payable().size());
        facts.put("payable", byCurrency(lines.payableTotal()));
        facts.put("linesSha256", linesSha256);
        facts.put("weighedRows", lines.weighed().size());
        facts.put("weighedNotPayable", byCurrency(lines.weighedTotal()));
        facts.put("weighedNote", WEIGHED_NOTE);
        return facts;
    }

    private static Map<String, String> byCurrency(Money sum) {
        return Map.of(sum.currency().code(), sum.amount());
    }
}
