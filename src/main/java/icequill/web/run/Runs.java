package icequill.web.run;

import icequill.shop.StandingShop;
import icequill.web.door.Chance;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** All long work of an office, done one after another while pages are answered. For many threads. */
public final class Runs implements AutoCloseable {

    private static final int KEPT = 50;
    private static final int PATIENCE_SECONDS = 30;

    private final StandingShop shop;
    private final Consumer<Throwable> faults;
    private final ExecutorService worker = Executors
            .newSingleThreadExecutor(work -> Thread.ofPlatform().name("run").daemon().unstarted(work));
    private final Map<String, Run> known = new LinkedHashMap<>();

    /** @param faults is told what went wrong in the program */
    public Runs(StandingShop shop, Consumer<Throwable> faults) {
        this.shop = shop;
        this.faults = faults;
    }

    /**
     * Begins work as soon as all that came before is done.
     *
     * @param total of how many pieces it is, where that is known
     * @return where its page is
     */
    synchronized String begin(RunKind kind, OptionalLong total, Work work) {
        Run begun = new Run(Chance.word(), kind, total, work);
        if (known.size() >= KEPT) {
            known.values().stream().map(Run::answer).filter(run -> !run.goesOn()).findFirst()
                    .ifPresent(ended -> known.remove(ended.id()));
        }
        known.put(begun.answer().id(), begun);
        worker.execute(() -> {
            try {
                begun.run(shop::now);
            } catch (RuntimeException | Error fault) {
                faults.accept(fault);
            }
        });
        return "/runs/" + begun.answer().id();
    }

    synchronized Optional<Run> of(String id) {
        return Optional.ofNullable(known.get(id));
    }

    /** Stops all of it, and waits until what cannot be stopped is through. */
    @Override
    public void close() {
        synchronized (this) {
            known.values().forEach(Run::stop);
        }
        worker.shutdown();
        try {
            worker.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
