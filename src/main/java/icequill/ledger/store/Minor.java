package icequill.ledger.store;

import icequill.money.Amounts;
import java.math.BigDecimal;
import java.math.BigInteger;
import javax.money.CurrencyUnit;
import javax.money.Monetary;
import javax.money.MonetaryAmount;

/** Amounts as whole minor units, as the book stores them. */
public final class Minor {

    private Minor() {
    }

    /**
     * The amount in minor units.
     *
     * @throws ArithmeticException when it has more decimals than its currency
     */
    public static long of(MonetaryAmount amount) {
        return Amounts.number(amount).movePointRight(amount.getCurrency().getDefaultFractionDigits()).longValueExact();
    }

    /**
     * The amount that a row says.
     *
     * @throws DamagedRow when there is no such currency
     */
    public static MonetaryAmount stored(long minor, String currency) {
        if (!Monetary.isCurrencyAvailable(currency)) {
            throw new DamagedRow("there is no currency \"" + currency + "\"");
        }
        return amount(minor, currency);
    }

    /** For messages, whatever the currency. */
    public static String text(BigInteger minor, String currency) {
        return Monetary.isCurrencyAvailable(currency)
                ? Amounts.of(new BigDecimal(minor, Monetary.getCurrency(currency).getDefaultFractionDigits()),
                        Monetary.getCurrency(currency)).toString()
                : minor + " of " + currency;
    }

    static MonetaryAmount amount(long minor, String currency) {
        CurrencyUnit unit = Monetary.getCurrency(currency);
        return Amounts.of(BigDecimal.valueOf(minor, unit.getDefaultFractionDigits()), unit);
    }
}
