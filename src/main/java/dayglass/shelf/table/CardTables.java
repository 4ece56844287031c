package dayglass.shelf.table;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.Transactions;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Supplier;
import dayglass.inventory.Shelf;
import dayglass.sheet.CsvTable;
import dayglass.sheet.CsvText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes a rate card of a table and a table of a rate card; what comes out makes the same rates when it is brought in. A
 * table with anything wrong in it makes no card at all, since a card without a rate or a term would be priced by.
 */
public final class CardTables {
    private final RateCards cards;
    private final LetsCells things;
    private final Transactions transactions;

    public CardTables(RateCards cards, Shelf shelf, Transactions transactions) {
        this.cards = cards;
        this.things = new LetsCells(shelf);
        this.transactions = transactions;
    }

    /** The card that a table is to become. */
    public record Heading(Supplier.Id supplier, String name, Currency currency, LocalDate effectiveFrom) {}

    /** Says what the table says; refused where the card could not be made whatever stands in its rows. */
    public Outcome<CardReport> preview(Heading heading, CsvText text) {
        List<CardReport> made = new ArrayList<>();
        Outcome<CardReport> outcome = transactions.atomically(() -> {
            CardReport report = read(heading, text);
            return add(heading, report).then(card -> {
                made.add(report);
                return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "a preview stores nothing");
            });
        });
        return made.isEmpty() ? outcome : Outcome.done(made.get(0));
    }

    /** Makes the card; refused, with every fault by its line and column, where anything is wrong. */
    public Outcome<Stored<RateCard.Id, RateCard>> bringIn(Heading heading, CsvText text) {
        return transactions.atomically(() -> {
            CardReport report = read(heading, text);
            return report.isGood() ? add(heading, report) : Outcome.refused(Problem.faulty(faults(report)));
        });
    }

    private CardReport read(Heading heading, CsvText text) {
        return new CardImport(text, things, heading.currency()).report();
    }

    private Outcome<Stored<RateCard.Id, RateCard>> add(Heading heading, CardReport report) {
        return cards.add(new RateCard(
                heading.supplier(), heading.name(), heading.currency(), heading.effectiveFrom(), report.card()));
    }

    private static List<Fault> faults(CardReport report) {
        return report.faulty().stream()
                .map(bad -> new Fault("/text", place(bad) + ": " + bad.message()))
                .toList();
    }

    private static String place(ImportReport.Bad bad) {
        String heading = bad.heading().isBlank() ? "" : " (" + bad.heading() + ")";
        return "line " + bad.line() + (bad.column() > 0 ? ", column " + bad.column() : "") + heading;
    }

    /** The rates of a card as CSV, under the headings that are understood when it is brought in. */
    public byte[] csv(RateCard card) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            CsvTable.write(new RateCells(card.rates(), things).table(), out);
        } catch (IOException e) {
            throw new UncheckedIOException("memory took no more", e);
        }
        return out.toByteArray();
    }
}
