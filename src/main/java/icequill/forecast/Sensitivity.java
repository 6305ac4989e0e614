package icequill.forecast;

import java.util.Comparator;
import java.util.List;

/**
 * Which figure moves the answer most: each goes from its low to its high while all others stay.
 *
 * @param base what is saved with all figures as they are, in minor units
 * @param swings the widest first; ties in the order of the ranges
 * @param <K> what names a figure
 */
public record Sensitivity<K>(long base, List<Swing<K>> swings) {

    /**
     * How far a figure may be off.
     *
     * @param low the comparison with its low
     * @param high the comparison with its high
     */
    public record ParameterRange<K>(K figure, PolicyComparison low, PolicyComparison high) {}

    /** What is saved at the two ends of a range, in minor units. */
    public record Swing<K>(K figure, long low, long high) {

        /** How far the money moves, in minor units. */
        public long width() {
            return Math.abs(high - low);
        }
    }

    public Sensitivity {
        swings = List.copyOf(swings);
    }

    /** Works out the answer at both ends of each range. */
    public static <K> Sensitivity<K> of(PolicyComparison comparison, List<ParameterRange<K>> ranges) {
        return new Sensitivity<>(comparison.saved(), ranges.stream()
                .map(range -> new Swing<>(range.figure(), range.low().saved(), range.high().saved()))
                .sorted(Comparator.comparingLong((Swing<K> swing) -> swing.width()).reversed()).toList());
    }
}
