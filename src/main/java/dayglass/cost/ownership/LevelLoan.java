package dayglass.cost.ownership;

import dayglass.base.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A loan paid back in equal months, each at its end. A month's rate is a twelfth of the year's (common practice).
 * Payment and interest are rounded half up to the minor unit each month; the last payment takes what is left.
 */
public final class LevelLoan {
    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

    private final List<Payment> payments;

    /** One month: {@code interest} and {@code principal} are what is paid, {@code left} what is owed after it. */
    public record Payment(Money interest, Money principal, Money left) {
        public Money total() {
            return interest.plus(principal);
        }
    }

    public LevelLoan(Ownership.Loan loan) {
        BigDecimal rate = loan.ratePerYear().fraction().divide(TWELVE, Growth.EXACT_ENOUGH);
        Money level =
                NetCost.rounded(loan.amount().currency(), payment(loan.amount().major(), rate, loan.months()));
        List<Payment> all = new ArrayList<>();
        Money left = loan.amount();
        for (int month = 1; month <= loan.months(); month++) {
            Money interest = NetCost.rounded(left.currency(), left.major().multiply(rate, Growth.EXACT_ENOUGH));
            Money principal = level.minus(interest);
            if (month == loan.months() || principal.compareTo(left) > 0) {
                principal = left;
            }
            left = left.minus(principal);
            all.add(new Payment(interest, principal, left));
        }
        this.payments = List.copyOf(all);
    }

    /** The level payment at the end of each period that pays back an amount, unrounded. */
    static BigDecimal payment(BigDecimal amount, BigDecimal ratePerPeriod, int periods) {
        if (ratePerPeriod.signum() == 0) {
            return amount.divide(BigDecimal.valueOf(periods), Growth.EXACT_ENOUGH);
        }
        BigDecimal grown = BigDecimal.ONE.add(ratePerPeriod).pow(periods, Growth.EXACT_ENOUGH);
        return amount.multiply(ratePerPeriod)
                .multiply(grown)
                .divide(grown.subtract(BigDecimal.ONE), Growth.EXACT_ENOUGH);
    }

    /** Month 1 first. */
    public List<Payment> payments() {
        return payments;
    }

    public Money interest() {
        Money zero = Money.zero(payments.get(0).interest().currency());
        return payments.stream().map(Payment::interest).reduce(zero, Money::plus);
    }

    /** What is still owed after a month's payment. */
    Money leftAfter(int month) {
        return payments.get(Math.min(month, payments.size()) - 1).left();
    }
}
