package icequill.forecast.fit;

import icequill.forecast.stops.FoulingLife;
import java.util.List;

/** What the shop's records say of a clock. */
public sealed interface Fit {

    /** Stops below which nothing is fitted. */
    int FEWEST_STOPS = 5;

    /** Stops recorded. */
    int stops();

    /** Runs recorded. */
    int runs();

    /** Too few stops: the owner's settings stay. */
    record TooFew(int stops, int runs) implements Fit {}

    /**
     * The likeliest clock.
     *
     * @param shape 95 % limits by profile likelihood
     * @param scale the same
     * @param points one for each month at which something stopped, by rising months
     */
    record Found(FoulingLife clock, Limits shape, Limits scale, int stops, int runs, List<Point> points)
            implements
            Fit {
        public Found {
            points = List.copyOf(points);
        }

        /** Whether the records leave it open that dirt does no harm: a shape of 1 lies within the limits. */
        public boolean mayBeRandom() {
            return shape.low() <= 1;
        }
    }

    /**
     * Limits of a value.
     *
     * @param high {@link Double#POSITIVE_INFINITY} where the records set none
     */
    record Limits(double low, double high) {}

    /**
     * A point of the plot that shows how well the clock fits. On axes of ln(months) and ln(-ln(1 - chance)) a clock is a straight
     * line.
     *
     * @param observed the chance of a stop by then: half way up the step of the Kaplan-Meier estimate
     * @param fitted the chance by the clock
     */
    record Point(double months, double observed, double fitted) {}
}
