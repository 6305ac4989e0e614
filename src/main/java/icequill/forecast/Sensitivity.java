package icequill.forecast;

import java.util.Comparator;
import java.util.List;

/**
 * Which figure moves the answer most: each goes from its low to its high while all others stay.
 *
 * @param base with all figures as they are
 * @param swings the widest first; ties in the order of the doubts
 * @param <K> what names a figure
 */
public record Sensitivity<K>(PolicyComparison.Answer base, List<Swing<K>> swings) {

    /**
     * How far a figure may be off.
     *
     * @param low the question with its low
     * @param high the question with its high
     */
    public record Doubt<K>(K figure, PolicyComparison low, PolicyComparison high) {}

    /** The answers at the two ends of a doubt. */
    public record Swing<K>(K figure, PolicyComparison.Answer low, PolicyComparison.Answer high) {

        /** How far the money moves, in minor units. */
        public long width() {
            return Math.abs(high.saved() - low.saved());
        }
    }

    public Sensitivity {
        swings = List.copyOf(swings);
    }

    /** Works out the answer at both ends of each doubt. */
    public static <K> Sensitivity<K> of(PolicyComparison question, List<Doubt<K>> doubts) {
        return new Sensitivity<>(question.answer(), doubts.stream()
                .map(doubt -> new Swing<>(doubt.figure(), doubt.low().answer(), doubt.high().answer()))
                .sorted(Comparator.comparingLong((Swing<K> swing) -> swing.width()).reversed()).toList());
    }
}
