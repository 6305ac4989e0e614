package icequill.ledger.store;

import icequill.files.disk.Folder;
import icequill.files.disk.OwnersOnly;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.time.Duration;

/**
 * A folder of a cache that one process has to itself while it works. What a killed one left in it is cleared away by the next.
 *
 * @param folder empty at first, its owner's alone
 */
public record Workroom(Path folder, BookLock door, FileLock held) implements AutoCloseable {

    /** Takes the first that is free. */
    public static Workroom in(Path cache) throws IOException {
        OwnersOnly.folder(cache);
        for (int number = 1;; number++) {
            Path folder = cache.resolve("work-" + number);
            BookLock door = BookLock.at(cache.resolve(folder.getFileName() + ".lock"), LockWait.of(Duration.ZERO));
            if (door.take() instanceof Validated.Valid<FileLock>(FileLock held)) {
                Folder.delete(folder);
                OwnersOnly.folder(folder);
                return new Workroom(folder, door, held);
            }
            door.close();
        }
    }

    @Override
    public void close() throws IOException {
        try (door; held) {
            Folder.delete(folder);
        }
    }
}
