package icequill.forecast;

import icequill.explain.ConstantKey;
import icequill.problem.Check;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
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

    /**
     * Checks what was entered.
     *
     * @param place of the table
     * @return all problems: a cause without kinds, shares that are not above 0 or do not add up to 1, charges below 0
     */
    public static Checked<CallTable> of(Map<Cause, List<EnteredKind>> entered, Place place) {
        Problems problems = new Problems();
        for (Cause cause : Cause.values()) {
            List<EnteredKind> kinds = entered.getOrDefault(cause, List.of());
            kinds.forEach(kind -> check(kind, problems));
            double sum = kinds.stream().mapToDouble(EnteredKind::share).sum();
            if (!(Math.abs(sum - 1) < ROUNDING)) {
                problems.add(new Problem(kinds.isEmpty() ? Code.MISSING : Code.NOT_ALLOWED,
                        kinds.isEmpty() ? place : kinds.getFirst().place(),
                        kinds.isEmpty()
                                ? "no kinds of calls for the cause " + name(cause)
                                : "the shares of the cause " + name(cause) + " add up to " + sum,
                        "shares that add up to 1"));
            }
        }
        return problems.or(() -> {
            Map<Cause, List<CallKind>> kinds = new EnumMap<>(Cause.class);
            entered.forEach((cause, own) -> kinds.put(cause,
                    own.stream().map(kind -> new CallKind(kind.share(), kind.charge())).toList()));
            return new CallTable(kinds);
        });
    }

    private static void check(EnteredKind kind, Problems problems) {
        if (!(kind.share() > 0 && kind.share() <= 1)) {
            problems.add(new Problem(Code.OUT_OF_RANGE, kind.place(), "a share of " + kind.share(),
                    "above 0, up to 1"));
        }
        if (kind.charge() < 0) {
            problems.add(new Problem(Code.OUT_OF_RANGE, kind.place(), "a charge below 0", "0 or more"));
        }
    }

    private static String name(Cause cause) {
        return ConstantKey.of(cause);
    }

    List<CallKind> of(Cause cause) {
        return Objects.requireNonNull(kinds.get(cause));
    }
}
