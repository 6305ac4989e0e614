package icequill.outlook;

import icequill.forecast.Tally;
import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.inputs.SiteVisits;
import icequill.forecast.stops.CountDistribution;
import icequill.plans.EstimateLevels;
import icequill.request.CallHistory;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How far the guesses may be off. Beforehand the careful guesses are taken to be right in one case of four, the usual ones in two
 * and the gloomy ones in one; the calls that a site had in the last twelve months then weigh them by the chance of just so many
 * (Bayes' rule), and with them how bad the site is among sites like it.
 */
public record EstimateWeights(SiteForecast forecast) {

    private static final List<EstimateLevels> GUESSES = List.of(EstimateLevels.CAREFUL, EstimateLevels.USUAL,
            EstimateLevels.GLOOMY);
    private static final List<Double> BEFOREHAND = List.of(0.25, 0.5, 0.25);

    /**
     * Last year's calls beside the usual guess.
     *
     * @param had calls
     * @param expected by the guess
     */
    public record LastYearsCalls(int had, double expected, Tally.Fit fit) {}

    /**
     * How likely a set of guesses is.
     *
     * @param weight of the set
     * @param scenarios of how bad the site is, how likely each is if the guesses are right
     */
    public record Likely(double weight, List<Double> scenarios) {}

    /** Empty where nobody says how many calls there were. */
    public Optional<LastYearsCalls> record() {
        return had().map(calls -> {
            CountDistribution usual = lastYear().calls(EstimateLevels.USUAL);
            return new LastYearsCalls(calls, usual.mean(), new Tally(usual, calls).fit());
        });
    }

    /** As somebody counted them; otherwise as the shop's own visits have them. */
    private Optional<Integer> had() {
        return told().or(() -> forecast.hand().history().book().flatMap(SiteVisits::callsOfYear));
    }

    /** Empty where nobody counted. */
    Optional<Integer> told() {
        return forecast.hand().request().calls().flatMap(CallHistory::lastYear);
    }

    /** The careful, the usual and the gloomy guesses; as likely as beforehand where all make the record impossible. */
    public List<Likely> weights() {
        List<List<Double>> joint = had().map(this::withRecord)
                .filter(all -> all.stream().mapToDouble(EstimateWeights::sum).sum() > 0).orElseGet(this::beforehand);
        double all = joint.stream().mapToDouble(EstimateWeights::sum).sum();
        return joint.stream().map(guess -> {
            double sum = sum(guess);
            return new Likely(sum / all,
                    guess.stream().map(part -> sum > 0 ? part / sum : 1.0 / guess.size()).toList());
        }).toList();
    }

    /** By guess and scenario. */
    private List<List<Double>> beforehand() {
        return BEFOREHAND.stream().map(weight -> lastYear().scenarios().map(scenario -> weight * scenario.weight())
                .toList()).toList();
    }

    private List<List<Double>> withRecord(int had) {
        List<List<Double>> before = beforehand();
        return IntStream.range(0, GUESSES.size()).mapToObj(i -> {
            List<CountDistribution> calls = lastYear().callsInScenarios(GUESSES.get(i));
            return IntStream.range(0, calls.size()).mapToObj(j -> before.get(i).get(j) * calls.get(j).chance(had))
                    .toList();
        }).toList();
    }

    private LastYear lastYear() {
        return new LastYear(forecast.risks());
    }

    private static double sum(List<Double> parts) {
        return parts.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** What a way costs in all over some years when the guesses are in doubt. */
    MixedDistribution total(CareOption way, int years, List<Likely> weights) {
        return new MixedDistribution(IntStream.range(0, GUESSES.size()).boxed().flatMap(i -> {
            Likely likely = weights.get(i);
            return forecast.forecast(way, forecast.risks().machines(GUESSES.get(i)), years).total(likely.scenarios())
                    .laws().stream()
                    .map(law -> new MixedDistribution.Weighted(likely.weight() * law.weight(), law.law()));
        }).toList());
    }
}
