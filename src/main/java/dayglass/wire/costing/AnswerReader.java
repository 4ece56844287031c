package dayglass.wire.costing;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Explanation;
import dayglass.cost.rental.RentalCharge;
import dayglass.wire.Checked;
import dayglass.wire.Json;
import dayglass.wire.JsonText;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads back an answer as {@link AnswerWriter} wrote it; anything else is a fault of the program, not of its user. */
public final class AnswerReader {
    private final Currency currency;

    private AnswerReader(Currency currency) {
        this.currency = currency;
    }

    /**
     * The answer that a text holds.
     *
     * @throws IllegalStateException where it is not an answer as written
     */
    public static Answer read(String text) {
        Checked<Json> parsed = JsonText.parse(text);
        if (!(parsed instanceof Checked.Good<Json> good)) {
            throw new IllegalStateException("a kept answer is not JSON");
        }
        Json answer = good.value();
        return new AnswerReader(Currency.of(text(answer, "currency"))).answer(answer);
    }

    private Answer answer(Json answer) {
        Money total = money(answer, "total");
        return new Answer(
                total,
                money(answer, "lowerBound"),
                flag(answer, "optimal"),
                comparison(answer),
                list(answer, "choices", this::choice),
                list(
                        answer,
                        "coverage",
                        each -> new Answer.Coverage(
                                date(each, "date"),
                                text(each, "slot"),
                                list(each, "by", by -> ((Json.Text) by).value()))),
                list(
                        answer,
                        "cash",
                        each -> new Answer.Cash(date(each, "date"), money(each, "amount"), text(each, "option"))),
                explanation(member(answer, "explanation")));
    }

    private Answer.Comparison comparison(Json answer) {
        Json totals = member(answer, "comparison");
        Optional<Json> bounds = find(answer, "comparisonBounds");
        Function<String, Answer.Row> row = key -> {
            Optional<Money> total = findMoney(totals, key);
            Optional<Money> bound = bounds.flatMap(each -> findMoney(each, key));
            return new Answer.Row(total, bound.isPresent() ? bound : total);
        };
        return new Answer.Comparison(
                row.apply("ownedOnly"),
                row.apply("dayRateOnly"),
                row.apply("weekRateOnly"),
                row.apply("rentOnly"),
                row.apply("buyOnly"),
                row.apply("best"));
    }

    private Choice choice(Json choice) {
        String option = text(choice, "option");
        return switch (text(choice, "kind")) {
            case "rent" ->
                new Choice.Rent(
                        option,
                        text(choice, "supplier"),
                        DateRange.inclusive(date(choice, "from"), date(choice, "to")),
                        charge(choice));
            case "buy" ->
                new Choice.Buy(
                        option,
                        text(choice, "supplier"),
                        date(choice, "from"),
                        money(choice, "outlay"),
                        money(choice, "netCost"),
                        flag(choice, "spare"));
            case "own" -> new Choice.Own(option, Money.zero(currency));
            default -> throw new IllegalStateException("a kept choice is of no known kind: " + choice);
        };
    }

    private RentalCharge charge(Json rent) {
        return new RentalCharge(
                list(
                        rent,
                        "blocks",
                        block -> new RentalCharge.BlockUsed(
                                date(block, "from"),
                                whole(block, "days"),
                                money(block, "price"),
                                flag(block, "extraDay"))),
                money(rent, "hire"),
                money(rent, "discount"),
                money(rent, "raisedToMinimum"),
                money(rent, "trip"),
                list(rent, "addOns", each -> new RentalCharge.AddOnCharge(text(each, "name"), money(each, "amount"))),
                money(rent, "total"));
    }

    private Explanation explanation(Json explanation) {
        return new Explanation(
                list(explanation, "reasons", this::reason),
                list(
                        explanation,
                        "slotDays",
                        each -> new Explanation.SlotDay(date(each, "date"), text(each, "slot"), money(each, "amount"))),
                money(explanation, "unshared"));
    }

    private Explanation.Reason reason(Json reason) {
        List<Explanation.Rival> rivals = find(reason, "rivals").isEmpty()
                ? List.of()
                : list(reason, "rivals", each -> new Explanation.Rival(text(each, "blocks"), money(each, "hire")));
        return new Explanation.Reason(
                rivals,
                find(reason, "without")
                        .map(each -> new Explanation.Without(findMoney(each, "total"), flag(each, "proved"))));
    }

    private static Optional<Json> find(Json object, String name) {
        @Nullable Json value = ((Json.Obj) object).members().get(name);
        return value == null || value instanceof Json.Null ? Optional.empty() : Optional.of(value);
    }

    private static Json member(Json object, String name) {
        return find(object, name).orElseThrow(() -> new IllegalStateException("a kept answer lacks " + name));
    }

    private static String text(Json object, String name) {
        return ((Json.Text) member(object, name)).value();
    }

    private static boolean flag(Json object, String name) {
        return find(object, name).map(each -> ((Json.Bool) each).value()).orElse(false);
    }

    private static int whole(Json object, String name) {
        return Integer.parseInt(((Json.Num) member(object, name)).literal());
    }

    private static LocalDate date(Json object, String name) {
        return LocalDate.parse(text(object, name));
    }

    private Money money(Json object, String name) {
        return Money.of(currency, new BigDecimal(text(object, name)));
    }

    private Optional<Money> findMoney(Json object, String name) {
        return find(object, name).map(each -> Money.of(currency, new BigDecimal(((Json.Text) each).value())));
    }

    private static <T> List<T> list(Json object, String name, Function<Json, T> read) {
        return ((Json.Arr) member(object, name)).entries().stream().map(read).toList();
    }
}
