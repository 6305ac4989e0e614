package icequill.web.run;

import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.web.run.RunAnswer.State;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** One piece of long work: how far it is, and what it came to. For many threads. */
final class Run {

    private final String id;
    private final RunKind kind;
    private final OptionalLong total;
    private @Nullable Work work;
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
    void run(Supplier<ShopBook> shop) {
        Work begun = begun();
        if (begun == null) {
            return;
        }
        try {
            Validated<? extends RunResult> came = begun.done(shop.get(), this::at);
            ended(came.found().isEmpty() ? State.FAILED : isAskedToStop() ? State.STOPPED : State.DONE,
                    came.found().orElse(null), came.problems());
        } catch (Progress.Stopped stopped) {
            ended(State.STOPPED, null, List.of());
        } catch (RuntimeException | Error fault) {
            ended(State.FAILED, null, List.of());
            throw fault;
        }
    }

    /** The work, which is let go with all that it holds; nothing where it was stopped before. */
    private synchronized @Nullable Work begun() {
        Work begun = state == State.WAITING ? work : null;
        work = null;
        state = begun == null ? State.STOPPED : State.RUNNING;
        return begun;
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
