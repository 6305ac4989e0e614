package icequill.forecast;

import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Rounding;
import icequill.problem.Check;
import java.math.BigDecimal;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.apache.commons.numbers.fraction.BigFraction;

/** From money to the whole minor units that chances are put on, and back. */
public final class MinorUnits {

    private MinorUnits() {
    }

    /** Of an amount without broken minor units. */
    public static long of(MonetaryAmount amount) {
        Check.that(Amounts.isWhole(amount), "an amount with broken minor units: " + amount);
        return Amounts.number(amount).movePointRight(amount.getCurrency().getDefaultFractionDigits())
                .longValueExact();
    }

    /** The amount of so many minor units. */
    public static MonetaryAmount amount(long minor, CurrencyUnit currency) {
        return Amounts.of(Exact.normal(BigDecimal.valueOf(minor, currency.getDefaultFractionDigits())), currency);
    }

    /** A mean or a spread of minor units, rounded half up to whole ones ({@link Rounding#EXPECTED}). */
    public static long expected(double minor) {
        return Rounding.EXPECTED.wholeMinor(BigFraction.from(minor));
    }
}
