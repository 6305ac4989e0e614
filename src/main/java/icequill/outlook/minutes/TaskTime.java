package icequill.outlook.minutes;

import icequill.party.Machine;
import icequill.party.Site;
import icequill.planner.Crew;
import icequill.planner.Effort;
import icequill.planner.kept.KeptTimetables;
import icequill.problem.Check;
import icequill.rates.Rates;
import icequill.visits.VisitWorkAssembly;
import icequill.work.Attendance;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.Qualification;
import icequill.work.Task;
import icequill.work.Visit;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The time that people spent on the tasks of a visit, and what would be planned for them today.
 *
 * @param rates of the day whose minutes are judged
 */
public record TaskTime(Visit visit, Site site, Rates rates, KeptTimetables timetables) {

    /** Whether all time was spent on tasks: nobody had called, so that nothing had to be looked for, and nothing was repaired. */
    public boolean isKnown() {
        return visit.call().isEmpty() && worked() > 0 && !findings().isEmpty() && visit.people().stream()
                .flatMap(person -> person.spells().stream()).noneMatch(spell -> spell.on() == ChargeClass.REPAIR);
    }

    /** Empty where so much cannot be planned: a task that is no more, too many people, work that nobody may do so. */
    public Optional<VisitTime> time() {
        Check.that(isKnown(), "not by tasks alone: " + visit.id());
        List<String> people = people();
        Map<String, Integer> attended = attended();
        if (people.size() > Crew.MOST || attended.values().stream().noneMatch(minutes -> minutes > 0)) {
            return Optional.empty();
        }
        Crew crew = new Crew(Collections.nCopies(people.size(),
                new Crew.Member(Set.of(Qualification.values()))), VisitWorkAssembly.rest(rates.labor()));
        return new VisitWorkAssembly(site, rates, findings(), visit.place()).work()
                .then(work -> timetables.timetable(work, crew, Effort.USUAL))
                .map(table -> new VisitTime(visit.id(), visit.day(), people,
                        findings().stream().flatMap(finding -> site.machine(finding.machine()).stream())
                                .map(Machine::model).toList(),
                        worked(), Math.max(1, table.minutes() * people.size()), attended))
                .found();
    }

    private List<String> people() {
        return visit.people().stream().filter(person -> atWork(person) > 0).map(Attendance::person).distinct()
                .toList();
    }

    private int worked() {
        return Math.toIntExact(visit.people().stream().mapToLong(TaskTime::atWork).sum());
    }

    /** Minutes. */
    private static long atWork(Attendance person) {
        return person.spells().stream().filter(spell -> spell.on() != ChargeClass.TRAVEL)
                .mapToLong(spell -> Duration.between(spell.from(), spell.until()).toMinutes()).sum();
    }

    /** What was done at the machines that are still there. */
    private List<Finding> findings() {
        return visit.findings().stream().filter(finding -> site.machine(finding.machine()).isPresent())
                .map(finding -> new Finding(finding.machine(), Optional.empty(), Optional.empty(), Optional.empty(),
                        finding.tasks().stream().filter(this::isKnown).toList(), List.of(), List.of(),
                        finding.place()))
                .filter(finding -> !finding.tasks().isEmpty()).toList();
    }

    private boolean isKnown(Finding.TaskDone done) {
        return done.outcome().isDone() && rates.task(done.task()).isPresent();
    }

    private Map<String, Integer> attended() {
        return findings().stream().flatMap(finding -> finding.tasks().stream())
                .map(done -> rates.task(done.task()).orElseThrow())
                .collect(Collectors.toMap(Task::id, task -> task.attended() * task.people(), Integer::sum));
    }
}
