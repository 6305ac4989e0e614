package icequill.answer.forecast;

import icequill.forecast.Tally;
import java.math.BigDecimal;

/**
 * Calls of a year, held against what was to be expected.
 *
 * @param what the site, the cause, or all
 * @param expected calls by each of the three guesses
 * @param low and {@code high}: between them lie eight years of ten by the usual guess
 * @param calls that are surely meant
 * @param callsAtMost the same with those that may be meant or not
 * @param chances that so many come, by each guess
 * @param closestGuess by which what came was likeliest: careful, usual or gloomy
 */
public record CallsHeld(String what, Guesses expected, int low, int high, int calls, int callsAtMost, Tally.Fit fit,
        Guesses chances, String closestGuess) {

    /** By the three guesses. */
    public record Guesses(BigDecimal careful, BigDecimal usual, BigDecimal gloomy) {}
}
