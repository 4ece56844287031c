package dayglass.base;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A currency in use today that has a minor unit.
 *
 * <p>Source: ISO 4217, list one, as it stands in November 2026 (typed from memory; the minor units other than 2 are
 * checked against the standard's list in CurrencyTest). The platform's own table is not used: on a JDK 17 it keeps
 * withdrawn currencies and lacks UYW.
 *
 * @param code three upper-case letters
 * @param decimals digits after the point, 0 to 4
 */
public record Currency(String code, int decimals) {
    private static final String TWO_DECIMALS = """
            AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF
            CHW CNY COP COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL
            HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU
            MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR
            SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES
            WST XAD XCD XCG YER ZAR ZMW ZWG
            """;
    private static final String NO_DECIMALS = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";
    private static final String THREE_DECIMALS = "BHD IQD JOD KWD LYD OMR TND";
    private static final String FOUR_DECIMALS = "CLF UYW";

    private static final Map<String, Currency> IN_USE = table();

    private static Map<String, Currency> table() {
        Map<String, Currency> table = new HashMap<>();
        enter(table, NO_DECIMALS, 0);
        enter(table, TWO_DECIMALS, 2);
        enter(table, THREE_DECIMALS, 3);
        enter(table, FOUR_DECIMALS, 4);
        return Map.copyOf(table);
    }

    private static void enter(Map<String, Currency> table, String codes, int decimals) {
        for (String code : codes.strip().split("\\s+", -1)) {
            table.put(code, new Currency(code, decimals));
        }
    }

    /** The currency of this code, or empty where no currency in use today with a minor unit bears it. */
    public static Optional<Currency> find(String code) {
        return Optional.ofNullable(IN_USE.get(code));
    }

    /** The currency of this code; for codes known to be good. */
    public static Currency of(String code) {
        return find(code).orElseThrow(() -> new IllegalArgumentException("no currency in use has the code " + code));
    }

    @Override
    public String toString() {
        return code;
    }
}
