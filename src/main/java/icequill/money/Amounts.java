package icequill.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.javamoney.moneta.Money;

/** Makes, adds and writes amounts of money. All are exact: nothing here rounds. */
public final class Amounts {

    private Amounts() {
    }

    public static MonetaryAmount of(BigDecimal number, CurrencyUnit currency) {
        return Money.of(number, currency);
    }

    public static MonetaryAmount zero(CurrencyUnit currency) {
        return Money.zero(currency);
    }

    public static BigDecimal number(MonetaryAmount amount) {
        return amount.getNumber().numberValueExact(BigDecimal.class);
    }

    /** The larger of two amounts of one currency. */
    public static MonetaryAmount larger(MonetaryAmount one, MonetaryAmount other) {
        return other.isGreaterThan(one) ? other : one;
    }

    /** The smaller of two amounts of one currency. */
    public static MonetaryAmount smaller(MonetaryAmount one, MonetaryAmount other) {
        return other.isLessThan(one) ? other : one;
    }

    /**
     * Adds up; nothing makes zero.
     *
     * @throws javax.money.MonetaryException when an amount is in another currency
     */
    public static MonetaryAmount sum(Collection<? extends MonetaryAmount> amounts, CurrencyUnit currency) {
        MonetaryAmount total = zero(currency);
        for (MonetaryAmount amount : amounts) {
            total = total.add(amount);
        }
        return total;
    }

    /** The number with at least the currency's decimals, a point, no grouping and no currency sign: {@code 1250.00}. */
    public static String plain(MonetaryAmount amount) {
        BigDecimal number = Exact.normal(number(amount));
        int minor = amount.getCurrency().getDefaultFractionDigits();
        return number.setScale(Math.max(minor, number.scale()), RoundingMode.UNNECESSARY).toPlainString();
    }

    /** Whether the amount has no more decimals than its currency. */
    public static boolean isWhole(MonetaryAmount amount) {
        return Exact.normal(number(amount)).scale() <= amount.getCurrency().getDefaultFractionDigits();
    }
}
