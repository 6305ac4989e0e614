package icequill.outlook;

import icequill.forecast.Cause;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.SharedFactor;
import icequill.plans.EstimateLevels;
import icequill.plans.SideCare;
import icequill.plans.SiteRisks;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The calls that the guesses would have led us to expect in the twelve months before a forecast, with the cleanings that are known.
 * What calls cost does not matter here.
 */
record LastYear(SiteRisks risks) {

    /** How the calls of all machines would have been distributed by some guesses. */
    CountDistribution calls(EstimateLevels guessed) {
        return site(guessed).calls();
    }

    /** The same in each scenario of how bad the site is. */
    List<CountDistribution> callsInScenarios(EstimateLevels guessed) {
        return site(guessed).callsInScenarios();
    }

    Stream<SharedFactor.Scenario> scenarios() {
        return risks.policy().shared().scenarios().stream();
    }

    private KnownSite site(EstimateLevels guessed) {
        List<MachineRisk> now = risks.machines(guessed);
        List<SiteRisks.Since> since = risks.since();
        CareHistory.Span year = new CareHistory.Span(risks.day().minusYears(1), risks.day());
        return KnownSite.of(IntStream.range(0, now.size()).filter(i -> year.has(since.get(i).machine()))
                .mapToObj(i -> CareHistory.of(risks, since.get(i).machine(), now.get(i),
                        care(since.get(i), Cause.CONDENSER), care(since.get(i), Cause.WATER), year))
                .toList(), risks.policy().shared());
    }

    /** Dirt of which nobody knows since when it gathers is taken to have been a year younger. */
    private SideCare care(SiteRisks.Since since, Cause side) {
        SideCare care = risks.care(since, side);
        return care.cleanings().isEmpty() ? care.taking(Math.max(0, care.unknown() - risks.pace(side).aYear())) : care;
    }
}
