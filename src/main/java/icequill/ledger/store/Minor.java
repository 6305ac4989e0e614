package icequill.ledger.store;

import icequill.money.Amounts;
import icequill.money.MinorUnits;
import java.math.BigDecimal;
import java.math.BigInteger;
import javax.money.Monetary;
import javax.money.MonetaryAmount;

/** Amounts of the book's rows, which may be damaged. */
public final class Minor {

    private Minor() {
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
        return MinorUnits.amount(minor, Monetary.getCurrency(currency));
    }

    /** For messages, whatever the currency. */
    public static String text(BigInteger minor, String currency) {
        return Monetary.isCurrencyAvailable(currency)
                ? currency + " " + Amounts.plain(Amounts.of(
                        new BigDecimal(minor, Monetary.getCurrency(currency).getDefaultFractionDigits()),
                        Monetary.getCurrency(currency)))
                : minor + " of " + currency;
    }
}
