package icequill.office.mail;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

/** Holds mails back, so that a server is not handed more in a minute than it takes from one sender. */
final class Pace {

    private final long between;
    private long next;

    private Pace(long between, long next) {
        this.between = between;
        this.next = next;
    }

    /** @param perMinute from 1 */
    static Pace of(int perMinute) {
        return new Pace(Duration.ofMinutes(1).toNanos() / perMinute, System.nanoTime());
    }

    /** Waits until the next may go. */
    void await() {
        long wait = next - System.nanoTime();
        while (wait > 0 && !Thread.currentThread().isInterrupted()) {
            LockSupport.parkNanos(wait);
            wait = next - System.nanoTime();
        }
        next = System.nanoTime() + between;
    }
}
