package icequill.forecast;

import icequill.problem.Check;

/**
 * The minerals that come into a machine with its water, by balance of mass, and what may stay of them. How much stays is a
 * scenario; no published value was found.
 *
 * @param ice lb of ice made
 * @param gallons of water taken for 100 lb of ice, above {@value #OF_ICE}
 * @param hardness mg/l as CaCO3, from 0
 */
public record WaterAndScale(double ice, double gallons, double hardness) {

    /** Gallons of water in 100 lb of ice. */
    public static final double OF_ICE = 100 / 8.3454;
    /** Milligrams in a liter that make a grain in a US gallon. */
    public static final double GRAIN_A_GALLON = 64.79891 / 3.785411784;

    private static final double LITERS_OF_A_GALLON = 3.785411784;
    private static final double GRAMS_OF_A_POUND = 453.59237;
    /** Of calcium carbonate, grams in a cubic centimeter. */
    private static final double DENSITY = 2.71;
    private static final double HUNDRED = 100;
    private static final double THOUSAND = 1000;
    private static final double MILLIMETERS_OF_A_CENTIMETER = 10;
    /**
     * Heat transfer of a bare surface over the conductivity of scale, for a meter: 25 mm of it are said to take 95 % (abstract of a
     * thesis that cites Glater 1980, read).
     */
    private static final double BARE_TO_SCALE = 760;

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

        private static final double SOFT_UP_TO = 60;
        private static final double MODERATE_UP_TO = 120;
        private static final double HARD_UP_TO = 180;

        /** The class of a hardness in mg/l as CaCO3. */
        public static Hardness of(double milligrams) {
            return milligrams <= SOFT_UP_TO
                    ? SOFT
                    : milligrams <= MODERATE_UP_TO ? MODERATELY_HARD : milligrams <= HARD_UP_TO ? HARD : VERY_HARD;
        }
    }

    public WaterAndScale {
        Check.that(ice >= 0 && hardness >= 0 && gallons > OF_ICE,
                ice + " lb of ice, " + gallons + " gal for 100 lb, " + hardness + " mg/l");
    }

    /** Gallons taken in. */
    public double water() {
        return ice / HUNDRED * gallons;
    }

    /** Grams of minerals that come in with it, as CaCO3. */
    public double minerals() {
        return water() * LITERS_OF_A_GALLON * hardness / THOUSAND;
    }

    /** The same in pounds. */
    public double mineralPounds() {
        return minerals() / GRAMS_OF_A_POUND;
    }

    /** How many times harder the drained water is than what comes in, if all minerals leave with it. */
    public double purgeStrength() {
        return gallons / (gallons - OF_ICE);
    }

    /** Grams that stay as scale, where a part of 0 to 1 of the minerals stays. */
    public double scale(double part) {
        Check.that(part >= 0 && part <= 1, "a part of " + part);
        return part * minerals();
    }

    /** Millimeters of scale, were it even over an area of so many square centimeters. */
    public double thickness(double part, double area) {
        Check.that(area > 0, "an area of " + area);
        return scale(part) / (DENSITY * area) * MILLIMETERS_OF_A_CENTIMETER;
    }

    /**
     * Heat transfer through so many millimeters of scale beside that of a bare surface. Scale conducts about as well as ice, of
     * which a machine grows several millimeters, so this is no saving to promise: scale hurts by holding the ice and the water.
     */
    public static double transfer(double millimeters) {
        return 1 / (1 + BARE_TO_SCALE * millimeters / THOUSAND);
    }
}
