package icequill.forecast.inputs;

import java.math.BigDecimal;
import java.util.List;

/**
 * The kinds of calls of one cause.
 *
 * @param resets tasks, by id, that set the dirt back and are done on the call; empty for faults that are no dirt's
 */
public record ExpectedCalls(List<ExpectedCall> kinds, List<String> resets) {

    public ExpectedCalls {
        kinds = List.copyOf(kinds);
        resets = List.copyOf(resets);
    }

    /** The same where so many times as many come in a labor band; as they are where none or all come in it. */
    ExpectedCalls withShareOf(String band, BigDecimal factor) {
        double before = kinds.stream().filter(kind -> kind.band().equals(band))
                .mapToDouble(kind -> kind.share().doubleValue()).sum();
        double after = Math.min(1, before * factor.doubleValue());
        return before == 0 || before >= 1
                ? this
                : new ExpectedCalls(kinds.stream().map(kind -> kind
                        .withShare(BigDecimal.valueOf(kind.share().doubleValue()
                                * (kind.band().equals(band) ? after / before : (1 - after) / (1 - before)))))
                        .toList(), resets);
    }
}
