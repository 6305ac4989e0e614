package icequill.ledger.papers;

import icequill.problem.Validated;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Papers that one transaction issues in turn, printed before by as many threads as there are processors. Each is printed under its
 * own number, but after a seal that stands for that of the paper before it, which is not known until that one is printed.
 */
final class PrintedAhead implements AutoCloseable {

    private final ExecutorService threads = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    private final Map<String, Begun> begun = new HashMap<>();

    /** @param work whose paper it is, from 0 */
    private record Begun(int work, Printing printing, Numbered numbered, Future<Validated<PrintedPaper>> printed) {}

    void begin(int work, Printing printing, Numbered numbered) {
        begun.put(numbered.number(),
                new Begun(work, printing, numbered, threads.submit(() -> printing.under(numbered))));
    }

    /** How many papers of a series were begun. */
    long of(Series series) {
        return begun.keySet().stream().filter(series::has).count();
    }

    /** The paper under its number, if it was printed for that work under it. */
    Optional<Validated<PrintedPaper>> of(int work, Numbered numbered) {
        return Optional.ofNullable(begun.get(numbered.number()))
                .filter(known -> known.work() == work && known.numbered().issuedAt().equals(numbered.issuedAt()))
                .map(known -> waited(known)
                        .then(printed -> known.printing().again(printed, known.numbered(), numbered)));
    }

    private static Validated<PrintedPaper> waited(Begun known) {
        try {
            return known.printed().get();
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
