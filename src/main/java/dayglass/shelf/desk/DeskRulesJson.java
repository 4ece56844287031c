package dayglass.shelf.desk;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.BudgetRate;
import dayglass.desk.DeskRules;
import dayglass.desk.DeskRules.Notice;
import dayglass.desk.DeskRules.Tax;
import dayglass.shelf.MoneyJson;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Part;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The rules of the desk; what is left out is as usual. */
public final class DeskRulesJson {
    private static final int LONGEST_TERMS = 10_000;
    private static final int MOST_DAYS = 1_000;
    private static final int MOST_PERCENT = 1_000;
    private static final DeskRules USUAL = DeskRules.USUAL;

    private DeskRulesJson() {}

    public static Reader<DeskRules> reader() {
        return Fields.object(DeskRulesJson::read);
    }

    private static Read<DeskRules> read(Fields fields) {
        Read<Percent> markUp = percent(fields, "markUpPercent", USUAL.markUp(), MOST_PERCENT);
        Read<Percent> floor = percent(fields, "floorPercent", USUAL.floor(), 100);
        Read<Integer> days = fields.optional("validDays", Readers.whole(1, MOST_DAYS), USUAL.validDays());
        Read<Percent> deposit = percent(fields, "depositPercent", USUAL.deposit(), 100);
        Read<Percent> late = percent(fields, "lateDayPercent", USUAL.lateDay(), MOST_PERCENT);
        Read<Optional<Money>> cleaning = fields.optional("cleaning", MoneyJson.money());
        Read<List<Tax>> taxes = fields.optional("taxes", taxes(), USUAL.taxes());
        Read<List<Notice>> notices = fields.optional("notices", notices(), USUAL.notices());
        Read<List<BudgetRate>> rates = fields.optional("budgetRates", budgetRates(), USUAL.budgetRates());
        Read<String> terms = fields.optional("terms", Readers.prose(LONGEST_TERMS), "");
        return fields.build(() -> new DeskRules(
                markUp.get(),
                floor.get(),
                days.get(),
                deposit.get(),
                late.get(),
                cleaning.get(),
                taxes.get(),
                notices.get(),
                rates.get(),
                terms.get()));
    }

    private static Read<Percent> percent(Fields fields, String name, Percent usual, int most) {
        return fields.optional(name, Decimals.percent(0, most), usual);
    }

    private static Reader<List<Tax>> taxes() {
        Reader<Part<String, Tax>> tax = Fields.object(fields -> {
            Read<String> code = fields.required("code", Readers.name());
            Read<Percent> percent = fields.required("percent", Decimals.percent(0, 100));
            Read<Tax> read = fields.build(() -> new Tax(code.get(), percent.get()));
            return Read.good(new Part<>(fields.place(), code, read));
        });
        return distinct(tax, "an earlier tax has this code: rename one");
    }

    private static Reader<List<Notice>> notices() {
        Reader<Part<Integer, Notice>> notice = Fields.object(fields -> {
            Read<Integer> days = fields.required("days", Readers.whole(0, MOST_DAYS));
            Read<Percent> percent = fields.required("percent", Decimals.percent(0, 100));
            Read<Notice> read = fields.build(() -> new Notice(days.get(), percent.get()));
            return Read.good(new Part<>(fields.place(), days, read));
        });
        return distinct(notice, "an earlier notice has as many days");
    }

    private static Reader<List<BudgetRate>> budgetRates() {
        Reader<Part<String, BudgetRate>> rate = Fields.object(fields -> {
            Read<Currency> currency = fields.required("currency", Decimals.currency());
            Read<BigDecimal> value = fields.required("rate", Decimals.positive());
            Read<BudgetRate> read = fields.build(() -> new BudgetRate(currency.get(), value.get()));
            return Read.good(new Part<>(fields.place(), currency.map(Currency::code), read));
        });
        return distinct(rate, "an earlier rate is of this currency: keep one");
    }

    private static <K, T> Reader<List<T>> distinct(Reader<Part<K, T>> part, String told) {
        return (json, place) -> {
            Read<List<Part<K, T>>> parts = Part.list(part).read(json, place);
            parts.found().ifPresent(list -> Part.requireDistinct(list, Part::place, told));
            return parts.map(Part::goodValues);
        };
    }

    public static Json.Obj write(DeskRules rules) {
        Json.Members members = Json.object();
        write(members, rules);
        return members.build();
    }

    public static void write(Json.Members members, DeskRules rules) {
        members.put("markUpPercent", Amounts.plain(rules.markUp()))
                .put("floorPercent", Amounts.plain(rules.floor()))
                .put("validDays", rules.validDays())
                .put("depositPercent", Amounts.plain(rules.deposit()))
                .put("lateDayPercent", Amounts.plain(rules.lateDay()));
        rules.cleaning().ifPresent(amount -> members.put("cleaning", MoneyJson.write(amount)));
        members.put(
                        "taxes",
                        Json.list(rules.taxes().stream()
                                .map(tax -> Json.object()
                                        .put("code", tax.code())
                                        .put("percent", Amounts.plain(tax.percent()))
                                        .build())
                                .toList()))
                .put(
                        "notices",
                        Json.list(rules.notices().stream()
                                .map(notice -> Json.object()
                                        .put("days", notice.days())
                                        .put("percent", Amounts.plain(notice.percent()))
                                        .build())
                                .toList()));
        if (!rules.budgetRates().isEmpty()) {
            members.put(
                    "budgetRates",
                    Json.list(rules.budgetRates().stream()
                            .map(rate -> Json.object()
                                    .put("currency", rate.currency().code())
                                    .put("rate", rate.rate().toPlainString())
                                    .build())
                            .toList()));
        }
        if (!rules.terms().isEmpty()) {
            members.put("terms", rules.terms());
        }
    }
}
