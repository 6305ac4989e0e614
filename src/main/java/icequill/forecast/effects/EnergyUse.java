package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.money.Rounding;
import icequill.problem.Check;
import javax.money.MonetaryAmount;

/**
 * The energy that a year's ice takes. The ice needed stays the same however dirty the condenser is; a dirty machine runs longer.
 *
 * @param days of a year on which ice is made, from 1 to 366
 * @param price of one kWh
 */
public record EnergyUse(EnergyRate rate, IceNeed need, int days, MonetaryAmount price) {

    private static final int HUNDRED = 100;
    private static final int MOST_DAYS = 366;

    public EnergyUse {
        Check.inRange(days, 1, MOST_DAYS, "days");
        Check.that(!price.isNegative(), "a price of " + price);
    }

    /** What a cleaner condenser saves in a year, rounded once; negative where it is the dirtier one. */
    public SourcedAmount saved(CondensingRise dirty, CondensingRise cleaner) {
        return SourcedAmount.of(priced(clean().times(dirty.energy().minus(cleaner.energy()))),
                Provenance.weakest(mark(dirty), mark(cleaner)),
                price.getCurrency());
    }

    /** kWh of a year with a clean condenser. */
    Figure clean() {
        return rate.kilowattHours().figure().over(Figure.term(HUNDRED, "lb"))
                .times(need.pounds().figure()).times(Figure.term(days, "days"));
    }

    private Figure priced(Figure kilowattHours) {
        return kilowattHours.times(Figure.price(price, "kWh")).rounded(Rounding.ENERGY, price.getCurrency());
    }

    private Provenance mark(CondensingRise rise) {
        Provenance clean = Provenance.weakest(rate.kilowattHours().mark(), need.pounds().mark());
        return rise.fahrenheit().signum() == 0 ? clean : Provenance.weakest(clean, Provenance.DERIVED);
    }
}
