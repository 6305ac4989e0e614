package icequill.planner;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * When each person leaves: when he must, or later, where he is at a task until then, or is the company without which another may not be.
 */
final class Departures {

    private final Network network;
    private final Crew crew;
    private final int[] start;
    private final int[][] people;

    /**
     * Those of a timetable.
     *
     * @param start of each task, by position
     * @param people at each task, by number
     */
    Departures(Network network, Crew crew, int[] start, int[][] people) {
        this.network = network;
        this.crew = crew;
        this.start = start;
        this.people = people;
    }

    /** By person, the minute; {@link Crew#TO_THE_END} for one who need not leave. */
    int[] minutes() {
        int[] leaves = crew.members().stream().mapToInt(Crew.Member::until).toArray();
        network.all().forEach(task -> {
            for (int person : people[task]) {
                leaves[person] = Math.max(leaves[person], over(task));
            }
        });
        // Whoever keeps the last one company was there for those before.
        network.all().filter(task -> network.tasks.get(task).accompanied() && people[task].length == 1).boxed()
                .sorted(Comparator.<Integer>comparingInt(task -> -over(task)))
                .forEach(task -> accompany(people[task][0], start[task], over(task), leaves));
        return leaves;
    }

    private void accompany(int person, int begin, int over, int[] leaves) {
        IntStream.range(0, leaves.length)
                .filter(other -> other != person && crew.members().get(other).from() <= begin).boxed()
                .max(Comparator.<Integer>comparingInt(other -> leaves[other]).thenComparing(Comparator.reverseOrder()))
                .ifPresent(other -> leaves[other] = Math.max(leaves[other], over));
    }

    private int over(int task) {
        return start[task] + network.duration[task];
    }

    /** Minutes of all people together for which somebody stays longer than he may. */
    int overstayed() {
        return overstays().stream().mapToInt(Timetable.Overstay::minutes).sum();
    }

    List<Timetable.Overstay> overstays() {
        int[] leaves = minutes();
        return IntStream.range(0, leaves.length).filter(person -> leaves[person] > until(person))
                .mapToObj(person -> new Timetable.Overstay(person, leaves[person] - until(person))).toList();
    }

    private int until(int person) {
        return crew.members().get(person).until();
    }
}
