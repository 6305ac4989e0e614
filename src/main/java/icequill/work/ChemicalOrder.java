package icequill.work;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Keeps acid and chlorine apart, because together they give off chlorine gas (CDC, MMWR 40(36), 1991: rinsing once was not
 * enough). Between one and the other, whichever comes first, a machine must be flushed and the pH written down; and no acid
 * may stay in it. For one machine.
 */
public final class ChemicalOrder {

    /** Full flushes that are enough (common practice). */
    public static final int FLUSHES = 3;

    private final Problems problems = new Problems();
    private Optional<Chemistry> last = Optional.empty();
    private int flushes;
    private boolean measured;

    private ChemicalOrder() {
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
        if (!steps.isEmpty() && order.last.equals(Optional.of(Chemistry.ACID)) && order.flushes < FLUSHES) {
            order.problems.add(Code.WRONG_ORDER, steps.getLast().place(), "the acid cleaner is not flushed out",
                    FLUSHES + " full flushes after it");
        }
        return order.problems.list();
    }

    private void take(Step step) {
        if (step.chemistry().contains(Chemistry.ACID) && step.chemistry().contains(Chemistry.CHLORINE)) {
            problems.add(Code.WRONG_ORDER, step.place(),
                    "the task \"" + step.task() + "\" brings acid and chlorine together: chlorine gas",
                    "a step for each, with " + FLUSHES + " full flushes and a pH reading between them");
        }
        for (Chemistry chemistry : List.of(Chemistry.ACID, Chemistry.CHLORINE)) {
            if (step.chemistry().contains(chemistry)) {
                use(chemistry, step);
            }
        }
        flushes += step.procedure().flushes();
        // A reading counts only after the last flush that is needed.
        measured = measured || (flushes >= FLUSHES && step.procedure().readings().contains(ToRecord.PH));
    }

    private void use(Chemistry chemistry, Step step) {
        boolean other = last.filter(before -> before != chemistry).isPresent();
        if (other && step.chemistry().size() == 1 && (flushes < FLUSHES || !measured)) {
            String name = chemistry == Chemistry.ACID ? "acid follows chlorine" : "chlorine follows acid";
            String lacking = flushes < FLUSHES
                    ? "after " + flushes + " of " + FLUSHES + " full flushes"
                    : "without a pH reading";
            problems.add(Code.WRONG_ORDER, step.place(), "in the task \"" + step.task() + "\" " + name + " " + lacking,
                    FLUSHES + " full flushes and a recorded pH reading between the two");
        }
        last = Optional.of(chemistry);
        flushes = 0;
        measured = false;
    }
}
