package icequill.ledger.papers;

import icequill.ledger.store.Processors;
import icequill.problem.Validated;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Future;

/**
 * Papers that one transaction issues in turn, printed before by as many threads as there are processors. Each is printed under its
 * own number, but after a seal that stands for that of the paper before it, which is not known until that one is printed.
 */
final class PrintedAhead implements AutoCloseable {

    private final Processors threads = new Processors();
    private final Map<String, Begun> begun = new HashMap<>();
    /** Whose turn it is, from 0. */
    private int work;
    private boolean isAsking = true;

    /** @param work whose paper it is, from 0 */
    private record Begun(int work, Printing printing, Numbered numbered, Future<Validated<PrintedPaper>> printed) {}

    void turnTo(int next) {
        work = next;
    }

    /** Whether works are still asked which papers they will issue. */
    boolean isAsking() {
        return isAsking;
    }

    void asked() {
        isAsking = false;
    }

    void begin(Printing printing, Numbered numbered) {
        begun.put(numbered.number(),
                new Begun(work, printing, numbered, threads.begin(() -> printing.under(numbered))));
    }

    /** How many papers of a series were begun. */
    long of(Series series) {
        return begun.keySet().stream().filter(series::has).count();
    }

    /** The paper under its number, if it was printed under it for the work whose turn it is. */
    Optional<Validated<PrintedPaper>> of(Numbered numbered) {
        return Optional.ofNullable(begun.get(numbered.number()))
                .filter(known -> known.work() == work && known.numbered().issuedAt().equals(numbered.issuedAt()))
                .map(known -> Processors.result(known.printed())
                        .then(printed -> known.printing().again(printed, known.numbered(), numbered)));
    }

    @Override
    public void close() {
        threads.close();
    }
}
