package icequill.forecast;

import icequill.problem.Check;
import java.util.Comparator;
import java.util.List;

/**
 * Which figure moves the answer most: each goes from its low to its high while all others stay.
 *
 * @param base with all figures as they are
 * @param swings the widest first; ties in the order of the assumptions
 */
public record Sensitivity(Question.Answer base, List<Swing> swings) {

    /**
     * How far a figure may be off.
     *
     * @param low a factor of it, above 0
     * @param high a factor of it, from the low
     */
    public record Doubt(Assumption assumption, double low, double high) {
        public Doubt {
            Check.that(low > 0 && high >= low && Double.isFinite(high), assumption + " from " + low + " to " + high);
        }
    }

    /** The answers at the two ends of a doubt. */
    public record Swing(Doubt doubt, Question.Answer low, Question.Answer high) {

        /** How far the money moves, in minor units. */
        public long width() {
            return Math.abs(high.saved() - low.saved());
        }

        /** Whether the choice that is expected to be cheaper depends on this figure. */
        public boolean turns() {
            return (low.saved() < 0) != (high.saved() < 0);
        }
    }

    public Sensitivity {
        swings = List.copyOf(swings);
    }

    /** Works out the answer at both ends of each doubt. */
    public static Sensitivity of(Question question, List<Doubt> doubts) {
        return new Sensitivity(question.answer(), doubts.stream().map(doubt -> new Swing(doubt,
                doubt.assumption().times(doubt.low(), question).answer(),
                doubt.assumption().times(doubt.high(), question).answer()))
                .sorted(Comparator.comparingLong(Swing::width).reversed()
                        .thenComparing(swing -> swing.doubt().assumption()))
                .toList());
    }
}
