package icequill.forecast.stops;

import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import org.hipparchus.special.Gamma;

/**
 * How dirt brings a machine to a stop: a Weibull law of the months since its last cleaning or brushing (NIST/SEMATECH e-Handbook
 * of Statistical Methods, 8.1.6.2).
 *
 * @param shape above 0; from 1 on dirt never gets safer with time
 * @param scale months by which 63 % have stopped; above 0
 */
public record FoulingLife(double shape, double scale) {

    /** Steeper would be a date on the calendar. */
    private static final double STEEPEST = 10;
    /** Faster would be a machine that nobody keeps. */
    private static final double FASTEST = 1;

    public FoulingLife {
        Check.that(shape > 0 && scale > 0, "a clock of shape " + shape + " and scale " + scale);
    }

    /**
     * The clock of an owner who counts: of many machines left dirty, which part stops within 6 months, and within 12.
     *
     * @return a problem where a chance is not between 0 and 1, where dirt would get safer with time, or where a clock would be too
     *         steep or too fast to be believed
     */
    public static Validated<FoulingLife> ofChances(double sixMonths, double twelveMonths, Place place) {
        Problems problems = new Problems();
        if (!(sixMonths > 0 && sixMonths < 1 && twelveMonths > 0 && twelveMonths < 1)) {
            problems.add(new Problem(Code.OUT_OF_RANGE, place,
                    "chances of a stop of " + sixMonths + " and " + twelveMonths,
                    "both above 0 and below 1"));
        } else if (twelveMonths < 1 - Math.pow(1 - sixMonths, 2)) {
            problems.add(new Problem(Code.NOT_ALLOWED, place,
                    "with " + sixMonths + " by month 6 and " + twelveMonths
                            + " by month 12 dirt would get safer with time",
                    "by month 12 at least 1 - (1 - " + sixMonths + ")^2"));
        }
        return problems.or(() -> through(sixMonths, twelveMonths)).then(clock -> believed(clock, place));
    }

    private static FoulingLife through(double sixMonths, double twelveMonths) {
        double shape = Math.log(Math.log1p(-twelveMonths) / Math.log1p(-sixMonths)) / Math.log(2);
        return new FoulingLife(shape, 12 / Math.pow(-Math.log1p(-twelveMonths), 1 / shape));
    }

    private static Validated<FoulingLife> believed(FoulingLife clock, Place place) {
        return clock.shape() > STEEPEST || clock.scale() < FASTEST
                ? Validated.invalid(new Problem(Code.OUT_OF_RANGE, place,
                        "chances by month 6 and 12 of " + clock.chanceBy(6) + " and " + clock.chanceBy(12)
                                + " make a clock of shape " + clock.shape() + " and scale " + clock.scale() + " months",
                        "a shape up to " + STEEPEST + " and a scale of at least " + FASTEST + " month"))
                : Validated.valid(clock);
    }

    /** The same clock running faster: yeast, heat, grease or hard water. */
    public FoulingLife faster(double factor) {
        Check.that(factor > 0, "a factor of " + factor);
        return new FoulingLife(shape, scale / factor);
    }

    /** The clock of dirt that stops a machine so many times as likely at any moment. */
    FoulingLife stopping(double factor) {
        return faster(Math.pow(factor, 1 / shape));
    }

    /** Stops expected by a month when none of them cleans anything: the cumulative hazard. */
    public double hazard(double months) {
        return Math.pow(months / scale, shape);
    }

    /** The chance of a stop by a month. */
    public double chanceBy(double months) {
        return -Math.expm1(-hazard(months));
    }

    /** What the cumulative hazard grows by from an age on; right to all digits however old the dirt is. */
    public double hazard(double age, double months) {
        return age == 0 ? hazard(months) : hazard(age) * Math.expm1(shape * Math.log1p(months / age));
    }

    /** Months from an age on until the cumulative hazard has grown by so much; right to all digits however old the dirt is. */
    double monthsUntil(double growth, double age) {
        return age == 0
                ? scale * Math.pow(growth, 1 / shape)
                : age * Math.expm1(Math.log1p(growth / hazard(age)) / shape);
    }

    /** Stops expected in a month at an age. */
    public double rate(double age) {
        return shape / scale * Math.pow(age / scale, shape - 1);
    }

    /** Density of the next stop after some months more, for one that has run without a stop for its age. */
    double density(double age, double months) {
        return rate(age + months) * Math.exp(-hazard(age, months));
    }

    /** Months to a stop on average. */
    public double mean() {
        return scale * Gamma.gamma(1 + 1 / shape);
    }
}
