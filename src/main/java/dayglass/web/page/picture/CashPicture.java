package dayglass.web.page.picture;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What falls due on which date, as bars, with what it adds up to. */
public record CashPicture(List<Row> rows, String total) {
    public CashPicture {
        rows = List.copyOf(rows);
    }

    /**
     * One date.
     *
     * @param pieces one for each payment of the day, side by side
     * @param soFar everything payable up to and with this date
     */
    public record Row(String date, List<Piece> pieces, String amount, String soFar, String options) {
        public Row {
            pieces = List.copyOf(pieces);
        }
    }

    /** A payment's part of a bar, in per cent of the width. */
    public record Piece(String from, String width, String kind, String title) {}

    public static CashPicture of(Answer answer) {
        Set<String> bought = answer.choices().stream()
                .filter(Choice.Buy.class::isInstance)
                .map(Choice::option)
                .collect(Collectors.toSet());
        Map<LocalDate, List<Answer.Cash>> byDate = answer.cash().stream()
                .collect(Collectors.groupingBy(Answer.Cash::date, TreeMap::new, Collectors.toList()));
        Money zero = Money.zero(answer.total().currency());
        Money most = byDate.values().stream()
                .map(each -> sum(each, zero))
                .reduce(zero, (a, b) -> a.compareTo(b) > 0 ? a : b);
        List<Row> rows = new ArrayList<>();
        Money soFar = zero;
        for (Map.Entry<LocalDate, List<Answer.Cash>> entry : byDate.entrySet()) {
            Money amount = sum(entry.getValue(), zero);
            soFar = soFar.plus(amount);
            rows.add(new Row(
                    Words.date(entry.getKey()),
                    pieces(entry.getValue(), most, bought),
                    Words.amount(amount),
                    Words.amount(soFar),
                    entry.getValue().stream()
                            .map(Answer.Cash::option)
                            .distinct()
                            .collect(Collectors.joining(", "))));
        }
        return new CashPicture(rows, Words.money(answer.payable()));
    }

    private static Money sum(List<Answer.Cash> payments, Money zero) {
        return payments.stream().map(Answer.Cash::amount).reduce(zero, Money::plus);
    }

    private static List<Piece> pieces(List<Answer.Cash> payments, Money most, Set<String> bought) {
        List<Piece> pieces = new ArrayList<>();
        Money at = Money.zero(most.currency());
        for (Answer.Cash payment : payments) {
            boolean purchase = bought.contains(payment.option());
            pieces.add(new Piece(
                    ComparisonPicture.percent(at, most),
                    ComparisonPicture.percent(payment.amount(), most),
                    purchase ? "bought" : "rented",
                    payment.option() + (purchase ? ", outlay " : ", rental ") + Words.money(payment.amount())));
            at = at.plus(payment.amount());
        }
        return pieces;
    }
}
