package icequill.ledger.care;

import icequill.ledger.store.Processors;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;

/** Looks through files by as many threads as there are processors; what they find comes in the order in which it was asked for. */
final class FilesAhead implements AutoCloseable {

    private static final int MOST = 64;

    private final Processors threads = new Processors();
    private final Deque<Future<List<Problem>>> begun = new ArrayDeque<>();
    private final Problems findings;

    FilesAhead(Problems findings) {
        this.findings = findings;
    }

    void look(Callable<List<Problem>> look) {
        if (begun.size() == MOST) {
            findings.addAll(Processors.result(begun.removeFirst()));
        }
        begun.add(threads.begin(look));
    }

    /** Waits for all that was begun. */
    void finish() {
        begun.forEach(look -> findings.addAll(Processors.result(look)));
        begun.clear();
    }

    @Override
    public void close() {
        threads.close();
    }
}
