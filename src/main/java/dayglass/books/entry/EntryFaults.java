package dayglass.books.entry;

import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.books.chart.Chart;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** What keeps an entry out of the books, each told at the value of the entry that has to be mended. */
public final class EntryFaults {
    private static final BigInteger MOST = BigInteger.valueOf(Entry.MOST_MINOR);
    /** What is wrong with an amount of which there can be no parts. */
    public static final String MAKE_IT_SMALLER = "is more than the books hold: make it smaller";

    private static final String TOO_MUCH = "is more than the books hold: post it in parts";

    private EntryFaults() {}

    /** The faults of an entry in the books of a job with such a chart. */
    public static List<Fault> of(Entry entry, Chart chart) {
        List<Fault> faults = new ArrayList<>();
        String code = entry.coding().costCode();
        if (!chart.allows(code)) {
            faults.add(new Fault("/costCode", codeMissing(code)));
        }
        Amounts amounts = entry.amounts();
        if (isTooMuch(amounts.net())) {
            faults.add(new Fault("/net", TOO_MUCH));
        } else if (isTooMuch(amounts.tax())) {
            faults.add(new Fault("/tax", TOO_MUCH));
        } else if (isTooMuch(amounts.baseNet()) || isTooMuch(amounts.baseTax())) {
            faults.add(new Fault(
                    "/exchange/rate", "makes of it more than the books hold: check the rate, or post it in parts"));
        }
        return faults;
    }

    /** What is wrong with a code that the chart lacks. */
    public static String codeMissing(String code) {
        return (code.isEmpty() ? "is missing" : "\"" + code + "\" is not in the job's chart")
                + ": give it a code of the chart";
    }

    public static boolean isTooMuch(Money money) {
        return money.minor().abs().compareTo(MOST) > 0;
    }
}
