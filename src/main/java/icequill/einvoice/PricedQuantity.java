package icequill.einvoice;

import icequill.document.InvoiceLine;
import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Rounding;
import icequill.pricer.UnitPrice;
import icequill.problem.Check;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * A quantity and its price (BG-29), of which a reader works out the line again: price / per x quantity, rounded once.
 *
 * @param number BT-129
 * @param unit of both quantities, by UN/ECE Recommendation 20
 * @param price BT-146; not negative, and not rounded to the currency
 * @param per the quantity that the price is for, BT-149
 */
record PricedQuantity(BigDecimal number, String unit, MonetaryAmount price, BigDecimal per) {

    private static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);
    private static final int READERS_DECIMALS = 2;
    private static final String LUMP_SUM = "LS";

    PricedQuantity {
        Check.that(!price.isNegative(), "a price is negative: " + price);
    }

    /**
     * The line's own quantity and price where they give its list price, and one of it at the list price (minus one where it is taken back) where they do not or
     * where it has no price for one: a service call beyond the last zone, a surcharge, half of a line that is credited, minutes
     * that do not come to whole yen.
     * Minutes stay minutes, at a price for 60 of them; as hours they would have to be rounded.
     */
    static PricedQuantity of(InvoiceLine line) {
        return line.unitPrice().flatMap(price -> counted(line, price))
                .filter(counted -> counted.amount().isEqualTo(line.list())).orElseGet(() -> single(line));
    }

    private static Optional<PricedQuantity> counted(InvoiceLine line, UnitPrice price) {
        Unit unit = line.quantity().unit();
        Optional<BigDecimal> per = price.per() == unit
                ? Optional.of(BigDecimal.ONE)
                : Optional.of(MINUTES_PER_HOUR).filter(hour -> unit == Unit.MINUTE && price.per() == Unit.HOUR);
        return per.map(base -> new PricedQuantity(line.quantity().number(), unit.code(), price.amount(), base));
    }

    private static PricedQuantity single(InvoiceLine line) {
        String unit = line.quantity().unit() == Unit.VISIT ? Unit.VISIT.code() : LUMP_SUM;
        boolean isTakenBack = line.list().isNegative();
        return new PricedQuantity(isTakenBack ? BigDecimal.ONE.negate() : BigDecimal.ONE, unit,
                isTakenBack ? line.list().negate() : line.list(), BigDecimal.ONE);
    }

    /** As a reader works it out: to two decimals also where the currency has none, which few readers know. */
    MonetaryAmount amount() {
        CurrencyUnit currency = price.getCurrency();
        int decimals = Math.max(READERS_DECIMALS, Rounding.LINE.decimals(currency));
        return Amounts.of(
                Rounding.halfUp(Exact.of(Amounts.number(price)).divide(Exact.of(per)).multiply(Exact.of(number)),
                        decimals),
                currency);
    }
}
