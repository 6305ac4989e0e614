package icequill.outlook;

import icequill.forecast.Cause;
import icequill.forecast.CleaningSchedule;
import icequill.forecast.CountDistribution;
import icequill.forecast.Forecast;
import icequill.forecast.MachineRisk;
import icequill.forecast.inputs.SiteHistory;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.plans.OpenMonths;
import icequill.plans.SiteRisks;
import icequill.problem.Problem;
import icequill.work.Outcome;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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

    private static final double HUNDRED = 100;

    /** A cleaning of one side; a call's leaves no dirt. */
    private record Cleaning(LocalDate day, boolean isCall) {}

    /** Figures by which a machine would have stopped hundreds of times. */
    public List<Problem> problems() {
        return Stream.of(SiteRisks.Level.values())
                .flatMap(level -> machines(level).stream())
                .flatMap(machine -> machine.problems(work.rates().place()).stream()).distinct().toList();
    }

    /** The calls of each cause by one figure of each guess. */
    public Map<Cause, CountDistribution> expected(SiteRisks.Level level) {
        Map<Cause, CountDistribution> sums = new EnumMap<>(Cause.class);
        Arrays.stream(Cause.values()).forEach(cause -> sums.put(cause, CountDistribution.NONE));
        for (CareHistory machine : machines(level)) {
            Forecast forecast = machine.forecast();
            sums.replaceAll((cause, counts) -> counts.plus(forecast.calls(cause)));
        }
        return sums;
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

    private List<CareHistory> machines(SiteRisks.Level level) {
        SiteRisks risks = new SiteRisks(site, work.rates(), SiteHistory.UNKNOWN, Optional.empty(), until, begins);
        List<MachineRisk> usual = risks.machines(SiteRisks.Guessed.all(level));
        return IntStream.range(0, usual.size())
                .filter(i -> begun(site.machines().get(i)).isBefore(until))
                .mapToObj(i -> known(site.machines().get(i), usual.get(i), risks)).toList();
    }

    /** The day from which a machine could stop in that year. */
    private LocalDate begun(Machine machine) {
        return machine.installed().filter(begins::isBefore).orElse(begins);
    }

    private CareHistory known(Machine machine, MachineRisk usual, SiteRisks risks) {
        LocalDate from = begun(machine);
        MachineRisk then = new MachineRisk(usual.randomAYear(), usual.condenser(),
                age(machine, Cause.CONDENSER, from, risks), usual.water(), age(machine, Cause.WATER, from, risks),
                risks.season().from(from));
        return new CareHistory(then, care(machine, Cause.WATER, from), care(machine, Cause.CONDENSER, from),
                risks.policy(), OpenMonths.position(from, until));
    }

    /** Months that dirt had gathered by a day. Before the first cleaning on record, as many as are taken where nobody knows. */
    private double age(Machine machine, Cause side, LocalDate day, SiteRisks risks) {
        List<Cleaning> before = cleanings(machine, side).filter(cleaning -> cleaning.day().isBefore(day)).toList();
        LocalDate since = before.isEmpty() ? day : before.getFirst().day();
        double age = unknown(machine, since, risks);
        for (Cleaning cleaning : before) {
            age = (cleaning.isCall() ? 0 : 1 - restores(side)) * (age + risks.season().between(since, cleaning.day()));
            since = cleaning.day();
        }
        return age + risks.season().between(since, day);
    }

    /** A machine that is newer is no dirtier than its age. */
    private static double unknown(Machine machine, LocalDate day, SiteRisks risks) {
        double taken = risks.months(Optional.empty());
        return machine.installed()
                .map(date -> date.isAfter(day) ? 0 : Math.min(taken, risks.season().between(date, day)))
                .orElse(taken);
    }

    /** The cleanings of the year that nobody called for; what calls clean is in the forecast. */
    private CleaningSchedule care(Machine machine, Cause side, LocalDate from) {
        List<Double> at = cleanings(machine, side).filter(cleaning -> !cleaning.isCall())
                .map(Cleaning::day).filter(day -> !day.isBefore(from) && day.isBefore(until))
                .map(day -> OpenMonths.position(from, day)).distinct().toList();
        return at.isEmpty()
                ? CleaningSchedule.NEVER
                : new CleaningSchedule(at, Double.POSITIVE_INFINITY, restores(side));
    }

    private Stream<Cleaning> cleanings(Machine machine, Cause side) {
        return visits.stream()
                .filter(visit -> machine.installed().filter(visit.day()::isBefore).isEmpty())
                .filter(visit -> work.cleans(visit, machine, side))
                .map(visit -> new Cleaning(visit.day(), visit.call().isPresent()));
    }

    private double restores(Cause side) {
        return (side == Cause.CONDENSER ? work.rates().brushingRestores() : work.rates().cleaningRestores()).value()
                .doubleValue() / HUNDRED;
    }
}
