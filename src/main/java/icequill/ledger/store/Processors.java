package icequill.ledger.store;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** As many threads as there are processors; what they had not begun when this is closed is never done. */
public final class Processors implements AutoCloseable {

    private final ExecutorService threads = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());

    public <T> Future<T> begin(Callable<T> work) {
        return threads.submit(work);
    }

    /**
     * Waits for what was begun.
     *
     * @throws IllegalStateException whose cause it failed by; an error as it is
     */
    public static <T> T result(Future<T> begun) {
        try {
            return begun.get();
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
