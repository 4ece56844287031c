package dayglass.web.page.shelf;

import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.web.page.picture.Words;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A unit in the list. */
public record UnitRow(
        long id, String tag, String model, String serial, String holding, String set, String homeShelf, String value) {
    static UnitRow of(Stored<Unit.Id, Unit> stored, Optional<String> model, Optional<String> set) {
        Unit unit = stored.facts();
        return new UnitRow(
                stored.id().number(),
                unit.tag(),
                model.orElse(""),
                unit.serial().orElse(""),
                holding(unit),
                set.orElse(""),
                unit.papers().homeShelf().orElse(""),
                unit.value().map(value -> Words.money(value.amount())).orElse(""));
    }

    /** How the house holds it, and up to when. */
    static String holding(Unit unit) {
        return unit.departure()
                .map(gone -> gone.how() + " " + Words.day(gone.on()))
                .orElseGet(() -> unit.holding().word()
                        + unit.holding()
                                .fold(
                                        owned -> "",
                                        rented -> " from " + rented.owner() + ", paid up to "
                                                + Words.day(rented.paidUpTo()),
                                        lent -> " by " + lent.owner()
                                                + lent.until()
                                                        .map(last -> " until " + Words.day(last))
                                                        .orElse("")));
    }

    /** Whether each word stands somewhere in the row, in capitals or not. */
    boolean has(String words) {
        String all =
                String.join("\n", tag, model, serial, holding, set, homeShelf).toLowerCase(Locale.ROOT);
        return Stream.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+", -1))
                .allMatch(all::contains);
    }
}
