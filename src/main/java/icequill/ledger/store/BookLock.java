package icequill.ledger.store;

import icequill.files.disk.OwnersOnly;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Lets one process at a time write in a book that is a file. The lock file says who it is. The operating system lets go of the
 * lock when a process ends, however it ends. Two places of the file are locked, far beyond its text: who wants to write first
 * takes the place of the next, then waits for the place of the writer; so processes take turns.
 */
public final class BookLock implements AutoCloseable {

    private static final long WRITER = Long.MAX_VALUE - 2;
    private static final long NEXT = Long.MAX_VALUE - 1;
    private static final int LONGEST_TEXT = 500;

    /** Closing a file lets go of all locks that a process has on it, so all books of a process share one. */
    private static final Map<Path, Shared> OPEN = new HashMap<>();

    private final Path file;
    private final FileChannel channel;
    private final LockWait patience;

    /** A lock file, and how many books of this process have it open. */
    private record Shared(FileChannel channel, int books) {}

    private BookLock(Path file, FileChannel channel, LockWait patience) {
        this.file = file;
        this.channel = channel;
        this.patience = patience;
    }

    /** The lock by which processes take turns in a database. */
    public static BookLock of(Path database, LockWait patience) throws IOException {
        return at(database.resolveSibling("book.lock"), patience);
    }

    public static BookLock at(Path path, LockWait patience) throws IOException {
        Path file = path.toAbsolutePath().normalize();
        synchronized (OPEN) {
            Shared before = OPEN.get(file);
            FileChannel channel = before == null
                    ? OwnersOnly.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ,
                            StandardOpenOption.WRITE)
                    : before.channel();
            OPEN.put(file, new Shared(channel, before == null ? 1 : before.books() + 1));
            return new BookLock(file, channel, patience);
        }
    }

    /** Becomes the writer, or says who is. */
    public Validated<FileLock> take() throws IOException {
        if (Thread.currentThread().isInterrupted()) {
            // A file that is touched by a stopped thread is closed for all.
            throw new InterruptedIOException("stopped before it wrote");
        }
        long until = patience.nanoseconds().getAsLong() + patience.longest().toNanos();
        try (FileLock next = waitFor(NEXT, until)) {
            FileLock writer = next == null ? null : waitFor(WRITER, until);
            if (writer == null) {
                return Validated.invalid(inUse());
            }
            sign();
            return Validated.valid(writer);
        }
    }

    @Override
    public void close() {
        synchronized (OPEN) {
            Shared shared = OPEN.get(file);
            if (shared != null && shared.books() > 1) {
                OPEN.put(file, new Shared(channel, shared.books() - 1));
            } else {
                OPEN.remove(file);
                closeFile();
            }
        }
    }

    private void closeFile() {
        try {
            channel.close();
        } catch (IOException ended) {
            // The system lets go of the lock when the process ends.
        }
    }

    private @Nullable FileLock waitFor(long place, long until) throws IOException {
        FileLock lock = attempt(place);
        while (lock == null && patience.nanoseconds().getAsLong() < until) {
            patience.pause().run();
            lock = attempt(place);
        }
        return lock;
    }

    private @Nullable FileLock attempt(long place) throws IOException {
        try {
            return channel.tryLock(place, 1, false);
        } catch (OverlappingFileLockException ownOther) {
            // Another book of this process has it.
            return null;
        }
    }

    private void sign() throws IOException {
        byte[] text = (Holder.self().text() + "\n").getBytes(StandardCharsets.UTF_8);
        channel.write(ByteBuffer.wrap(text), 0);
        channel.truncate(text.length);
    }

    private Problem inUse() throws IOException {
        ByteBuffer text = ByteBuffer.allocate(LONGEST_TEXT);
        channel.read(text, 0);
        String holder = new String(text.array(), 0, text.position(), StandardCharsets.UTF_8).strip();
        return BookInUse.problem(Place.ofFile(file.toString()), holder.isEmpty() ? "another process" : holder);
    }
}
