package dayglass.wire;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Readers of decimal strings: digits, perhaps a point with digits on both sides, no sign (but where one is allowed), no
 * exponent, space or separator, no leading nought before another digit.
 */
public final class Decimals {
    /** Digits before the point, at most. */
    public static final int MOST_WHOLE_DIGITS = 15;
    /** Digits after the point of a percentage or factor, at most. */
    public static final int MOST_PERCENT_DECIMALS = 10;

    private static final Pattern PLAIN = Pattern.compile("(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?");
    private static final String FORM = "must be a decimal number as text, such as ";
    private static final String TYPED = "must be a number such as ";

    private Decimals() {}

    /** A currency in use today by its ISO 4217 code in capitals. */
    public static Reader<Currency> currency() {
        return (json, place) -> {
            Read<String> text = Readers.anyText().read(json, place);
            if (!text.isGood()) {
                return Read.bad();
            }
            return Currency.find(text.get())
                    .map(Read::good)
                    .orElseGet(() -> place.fault(
                            "must be the ISO 4217 code of a currency in use, in capitals, such as EUR, USD or JPY"));
        };
    }

    /**
     * An amount of a currency.
     *
     * @param currency where it is itself at fault, the decimals are not checked and the amount counts as at fault,
     *     though nothing is told of it
     */
    public static Reader<Money> money(Read<Currency> currency) {
        return (json, place) -> {
            Read<BigDecimal> amount = plain(json, place, "120.00", false);
            if (!amount.isGood() || !currency.isGood()) {
                return Read.bad();
            }
            int decimals = currency.get().decimals();
            if (amount.get().scale() > decimals) {
                return place.fault("has more than " + decimals + " decimals, which is all that " + currency.get()
                        + " has: round it");
            }
            return Read.good(Money.of(currency.get(), amount.get()));
        };
    }

    /** A percentage between two bounds that belong to it; only where the lower one is negative may it bear a minus. */
    public static Reader<Percent> percent(int least, int most) {
        return decimal(least, most).map(Percent::new);
    }

    /** A factor or number of days between two bounds that belong to it, without noughts at its end. */
    public static Reader<BigDecimal> decimal(int least, int most) {
        BigDecimal low = BigDecimal.valueOf(least);
        BigDecimal high = BigDecimal.valueOf(most);
        return (json, place) -> {
            Read<BigDecimal> number = fine(plain(json, place, "8.875", least < 0), place);
            if (!number.isGood()) {
                return Read.bad();
            }
            if (number.get().compareTo(low) < 0 || number.get().compareTo(high) > 0) {
                return place.fault("must lie between " + least + " and " + most);
            }
            return Read.good(withoutTrailingNoughts(number.get()));
        };
    }

    /** A length, a weight or any other number above 0, without noughts at its end. */
    public static Reader<BigDecimal> positive() {
        return above0(Optional.empty());
    }

    /** A number above 0 and at most so many, without noughts at its end. */
    public static Reader<BigDecimal> positiveUpTo(int most) {
        return above0(Optional.of(BigDecimal.valueOf(most)));
    }

    private static Reader<BigDecimal> above0(Optional<BigDecimal> most) {
        return (json, place) -> {
            Read<BigDecimal> number = fine(plain(json, place, "27.6", false), place);
            if (number.isGood() && number.get().signum() == 0) {
                return place.fault("must be more than 0");
            }
            return number.isGood() && most.isPresent() && number.get().compareTo(most.get()) > 0
                    ? place.fault("must be at most " + most.get())
                    : number.map(Decimals::withoutTrailingNoughts);
        };
    }

    /** Refuses more decimals than are kept. */
    private static Read<BigDecimal> fine(Read<BigDecimal> number, Place place) {
        return number.isGood() && number.get().scale() > MOST_PERCENT_DECIMALS
                ? place.fault("has more than " + MOST_PERCENT_DECIMALS + " decimals: round it")
                : number;
    }

    /** The same number in its shortest plain form: 5.00 becomes 5, 100 stays 100. */
    public static BigDecimal withoutTrailingNoughts(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private static Read<BigDecimal> plain(Json json, Place place, String example, boolean minusAllowed) {
        if (!(json instanceof Json.Text text)) {
            return place.fault(FORM + "\"" + example + "\" in double quotes, not " + json.kind());
        }
        String value = text.value();
        boolean minus = minusAllowed && value.startsWith("-");
        String digits = minus ? value.substring(1) : value;
        if (!PLAIN.matcher(digits).matches()) {
            String mend = ": " + whatIsWrong(digits);
            return place.fault(FORM + "\"" + example + "\"" + mend, TYPED + example + mend);
        }
        int point = digits.indexOf('.');
        if ((point < 0 ? digits.length() : point) > MOST_WHOLE_DIGITS) {
            return place.fault("has more than " + MOST_WHOLE_DIGITS + " digits before the point: make it smaller");
        }
        int mostKept = MOST_WHOLE_DIGITS + 1 + MOST_PERCENT_DECIMALS + 1;
        BigDecimal number = new BigDecimal(digits.substring(0, Math.min(digits.length(), mostKept)));
        return Read.good(minus ? number.negate() : number);
    }

    /** A hint at the commonest slips, in the order in which they are looked for. */
    private static String whatIsWrong(String text) {
        Map<String, String> slips = Map.of(
                "%", "leave out the per-cent sign",
                ",", "write a point, not a comma, and no separators",
                "-", "it cannot be negative",
                "+", "leave out the sign",
                " ", "leave out the spaces");
        for (String slip : new String[] {"%", ",", "-", "+", " "}) {
            if (text.contains(slip)) {
                return slips.getOrDefault(slip, "");
            }
        }
        if (text.toLowerCase(Locale.ROOT).contains("e")) {
            return "write the digits out, without an exponent";
        }
        if (text.startsWith("0") && text.length() > 1 && Character.isDigit(text.charAt(1))) {
            return "leave out the leading nought";
        }
        return "write digits, and digits on both sides of a point";
    }
}
