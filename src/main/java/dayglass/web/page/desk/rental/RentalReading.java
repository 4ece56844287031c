package dayglass.web.page.desk.rental;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.RentalNow;
import dayglass.house.House;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Obstacle;
import dayglass.web.page.Label;
import dayglass.web.page.desk.DeskSources;
import dayglass.web.page.desk.price.PriceView;
import dayglass.web.page.picture.Words;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes of a rental what its page shows. */
final class RentalReading {
    private final DeskSources sources;
    private final House house;
    private final Map<Person.Id, String> names;
    private final Instant now;

    RentalReading(DeskSources sources) {
        this.sources = sources;
        this.house = sources.household().settings().now().facts();
        this.names = sources.household().names();
        this.now = sources.clock().instant();
    }

    RentalView view(Stored<Rental.Id, Rental> stored) {
        RentalNow rental = sources.desk().letOut().now(stored);
        Rental facts = stored.facts();
        List<Label.Field> fields = new ArrayList<>(QuoteView.fields(facts.customer(), facts.promise()));
        facts.keptTo().ifPresent(last -> fields.add(fields.size() - 1, new Label.Field("kept to", Words.date(last))));
        fields.set(fields.size() - 1, new Label.Field("owed", Words.money(facts.owed())));
        return new RentalView(
                stored.id().number(),
                stored.version(),
                facts.number(),
                facts.quote().number(),
                new Label("Rental " + facts.number(), fields),
                rental.state(),
                facts.standing().stream().map(placed -> unit(rental, placed)).toList(),
                facts.placed().stream()
                        .filter(Rental.Placed::replaced)
                        .map(placed -> tag(placed.unit()) + " gave way to another unit.")
                        .toList(),
                RentedInLine.of(
                        stored,
                        sources.desk().rentIn().books().of(stored.id()),
                        noted -> stamp(noted.by(), noted.at())),
                PriceView.of(facts.promise().price(), sources.shelf()),
                money(facts),
                charges(facts),
                lastDay(rental).toString());
    }

    private Optional<Unit> find(Unit.Id id) {
        return sources.shelf().units().find(id).map(Stored::facts);
    }

    private String tag(Unit.Id id) {
        return find(id).map(Unit::tag).orElse("unit " + id.number());
    }

    private RentedUnit unit(RentalNow rental, Rental.Placed placed) {
        Optional<Unit> unit = find(placed.unit());
        boolean out = rental.isOut(placed);
        boolean back = placed.back().isPresent() || rental.cameBack(placed);
        RentedUnit.Where where = out ? RentedUnit.Where.OUT : back ? RentedUnit.Where.BACK : RentedUnit.Where.BOOKED;
        return new RentedUnit(
                placed.unit().number(),
                tag(placed.unit()),
                unit.flatMap(Unit::model)
                        .flatMap(model -> sources.shelf().models().find(model))
                        .map(model -> model.facts().fullName())
                        .orElse(""),
                unit.flatMap(Unit::serial).orElse("none"),
                where,
                unit.map(Unit::accessories).orElse(List.of()),
                seen(placed.out()),
                seen(placed.back()),
                placed.differences(),
                where == RentedUnit.Where.BOOKED && !rental.state().ended() ? obstacles(rental, placed) : List.of(),
                Words.moment(rental.booking(placed).facts().stay().back(), house.zone()),
                unit.flatMap(Unit::value)
                        .map(Unit.Value::amount)
                        .filter(amount -> amount.currency().equals(house.currency()))
                        .map(Money::amount)
                        .orElse(""));
    }

    private List<String> obstacles(RentalNow rental, Rental.Placed placed) {
        return sources.whereabouts().handOver().obstacles(rental.booking(placed), now).stream()
                .map(Obstacle::why)
                .toList();
    }

    private RentedUnit.Seen seen(Optional<Rental.Check> check) {
        return check.map(seen -> RentedUnit.Seen.of(seen, stamp(seen.by(), seen.at())))
                .orElse(RentedUnit.Seen.NOTHING);
    }

    private String stamp(Person.Id by, Instant at) {
        return Words.moment(at, house.zone()) + " by " + names.getOrDefault(by, "somebody who is gone");
    }

    private static RentalView.Sums money(Rental rental) {
        Rental.Deposit deposit = rental.deposit();
        return new RentalView.Sums(
                Words.money(rental.owed()),
                Words.money(rental.toPay()),
                Words.money(deposit.taken()),
                Words.money(deposit.kept()),
                Words.money(deposit.returned()),
                rental.mostKept().amount(),
                rental.ending()
                        .flatMap(Rental.Ending::invoice)
                        .map(String::valueOf)
                        .orElse(""));
    }

    private List<RentalView.ChargeRow> charges(Rental rental) {
        List<RentalView.ChargeRow> rows = new ArrayList<>();
        for (Charge charge : rental.charges()) {
            int at = rows.size();
            boolean taken =
                    rental.charges().stream().anyMatch(other -> other.reverses().equals(Optional.of(at)));
            rows.add(new RentalView.ChargeRow(
                    at,
                    charge.kind().word(),
                    charge.words(),
                    Words.amount(charge.net()),
                    Words.money(charge.total()),
                    stamp(charge.by(), charge.at()),
                    !taken && charge.reverses().isEmpty() && rental.ending().isEmpty()));
        }
        return rows;
    }

    /** The last day that a unit serves, by its booking: it comes back on the day after. */
    private LocalDate lastDay(RentalNow rental) {
        return rental.facts().standing().stream()
                .map(placed -> rental.booking(placed).facts().stay().back())
                .max(Instant::compareTo)
                .map(back -> back.atZone(house.zone()).toLocalDate().minusDays(1))
                .orElse(rental.facts()
                        .promise()
                        .price()
                        .asked()
                        .schedule()
                        .horizon()
                        .lastDay());
    }
}
