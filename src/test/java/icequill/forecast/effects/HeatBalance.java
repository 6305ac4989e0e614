package icequill.forecast.effects;

import icequill.problem.Check;

/**
 * The heat that must be taken from water to make ice of it, by textbook values: 144 Btu to freeze a pound, 1 Btu for a degree of
 * water and half a Btu for a degree of ice.
 *
 * @param water degrees Fahrenheit of the water that comes in, from 32
 * @param ice degrees Fahrenheit of the ice, up to 32
 */
public record HeatBalance(double water, double ice) {

    private static final double FREEZING = 32;
    private static final double LATENT = 144;
    private static final double OF_ICE = 0.5;
    /** Absolute temperature at 0 F, in degrees of the same size. */
    private static final double ABSOLUTE = 459.67;
    private static final double BTU_OF_A_KILOWATT_HOUR = 3412.142;
    private static final double POUNDS_OF_A_GALLON = 8.3454;
    private static final double HUNDRED = 100;

    public HeatBalance {
        Check.that(water >= FREEZING && ice <= FREEZING, "water of " + water + " F, ice of " + ice + " F");
    }

    /** Btu for a pound of ice. */
    public double perPound() {
        return (water - FREEZING) + LATENT + OF_ICE * (FREEZING - ice);
    }

    /** kWh of heat for 100 lb of ice. */
    public double thermal() {
        return HUNDRED * perPound() / BTU_OF_A_KILOWATT_HOUR;
    }

    /** Heat moved for each unit of work by a machine without losses that takes it at one temperature and gives it off at another. */
    public static double idealPerformance(double evaporating, double condensing) {
        Check.that(condensing > evaporating, "heat from " + evaporating + " F to " + condensing + " F");
        return (evaporating + ABSOLUTE) / (condensing - evaporating);
    }

    /** kWh of work for 100 lb of ice in a machine without losses. */
    public double ideal(double evaporating, double condensing) {
        return thermal() / idealPerformance(evaporating, condensing);
    }

    /** kWh for 100 lb that nothing can go below: the work of a reversible machine that gives its heat off at a temperature. */
    public double reversible(double surroundings) {
        double warm = surroundings + ABSOLUTE;
        double freezing = FREEZING + ABSOLUTE;
        double entropy = Math.log((water + ABSOLUTE) / freezing) + LATENT / freezing
                + OF_ICE * Math.log(freezing / (ice + ABSOLUTE));
        return HUNDRED * (warm * entropy - perPound()) / BTU_OF_A_KILOWATT_HOUR;
    }

    /** Btu for 100 lb of ice that go into water that is chilled and then drained. */
    public double purged(double gallons) {
        return (gallons * POUNDS_OF_A_GALLON - HUNDRED) * (water - FREEZING);
    }
}
