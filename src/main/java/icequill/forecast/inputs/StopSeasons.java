package icequill.forecast.inputs;

import icequill.forecast.Cause;
import icequill.forecast.stops.Pace;
import icequill.problem.Check;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How many times as fast the clock of a cause runs in each quarter of the year as on average.
 *
 * @param factors January to March first; each above 0, the four of a cause add up to 4. Causes without a known season are left out
 */
public record StopSeasons(Map<Cause, List<BigDecimal>> factors) {

    /** No cause has a season that is known. */
    public static final StopSeasons NONE = new StopSeasons(Map.of());

    public StopSeasons {
        Check.that(factors.values().stream().allMatch(StopSeasons::areSound), "quarters that count " + factors);
        factors = factors.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, entry -> List.copyOf(entry.getValue())));
    }

    /** Whether these are four factors above 0 by which a year counts no more and no less than it did. */
    public static boolean areSound(List<BigDecimal> quarters) {
        return quarters.size() == Pace.QUARTERS && quarters.stream().allMatch(factor -> factor.signum() > 0)
                && quarters.stream().reduce(BigDecimal.ZERO, BigDecimal::add)
                        .compareTo(BigDecimal.valueOf(Pace.QUARTERS)) == 0;
    }

    /** Empty where no season is known. */
    public Optional<List<BigDecimal>> of(Cause cause) {
        return Optional.ofNullable(factors.get(cause));
    }

    /** How its months count. */
    public Pace pace(Cause cause) {
        return of(cause).map(known -> Pace.ofQuarters(known.stream().map(BigDecimal::doubleValue).toList()))
                .orElse(Pace.EVEN);
    }
}
