package icequill.mail;

import icequill.problem.Check;
import java.time.Duration;

/**
 * How long a mail server is waited for: for the connection, for each answer, for it to take what is written. Each from 50 milliseconds to 10
 * minutes.
 */
public record Timeouts(Duration connect, Duration read, Duration write) {

    private static final Duration LEAST = Duration.ofMillis(50);
    private static final Duration MOST = Duration.ofMinutes(10);

    /** RFC 5321, section 4.5.3.2: 5 minutes for most answers, 3 for a piece of the data. */
    public static final Timeouts USUAL = new Timeouts(Duration.ofSeconds(30), Duration.ofMinutes(5),
            Duration.ofMinutes(3));

    public Timeouts {
        Check.inRange(connect, LEAST, MOST, "connect");
        Check.inRange(read, LEAST, MOST, "read");
        Check.inRange(write, LEAST, MOST, "write");
    }
}
