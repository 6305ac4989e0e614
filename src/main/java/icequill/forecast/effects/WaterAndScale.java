package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.problem.Check;
import java.math.BigDecimal;

/**
 * The minerals that come into a machine with its water, by balance of mass, and what may stay of them. How much stays is a
 * scenario; no published value was found.
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
    /** Gallons of water in 100 lb of ice: what is not drained. */
    private static final Figure OF_ICE = Figure.term(HUNDRED, "lb").over(Figure.term(POUNDS, "lb/gal"));
    private static final BigDecimal LITERS = new BigDecimal("3.785411784");
    private static final BigDecimal MILLIGRAMS_OF_A_GRAIN = new BigDecimal("64.79891");
    private static final BigDecimal GRAMS_OF_A_POUND = new BigDecimal("453.59237");
    /** Of calcium carbonate, grams in a cubic centimeter. */
    private static final BigDecimal DENSITY = new BigDecimal("2.71");
    private static final int THOUSAND = 1000;
    private static final int MILLIMETERS_OF_A_CENTIMETER = 10;
    /**
     * Heat transfer of a bare surface over the conductivity of scale, for a meter: 25 mm of it are said to take 95 % (abstract of a
     * thesis that cites Glater 1980, read).
     */
    private static final int BARE_TO_SCALE = 760;

    /** Classes of hardness of the US Geological Survey, mg/l as CaCO3. States draw other lines. */
    public enum Hardness {
        /** Up to 60. */
        SOFT,
        /** Up to 120. */
        MODERATELY_HARD,
        /** Up to 180. */
        HARD,
        /** Above 180. */
        VERY_HARD;

        private static final BigDecimal SOFT_UP_TO = new BigDecimal("60");
        private static final BigDecimal MODERATE_UP_TO = new BigDecimal("120");
        private static final BigDecimal HARD_UP_TO = new BigDecimal("180");

        /** The class of a hardness in mg/l as CaCO3. */
        public static Hardness of(BigDecimal milligrams) {
            if (milligrams.compareTo(SOFT_UP_TO) <= 0) {
                return SOFT;
            }
            if (milligrams.compareTo(MODERATE_UP_TO) <= 0) {
                return MODERATELY_HARD;
            }
            return milligrams.compareTo(HARD_UP_TO) <= 0 ? HARD : VERY_HARD;
        }
    }

    public WaterAndScale {
        Check.that(ice.signum() >= 0 && hardness.signum() >= 0 && gallons.multiply(POUNDS).compareTo(HUNDRED) > 0,
                ice + " lb of ice, " + gallons + " gal for 100 lb, " + hardness + " mg/l");
    }

    /** Grains in a US gallon of a hardness in mg/l. */
    public static Figure grains(BigDecimal milligrams) {
        return Figure.term(milligrams, "mg/l").times(Figure.term(LITERS, "l/gal"))
                .over(Figure.term(MILLIGRAMS_OF_A_GRAIN, "mg/grain"));
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

    /** How many times harder the drained water is than what comes in, if all minerals leave with it. */
    public SourcedValue purgeStrength() {
        return derived(Figure.term(gallons, "gal").over(Figure.term(gallons, "gal").minus(OF_ICE)));
    }

    /**
     * Grams that stay as scale.
     *
     * @param part of the minerals that stays, from 0 to 1
     */
    public SourcedValue scale(BigDecimal part) {
        Check.inRange(part, BigDecimal.ZERO, BigDecimal.ONE, "part");
        return derived(Figure.term(part, "").times(minerals().figure()));
    }

    /**
     * Millimeters of scale, were it even.
     *
     * @param part of the minerals that stays, from 0 to 1
     * @param area square centimeters that are wet, above 0
     */
    public SourcedValue thickness(BigDecimal part, BigDecimal area) {
        Check.that(area.signum() > 0, "an area of " + area);
        return derived(scale(part).figure().over(Figure.term(DENSITY, "g/cm3").times(Figure.term(area, "cm2")))
                .times(Figure.term(MILLIMETERS_OF_A_CENTIMETER, "mm/cm")));
    }

    /**
     * Heat transfer through so many millimeters of scale beside that of a bare surface. Scale conducts about as well as ice, of
     * which a machine grows several millimeters, so this is no saving to promise: scale hurts by holding the ice and the water.
     */
    public static SourcedValue transfer(BigDecimal millimeters) {
        Figure one = Figure.term(1, "");
        return new SourcedValue(one.over(one.plus(Figure.term(BARE_TO_SCALE, "/m")
                .times(Figure.term(millimeters, "mm")).over(Figure.term(THOUSAND, "mm/m")))), Provenance.DERIVED);
    }

    private SourcedValue derived(Figure figure) {
        return new SourcedValue(figure, Provenance.weakest(mark, Provenance.DERIVED));
    }
}
