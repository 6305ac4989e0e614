package icequill.forecast;

import java.util.Optional;

/**
 * The cleaning interval that is cheapest on cleanings and calls alone, beside what hygiene allows. Amounts are minor units a year.
 *
 * @param months empty where no interval is cheaper than waiting for calls
 * @param aYear what the cheapest costs
 * @param neverAYear what it costs to wait for calls; empty where they would heap up without end
 * @param cap months that hygiene allows at most; money never lengthens it
 * @param aYearAtCap what cleaning as seldom as hygiene allows costs
 */
public record BestInterval(Optional<Double> months, long aYear, Optional<Long> neverAYear, int cap, long aYearAtCap) {

    /** Whether hygiene asks for more cleanings than money does. */
    public boolean isCapped() {
        return months.map(cheapest -> cheapest > cap).orElse(true);
    }

    /** What hygiene costs more a year than the cheapest; 0 where it asks for nothing more. */
    public long hygiene() {
        return isCapped() ? aYearAtCap - aYear : 0;
    }
}
