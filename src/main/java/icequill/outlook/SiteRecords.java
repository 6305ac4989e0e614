package icequill.outlook;

import icequill.forecast.Cause;
import icequill.forecast.fit.DatedRun.Days;
import icequill.forecast.fit.Side;
import icequill.forecast.inputs.RecordedRun;
import icequill.forecast.inputs.RecordedRun.End;
import icequill.forecast.inputs.SiteVisits;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.plans.SiteRisks;
import icequill.problem.Place;
import icequill.work.Finding;
import icequill.work.Outcome;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the visits that were done at a site teach of its machines.
 *
 * @param visits that stand, by their day; those after the day are left out, and what was sold without a visit
 * @param day up to which it is known whether a machine stopped
 */
public record SiteRecords(Site site, List<Visit> visits, SideWork work, LocalDate day) {

    public SiteRecords {
        visits = visits.stream().filter(visit -> visit.sale().isEmpty() && !visit.day().isAfter(day))
                .sorted(Comparator.comparing(Visit::began)).toList();
    }

    /** Empty where there was no visit. */
    public Optional<SiteVisits> known() {
        return visits.stream().findFirst().map(first -> new SiteVisits(visits.size(), first.day(),
                site.machines().stream().map(machine -> new SiteVisits.MachineCare(machine.id(),
                        work.cleanings(visits, machine, Cause.WATER), SiteRisks.isBrushed(machine)
                                ? work.cleanings(visits, machine, Cause.CONDENSER)
                                : List.of()))
                        .toList(),
                calls(day.minusYears(1))));
    }

    private SiteVisits.Calls calls(LocalDate from) {
        Map<Cause, Integer> byCause = new EnumMap<>(Cause.class);
        int unknown = 0;
        for (Visit call : calls().filter(visit -> !visit.day().isBefore(from) && visit.day().isBefore(day)).toList()) {
            Optional<Cause> cause = work.cause(call, site);
            cause.ifPresent(known -> byCause.merge(known, 1, Integer::sum));
            unknown += cause.isEmpty() ? 1 : 0;
        }
        return new SiteVisits.Calls(!visits.getFirst().day().isAfter(from), byCause, unknown);
    }

    /** Visits that the customer called for, but those for what the shop had done badly. */
    public Stream<Visit> calls() {
        return visits.stream()
                .filter(visit -> visit.call().isPresent() && visit.serviceCall() != Outcome.CALLBACK);
    }

    /** Those of which nobody knows the cause, or at which of several machines. */
    public int callsUnknown() {
        return (int) calls().filter(call -> work.cause(call, site)
                .filter(cause -> cause == Cause.RANDOM || stopped(call, cause).isPresent()).isEmpty()).count();
    }

    /** The runs of all sides that dirt settles on; of each the last one goes on. */
    public List<RecordedRun> runs() {
        return visits.isEmpty()
                ? List.of()
                : site.machines().stream().flatMap(machine -> Stream.of(Side.values())
                        .filter(side -> side == Side.WATER || SiteRisks.isBrushed(machine))
                        .flatMap(side -> runs(machine, side).stream())).toList();
    }

    /**
     * A run ends with every stop and every cleaning; two on one day are one. Nothing is learned of the run that the first visit ended,
     * since nobody would have written down a stop before it.
     */
    private List<RecordedRun> runs(Machine machine, Side side) {
        List<RecordedRun> runs = new ArrayList<>();
        Optional<LocalDate> from = machine.installed();
        for (Visit visit : visits) {
            Optional<End> end = end(visit, machine, side);
            if (end.isPresent() && from.filter(begun -> !visit.day().isAfter(begun)).isEmpty()) {
                if (visit.day().isAfter(visits.getFirst().day())) {
                    runs.add(run(machine, side, from, visit.day(), end.get(), visit.place()));
                }
                from = Optional.of(visit.day());
            }
        }
        if (from.filter(day::isAfter).isPresent() && day.isAfter(visits.getFirst().day())) {
            runs.add(run(machine, side, from, day, End.RUNNING, Place.NOWHERE));
        }
        return runs;
    }

    /** What a visit did to a run; empty where it went on. */
    private Optional<End> end(Visit visit, Machine machine, Side side) {
        Cause cause = RecordedRuns.cause(side);
        boolean cleans = work.cleans(visit, machine, cause);
        boolean isStop = visit.call().isPresent() && visit.serviceCall() != Outcome.CALLBACK
                && work.cause(visit, site).equals(Optional.of(cause))
                && stopped(visit, cause).equals(Optional.of(machine.id()));
        if (isStop) {
            return Optional.of(cleans ? End.STOPPED : End.RESTARTED);
        }
        return cleans ? Optional.of(End.CLEANED) : Optional.empty();
    }

    /** The machine that a call for a side was about: the one of which that is written down, or was cleaned there, or was complained of. */
    private Optional<String> stopped(Visit call, Cause side) {
        return Stream.<Stream<String>>of(
                call.findings().stream().filter(finding -> finding.side().map(SideWork::cause)
                        .filter(side::equals).isPresent()).map(Finding::machine),
                site.machines().stream().filter(machine -> work.cleans(call, machine, side)).map(Machine::id),
                call.findings().stream().filter(finding -> finding.complaint().isPresent()).map(Finding::machine),
                call.findings().stream().map(Finding::machine))
                .map(machines -> machines.distinct().toList()).filter(machines -> machines.size() == 1)
                .map(List::getFirst).findFirst();
    }

    private RecordedRun run(Machine machine, Side side, Optional<LocalDate> from, LocalDate until, End end,
            Place place) {
        LocalDate first = visits.getFirst().day();
        return new RecordedRun(site.id() + "/" + machine.id(), site.kind(), work.rates().factors().worse(site), side,
                from.map(begun -> new Days(begun, begun)), new Days(until, until),
                from.filter(first::isAfter).map(begun -> first), end, place);
    }
}
