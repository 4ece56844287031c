package dayglass.app.demo;

import dayglass.base.Percent;
import dayglass.desk.DeskRules;
import dayglass.desk.quote.Customer;
import dayglass.shelf.desk.DeskRulesJson;
import dayglass.shelf.desk.QuoteJson;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What {@code demo-data/desk.json} says; days are counted from the day on which the demo is begun. */
record DemoDeskFile(DeskRules rules, List<Quoted> quotes) {
    private static final int FARTHEST_DAY = 365;
    private static final int LONGEST_WORDS = 200;
    private static final Map<String, Becomes> BECOMES = Arrays.stream(Becomes.values())
            .collect(Collectors.toMap(each -> each.name().toLowerCase(Locale.ROOT), each -> each));

    /** What came of a quote. */
    enum Becomes {
        OPEN,
        DECLINED,
        CONFIRMED,
        OUT
    }

    record Quoted(Customer customer, Days days, List<Line> lines, Terms terms, Becomes becomes, String why) {}

    record Days(int first, int last) {}

    /** A set by its name or a unit by its tag. */
    record Line(Optional<String> set, Optional<String> tag) {}

    record Terms(boolean insured, Percent off, String reason) {}

    static Reader<DemoDeskFile> reader() {
        return Fields.object(fields -> {
            Read<DeskRules> rules = fields.required("rules", DeskRulesJson.reader());
            Read<List<Quoted>> quotes = fields.required("quotes", Readers.list(Fields.object(DemoDeskFile::quoted)));
            return fields.build(() -> new DemoDeskFile(rules.get(), quotes.get()));
        });
    }

    private static Read<Quoted> quoted(Fields fields) {
        Read<Customer> customer = fields.required("customer", QuoteJson.customer());
        Read<Integer> first = fields.required("firstDay", Readers.whole(0, FARTHEST_DAY));
        Read<Integer> last = fields.required("lastDay", Readers.whole(0, FARTHEST_DAY));
        Read<List<Line>> lines = fields.required("lines", Readers.list(Fields.object(DemoDeskFile::line)));
        Read<Boolean> insured = fields.optional("insured", Readers.yesOrNo(), false);
        Read<Percent> off = fields.optional("discountPercent", Decimals.percent(0, 100), Percent.ZERO);
        Read<String> reason = fields.optional("discountReason", Readers.text(LONGEST_WORDS), "");
        Read<Becomes> becomes = fields.required("becomes", Readers.word(BECOMES));
        Read<String> why = fields.optional("why", Readers.text(LONGEST_WORDS), "");
        return fields.build(() -> new Quoted(
                customer.get(),
                new Days(first.get(), last.get()),
                lines.get(),
                new Terms(insured.get(), off.get(), reason.get()),
                becomes.get(),
                why.get()));
    }

    private static Read<Line> line(Fields fields) {
        Read<Optional<String>> set = fields.optional("set", Readers.name());
        Read<Optional<String>> tag = fields.optional("tag", Readers.name());
        return fields.build(() -> new Line(set.get(), tag.get()));
    }
}
