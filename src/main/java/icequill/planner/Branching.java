package icequill.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The branching rule of a beam search: with which task, done by whom, a partial schedule may go on. */
final class Branching {

    private final StateLayout layout;
    private final Network network;
    private final Precedence precedence;
    private final boolean oneByOne;
    private final int[] identical;

    Branching(StateLayout layout, Objective objective) {
        this.layout = layout;
        this.network = layout.network();
        this.precedence = layout.precedence();
        this.oneByOne = objective == Objective.ONE_BY_ONE;
        this.identical = IdenticalMachines.of(network);
    }

    /** The tasks that may be placed next. */
    int[] tasks(PartialSchedule schedule) {
        return IntStream.of(precedence.eligible(schedule.done))
                .filter(task -> precedence.isReady(task, schedule.done) && !isIdenticalToUntouched(task, schedule)
                        && !isNotNow(task, schedule))
                .toArray();
    }

    /** Of machines that are alike in everything and untouched yet, the first is taken first. */
    private boolean isIdenticalToUntouched(int task, PartialSchedule schedule) {
        int earlier = identical[network.machine[task]];
        return earlier >= 0 && isUntouched(network.machine[task], schedule) && isUntouched(earlier, schedule);
    }

    private boolean isUntouched(int machine, PartialSchedule schedule) {
        return precedence.isUntouched(machine, schedule.done);
    }

    /** Where machines are done one by one: whether another is open, or comes before it. */
    private boolean isNotNow(int task, PartialSchedule schedule) {
        if (!oneByOne) {
            return false;
        }
        int machine = network.machine[task];
        return isUntouched(machine, schedule) && precedence.oneByOne().stream()
                .takeWhile(other -> other != machine)
                .anyMatch(other -> !precedence.isOver(other, schedule.done));
    }

    /** The sets of people who may be given a task. */
    List<int[]> people(PartialSchedule schedule, int task) {
        List<int[]> choices = new ArrayList<>();
        choose(schedule, task, 0, new int[0], choices);
        return choices;
    }

    /** Of people in the same situation the first ones. */
    private void choose(PartialSchedule schedule, int task, int from, int[] chosen, List<int[]> choices) {
        if (chosen.length == network.people[task]) {
            choices.add(chosen);
            return;
        }
        for (int person = from; person < layout.crew(); person++) {
            if (layout.isFit(person, task) && isFirstOfItsKind(schedule, person, from)) {
                int[] more = Arrays.copyOf(chosen, chosen.length + 1);
                more[chosen.length] = person;
                choose(schedule, task, person + 1, more, choices);
            }
        }
    }

    private static boolean isFirstOfItsKind(PartialSchedule schedule, int person, int from) {
        for (int other = from; other < person; other++) {
            if (schedule.isAlike(other, person)) {
                return false;
            }
        }
        return true;
    }
}
