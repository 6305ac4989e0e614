package icequill.ledger.store;

import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * How long to wait for a book that somebody else is writing in, and how waiting is done.
 *
 * @param longest before it is given up
 * @param nanoseconds a clock that only runs forward
 * @param pause a short one, between two tries
 */
public record LockWait(Duration longest, LongSupplier nanoseconds, Runnable pause) {

    /** Ten seconds. */
    public static final LockWait USUAL = of(Duration.ofSeconds(10));

    /** By the machine's clock. */
    public static LockWait of(Duration longest) {
        return new LockWait(longest, System::nanoTime, LockWait::aMoment);
    }

    private static void aMoment() {
        try {
            TimeUnit.MILLISECONDS.sleep(2);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new UncheckedIOException(new InterruptedIOException("stopped while it waited for the book"));
        }
    }
}
