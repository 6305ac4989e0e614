package icequill.forecast;

import icequill.problem.Check;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What calls cost, by their cause. The shares of each cause's kinds add up to 1. */
public record CallTable(Map<Cause, List<CallKind>> kinds) {

    private static final double ROUNDING = 1e-9;

    public CallTable {
        Map<Cause, List<CallKind>> all = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            List<CallKind> own = List.copyOf(Objects.requireNonNull(kinds.get(cause), cause.name()));
            double sum = own.stream().mapToDouble(CallKind::share).sum();
            Check.that(Math.abs(sum - 1) < ROUNDING, "shares of " + cause + " that add up to " + sum);
            all.put(cause, own);
        }
        kinds = Map.copyOf(all);
    }

    List<CallKind> of(Cause cause) {
        return Objects.requireNonNull(kinds.get(cause));
    }
}
