package icequill.forecast.inputs;

import icequill.forecast.Cause;
import icequill.problem.Check;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the shop's own visits say of a site on a day.
 *
 * @param visits done there, from 1
 * @param since the day of the first
 * @param machines of the site
 * @param calls of the twelve months before the day
 */
public record SiteVisits(int visits, LocalDate since, List<MachineCare> machines, Calls calls) {

    /**
     * The work that took dirt away, by its day.
     *
     * @param condenser none for a machine without a condenser to brush
     */
    public record MachineCare(String machine, List<Cleaned> water, List<Cleaned> condenser) {

        public MachineCare {
            water = List.copyOf(water);
            condenser = List.copyOf(condenser);
        }

        /** The last on a side; empty where none is on record. */
        public Optional<Cleaned> last(Cause side) {
            List<Cleaned> done = of(side);
            return done.isEmpty() ? Optional.empty() : Optional.of(done.getLast());
        }

        /** Those of a side. */
        public List<Cleaned> of(Cause side) {
            return side == Cause.CONDENSER ? condenser : water;
        }
    }

    /**
     * A cleaning or brushing.
     *
     * @param isCall whether the customer had called for the visit
     * @param visit by id
     * @param tasks by which it was cleaned, by id
     * @param people who were there
     */
    public record Cleaned(LocalDate day, boolean isCall, String visit, List<String> tasks, List<String> people) {
        public Cleaned {
            tasks = List.copyOf(tasks);
            people = List.copyOf(people);
        }
    }

    /**
     * Calls, but those for what the shop had done badly.
     *
     * @param isWhole whether the first visit is old enough for the book to have all of them
     * @param byCause of those whose cause was written down, or shows by what was done; none of a cause that has none
     * @param unknown of which nobody knows the cause
     */
    public record Calls(boolean isWhole, Map<Cause, Integer> byCause, int unknown) {
        public Calls {
            byCause = Map.copyOf(byCause);
        }

        public int of(Cause cause) {
            return byCause.getOrDefault(cause, 0);
        }

        public int all() {
            return unknown + byCause.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    public SiteVisits {
        Check.inRange(visits, 1, Integer.MAX_VALUE, "visits");
        machines = List.copyOf(machines);
    }

    /** Of one machine, by its id. */
    public Optional<MachineCare> of(String machine) {
        return machines.stream().filter(care -> care.machine().equals(machine)).findFirst();
    }

    /** How many calls there were in a year; empty where the book does not have a whole one. */
    public Optional<Integer> callsOfYear() {
        return calls.isWhole() ? Optional.of(calls.all()) : Optional.empty();
    }
}
