package icequill.planner;

import java.util.Arrays;

/** How much people can do until when. */
final class Capacity {

    private final int[] free;
    private final int[] until;

    /**
     * Of some people.
     *
     * @param free by person, when he can begin
     * @param until by person, when he has left
     */
    Capacity(int[] free, int[] until) {
        this.free = free;
        this.until = until;
    }

    /** The least minute until which so many minutes can be worked by all together; the largest integer when never. */
    int least(int minutes) {
        int least = Math.ceilDiv(minutes + Arrays.stream(free).sum(), free.length);
        if (Arrays.stream(free).allMatch(each -> each <= least)
                && Arrays.stream(until).allMatch(each -> each >= least)) {
            return least;
        }
        int low = 0;
        int high = minutes + Arrays.stream(free).max().orElse(0);
        if (by(high) < minutes) {
            return Integer.MAX_VALUE;
        }
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (by(middle) >= minutes) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private long by(int minute) {
        long minutes = 0;
        for (int person = 0; person < free.length; person++) {
            minutes += Math.max(0, Math.min(minute, until[person]) - free[person]);
        }
        return minutes;
    }
}
