package dayglass.shelf.table;

import dayglass.base.Currency;
import dayglass.base.Outcome;
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
        return transactions.tried(() -> {
            CardReport report = read(heading, text);
            return add(heading, report).map(card -> report);
        });
    }

    /** Makes the card; refused, with every fault by its line and column, where anything is wrong. */
    public Outcome<Stored<RateCard.Id, RateCard>> bringIn(Heading heading, CsvText text) {
        return transactions.atomically(() -> {
            CardReport report = read(heading, text);
            return report.isGood() ? add(heading, report) : Outcome.refused(ImportReport.refusal(report.faulty()));
        });
    }

    private CardReport read(Heading heading, CsvText text) {
        return new CardImport(text, things, heading.currency()).report();
    }

    private Outcome<Stored<RateCard.Id, RateCard>> add(Heading heading, CardReport report) {
        return cards.add(new RateCard(
                heading.supplier(), heading.name(), heading.currency(), heading.effectiveFrom(), report.card()));
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
