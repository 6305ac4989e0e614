package icequill.money;

import icequill.problem.Check;
import java.math.BigDecimal;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** From money to whole minor units, as chances are put on them and the book stores them, and back. */
public final class MinorUnits {

    private MinorUnits() {
    }

    /**
     * Of an amount without broken minor units.
     *
     * @throws ArithmeticException when there are more than the book can store
     */
    public static long of(MonetaryAmount amount) {
        Check.that(Amounts.isWhole(amount), "an amount with broken minor units: " + amount);
        return Amounts.number(amount).movePointRight(amount.getCurrency().getDefaultFractionDigits())
                .longValueExact();
    }

    /** The amount of so many minor units. */
    public static MonetaryAmount amount(long minor, CurrencyUnit currency) {
        return Amounts.of(Exact.normal(BigDecimal.valueOf(minor, currency.getDefaultFractionDigits())), currency);
    }
}
