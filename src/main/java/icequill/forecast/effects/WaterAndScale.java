package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.problem.Check;
import java.math.BigDecimal;

/**
 * The minerals that come into a machine with its water, by balance of mass. How much of them stays is left open; no
 * published value was found.
 *
 * @param ice lb of ice made
 * @param gallons of water taken for 100 lb of ice, above 11.98, which the ice itself takes
 * @param hardness mg/l as CaCO3, from 0
 * @param mark of the least sure of these
 */
public record WaterAndScale(BigDecimal ice, BigDecimal gallons, BigDecimal hardness, Provenance mark) {

    /** Pounds of a gallon of water. */
    private static final BigDecimal POUNDS = new BigDecimal("8.3454");
    private static final BigDecimal HUNDRED = new BigDecimal("100");
    private static final BigDecimal LITERS = new BigDecimal("3.785411784");
    private static final BigDecimal GRAMS_OF_A_POUND = new BigDecimal("453.59237");
    private static final int THOUSAND = 1000;

    public WaterAndScale {
        Check.that(ice.signum() >= 0 && hardness.signum() >= 0 && gallons.multiply(POUNDS).compareTo(HUNDRED) > 0,
                ice + " lb of ice, " + gallons + " gal for 100 lb, " + hardness + " mg/l");
    }

    /** Gallons taken in. */
    public SourcedValue water() {
        return new SourcedValue(
                Figure.term(ice, "lb").over(Figure.term(HUNDRED, "lb")).times(Figure.term(gallons, "gal")), mark);
    }

    /** Grams of minerals that come in with it, as CaCO3. */
    public SourcedValue minerals() {
        return derived(water().figure().times(Figure.term(LITERS, "l/gal")).times(Figure.term(hardness, "mg/l"))
                .over(Figure.term(THOUSAND, "mg/g")));
    }

    /** The same in pounds. */
    public SourcedValue mineralPounds() {
        return derived(minerals().figure().over(Figure.term(GRAMS_OF_A_POUND, "g/lb")));
    }

    private SourcedValue derived(Figure figure) {
        return new SourcedValue(figure, Provenance.weakest(mark, Provenance.DERIVED));
    }
}
