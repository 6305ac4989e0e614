package icequill.work;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Keeps chlorine apart from what makes a poisonous gas of it (CDC, MMWR 40(36), 1991: rinsing once was not enough). Between one
 * and the other, whichever comes first, a machine must be flushed and the pH written down; and no acid may stay in it. For one
 * machine.
 */
public final class ChemicalOrder {

    /** Full flushes that are enough (common practice). */
    public static final int FLUSHES = 3;

    private final Problems problems = new Problems();
    private final Map<Chemistry, Since> inside = new EnumMap<>(Chemistry.class);

    private ChemicalOrder() {
    }

    /** What was done since a chemical went in; a reading counts only after the last flush that is needed. */
    private record Since(int flushes, boolean measured) {

        static final Since NOTHING = new Since(0, false);

        Since then(Procedure procedure) {
            int all = flushes + procedure.flushes();
            return new Since(all,
                    measured || (all >= FLUSHES && procedure.readings().contains(Reading.PH)));
        }

        boolean isClean() {
            return flushes >= FLUSHES && measured;
        }

        String lacking() {
            return flushes < FLUSHES ? "after " + flushes + " of " + FLUSHES + " full flushes" : "without a pH reading";
        }
    }

    /**
     * One task of a machine.
     *
     * @param chemistry of all that is used in it
     * @param place where it was asked for
     */
    public record Step(String task, Set<Chemistry> chemistry, Procedure procedure, Place place) {
        public Step {
            chemistry = Set.copyOf(chemistry);
        }
    }

    /** What is wrong with the tasks of one machine, in the order in which they are done. */
    public static List<Problem> problems(List<Step> steps) {
        ChemicalOrder order = new ChemicalOrder();
        steps.forEach(order::take);
        Since acid = order.inside.getOrDefault(Chemistry.ACID, new Since(FLUSHES, true));
        if (acid.flushes() < FLUSHES) {
            order.problems.add(Code.WRONG_ORDER, steps.getLast().place(), "the acid cleaner is not flushed out",
                    FLUSHES + " full flushes after it");
        }
        return order.problems.list();
    }

    private void take(Step step) {
        List<Chemistry> used = step.chemistry().stream().sorted().toList();
        used.stream().filter(chemistry -> chemistry != Chemistry.CHLORINE)
                .filter(chemistry -> chemistry.poisonousWith().stream().anyMatch(used::contains))
                .forEach(chemistry -> problems.add(Code.WRONG_ORDER, step.place(),
                        "the task \"" + step.task() + "\" brings " + chemistry.word()
                                + " and chlorine together: poisonous gas",
                        "a step for each, with " + FLUSHES + " full flushes and a pH reading between them"));
        used.forEach(chemistry -> after(chemistry, step));
        // What was told of once is not told of again.
        used.forEach(chemistry -> inside.keySet().removeAll(chemistry.poisonousWith()));
        used.forEach(chemistry -> inside.put(chemistry, Since.NOTHING));
        inside.replaceAll((chemistry, since) -> since.then(step.procedure()));
    }

    private void after(Chemistry chemistry, Step step) {
        chemistry.poisonousWith().stream().sorted().filter(other -> !step.chemistry().contains(other))
                .forEach(other -> Optional.ofNullable(inside.get(other)).filter(since -> !since.isClean())
                        .ifPresent(since -> problems.add(Code.WRONG_ORDER, step.place(),
                                "in the task \"" + step.task() + "\" " + chemistry.word() + " follows "
                                        + other.word() + " " + since.lacking(),
                                FLUSHES + " full flushes and a recorded pH reading between the two")));
    }
}
