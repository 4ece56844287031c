package dayglass.web.api.desk;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.Desk;
import dayglass.desk.rental.LetOut;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.RunRental;
import dayglass.inventory.Unit;
import dayglass.shelf.desk.RentalJson;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** {@code /api/rentals}: what is done to each, by an address that names the deed. */
final class RentalApi {
    private static final String PATH = "/api/rentals";
    private static final int LONGEST_WORDS = 500;
    private static final Map<String, Charge.Kind> KINDS =
            Arrays.stream(Charge.Kind.values()).collect(Collectors.toMap(Charge.Kind::word, kind -> kind));

    private final Desk desk;
    private final Acts<Rental.Id, Rental> acts;

    RentalApi(Desk desk) {
        this.desk = desk;
        this.acts = new Acts<>(PATH, "rental", desk.rentals(), Rental.Id::new, this::json);
    }

    Acts<Rental.Id, Rental> acts() {
        return acts;
    }

    private record Door(List<LetOut.Item> items, Optional<String> reason) {}

    private record Swap(Unit.Id from, Unit.Id to) {}

    private record Charged(Charge.Kind kind, Optional<Unit.Id> unit, RunRental.Said said) {}

    private record Reversal(int at, String why) {}

    void addTo(RoutesConfig routes, UnaryOperator<Handler> once) {
        routes.get(PATH, acts::list);
        routes.get(PATH + "/{id}", acts::read);
        deed(
                routes,
                once,
                "handover",
                ctx -> acts.act(ctx, door(), (rental, door) -> desk.letOut().out(rental, door.items(), door.reason())));
        deed(
                routes,
                once,
                "return",
                ctx -> acts.act(ctx, door(), (rental, door) -> desk.letOut().back(rental, door.items())));
        deed(
                routes,
                once,
                "undo-handover",
                ctx -> acts.act(ctx, unit(), (rental, unit) -> desk.letOut().undoOut(rental, unit)));
        deed(
                routes,
                once,
                "swap",
                ctx -> acts.act(ctx, swap(), (rental, swap) -> desk.letOut().swap(rental, swap.from(), swap.to())));
        deed(
                routes,
                once,
                "extend",
                ctx -> acts.act(
                        ctx, lastDay(), (rental, last) -> desk.runRental().extend(rental, last)));
        deed(routes, once, "charges", ctx -> acts.act(ctx, charge(currency(ctx)), this::charged));
        deed(
                routes,
                once,
                "reversals",
                ctx -> acts.act(
                        ctx, reversal(), (rental, what) -> desk.runRental().reverse(rental, what.at(), what.why())));
        deed(
                routes,
                once,
                "deposit",
                ctx -> acts.act(
                        ctx,
                        amount("taken", currency(ctx)),
                        (rental, taken) -> desk.runRental().takeDeposit(rental, taken)));
        deed(
                routes,
                once,
                "settle",
                ctx -> acts.act(
                        ctx,
                        amount("keep", currency(ctx)),
                        (rental, keep) -> desk.runRental()
                                .settle(rental, desk.letOut().now(rental).state(), keep)));
        deed(
                routes,
                once,
                "cancel",
                ctx -> acts.act(
                        ctx,
                        QuoteApi.why(),
                        (rental, why) -> desk.runRental()
                                .cancel(rental, desk.letOut().now(rental).state(), why)));
    }

    private static void deed(RoutesConfig routes, UnaryOperator<Handler> once, String name, Handler handler) {
        routes.post(PATH + "/{id}/" + name, once.apply(handler));
    }

    private Currency currency(Context ctx) {
        return acts.find(ctx).facts().promise().price().currency();
    }

    private dayglass.base.Outcome<Stored<Rental.Id, Rental>> charged(Stored<Rental.Id, Rental> rental, Charged charge) {
        boolean lost = charge.kind() == Charge.Kind.LOSS && charge.unit().isPresent();
        return lost
                ? desk.runRental().lose(rental, charge.unit().orElseThrow(), charge.said())
                : desk.runRental().charge(rental, charge.kind(), charge.unit(), charge.said());
    }

    private static Reader<Door> door() {
        Reader<LetOut.Item> item = Fields.object(fields -> {
            Read<Unit.Id> unit = fields.required("unitId", Ids.id(Unit.Id::new));
            Read<List<String>> accessories =
                    fields.optional("accessories", Readers.distinct(Readers.name()), List.of());
            Read<String> condition = fields.optional("condition", Readers.text(LONGEST_WORDS), "");
            return fields.build(() -> new LetOut.Item(unit.get(), accessories.get(), condition.get()));
        });
        return Fields.object(fields -> {
            Read<List<LetOut.Item>> items = fields.required("units", Readers.notEmpty(Readers.list(item)));
            Read<Optional<String>> reason = fields.optional("reason", Readers.text(LONGEST_WORDS));
            return fields.build(() -> new Door(items.get(), reason.get()));
        });
    }

    private static Reader<Unit.Id> unit() {
        return Fields.object(fields -> {
            Read<Unit.Id> unit = fields.required("unitId", Ids.id(Unit.Id::new));
            return fields.build(unit::get);
        });
    }

    private static Reader<Swap> swap() {
        return Fields.object(fields -> {
            Read<Unit.Id> from = fields.required("unitId", Ids.id(Unit.Id::new));
            Read<Unit.Id> to = fields.required("by", Ids.id(Unit.Id::new));
            return fields.build(() -> new Swap(from.get(), to.get()));
        });
    }

    private static Reader<LocalDate> lastDay() {
        return Fields.object(fields -> {
            Read<LocalDate> last = fields.required("lastDay", Readers.date());
            return fields.build(last::get);
        });
    }

    private static Reader<Charged> charge(Currency currency) {
        return Fields.object(fields -> {
            Read<Charge.Kind> kind = fields.required("kind", Readers.word(KINDS));
            Read<Optional<Unit.Id>> unit = fields.optional("unitId", Ids.id(Unit.Id::new));
            Read<String> words = fields.required("words", Readers.text(LONGEST_WORDS));
            Read<Money> amount = fields.required("amount", Decimals.money(Read.good(currency)));
            Read<Boolean> taxed = fields.optional("taxed", Readers.yesOrNo(), false);
            return fields.build(() ->
                    new Charged(kind.get(), unit.get(), new RunRental.Said(words.get(), amount.get(), taxed.get())));
        });
    }

    private static Reader<Reversal> reversal() {
        return Fields.object(fields -> {
            Read<Integer> at = fields.required("charge", Readers.whole(0, Integer.MAX_VALUE));
            Read<String> why = fields.required("why", Readers.text(LONGEST_WORDS));
            return fields.build(() -> new Reversal(at.get(), why.get()));
        });
    }

    private static Reader<Money> amount(String name, Currency currency) {
        return Fields.object(fields -> {
            Read<Money> amount = fields.required(name, Decimals.money(Read.good(currency)));
            return fields.build(amount::get);
        });
    }

    private Json.Obj json(Stored<Rental.Id, Rental> rental) {
        Json.Members members = Json.object()
                .put("id", rental.id().number())
                .put("version", rental.version())
                .put("state", desk.letOut().now(rental).state().word());
        RentalJson.write(members, rental.facts());
        return members.build();
    }
}
