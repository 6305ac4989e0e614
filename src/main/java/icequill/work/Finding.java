package icequill.work;

import icequill.problem.Place;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What was found and done at one machine.
 *
 * @param side for which the customer called; empty where nobody wrote it down
 * @param tasks done, by id
 * @param settled what earlier visits recommended and is done now, or not needed any more
 * @param refrigerant what was done with it; empty where nothing was
 * @param confirmed that readings which contradict labels or limits are right, and what was done about it
 * @param chemicals whose use was written down, in order; others are known by the doses of the tasks
 */
public record Finding(String machine, Optional<String> complaint, Optional<String> cause, Optional<String> correction,
        Optional<CallSide> side, List<TaskDone> tasks, List<Reading> readings, List<Recommendation> recommendations,
        List<Settled> settled, List<ChemicalUse> chemicals, Optional<RefrigerantWork> refrigerant,
        Optional<String> confirmed, Place place) {

    public Finding {
        tasks = List.copyOf(tasks);
        readings = List.copyOf(readings);
        recommendations = List.copyOf(recommendations);
        settled = List.copyOf(settled);
        chemicals = List.copyOf(chemicals);
    }

    /** One without notes on chemicals. */
    public Finding(String machine, Optional<String> complaint, Optional<String> cause, Optional<String> correction,
            List<TaskDone> tasks, List<Reading> readings, List<Recommendation> recommendations, Place place) {
        this(machine, complaint, cause, correction, Optional.empty(), tasks, readings, recommendations, List.of(),
                List.of(), Optional.empty(), Optional.empty(), place);
    }

    /** A task that was carried out; its doses are charged with the outcome. */
    public record TaskDone(String task, Outcome outcome, Place place) {}

    /** A measurement, before the work and after it; either may be missing. */
    public record Reading(String what, String unit, Optional<String> before, Optional<String> after) {}

    /**
     * A cleaner or sanitizer as it was used, which is for the record and not for the price.
     *
     * @param material by id, as the rates name it
     * @param dose in the material's unit; empty where it is that of the task
     * @param water it went into, in the unit of its label; empty where it is that of the task
     * @param minutes it was left to work
     * @param ph measured after flushing
     * @param ppm on the test strip
     */
    public record ChemicalUse(String material, Optional<BigDecimal> dose, Optional<BigDecimal> water,
            Optional<BigDecimal> minutes, Optional<BigDecimal> ph, Optional<BigDecimal> ppm, Place place) {}

    /** A repair that was recommended, and what the customer said. */
    public record Recommendation(String text, boolean accepted) {}

    /**
     * A recommendation of an earlier visit about which nothing is left to do.
     *
     * @param visit by id
     * @param recommended as that visit has it
     */
    public record Settled(String visit, String recommended) {}
}
