package icequill.outlook;

import icequill.forecast.Cause;
import icequill.forecast.inputs.SiteHistory;
import icequill.forecast.stops.MachineRisk;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.plans.EstimateLevels;
import icequill.plans.SideCare;
import icequill.plans.SiteRisks;
import icequill.problem.Problem;
import icequill.work.Outcome;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A year of a site: the calls that the guesses would have led us to expect, with the cleanings that were recorded, and the calls
 * that came.
 *
 * @param visits all that were recorded at the site, by their day
 * @param until the day after the last
 */
public record SiteYear(Site site, List<Visit> visits, SideWork work, LocalDate begins, LocalDate until) {

    /** Figures by which a machine would have stopped hundreds of times. */
    public List<Problem> problems() {
        return Stream.of(EstimateLevels.Level.values())
                .flatMap(level -> machines(level).stream())
                .flatMap(machine -> machine.problems(work.rates().place()).stream()).distinct().toList();
    }

    /** The calls by one figure of each guess. */
    public KnownSite expected(EstimateLevels.Level level) {
        return KnownSite.of(machines(level), risks().policy().shared());
    }

    /** Calls of the year but those for what we had done badly, which no machine is to blame for. */
    public List<Visit> calls() {
        return asked().filter(visit -> visit.serviceCall() != Outcome.CALLBACK).toList();
    }

    /** Calls of the year for what we had done badly. */
    public int callbacks() {
        return (int) asked().filter(visit -> visit.serviceCall() == Outcome.CALLBACK).count();
    }

    private Stream<Visit> asked() {
        return inYear().filter(visit -> visit.call().isPresent());
    }

    public boolean hasVisit() {
        return inYear().findAny().isPresent();
    }

    private Stream<Visit> inYear() {
        return visits.stream().filter(visit -> !visit.day().isBefore(begins) && visit.day().isBefore(until));
    }

    private SiteRisks risks() {
        return new SiteRisks(site, work.rates(), SiteHistory.UNKNOWN, Optional.empty(), until, begins);
    }

    private List<CareHistory> machines(EstimateLevels.Level level) {
        SiteRisks risks = risks();
        CareHistory.Span year = new CareHistory.Span(begins, until);
        List<MachineRisk> guessed = risks.machines(EstimateLevels.all(level));
        return IntStream.range(0, guessed.size()).filter(i -> year.has(site.machines().get(i)))
                .mapToObj(i -> {
                    Machine machine = site.machines().get(i);
                    return CareHistory.of(risks, machine, guessed.get(i), care(risks, machine, Cause.CONDENSER),
                            care(risks, machine, Cause.WATER), year);
                }).toList();
    }

    private SideCare care(SiteRisks risks, Machine machine, Cause side) {
        return SideCare.of(risks.rates(), risks.pace(side), machine, side, begins,
                work.cleanings(visits, machine, side).stream().map(SideCare.Cleaning::of).toList());
    }
}
