package dayglass.shelf.desk;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.LetOut;
import dayglass.desk.rental.RentIn;
import dayglass.desk.rental.RunRental;
import dayglass.inventory.Unit;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said of each deed that is done to a quote or a rental, alike over REST and in forms. */
public final class RentalDeeds {
    private static final int LONGEST_WORDS = 500;
    private static final Map<String, Charge.Kind> KINDS =
            Arrays.stream(Charge.Kind.values()).collect(Collectors.toMap(Charge.Kind::word, kind -> kind));

    private RentalDeeds() {}

    /** Units at the door; {@code reason} says why some go out that should stay in. */
    public record Door(List<LetOut.Item> items, Optional<String> reason) {
        public Door {
            items = List.copyOf(items);
        }
    }

    /** One unit in the place of another. */
    public record Swap(Unit.Id from, Unit.Id to) {}

    /** A charge by its place, from 0, and why it is taken back. */
    public record Reversal(int at, String why) {}

    /** Why something is declined or cancelled; may be left out. */
    public static Reader<String> why() {
        return Fields.object(fields -> {
            Read<String> why = fields.optional("why", Readers.text(LONGEST_WORDS), "");
            return fields.build(why::get);
        });
    }

    public static Reader<Door> door() {
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

    public static Reader<Unit.Id> unit() {
        return Fields.object(fields -> {
            Read<Unit.Id> unit = fields.required("unitId", Ids.id(Unit.Id::new));
            return fields.build(unit::get);
        });
    }

    public static Reader<Swap> swap() {
        return Fields.object(fields -> {
            Read<Unit.Id> from = fields.required("unitId", Ids.id(Unit.Id::new));
            Read<Unit.Id> to = fields.required("by", Ids.id(Unit.Id::new));
            return fields.build(() -> new Swap(from.get(), to.get()));
        });
    }

    public static Reader<RentIn.Said> order() {
        return Fields.object(fields -> {
            Read<Integer> line = fields.required("line", Readers.whole(0, Integer.MAX_VALUE));
            Read<String> number = fields.required("number", Readers.name());
            Read<String> words = fields.optional("words", Readers.text(LONGEST_WORDS), "");
            return fields.build(() -> new RentIn.Said(line.get(), number.get(), words.get()));
        });
    }

    /** A priced line by its place, from 0. */
    public static Reader<Integer> line() {
        return Fields.object(fields -> {
            Read<Integer> line = fields.required("line", Readers.whole(0, Integer.MAX_VALUE));
            return fields.build(line::get);
        });
    }

    public static Reader<LocalDate> lastDay() {
        return Fields.object(fields -> {
            Read<LocalDate> last = fields.required("lastDay", Readers.date());
            return fields.build(last::get);
        });
    }

    public static Reader<RunRental.Charged> charge(Currency currency) {
        return Fields.object(fields -> {
            Read<Charge.Kind> kind = fields.required("kind", Readers.word(KINDS));
            Read<Optional<Unit.Id>> unit = fields.optional("unitId", Ids.id(Unit.Id::new));
            Read<String> words = fields.required("words", Readers.text(LONGEST_WORDS));
            Read<Money> amount = fields.required("amount", Decimals.money(Read.good(currency)));
            Read<Boolean> taxed = fields.optional("taxed", Readers.yesOrNo(), false);
            return fields.build(() -> new RunRental.Charged(
                    kind.get(), unit.get(), new RunRental.Said(words.get(), amount.get(), taxed.get())));
        });
    }

    public static Reader<Reversal> reversal() {
        return Fields.object(fields -> {
            Read<Integer> at = fields.required("charge", Readers.whole(0, Integer.MAX_VALUE));
            Read<String> why = fields.required("why", Readers.text(LONGEST_WORDS));
            return fields.build(() -> new Reversal(at.get(), why.get()));
        });
    }

    public static Reader<Money> amount(String name, Currency currency) {
        return Fields.object(fields -> {
            Read<Money> amount = fields.required(name, Decimals.money(Read.good(currency)));
            return fields.build(amount::get);
        });
    }
}
