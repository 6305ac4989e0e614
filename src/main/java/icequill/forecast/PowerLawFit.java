package icequill.forecast;

import icequill.problem.Check;
import java.util.List;
import java.util.Optional;

/**
 * The clock of machines on which a call leaves the dirt where it is, so that a stretch between two cleanings may hold several stops: a
 * power law, fitted as in the NIST/SEMATECH e-Handbook 8.4.5.2, also to stretches of different lengths.
 */
public final class PowerLawFit {

    private PowerLawFit() {
    }

    /**
     * A stretch between two cleanings.
     *
     * @param stops months since the first cleaning, each above 0 and at most the length
     * @param months its length, above 0
     */
    public record Stretch(List<Double> stops, double months) {
        public Stretch {
            stops = List.copyOf(stops);
            double end = months;
            Check.that(months > 0 && stops.stream().allMatch(stop -> stop > 0 && stop <= end),
                    "stops at " + stops + " in " + months + " months");
        }
    }

    /** The clock; empty below {@link Fit#FEWEST_STOPS} stops, or where all came at the very end. The shape is freed from bias. */
    public static Optional<DirtClock> of(List<Stretch> stretches) {
        List<Double> stops = stretches.stream().flatMap(stretch -> stretch.stops().stream()).toList();
        if (stops.size() < Fit.FEWEST_STOPS) {
            return Optional.empty();
        }
        ShapeSearch search = new ShapeSearch(stretches.stream().map(Stretch::months).toList(), stops);
        return search.shape().map(likeliest -> likeliest * (stops.size() - 1) / stops.size())
                .map(shape -> new DirtClock(shape, search.scale(shape)));
    }
}
