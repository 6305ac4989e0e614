package icequill.web.run;

import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.web.run.RunAnswer.State;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/** One piece of long work: how far it is, and what it came to. For many threads. */
final class Run {

    private final String id;
    private final RunKind kind;
    private final OptionalLong total;
    private final Work work;
    private State state = State.WAITING;
    private long done;
    private @Nullable RunResult result;
    private List<Problem> problems = List.of();

    Run(String id, RunKind kind, OptionalLong total, Work work) {
        this.id = id;
        this.kind = kind;
        this.total = total;
        this.work = work;
    }

    private synchronized boolean at(long soFar) {
        done = soFar;
        return state != State.STOPPING;
    }

    /** Does the work, to whatever end. */
    void run(ShopBook shop) {
        if (!begun()) {
            return;
        }
        try {
            Validated<? extends RunResult> came = work.done(shop, this::at);
            ended(came.found().isEmpty() ? State.FAILED : isAskedToStop() ? State.STOPPED : State.DONE,
                    came.found().orElse(null), came.problems());
        } catch (Progress.Stopped stopped) {
            ended(State.STOPPED, null, List.of());
        } catch (RuntimeException | Error fault) {
            ended(State.FAILED, null, List.of());
            throw fault;
        }
    }

    private synchronized boolean begun() {
        boolean isWaiting = state == State.WAITING;
        state = isWaiting ? State.RUNNING : State.STOPPED;
        return isWaiting;
    }

    private synchronized boolean isAskedToStop() {
        return state == State.STOPPING;
    }

    private synchronized void ended(State how, @Nullable RunResult came, List<Problem> why) {
        state = how;
        result = came;
        problems = why;
    }

    /** Asks it to stop as soon as it can. */
    synchronized void stop() {
        if (answer().goesOn()) {
            state = State.STOPPING;
        }
    }

    synchronized RunAnswer answer() {
        return new RunAnswer(id, kind, state, done,
                total.isPresent() ? Optional.of(total.getAsLong()) : Optional.empty(),
                Optional.ofNullable(result), problems);
    }
}
