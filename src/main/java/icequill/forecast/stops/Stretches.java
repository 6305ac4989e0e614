package icequill.forecast.stops;

import java.util.ArrayList;
import java.util.List;

/**
 * A horizon of one side in months that the machine runs, parted by cleanings.
 *
 * @param lengths to the first cleaning, from each to the next, and from the last to the end; each from 0, at least one
 * @param leaves the part of the dirt's age that a cleaning leaves, from 0 and below 1
 */
public record Stretches(List<Double> lengths, double leaves) {

    /** Below it a length is what rounding left. */
    private static final double NOTHING = 1e-9;

    public Stretches {
        lengths = List.copyOf(lengths);
    }

    public static Stretches of(CleaningSchedule care, Season season, double months) {
        List<Double> lengths = new ArrayList<>();
        double before = 0;
        for (double month : care.until(months)) {
            before += add(season.run(month) - before, lengths);
        }
        add(season.run(months) - before, lengths);
        return new Stretches(lengths, 1 - care.restores());
    }

    private static double add(double length, List<Double> lengths) {
        double known = length < NOTHING ? 0 : length;
        lengths.add(known);
        return known;
    }

    /** The month at which each begins. */
    double[] begins() {
        double[] begins = new double[lengths.size()];
        for (int i = 1; i < begins.length; i++) {
            begins[i] = begins[i - 1] + lengths.get(i - 1);
        }
        return begins;
    }

    double months() {
        return lengths.stream().mapToDouble(Double::doubleValue).sum();
    }

    double longest() {
        return lengths.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }
}
