package dayglass.books.export;

import dayglass.base.Currency;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Kind;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Control totals by name, in order: what the companion JSON and the sheet beside the entries say. */
final class Control {
    private Control() {}

    static Map<String, Object> of(Entries.Which which, ControlTotals totals, String csvSha256) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("job", which.job().number());
        facts.put("kind", which.kind().map(Kind::word).orElse("all"));
        facts.put("costCode", which.costCode().orElse("all"));
        facts.put("episode", which.episode().orElse("all"));
        facts.put("supplier", which.supplier().orElse("all"));
        facts.put("from", day(which.from()));
        facts.put("until", day(which.until()));
        facts.put("rows", totals.rows());
        facts.put("firstEntry", totals.first());
        facts.put("lastEntry", totals.last());
        facts.put("baseCurrency", totals.base().map(Currency::code).orElse("none"));
        Map<String, Object> byKind = new LinkedHashMap<>();
        totals.byKind().forEach((kind, sums) -> byKind.put(kind.word(), sums(sums)));
        facts.put("baseByKind", byKind);
        Map<String, Object> byCurrency = new LinkedHashMap<>();
        totals.byCurrency().forEach((currency, sums) -> byCurrency.put(currency, sums(sums)));
        facts.put("byCurrency", byCurrency);
        facts.put("csvSha256", csvSha256);
        return facts;
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("open");
    }

    private static Map<String, String> sums(ControlTotals.Sums sums) {
        Map<String, String> said = new LinkedHashMap<>();
        said.put("net", sums.net().amount());
        said.put("tax", sums.tax().amount());
        said.put("gross", sums.gross().amount());
        return said;
    }
}
