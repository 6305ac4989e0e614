package icequill.planner;

import icequill.problem.Code;
import icequill.problem.Problems;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import icequill.work.Procedure;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds why a visit cannot be done as it is planned, whatever the times. Where nothing is found, a timetable exists. */
record WorkCheck(VisitWork work, Crew crew) {

    Problems problems() {
        Problems problems = new Problems();
        work.tasks().stream().filter(task -> task.people() > crew.size() && task.attended() > 0)
                .forEach(task -> problems.add(Code.OUT_OF_RANGE, task.place(),
                        at(task) + " takes " + task.people() + " people, but only " + crew.size() + " come",
                        "a crew of at least " + task.people()));
        work.tasks().stream().filter(task -> task.people() <= crew.size() && task.people() > crew.fit(task.needs())
                && task.attended() > 0).forEach(task -> qualified(task, problems));
        for (String machine : work.walks().machines()) {
            List<MachineTask> tasks = work.tasksAt(machine).stream().sorted(Comparator.comparingInt(MachineTask::order))
                    .toList();
            tasks.stream().filter(task -> task.timer().isPresent()).forEach(task -> timer(task, tasks, problems));
            together(tasks, problems);
            pump(tasks, problems);
            dust(tasks, problems);
        }
        work.neverBothOff().forEach(pair -> restart(List.of(pair.one(), pair.other()), problems));
        work.neverAllOff().forEach(set -> restart(set.stream().sorted().toList(), problems));
        work.tasks().stream().filter(task -> task.accompanied() && task.attended() > 0 && crew.size() == 1)
                .forEach(task -> problems.add(Code.OUT_OF_RANGE, task.place(),
                        "nobody may be alone on site for " + at(task) + ", but only one comes",
                        "a crew of at least 2"));
        crew.rest().ifPresent(rest -> work.tasks().stream().filter(task -> task.attended() > rest.after())
                .forEach(task -> problems.add(Code.OUT_OF_RANGE, task.place(), at(task) + " takes " + task.attended()
                        + " minutes, but after " + rest.after() + " everybody is due a break",
                        "tasks of at most " + rest.after() + " minutes")));
        return problems;
    }

    private void qualified(MachineTask task, Problems problems) {
        String needs = task.needs().stream().sorted().map(need -> need.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
        problems.add(Code.NOT_QUALIFIED, task.place(),
                at(task) + " needs " + task.people() + " qualified for " + needs + ", but of those who come "
                        + crew.fit(task.needs()) + (crew.fit(task.needs()) == 1 ? " is" : " are"),
                "people of a grade with qualified: [" + needs + "]");
    }

    private void timer(MachineTask pour, List<MachineTask> tasks, Problems problems) {
        Optional<MachineTask> flush = tasks.stream().filter(task -> task.flushes() && task.order() > pour.order())
                .findFirst();
        if (flush.isEmpty()) {
            problems.add(Code.MISSING, pour.place(), at(pour) + " is not flushed out afterwards",
                    "a task that flushes, later in the order");
            return;
        }
        int most = pour.timer().map(Procedure.Timer::most).orElseThrow();
        int between = tasks.stream()
                .filter(task -> task.order() > pour.order() && task.order() < flush.get().order())
                .mapToInt(task -> task.attended() + task.pause()).sum();
        int soonest = pour.attended() + pour.pause() + between;
        if (soonest > most) {
            problems.add(Code.OUT_OF_RANGE, pour.place(),
                    "nobody can begin \"" + flush.get().name() + "\" in time: from the start of " + at(pour) + " it is "
                            + soonest + " minutes at the soonest (" + pour.attended() + " to pour, " + pour.pause()
                            + " to circulate" + (between == 0 ? "" : ", " + between + " of tasks between") + ")",
                    "at most " + most + " minutes, so that the cleaner does not eat the plating");
        }
    }

    /** Two chemicals are never in a machine at the same time, even where each could be flushed out in time. */
    private static void together(List<MachineTask> tasks, Problems problems) {
        List<MachineTask> pours = tasks.stream().filter(task -> task.timer().isPresent()).toList();
        for (int i = 1; i < pours.size(); i++) {
            MachineTask before = pours.get(i - 1);
            MachineTask pour = pours.get(i);
            if (tasks.stream().noneMatch(task -> task.flushes() && task.order() > before.order()
                    && task.order() < pour.order())) {
                problems.add(Code.WRONG_ORDER, pour.place(),
                        at(pour) + " would come while the chemical of \"" + before.name()
                                + "\" is still in the machine",
                        "a task that flushes between the two, or one task that pours");
            }
        }
    }

    /** Nothing that needs the plug pulled stands between the first pouring or flushing and the last circulating task. */
    private static void pump(List<MachineTask> tasks, Problems problems) {
        List<MachineTask> wet = tasks.stream().filter(task -> task.timer().isPresent() || task.flushes()).toList();
        List<MachineTask> circulating = tasks.stream().filter(task -> task.state() == MachineState.CIRCULATING)
                .toList();
        if (wet.isEmpty() || circulating.isEmpty()) {
            return;
        }
        tasks.stream()
                .filter(task -> task.state() == MachineState.DE_ENERGIZED && task.order() >= wet.getFirst().order()
                        && task.order() <= circulating.getLast().order())
                .forEach(task -> problems.add(Code.WRONG_ORDER, task.place(),
                        at(task) + " would come while the pump runs, between \"" + wet.getFirst().name() + "\" and \""
                                + circulating.getLast().name() + "\"",
                        "de-energized work before pouring or after the sanitizer's wait"));
    }

    private static void dust(List<MachineTask> tasks, Problems problems) {
        Optional<MachineTask> clean = tasks.stream().filter(task -> task.dust() == DustLevel.SPOILED).findFirst();
        clean.ifPresent(spoiled -> tasks.stream()
                .filter(task -> task.dust() == DustLevel.RAISES && task.order() >= spoiled.order())
                .forEach(task -> problems.add(Code.WRONG_ORDER, task.place(),
                        at(task) + " raises dust but does not come before \"" + spoiled.name() + "\"",
                        "dusty work earlier in the order than what dust spoils")));
    }

    /** Of machines that are never off together all but one are started again, or one is left on. */
    private void restart(List<String> machines, Problems problems) {
        List<MachineTask> stops = machines.stream().flatMap(machine -> lastStop(machine).stream()).toList();
        if (stops.size() == machines.size() && stops.stream().noneMatch(this::restarted)) {
            problems.add(Code.MISSING, stops.getFirst().place(), machines.stream()
                    .map(machine -> "\"" + machine + "\"").collect(Collectors.joining(" and "))
                    + " must not be off together, but neither is started again",
                    "a task in the state making-ice after the others, at one of them at least");
        }
    }

    private Optional<MachineTask> lastStop(String machine) {
        return work.tasksAt(machine).stream().filter(task -> task.state().stopsIce())
                .max(Comparator.comparingInt(MachineTask::order));
    }

    private boolean restarted(MachineTask stop) {
        return work.tasksAt(stop.machine()).stream()
                .anyMatch(task -> task.state() == MachineState.MAKING_ICE && task.order() > stop.order());
    }

    private static String at(MachineTask task) {
        return "\"" + task.name() + "\" at \"" + task.machine() + "\"";
    }
}
