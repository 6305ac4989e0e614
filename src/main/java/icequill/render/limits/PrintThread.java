package icequill.render.limits;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A thread that prints, and counts what it does. Templates ask at every turn of a loop and every call of a macro whether their
 * thread was interrupted; those questions are counted as steps, so that a limit holds on any machine alike.
 */
public final class PrintThread extends Thread {

    private static final ThreadMXBean TIMES = ManagementFactory.getThreadMXBean();

    private final AtomicLong left = new AtomicLong(Long.MAX_VALUE);

    PrintThread(Runnable work) {
        super(work, "printing");
        setDaemon(true);
    }

    /** Counts from here on; a thread that does not print for anyone has no limit. */
    static void begin(long steps) {
        if (currentThread() instanceof PrintThread printing) {
            printing.left.set(steps);
        }
    }

    /** Whether the steps that the thread was given are used up. */
    public static boolean isSpent() {
        return currentThread() instanceof PrintThread printing && printing.left.get() < 0;
    }

    /** True also once the steps are used up. */
    @Override
    public boolean isInterrupted() {
        return left.decrementAndGet() < 0 || super.isInterrupted();
    }

    /** How long it has been at work, in nanoseconds of a processor; what others do meanwhile does not count. */
    long worked() {
        return TIMES.isThreadCpuTimeSupported() ? Math.max(0, TIMES.getThreadCpuTime(threadId())) : 0;
    }
}
