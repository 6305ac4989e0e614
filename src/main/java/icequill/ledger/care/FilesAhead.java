package icequill.ledger.care;

import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Looks through files by as many threads as there are processors; what they find comes in the order in which it was asked for. */
final class FilesAhead implements AutoCloseable {

    private static final int MOST = 64;

    private final ExecutorService threads = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    private final Deque<Future<List<Problem>>> begun = new ArrayDeque<>();
    private final Problems findings;

    FilesAhead(Problems findings) {
        this.findings = findings;
    }

    void look(Callable<List<Problem>> look) {
        if (begun.size() == MOST) {
            findings.addAll(found(begun.removeFirst()));
        }
        begun.add(threads.submit(look));
    }

    /** Waits for all that was begun. */
    void finish() {
        begun.forEach(look -> findings.addAll(found(look)));
        begun.clear();
    }

    private static List<Problem> found(Future<List<Problem>> look) {
        try {
            return look.get();
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
