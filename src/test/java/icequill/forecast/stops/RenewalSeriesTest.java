package icequill.forecast.stops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stops of a Weibull renewal process against other methods: a power series, plain sums on a fine grid, a statistics library. */
class RenewalSeriesTest {

    /** The Weibull count series (McShane et al. 2008, from memory): powers of t in alternating sums. */
    @ParameterizedTest
    @CsvSource({"1.3, 14, 24", "1.3, 14, 6", "2.5724, 13.838, 12", "2.5724, 13.838, 18", "4, 20, 24", "6, 10, 11",
            "0.7, 20, 24", "8, 10, 11"})
    void counts_byThePowerSeries_agree(double shape, double scale, double months) {
        CountDistribution counts = RenewalSeries.of(new FoulingLife(shape, scale), 24).counts(0, months);
        double tolerance = shape < 1.3 ? 1e-7 : 1e-9;

        for (int n = 0; n <= 6; n++) {
            assertThat(counts.chance(n)).as("chance of " + n).isEqualTo(series(n, shape, months / scale),
                    within(tolerance));
        }
    }

    private static double series(int stops, double shape, double time) {
        // As many as do not overflow; the last are far below the tolerance.
        int terms = (int) Math.min(60, 165 / shape);
        double[] alpha = new double[terms];
        for (int j = 0; j < terms; j++) {
            alpha[j] = gammas(shape, j);
        }
        for (int n = 0; n < stops; n++) {
            double[] next = new double[terms];
            for (int j = n + 1; j < terms; j++) {
                for (int m = n; m < j; m++) {
                    next[j] += alpha[m] * gammas(shape, j - m);
                }
            }
            alpha = next;
        }
        double sum = 0;
        for (int j = stops; j < terms; j++) {
            double term = Math.exp(j * shape * Math.log(time) - Gamma.logGamma(shape * j + 1)) * alpha[j];
            sum += (j + stops) % 2 == 0 ? term : -term;
        }
        return sum;
    }

    private static double gammas(double shape, int power) {
        return Math.exp(Gamma.logGamma(shape * power + 1) - Gamma.logGamma(power + 1.0));
    }

    /** Long horizons and steep clocks: sums of the renewal equation on a fine grid, whose error falls with its step squared. */
    @ParameterizedTest
    @CsvSource({"2.5724, 13.838, 60", "4, 20, 120", "6, 10, 60", "8, 6, 48", "1.5, 3, 60"})
    void mean_byTheRenewalEquation_agrees(double shape, double scale, double months) {
        FoulingLife clock = new FoulingLife(shape, scale);
        double coarse = renewalFunction(clock, months, 2000);
        double fine = renewalFunction(clock, months, 4000);

        assertThat(RenewalSeries.of(clock, months).counts(0, months).mean())
                .isEqualTo(fine + (fine - coarse) / 3, within(2e-4));
    }

    /** M(t) = F(t) + integral of M(t - x) dF(x), by the trapezoid rule in F. */
    private static double renewalFunction(FoulingLife clock, double months, int steps) {
        double step = months / steps;
        double[] chance = new double[steps + 1];
        double[] mean = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            chance[i] = -Math.expm1(-Math.pow(i * step / clock.scale(), clock.shape()));
        }
        for (int i = 1; i <= steps; i++) {
            double sum = chance[i];
            for (int j = 2; j <= i; j++) {
                sum += (mean[i - j] + mean[i - j + 1]) / 2 * (chance[j] - chance[j - 1]);
            }
            double first = chance[1] / 2;
            mean[i] = (sum + mean[i - 1] * first) / (1 - first);
        }
        return mean[steps];
    }

    /** Twice the nodes and a longer horizon of the series change nothing: what is left of the error is below the promise. */
    @ParameterizedTest
    @CsvSource({"1.3, 9, 60, 9", "2.5724, 13.838, 60, 12", "3.5, 8, 60, 30", "6, 10, 36, 5", "10, 12, 48, 3",
            "4.9, 10, 80, 15", "6, 10, 40, 15", "8, 10, 40, 15", "3.5, 10, 120, 15"})
    void counts_ofALongerSeries_agree(double shape, double scale, double months, double age) {
        FoulingLife clock = new FoulingLife(shape, scale);
        CountDistribution counts = RenewalSeries.of(clock, months).counts(age, months);
        CountDistribution longer = RenewalSeries.of(clock, 2 * months).counts(age, months);

        for (int n = 0; n <= counts.most(); n++) {
            assertThat(counts.chance(n)).as("chance of " + n).isEqualTo(longer.chance(n), within(1e-9));
        }
    }

    /** A general statistics library on the same laws. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 6, 12, 24, 60})
    void clock_byAStatisticsLibrary_agrees(double months) {
        FoulingLife clock = new FoulingLife(2.5724, 13.838);
        WeibullDistribution library = WeibullDistribution.of(2.5724, 13.838);

        assertThat(clock.chanceBy(months)).isEqualTo(library.cumulativeProbability(months), within(1e-14));
        assertThat(clock.density(0, months)).isEqualTo(library.density(months), within(1e-14));
        assertThat(clock.mean()).isEqualTo(library.getMean(), within(1e-12));
    }

    @Test
    void poisson_byAStatisticsLibrary_agrees() {
        for (double mean : new double[]{0.02, 0.5, 3, 40, 600}) {
            PoissonDistribution library = PoissonDistribution.of(mean);
            CountDistribution counts = CountDistribution.poisson(mean);
            for (int n = 0; n <= counts.most(); n++) {
                assertThat(counts.chance(n)).isEqualTo(library.probability(n), within(1e-13));
            }
            assertThat(counts.mean()).isEqualTo(mean, within(1e-11 * (1 + mean)));
        }
    }

    /** The n-th stop of a shape of 1 comes at a time with a gamma law. */
    @Test
    void counts_shapeOne_waitAGammaTime() {
        CountDistribution counts = RenewalSeries.of(new FoulingLife(1, 7), 60).counts(0, 40);
        for (int n = 1; n <= 12; n++) {
            assertThat(counts.chanceOfMoreThan(n - 1))
                    .isEqualTo(GammaDistribution.of(n, 7).cumulativeProbability(40), within(1e-9));
        }
    }
}
