package icequill.office;

import icequill.document.CallHistory;
import icequill.forecast.Counts;
import icequill.forecast.MixedLaw;
import icequill.office.SiteRisks.Guessed;
import icequill.office.SiteRisks.Level;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How far the guesses may be off. Beforehand the careful guesses are taken to be right in one case of four, the usual ones in two
 * and the gloomy ones in one; the calls that a site had in the last twelve months then weigh them by the chance of just so many
 * (Bayes' rule).
 */
record GuessDoubt(SiteForecast forecast) {

    private static final List<Guessed> GUESSES = List.of(all(Level.LOW), Guessed.USUAL, all(Level.HIGH));
    private static final List<Double> BEFOREHAND = List.of(0.25, 0.5, 0.25);
    /** A number of calls so far out comes in one year of ten. */
    private static final double SELDOM = 0.1;

    /** How last year's calls fit the usual guess. */
    enum Fit {
        FEWER, FITS, MORE
    }

    /**
     * Last year's calls beside the usual guess.
     *
     * @param had calls
     * @param expected by the guess
     */
    record LastYearsCalls(int had, double expected, Fit fit) {}

    private static Guessed all(Level level) {
        return new Guessed(level, level, level);
    }

    /** Empty where nobody says how many calls there were. */
    Optional<LastYearsCalls> record() {
        return had().map(calls -> {
            Counts usual = new LastYear(forecast.risks()).calls(Guessed.USUAL);
            double fewer = 1 - usual.chanceOfMoreThan(calls);
            double more = usual.chanceOfMoreThan(calls - 1);
            return new LastYearsCalls(calls, usual.mean(),
                    fewer < SELDOM ? Fit.FEWER : more < SELDOM ? Fit.MORE : Fit.FITS);
        });
    }

    private Optional<Integer> had() {
        return forecast.hand().request().calls().flatMap(CallHistory::lastYear);
    }

    /** The weights of the careful, the usual and the gloomy guesses; those from beforehand where all make the record impossible. */
    List<Double> weights() {
        Optional<Integer> had = had();
        if (had.isEmpty()) {
            return BEFOREHAND;
        }
        List<Double> likely = IntStream.range(0, GUESSES.size()).mapToObj(i -> BEFOREHAND.get(i)
                * new LastYear(forecast.risks()).calls(GUESSES.get(i)).chance(had.get())).toList();
        double sum = likely.stream().mapToDouble(Double::doubleValue).sum();
        return sum > 0 ? likely.stream().map(part -> part / sum).toList() : BEFOREHAND;
    }

    /** What a way costs in all over some years when the guesses are in doubt. */
    MixedLaw total(Way way, int years, List<Double> weights) {
        return new MixedLaw(IntStream.range(0, GUESSES.size()).mapToObj(i -> new MixedLaw.Weighted(weights.get(i),
                forecast.forecast(way, forecast.risks().machines(GUESSES.get(i)), years).total())).toList());
    }
}
