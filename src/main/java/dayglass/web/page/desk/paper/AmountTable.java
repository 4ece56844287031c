package dayglass.web.page.desk.paper;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.desk.paper.Item;
import dayglass.desk.paper.Item.Sort;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Lines whose amounts add across and down. A column that is nothing throughout is left out.
 *
 * @param headings of the amounts
 */
public record AmountTable(String currency, List<String> headings, List<Row> rows, List<String> totals) {
    public AmountTable {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
        totals = List.copyOf(totals);
    }

    /** A line; notes stand small below what it is for. */
    public record Row(int number, String what, List<String> notes, List<String> amounts) {
        public Row {
            notes = notes.stream().filter(note -> !note.isBlank()).toList();
            amounts = List.copyOf(amounts);
        }
    }

    /**
     * Makes it.
     *
     * @param notes of each line, in their order
     * @param first the number of the first line
     */
    static AmountTable of(List<Item> items, List<List<String>> notes, Currency currency, int first) {
        List<Sort> sorts = Arrays.stream(Sort.values())
                .filter(sort -> items.stream().anyMatch(item -> item.sum(sort).signum() != 0))
                .toList();
        List<String> headings =
                new ArrayList<>(sorts.stream().map(AmountTable::heading).toList());
        headings.add("total");
        List<Row> rows = new ArrayList<>();
        for (int at = 0; at < items.size(); at++) {
            Item item = items.get(at);
            List<Money> amounts = new ArrayList<>(sorts.stream().map(item::sum).toList());
            amounts.add(item.total());
            rows.add(new Row(first + at, item.what(), notes.get(at), words(amounts)));
        }
        Money none = Money.zero(currency);
        List<Money> totals = new ArrayList<>(sorts.stream()
                .map(sort -> items.stream().map(item -> item.sum(sort)).reduce(none, Money::plus))
                .toList());
        totals.add(items.stream().map(Item::total).reduce(none, Money::plus));
        return new AmountTable(currency.code(), headings, rows, words(totals));
    }

    private static String heading(Sort sort) {
        return sort == Sort.CHARGE ? "charges" : sort.word();
    }

    private static List<String> words(List<Money> amounts) {
        return amounts.stream().map(Words::amount).toList();
    }
}
