package icequill.outlook;

import icequill.forecast.Cause;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.SiteVisits;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.rates.RateSchedule;
import icequill.work.Attendance;
import icequill.work.CallSide;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.Task;
import icequill.work.Visit;
import icequill.work.VisitLine;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which side of a machine a recorded visit worked on, by the tasks and parts that were written down. */
public record SideWork(ForecastRates rates, RateSchedule schedule) {

    private static final List<Cause> SIDES = List.of(Cause.CONDENSER, Cause.WATER);

    /**
     * Whether a visit took the dirt of a side away: all was done that resets it and is poured into the machine, or all of it where
     * nothing is. Who forgot to write down that a machine was started again has cleaned it all the same.
     */
    boolean cleans(Visit visit, Machine machine, Cause side) {
        List<String> needed = needed(visit, machine, side);
        return !needed.isEmpty() && done(visit, machine).containsAll(needed);
    }

    /** The visits that did, in the order in which they are given; none before the machine was put in. */
    List<SiteVisits.Cleaned> cleanings(List<Visit> visits, Machine machine, Cause side) {
        return visits.stream().filter(visit -> machine.installed().filter(visit.day()::isBefore).isEmpty())
                .filter(visit -> cleans(visit, machine, side))
                .map(visit -> new SiteVisits.Cleaned(visit.day(), visit.call().isPresent(), visit.id(),
                        needed(visit, machine, side),
                        visit.people().stream().map(Attendance::person).distinct().toList()))
                .toList();
    }

    /** The tasks by which that is seen. */
    private List<String> needed(Visit visit, Machine machine, Cause side) {
        List<Task> resets = schedule.tasks().at(visit.day()).orElse(List.of()).stream()
                .filter(task -> resets(side).contains(task.id()) && task.suits(machine)).toList();
        List<Task> poured = resets.stream().filter(task -> !task.doses().isEmpty()).toList();
        return (poured.isEmpty() ? resets : poured).stream().map(Task::id).toList();
    }

    private static List<String> done(Visit visit, Machine machine) {
        return visit.findings().stream().filter(finding -> finding.machine().equals(machine.id()))
                .flatMap(finding -> finding.tasks().stream()).filter(task -> task.outcome().isDone())
                .map(Finding.TaskDone::task).toList();
    }

    private List<String> resets(Cause side) {
        return switch (side) {
        case RANDOM -> rates.calls().random().resets();
        case CONDENSER -> rates.calls().condenser().resets();
        case WATER -> rates.calls().water().resets();
        };
    }

    /**
     * What a call was for: the one side that was written down; where none was, the one that it cleaned, or a fault where it cleaned none
     * and put a part in. Otherwise nobody knows.
     */
    public Optional<Cause> cause(Visit call, Site site) {
        Set<Cause> said = call.findings().stream().flatMap(finding -> finding.side().stream()).map(SideWork::cause)
                .collect(Collectors.toSet());
        Set<Cause> signs = said.isEmpty() ? signs(call, site) : said;
        return signs.size() == 1 ? signs.stream().findFirst() : Optional.empty();
    }

    static Cause cause(CallSide side) {
        return switch (side) {
        case CONDENSER -> Cause.CONDENSER;
        case WATER -> Cause.WATER;
        case OTHER -> Cause.RANDOM;
        };
    }

    private Set<Cause> signs(Visit call, Site site) {
        Set<Cause> signs = EnumSet.noneOf(Cause.class);
        SIDES.stream().filter(side -> site.machines().stream().anyMatch(machine -> cleans(call, machine, side)))
                .forEach(signs::add);
        if (call.lines().stream().anyMatch(line -> isPart(line, call))) {
            signs.add(Cause.RANDOM);
        }
        return signs;
    }

    private boolean isPart(VisitLine line, Visit visit) {
        return switch (line) {
        case VisitLine.Own own -> own.isPutIn() && own.chargeClass() == ChargeClass.PARTS;
        case VisitLine.MaterialUsed used -> used.outcome().isDone()
                && schedule.materials().at(visit.day()).orElse(List.of()).stream()
                        .anyMatch(material -> material.id().equals(used.material())
                                && material.chargeClass() == ChargeClass.PARTS);
        case VisitLine.ModifierApplied applied -> false;
        };
    }
}
