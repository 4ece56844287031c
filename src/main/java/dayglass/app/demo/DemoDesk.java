package dayglass.app.demo;

import static dayglass.app.demo.DemoData.bytes;
import static dayglass.app.demo.DemoData.must;

import dayglass.base.DateRange;
import dayglass.base.Percent;
import dayglass.base.Stored;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.desk.DeskRules;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.Wish;
import dayglass.desk.quote.MakeQuote;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Desk;
import dayglass.desk.rental.LetOut;
import dayglass.desk.rental.Rental;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Puts the demo's rules, quotes and rentals on the desk, as its pages would; the shelf is filled before. */
public final class DemoDesk {
    private final Desk desk;
    private final Shelf shelf;

    private DemoDesk(Desk desk, Shelf shelf) {
        this.desk = desk;
        this.shelf = shelf;
    }

    public static void fill(Desk desk, Shelf shelf) {
        DemoDeskFile file = DemoDeskFile.reader().read(bytes("desk.json")).fold(read -> read, faults -> {
            throw new IllegalStateException("demo-data/desk.json is faulty: " + faults);
        });
        must(desk.rules()
                .keep(new Stored<>(DeskRules.Id.ONLY, desk.rules().now().version(), file.rules())));
        DemoDesk demo = new DemoDesk(desk, shelf);
        file.quotes().forEach(demo::quote);
    }

    private void quote(DemoDeskFile.Quoted quoted) {
        Stored<Quote.Id, Quote> quote = must(desk.makeQuote()
                .issue(new MakeQuote.Wanted(quoted.customer(), asked(quoted), Optional.empty(), Optional.empty())));
        switch (quoted.becomes()) {
            case OPEN -> {}
            case DECLINED -> must(desk.makeQuote().decline(quote, quoted.why()));
            case CONFIRMED -> must(desk.runRental().confirm(quote));
            case OUT -> handOver(must(desk.runRental().confirm(quote)));
        }
    }

    private PackageAsked asked(DemoDeskFile.Quoted quoted) {
        LocalDate today = desk.pricing().today();
        DateRange days = DateRange.inclusive(
                today.plusDays(quoted.days().first()),
                today.plusDays(quoted.days().last()));
        return new PackageAsked(
                quoted.lines().stream()
                        .map(line -> new PackageAsked.Asked(wish(line), 1, Percent.ZERO))
                        .toList(),
                new Schedule(List.of(new Schedule.Span(days, DayUse.SHOOT))),
                quoted.terms().insured(),
                quoted.terms().off(),
                quoted.terms().reason());
    }

    private Wish wish(DemoDeskFile.Line line) {
        return line.set()
                .<Wish>map(name ->
                        new Wish.OfSet(shelf.sets().named(name).orElseThrow().id()))
                .orElseGet(() -> new Wish.OfUnit(shelf.units()
                        .tagged(line.tag().orElseThrow())
                        .orElseThrow()
                        .id()));
    }

    /** With a deposit and all that belongs to it. */
    private void handOver(Stored<Rental.Id, Rental> confirmed) {
        Stored<Rental.Id, Rental> rental = must(desk.runRental()
                .takeDeposit(confirmed, confirmed.facts().promise().deposit()));
        List<LetOut.Item> items = rental.facts().standing().stream()
                .map(placed -> new LetOut.Item(placed.unit(), accessories(placed.unit()), ""))
                .toList();
        must(desk.letOut().out(rental, items, Optional.empty()));
    }

    private List<String> accessories(Unit.Id unit) {
        return shelf.units().find(unit).orElseThrow().facts().accessories();
    }
}
