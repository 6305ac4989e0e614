package icequill.office;

import icequill.agreement.PlannedVisit;
import icequill.document.PlannedWork;
import icequill.party.Machine;
import icequill.pricer.VisitPlan;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.Grade;
import icequill.work.Task;
import icequill.work.Visit;
import java.util.List;
import java.util.Optional;

/** Finds who comes on planned visits, and for how long. */
record PlannedMinutes(PlanSetting setting) {

    /**
     * Each visit with its crew: the minutes that the request gives for the visit's scope, or else the plain sum of its tasks'
     * minutes, attended and unattended, machine after machine, for one person.
     *
     * @return a problem for each unknown grade, and where several people come but nothing says for how long
     */
    Checked<List<VisitPlan>> plans(List<PlannedVisit> visits) {
        Problems problems = new Problems();
        List<Grade> grades = grades(problems);
        visits.stream().map(visit -> visit.slot().scope().id()).distinct()
                .filter(scope -> grades.size() > 1 && !work().minutes().containsKey(scope))
                .forEach(scope -> problems.add(new Problem(Code.MISSING, work().place(),
                        grades.size() + " people come, but nothing says how long the visit \"" + scope
                                + "\" takes them",
                        "minutes: {" + scope + ": ...}")));
        return problems.or(() -> visits.stream().map(visit -> plan(visit, grades)).toList());
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

    private VisitPlan plan(PlannedVisit visit, List<Grade> grades) {
        int minutes = Optional.ofNullable(work().minutes().get(visit.slot().scope().id()))
                .orElseGet(() -> sum(visit));
        return new VisitPlan(visit,
                grades.stream().map(grade -> new VisitPlan.Person(grade.id(), minutes)).toList(), List.of());
    }

    /** At least one minute, since somebody is there. */
    private int sum(PlannedVisit visit) {
        return Math.max(1, setting.site().machines().stream().flatMap(machine -> tasks(visit, machine).stream())
                .mapToInt(task -> task.attended() + task.unattended()).sum());
    }

    List<Task> tasks(PlannedVisit visit, Machine machine) {
        return visit.tasksOn(machine, setting.rates().tasks(), setting.rates().plans().filters());
    }

    /** Minutes in which the machine makes no ice: all but the tasks for which it runs. */
    int withoutIce(PlannedVisit visit, Machine machine) {
        return tasks(visit, machine).stream().filter(PlannedMinutes::stopsIce)
                .mapToInt(task -> task.attended() + task.unattended()).sum();
    }

    private static boolean stopsIce(Task task) {
        return switch (task.state()) {
        case CIRCULATING, DE_ENERGIZED -> true;
        case MAKING_ICE, ANY -> false;
        };
    }
}
