package icequill.planner;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What of a visit is done already when a timetable is made, by the tasks' positions. */
final class Started {

    private final Network network;
    private final Optional<Progress> progress;
    private final int[] start;
    private final int[][] people;
    private final int[] done;

    Started(Network network, Optional<Progress> progress) {
        this.network = network;
        this.progress = progress;
        start = new int[network.size()];
        people = new int[network.size()][0];
        Arrays.fill(start, -1);
        progress.ifPresent(known -> known.done().forEach(this::note));
        done = network.all().filter(this::isDone).boxed()
                .sorted(Comparator.<Integer>comparingInt(task -> start[task])
                        .thenComparingInt(task -> network.duration[task]).thenComparing(task -> task))
                .mapToInt(Integer::intValue).toArray();
    }

    private void note(Progress.Done known) {
        network.all().filter(task -> isOf(network.tasks.get(task), known)).findFirst().ifPresent(task -> {
            start[task] = Math.max(0, known.over() - network.duration[task]);
            people[task] = known.people().stream().mapToInt(Integer::intValue).toArray();
        });
    }

    private static boolean isOf(MachineTask task, Progress.Done known) {
        return task.machine().equals(known.machine()) && task.order() == known.order()
                && task.name().equals(known.task());
    }

    boolean isDone(int task) {
        return start[task] >= 0;
    }

    int start(int task) {
        return start[task];
    }

    int[] people(int task) {
        return people[task];
    }

    /** The tasks that are done, in the order in which they were begun. */
    int[] done() {
        return done;
    }

    /** Before this nothing begins at a machine. */
    int earliest(int task) {
        return progress.map(Progress::now).orElse(network.head[task]);
    }

    /** The pourings that are not flushed out yet, that whose time is up first before the others. */
    List<Integer> running() {
        return Arrays.stream(done).filter(task -> network.tasks.get(task).timer().isPresent())
                .filter(task -> network.flushAfter(task) >= 0 && !isDone(network.flushAfter(task))).boxed()
                .sorted(Comparator.comparingInt(task -> start[task]
                        + network.tasks.get(task).timer().orElseThrow().most()))
                .toList();
    }

    /** The tasks from a pouring to its flush that are not done. */
    IntStream toFlush(int pour) {
        return IntStream.rangeClosed(pour, network.flushAfter(pour)).filter(task -> !isDone(task));
    }

    /** Until when a task may begin that lies between a pouring and its flush, so that the flush is in time. */
    int latest(int pour, int task) {
        return start[pour] + network.tasks.get(pour).timer().orElseThrow().most()
                - network.lag[task][network.flushAfter(pour)];
    }

    /** No timetable of the rest is shorter: by what is still to come at each machine, and by the minutes that are left for all. */
    int least(Crew crew) {
        int now = progress.map(Progress::now).orElse(0);
        int least = 0;
        int left = 0;
        for (int task = 0; task < network.size(); task++) {
            if (isDone(task)) {
                least = Math.max(least, start[task] + network.whole(task));
                continue;
            }
            left += network.duration[task] * network.people[task];
            int begin = now;
            for (int other : done) {
                begin = network.lag[other][task] >= 0
                        ? Math.max(begin, start[other] + network.lag[other][task])
                        : begin;
            }
            least = Math.max(least, begin + network.tail[task]);
        }
        return left == 0 ? least : Math.max(least, now + Math.ceilDiv(left, crew.size()));
    }
}
