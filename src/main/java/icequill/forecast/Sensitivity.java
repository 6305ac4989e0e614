package icequill.forecast;

import java.util.Comparator;
import java.util.List;

/**
 * Which figure moves the answer most: each goes from its low to its high while all others stay.
 *
 * @param base what is saved with all figures as they are, in minor units
 * @param swings the widest first; ties in the order of the doubts
 * @param <K> what names a figure
 */
public record Sensitivity<K>(long base, List<Swing<K>> swings) {

    /**
     * How far a figure may be off.
     *
     * @param low the question with its low
     * @param high the question with its high
     */
    public record Doubt<K>(K figure, PolicyComparison low, PolicyComparison high) {}

    /** What is saved at the two ends of a doubt, in minor units. */
    public record Swing<K>(K figure, long low, long high) {

        /** How far the money moves, in minor units. */
        public long width() {
            return Math.abs(high - low);
        }
    }

    public Sensitivity {
        swings = List.copyOf(swings);
    }

    /** Works out the answer at both ends of each doubt. */
    public static <K> Sensitivity<K> of(PolicyComparison question, List<Doubt<K>> doubts) {
        return new Sensitivity<>(question.saved(), doubts.stream()
                .map(doubt -> new Swing<>(doubt.figure(), doubt.low().saved(), doubt.high().saved()))
                .sorted(Comparator.comparingLong((Swing<K> swing) -> swing.width()).reversed()).toList());
    }
}
