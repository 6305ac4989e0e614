package icequill.forecast.fit;

import icequill.forecast.Decimals;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.Pace;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The likeliest speed of a clock in each quarter of the year, together with the clock: one factor after another is led to where the
 * likelihood does not grow any more, and the clock is fitted anew, until nothing changes.
 */
final class QuarterFactors {

    private static final int DIGITS = 2;
    private static final double LEAST = 0.05;
    private static final double MOST = 20;
    private static final double SAME = 1e-7;
    private static final int MOST_ROUNDS = 500;

    private final List<Parts> parts;

    /** A run as months in each quarter, to which its ages add up when each is taken times its factor. */
    private static final class Parts {
        private final DatedRun run;
        private final double[] entered;
        private final double[] atLeast;
        private final double[] atMost;
        private final boolean isBetween;
        private final int quarter;

        Parts(DatedRun run) {
            List<Run> quarters = IntStream.range(0, Pace.QUARTERS).mapToObj(q -> run.at(only(q))).toList();
            this.run = run;
            this.entered = quarters.stream().mapToDouble(Run::entered).toArray();
            this.atLeast = quarters.stream().mapToDouble(Run::atLeast).toArray();
            this.atMost = quarters.stream().mapToDouble(Run::atMost).toArray();
            this.isBetween = run.at(Pace.EVEN).isBetween();
            this.quarter = run.quarter();
        }

        private static Pace only(int quarter) {
            return Pace.ofQuarters(IntStream.range(0, Pace.QUARTERS).mapToObj(q -> q == quarter ? 1.0 : 0).toList());
        }

        /** What the logarithm of its likelihood grows by with the factor of a quarter. */
        double slope(FoulingLife clock, double[] factors, int q) {
            double least = age(atLeast, factors);
            double from = age(entered, factors);
            double sum = from == 0 ? 0 : clock.rate(from) * entered[q];
            if (isBetween) {
                double most = age(atMost, factors);
                double growth = clock.hazard(most) - clock.hazard(least);
                double later = clock.rate(most) * atMost[q];
                double sooner = least == 0 ? 0 : clock.rate(least) * atLeast[q];
                return sum + (later - sooner) / Math.expm1(growth) - sooner;
            }
            sum -= clock.rate(least) * atLeast[q];
            return run.stopped()
                    ? sum + (clock.shape() - 1) / least * atLeast[q] + (quarter == q ? 1 / factors[q] : 0)
                    : sum;
        }

        Run at(double[] factors) {
            return new Run(run.kind(), age(entered, factors), age(atLeast, factors), age(atMost, factors),
                    run.stopped(), run.place());
        }

        private static double age(double[] months, double[] factors) {
            double sum = 0;
            for (int q = 0; q < Pace.QUARTERS; q++) {
                sum += months[q] * factors[q];
            }
            return sum;
        }
    }

    QuarterFactors(List<DatedRun> runs) {
        this.parts = runs.stream().map(Parts::new).toList();
    }

    /** To hundredths that add up to 4; a search begins with the clock of a year without a season. */
    List<BigDecimal> likeliest(FoulingLife even) {
        double[] factors = {1, 1, 1, 1};
        FoulingLife clock = even;
        double change = 1;
        for (int round = 0; round < MOST_ROUNDS && change > SAME; round++) {
            double[] next = next(clock, factors);
            change = 0;
            for (int q = 0; q < Pace.QUARTERS; q++) {
                change = Math.max(change, Math.abs(next[q] - factors[q]));
            }
            factors = next;
            clock = new RunLikelihood(parts.stream().map(part -> part.at(next)).toList()).likeliest();
        }
        return hundredths(factors);
    }

    private double[] next(FoulingLife clock, double[] before) {
        double[] factors = before.clone();
        for (int q = 0; q < Pace.QUARTERS; q++) {
            int quarter = q;
            factors[q] = RunLikelihood.root(factor -> {
                double[] tried = factors.clone();
                tried[quarter] = factor;
                return -parts.stream().mapToDouble(part -> part.slope(clock, tried, quarter)).sum();
            }, LEAST, MOST);
        }
        double mean = Arrays.stream(factors).sum() / Pace.QUARTERS;
        return Arrays.stream(factors).map(factor -> Math.max(LEAST, factor / mean)).toArray();
    }

    /** What rounding takes away or adds is made good where it matters least. */
    private static List<BigDecimal> hundredths(double[] factors) {
        List<BigDecimal> rounded = new ArrayList<>(
                Arrays.stream(factors).mapToObj(factor -> Decimals.of(factor, DIGITS)).toList());
        int largest = rounded.indexOf(Collections.max(rounded));
        BigDecimal sum = rounded.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        rounded.set(largest, rounded.get(largest).add(BigDecimal.valueOf(Pace.QUARTERS).subtract(sum)));
        return rounded;
    }
}
