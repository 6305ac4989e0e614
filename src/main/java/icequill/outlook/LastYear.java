package icequill.outlook;

import icequill.forecast.CleaningSchedule;
import icequill.forecast.CountDistribution;
import icequill.forecast.MachineRisk;
import icequill.forecast.SharedFactor;
import icequill.plans.OpenMonths;
import icequill.plans.SiteRisks;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The calls that the guesses would have led us to expect in the twelve months before a forecast, with the cleanings that are known.
 * What calls cost does not matter here.
 */
record LastYear(SiteRisks risks) {

    private static final int YEAR = 12;

    /** How the calls of all machines would have been distributed by some guesses. */
    CountDistribution calls(SiteRisks.Guessed guessed) {
        return CountDistribution.mixed(scenarios().map(SharedFactor.Scenario::weight).toList(),
                callsInScenarios(guessed));
    }

    /** The same in each scenario of how bad the site is. */
    List<CountDistribution> callsInScenarios(SiteRisks.Guessed guessed) {
        return scenarios().map(scenario -> calls(scenario.of(risks.machines(guessed)))).toList();
    }

    Stream<SharedFactor.Scenario> scenarios() {
        return risks.policy().shared().scenarios().stream();
    }

    private CountDistribution calls(List<MachineRisk> now) {
        List<SiteRisks.Since> since = risks.since();
        return IntStream.range(0, now.size()).mapToObj(i -> calls(now.get(i), since.get(i)))
                .reduce(CountDistribution.NONE, CountDistribution::plus);
    }

    private CountDistribution calls(MachineRisk now, SiteRisks.Since since) {
        MachineRisk then = new MachineRisk(now.randomAYear(), now.condenser(), age(since.brushed()), now.water(),
                age(since.cleaned()), risks.season().from(begins()));
        return new CareHistory(then, care(since.cleaned()), care(since.brushed()), risks.policy().inScenario(), YEAR)
                .forecast().calls();
    }

    private LocalDate begins() {
        return risks.day().minusYears(1);
    }

    /** Months run since a cleaning before that year; of those that nobody knows, as many as are taken, less that year. */
    private double age(Optional<LocalDate> cleaned) {
        return cleaned.filter(date -> !date.isAfter(begins()))
                .map(date -> risks.season().between(date, begins()))
                .orElseGet(() -> cleaned.isPresent()
                        ? risks.months(Optional.empty())
                        : Math.max(0, risks.months(Optional.empty()) - risks.season().aYear()));
    }

    /** The one cleaning that is known to fall into that year. */
    private CleaningSchedule care(Optional<LocalDate> cleaned) {
        return cleaned.filter(date -> date.isAfter(begins()))
                .map(date -> OpenMonths.position(begins(), date)).filter(month -> month < YEAR)
                .map(month -> new CleaningSchedule(List.of(month), YEAR, 1)).orElse(CleaningSchedule.NEVER);
    }
}
