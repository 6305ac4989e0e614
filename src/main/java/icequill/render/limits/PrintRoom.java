package icequill.render.limits;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Lets printing be done by threads of its own. One that has worked too long is given up: whoever asked goes on with a problem, and
 * lets go of what he holds. Threads that are done print again, since each keeps the fonts it has read.
 *
 * @param steps that templates may take for one paper: turns of loops and calls of macros
 * @param work of a processor for one paper, whatever else the machine does meanwhile
 */
public record PrintRoom(long steps, Duration work) {

    /** The longest of our own papers take a hundredth of it. */
    public static final PrintRoom USUAL = new PrintRoom(5_000_000, Duration.ofSeconds(60));

    private static final ExecutorService THREADS = Executors.newCachedThreadPool(PrintThread::new);
    private static final long LOOK_MILLISECONDS = 50;
    private static final String ADVICE = "mend your templates, or move them out of templates/ to use ours again";

    /** Does it, or says which limit was in the way. */
    public <T> Validated<T> print(Supplier<Validated<T>> printing) {
        AtomicReference<@Nullable PrintThread> at = new AtomicReference<>();
        AtomicLong before = new AtomicLong();
        Future<Validated<T>> paper = THREADS.submit(() -> {
            if (Thread.currentThread() instanceof PrintThread thread) {
                before.set(thread.worked());
                at.set(thread);
            }
            PrintThread.begin(steps);
            return printing.get();
        });
        try {
            while (true) {
                try {
                    return paper.get(LOOK_MILLISECONDS, TimeUnit.MILLISECONDS);
                } catch (TimeoutException goesOn) {
                    PrintThread thread = at.get();
                    if (thread != null && thread.worked() - before.get() > work.toNanos()) {
                        paper.cancel(true);
                        return limit("printing the paper takes more than " + work.toSeconds()
                                + " seconds of a processor's work");
                    }
                }
            }
        } catch (ExecutionException failed) {
            return thrown(failed.getCause());
        } catch (InterruptedException stopped) {
            paper.cancel(true);
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while a paper was printed", stopped);
        }
    }

    public static <T> Validated<T> limit(String message) {
        return Validated.invalid(new Problem(Code.TOO_LARGE, Place.ofFile("templates"), message, ADVICE));
    }

    private static <T> Validated<T> thrown(@Nullable Throwable cause) {
        return switch (cause) {
        case StackOverflowError deep ->
            limit("what is printed is nested without end: it takes more depth than there is");
        case OutOfMemoryError large -> limit("printing the paper takes more memory than there is");
        case RuntimeException fault -> throw fault;
        case Error fault -> throw fault;
        case null, default -> throw new IllegalStateException(cause);
        };
    }
}
