package icequill.ledger;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/**
 * Kills a process a while after it told something. The while is the process' own work, in time of a processor, so that the moment does
 * not depend on how busy the machine is.
 */
public final class Killing {

    /** What a system says of a process that was killed (signal 9). */
    private static final int KILLED = 128 + 9;
    private static final long LOOKED_EVERY_MILLISECONDS = 2;

    private Killing() {
    }

    /**
     * What a process told until it was killed, or came to its end by itself; a line that it did not end is none.
     *
     * @param isAtWork whether it works, by what it told until now
     */
    public static List<String> after(Process process, Predicate<List<String>> isAtWork, Duration work)
            throws InterruptedException {
        Ear ear = new Ear(process);
        Duration end = ear.await(isAtWork).plus(work);
        while (worked(process).filter(now -> now.compareTo(end) < 0).isPresent()) {
            TimeUnit.MILLISECONDS.sleep(LOOKED_EVERY_MILLISECONDS);
        }
        process.toHandle().destroyForcibly();
        if (process.waitFor() != KILLED && process.exitValue() != 0) {
            throw new IllegalStateException("it ended by itself: " + ear.all());
        }
        return ear.all();
    }

    /** How much work lies between two moments that a process tells, the second at its end. */
    static Duration between(Process process, Predicate<List<String>> first, Predicate<List<String>> second)
            throws InterruptedException {
        Ear ear = new Ear(process);
        Duration begun = ear.await(first);
        return ear.await(second).minus(begun);
    }

    /** Empty when it is at its end. */
    private static Optional<Duration> worked(Process process) {
        return process.isAlive() ? process.info().totalCpuDuration() : Optional.empty();
    }

    /** Hears what a process tells. */
    private static final class Ear {

        private final Process process;
        private final ByteArrayOutputStream told = new ByteArrayOutputStream();
        private final Thread thread;

        Ear(Process process) {
            this.process = process;
            this.thread = Thread.ofPlatform().daemon().start(() -> {
                try {
                    process.getInputStream().transferTo(told);
                } catch (IOException cut) {
                    throw new UncheckedIOException(cut);
                }
            });
        }

        /** Returns how much it had worked by then. */
        Duration await(Predicate<List<String>> isThere) throws InterruptedException {
            Duration worked = Duration.ZERO;
            while (!isThere.test(lines())) {
                if (!process.isAlive() && !isThere.test(all())) {
                    throw new IllegalStateException("it ended by itself: " + lines());
                }
                worked = worked(process).orElse(worked);
                TimeUnit.MILLISECONDS.sleep(LOOKED_EVERY_MILLISECONDS);
            }
            return worked(process).orElse(worked);
        }

        List<String> all() throws InterruptedException {
            thread.join();
            return lines();
        }

        private List<String> lines() {
            String text = told.toString(StandardCharsets.UTF_8);
            return Arrays.stream(text.substring(0, text.lastIndexOf('\n') + 1).split("\n"))
                    .filter(line -> !line.isEmpty()).toList();
        }
    }
}
