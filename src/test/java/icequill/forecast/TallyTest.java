package icequill.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.stops.CountDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which numbers of calls are seldom, by the usual tables of the Poisson law. */
class TallyTest {

    /** Mean 4: P(N <= 1) = 0.0916, P(N <= 2) = 0.2381, P(N >= 7) = 0.1107, P(N >= 8) = 0.0511. Mean 0.6: P(N >= 2) = 0.1219, P(N >= 3) = 0.0231. */
    @ParameterizedTest
    @CsvSource({"4, 0, 0, FEWER", "4, 1, 1, FEWER", "4, 2, 2, FITS", "4, 7, 7, FITS", "4, 8, 8, MORE", "4, 1, 2, FITS",
            "4, 7, 20, FITS", "0.6, 0, 0, FITS", "0.6, 2, 2, FITS", "0.6, 3, 3, MORE", "0, 0, 0, FITS",
            "0, 1, 1, MORE"})
    void fit_byTheTables(double mean, int atLeast, int atMost, Tally.Fit fit) {
        assertThat(new Tally(CountDistribution.poisson(mean), atLeast, atMost).fit()).isEqualTo(fit);
    }

    @Test
    void limits_byTheTables() {
        Tally tally = new Tally(CountDistribution.poisson(4), 5);

        assertThat(tally.low()).isEqualTo(2);
        assertThat(tally.high()).isEqualTo(7);
        assertThat(tally.chance()).isCloseTo(0.1563, within(5e-5));
    }

    @Test
    void fewerThanNone_isRefused() {
        CountDistribution none = CountDistribution.NONE;
        assertThatThrownBy(() -> new Tally(none, 2, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
