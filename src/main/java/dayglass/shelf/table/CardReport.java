package dayglass.shelf.table;

import dayglass.catalogue.Rate;
import java.util.List;

/**
 * What a table of rates says, before a card is made of it.
 *
 * @param rates those that could be read
 * @param faulty what is wrong and where; while anything is, no card is made
 */
public record CardReport(
        char separator, List<ImportReport.Column> columns, List<Line> rates, List<ImportReport.Bad> faulty) {
    public CardReport {
        columns = List.copyOf(columns);
        rates = List.copyOf(rates);
        faulty = List.copyOf(faulty);
    }

    /**
     * A rate.
     *
     * @param line of the table on which it begins, from 1
     */
    public record Line(long line, Rate rate) {}

    public boolean isGood() {
        return faulty.isEmpty();
    }

    List<Rate> card() {
        return rates.stream().map(Line::rate).toList();
    }
}
