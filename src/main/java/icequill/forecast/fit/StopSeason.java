package icequill.forecast.fit;

import java.math.BigDecimal;
import java.util.List;

/**
 * Whether a side stops more often in some quarters of the year than the age of its dirt explains. What is held against each other are
 * the stops of each quarter and those that the clock would have led to expect there, by Pearson's chi-square (NIST/SEMATECH e-Handbook
 * 1.3.5.15, which asks for five expected ones in each class).
 */
public sealed interface StopSeason {

    /** Stops that must be expected in each quarter, or chi-square says nothing. */
    int FEWEST_EXPECTED = 5;

    /** Chance alone leads beyond it once in a hundred times: the 99 % point of chi-square with three degrees of freedom (1.3.6.7.4). */
    double THRESHOLD = 11.345;

    /**
     * A quarter of the year.
     *
     * @param stops recorded
     * @param expected by the clock, in proportion, so that both add up to the same
     */
    record Quarter(int stops, double expected) {}

    /** Too few stops to tell. */
    record NotLookedAt() implements StopSeason {}

    /** What was found in the quarters, January to March first. */
    sealed interface LookedAt extends StopSeason {
        List<Quarter> quarters();

        double chiSquare();
    }

    /** No more than chance brings about. */
    record NoneFound(List<Quarter> quarters, double chiSquare) implements LookedAt {
        public NoneFound {
            quarters = List.copyOf(quarters);
        }
    }

    /**
     * More than chance brings about.
     *
     * @param factors how many times as fast the clock runs in each quarter as on average, to hundredths; they add up to 4
     */
    record Found(List<Quarter> quarters, double chiSquare, List<BigDecimal> factors) implements LookedAt {
        public Found {
            quarters = List.copyOf(quarters);
            factors = List.copyOf(factors);
        }
    }
}
