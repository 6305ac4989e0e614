package icequill.life.mail;

import java.time.Duration;
import java.time.Instant;

/**
 * When a mail that was put off is tried again: after half an hour, then after twice as long each time, at most eight hours, for five
 * days (RFC 5321, 4.5.4.1: thirty minutes or more between two tries, four or five days or more before giving up).
 */
final class Patience {

    static final Duration IN_ALL = Duration.ofDays(5);
    /** An answer is waited for five minutes, and there are some eight: after that nobody is sending any more. */
    static final Duration OF_ONE_TRY = Duration.ofHours(1);

    private static final Duration FIRST = Duration.ofMinutes(30);
    private static final Duration LONGEST = Duration.ofHours(8);
    private static final int DOUBLINGS = 4;

    private Patience() {
    }

    /** @param tries so far, from 1 */
    static Instant next(Instant now, int tries) {
        Duration wait = FIRST.multipliedBy(1L << Math.min(tries - 1, DOUBLINGS));
        return now.plus(wait.compareTo(LONGEST) > 0 ? LONGEST : wait);
    }
}
