package icequill.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.money.CurrencyUnit;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Every rounding the program does, by name, except those to a shop's price step, which are {@link Stepping}. All round halves away from zero, to the currency's own minor units, except
 * {@link #UNIT_PRICE}. There is no default: code that rounds says which rounding it means.
 */
public enum Rounding {
    /** One priced line. */
    LINE,
    /** The allowance of one line, or of a whole document. */
    ALLOWANCE,
    /** A percent surcharge. */
    SURCHARGE,
    /** Tax, once per rate on the summed base, or once per line, as the shop chose. */
    TAX,
    /** What a price that is shown with its tax comes to without it. */
    BEFORE_TAX,
    /** What a line costs the shop. */
    COST,
    /** What is paid before work begins. */
    DEPOSIT,
    /** What is used of minutes or visits that were paid ahead. */
    PAID_AHEAD,
    /** What is held back of a payment until the end of the work. */
    RETAINAGE,
    /** What is set aside in an agreement's price for the calls that it includes. */
    RESERVE,
    /** The change of an agreement's price for the days that are left of its term. */
    PRORATION,
    /** What is given back of an agreement that ends early. */
    REFUND,
    /** Interest for paying late, once for each invoice. */
    INTEREST,
    /** What energy costs in a year. */
    ENERGY,
    /** What it costs to buy ice that a machine did not make. */
    ICE,
    /** What it costs to own a machine, as equal amounts a year or at one day. */
    OWNING,
    /** What calls may be expected to cost, a mean or a spread. */
    EXPECTED,
    /** What is planned for a part of a year. */
    PLANNED,
    /** An amount of a later year at the prices or the worth of today. */
    LATER_YEAR,
    /** A unit price that follows from cost and markup: to four decimals, so that the line is rounded only once. */
    UNIT_PRICE;

    private static final int UNIT_PRICE_DECIMALS = 4;

    /** How many decimals this rounding keeps in the currency. */
    public int decimals(CurrencyUnit currency) {
        int minor = currency.getDefaultFractionDigits();
        return this == UNIT_PRICE ? Math.max(UNIT_PRICE_DECIMALS, minor) : minor;
    }

    /** Rounds an exact value half away from zero to the decimals this rounding keeps. */
    public BigDecimal round(BigFraction exact, CurrencyUnit currency) {
        return halfUp(exact, decimals(currency));
    }

    /** Rounds an exact number of minor units half away from zero to whole ones. */
    public long wholeMinor(BigFraction minor) {
        return halfUp(minor, 0).longValueExact();
    }

    /** Rounds an exact value half away from zero to so many decimals. */
    public static BigDecimal halfUp(BigFraction exact, int decimals) {
        return exact.bigDecimalValue(decimals, RoundingMode.HALF_UP);
    }
}
