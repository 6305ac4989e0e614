package icequill.plans;

import icequill.agreement.PlannedVisit;
import icequill.document.PlanYear.MinutesFrom;
import icequill.party.Machine;
import icequill.planner.Crew;
import icequill.planner.Effort;
import icequill.planner.Timetable;
import icequill.pricer.StaffedVisit;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Grade;
import icequill.request.PlannedWork;
import icequill.visits.VisitWorkAssembly;
import icequill.work.Finding;
import icequill.work.Outcome;
import icequill.work.Task;
import icequill.work.Visit;
import icequill.work.VisitLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds who comes on planned visits, and for how long. */
record PlannedMinutes(PlanSetting setting) {

    /**
     * Each visit with its crew: the minutes that the request gives for the visit's scope, or else those of the shortest safe
     * timetable that could be found; for one person the least that there is where nothing is done at any machine.
     *
     * @return a problem for each unknown grade, where the work cannot be done safely as it is planned, and where several people come
     *         for whom there is no timetable
     */
    Validated<List<TimedVisit>> timed(List<PlannedVisit> visits) {
        Problems problems = new Problems();
        List<Grade> grades = grades(problems);
        List<Minutes> found = new ArrayList<>();
        if (problems.isEmpty()) {
            Map<Kind, Validated<Minutes>> known = new HashMap<>();
            for (PlannedVisit visit : visits) {
                Validated<Minutes> minutes = known.computeIfAbsent(
                        new Kind(visit.slot().scope().id(), visit.filtersDue()), kind -> minutes(visit, grades));
                problems.take(minutes).ifPresent(found::add);
            }
        }
        return problems.or(() -> IntStream.range(0, visits.size())
                .mapToObj(i -> timed(visits.get(i), grades, found.get(i))).toList());
    }

    /** Visits of one kind take the same time. */
    private record Kind(String scope, boolean filters) {}

    private record Minutes(int number, MinutesFrom from, Optional<Timetable> timetable) {
        /** Those of somebody, who is not paid for his breaks. */
        int of(int person) {
            return number - timetable.map(table -> table.resting(person)).orElse(0);
        }
    }

    private TimedVisit timed(PlannedVisit visit, List<Grade> grades, Minutes minutes) {
        return new TimedVisit(new StaffedVisit(visit,
                IntStream.range(0, grades.size()).mapToObj(
                        person -> new StaffedVisit.Person(grades.get(person).id(), minutes.of(person))).toList(),
                modifiers(),
                setting.scope().arrive()),
                minutes.from(), minutes.timetable());
    }

    private List<VisitLine.ModifierApplied> modifiers() {
        return setting.circumstances().stream().filter(found -> found.on(setting.site().machines()).signum() > 0)
                .map(found -> new VisitLine.ModifierApplied(found.modifier(), found.on(setting.site().machines()),
                        found.machine(), Outcome.CHARGED, found.place()))
                .toList();
    }

    private Validated<Minutes> minutes(PlannedVisit visit, List<Grade> crew) {
        String scope = visit.slot().scope().id();
        Optional<Integer> given = Optional.ofNullable(work().minutes().get(scope));
        if (given.isPresent()) {
            return Validated.valid(new Minutes(given.get(), MinutesFrom.ESTIMATE, Optional.empty()));
        }
        Validated<Optional<Minutes>> tried = crew.size() <= Crew.MOST
                ? timetable(visit, crew)
                : Validated.valid(Optional.empty());
        return tried.then(planned -> planned.map(Validated::valid).orElseGet(() -> sum(visit, crew.size())));
    }

    /** Where there is no timetable, since nothing is done or a crowd comes: a problem for several people. */
    private Validated<Minutes> sum(PlannedVisit visit, int people) {
        String scope = visit.slot().scope().id();
        if (people > 1) {
            return Validated.invalid(new Problem(Code.MISSING, work().place(),
                    people + " people come, but there is no timetable for the visit \"" + scope + "\"",
                    "minutes: {" + scope + ": ...}"));
        }
        return Validated.valid(new Minutes(sum(visit), MinutesFrom.SUM, Optional.empty()));
    }

    /** Empty where nothing is done at any machine; a problem where it cannot be done safely, or nobody who comes may do it. */
    private Validated<Optional<Minutes>> timetable(PlannedVisit visit, List<Grade> grades) {
        if (setting.site().machines().stream().allMatch(machine -> tasks(visit, machine).isEmpty())) {
            return Validated.valid(Optional.empty());
        }
        VisitWorkAssembly assembly = new VisitWorkAssembly(setting.site(), setting.rates(), findings(visit),
                visit.slot().scope().place());
        return assembly.work()
                .then(work -> setting.timetables().timetable(work, crew(grades), Effort.USUAL))
                .map(table -> Optional.of(minutes(table)));
    }

    private Crew crew(List<Grade> grades) {
        return new Crew(grades.stream().map(Grade::qualified).map(Crew.Member::new).toList(),
                VisitWorkAssembly.rest(setting.rates().labor()));
    }

    private static Minutes minutes(Timetable table) {
        return new Minutes(table.minutes(),
                table.proven() ? MinutesFrom.SHORTEST_TIMETABLE : MinutesFrom.TIMETABLE, Optional.of(table));
    }

    private List<Finding> findings(PlannedVisit visit) {
        Place place = visit.slot().scope().place();
        return setting.site().machines().stream().map(machine -> new Finding(machine.id(), Optional.empty(),
                Optional.empty(), Optional.empty(),
                tasks(visit, machine).stream()
                        .map(task -> new Finding.TaskDone(task.id(), Outcome.CHARGED, place)).toList(),
                List.of(), List.of(), place)).toList();
    }

    private PlannedWork work() {
        return setting.scope().work();
    }

    private List<Grade> grades(Problems problems) {
        List<Grade> all = setting.rates().labor().grades();
        for (Visit.Named named : work().crew()) {
            if (setting.rates().labor().grade(named.id()).isEmpty()) {
                problems.add(
                        Problem.unknownName(named.place(), "grade", named.id(), all.stream().map(Grade::id).toList()));
            }
        }
        return work().crew().isEmpty()
                ? List.of(all.getFirst())
                : work().crew().stream().flatMap(named -> setting.rates().labor().grade(named.id()).stream()).toList();
    }

    /** At least one minute, since somebody is there. */
    private int sum(PlannedVisit visit) {
        return Math.max(1, setting.site().machines().stream().flatMap(machine -> tasks(visit, machine).stream())
                .mapToInt(task -> task.attended() + task.unattended()).sum());
    }

    List<Task> tasks(PlannedVisit visit, Machine machine) {
        return visit.tasksOn(machine, setting.rates().tasks(), setting.rates().plans().filters());
    }

    /** Minutes in which the machine makes no ice: by the timetable, or else all but those of the tasks for which it runs. */
    int withoutIce(PlannedVisit visit, Machine machine, Optional<Timetable> timetable) {
        return timetable.map(table -> table.withoutIce(machine.id())).orElseGet(() -> stopped(visit, machine));
    }

    private int stopped(PlannedVisit visit, Machine machine) {
        return tasks(visit, machine).stream().filter(task -> task.stateAt(machine).stopsIce())
                .mapToInt(task -> task.attended() + task.unattended()).sum();
    }
}
