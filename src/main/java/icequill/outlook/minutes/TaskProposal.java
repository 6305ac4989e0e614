package icequill.outlook.minutes;

import icequill.forecast.Decimals;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What visits say of the attended minutes of a task.
 *
 * @param now as the rates have it
 * @param seen to one decimal
 * @param low and {@code high}: between them it lies nineteen times of twenty; empty where there are too few visits
 * @param proposed whole minutes, halves up, from half to double of what it is now and from 1; the same where nothing is proposed
 * @param visits that had it
 * @param together other tasks that were never done without it, so that all of them are taken to be off alike
 */
public record TaskProposal(String task, int now, BigDecimal seen, Optional<BigDecimal> low, Optional<BigDecimal> high,
        int proposed, Why why, int visits, List<String> together) {

    private static final int MOST = 2;

    /** Why so many minutes are proposed. */
    public enum Why {
        /** Nothing can be said for sure. */
        TOO_FEW,
        /** What is planned lies within the limits. */
        FITS,
        LONGER,
        SHORTER,
        /** It is off by more than is changed at once. */
        FAR
    }

    public TaskProposal {
        together = List.copyOf(together);
    }

    /** @param now from 1 */
    static TaskProposal of(String task, int now, Times times, List<String> group) {
        int found = times.isSurelyOff() ? Decimals.of(now * times.times(), 0).intValueExact() : now;
        int proposed = Math.clamp(found, Math.max(1, Decimals.of((double) now / MOST, 0).intValueExact()), now * MOST);
        return new TaskProposal(task, now, tenths(now * times.times()),
                times.sure().map(limits -> tenths(Math.max(0, now * limits.low()))),
                times.sure().map(limits -> tenths(Math.max(0, now * limits.high()))), proposed,
                why(times, proposed, found, now), times.visits(),
                group.stream().filter(other -> !other.equals(task)).toList());
    }

    private static Why why(Times times, int proposed, int found, int now) {
        if (times.sure().isEmpty()) {
            return Why.TOO_FEW;
        }
        if (proposed != found) {
            return Why.FAR;
        }
        return proposed == now ? Why.FITS : proposed > now ? Why.LONGER : Why.SHORTER;
    }

    private static BigDecimal tenths(double minutes) {
        return Decimals.of(minutes, 1);
    }

    public boolean isChange() {
        return proposed != now;
    }
}
