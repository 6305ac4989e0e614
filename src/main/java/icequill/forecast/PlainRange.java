package icequill.forecast;

import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Stepping;
import icequill.problem.Check;
import java.math.BigDecimal;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What eight years in ten cost: from the amount that one year in ten stays below to the one that one in ten goes beyond, each
 * rounded to the nearest step ({@link Stepping#NEAREST}), as a customer reads it.
 */
public record PlainRange(MonetaryAmount low, MonetaryAmount high) {

    /** In the currency's main units. */
    public static final BigDecimal STEP = new BigDecimal("50");

    private static final double ONE_IN_TEN = 0.1;

    /** Of what something costs. */
    public static PlainRange of(ChargeLaw law, CurrencyUnit currency) {
        return new PlainRange(rounded(law.quantile(ONE_IN_TEN), currency),
                rounded(law.quantile(1 - ONE_IN_TEN), currency));
    }

    /** An amount of minor units rounded to the nearest step, halves away from zero. */
    public static MonetaryAmount rounded(long minor, CurrencyUnit currency) {
        Check.that(currency.getDefaultFractionDigits() >= 0, "no minor units: " + currency);
        BigDecimal exact = Amounts.number(MinorUnits.amount(minor, currency));
        return Amounts.of(Exact.normal(Stepping.NEAREST.to(Exact.of(exact), STEP).bigDecimalValue()), currency);
    }

    /** Whether both ends read alike. */
    public boolean isPoint() {
        return low.isEqualTo(high);
    }
}
