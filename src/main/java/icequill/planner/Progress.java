package icequill.planner;

import icequill.problem.Check;
import java.util.List;

/**
 * How far a visit has come.
 *
 * @param now the minute of the visit from which on the rest is planned
 * @param done with every task that comes before one of them at its machine
 */
public record Progress(int now, List<Done> done) {

    /**
     * A task that is over, or will be by a minute that is known.
     *
     * @param order its place among those of its machine
     * @param over when it was over, its wait not included; it is taken to have begun its attended minutes before
     * @param people who did it, by number
     */
    public record Done(String machine, int order, String task, int over, List<Integer> people) {
        public Done {
            people = List.copyOf(people);
        }
    }

    public Progress {
        done = List.copyOf(done);
        Check.that(now >= 0, "before the visit: " + now);
    }
}
