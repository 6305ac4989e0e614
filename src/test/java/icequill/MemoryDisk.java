package icequill;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/**
 * Folders of tests in memory, where the system has such, else on the disk. Books force every paper to the disk three times, which takes
 * most of the time of tests with many papers; what a process leaves when it is killed is the same on both.
 */
public final class MemoryDisk implements TempDirFactory {

    private static final Path MEMORY = Path.of("/dev/shm");
    /** Containers may have as little as 64 MB of it, which others want too. */
    private static final long ENOUGH = 500_000_000;

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext context) throws IOException {
        return folder("icequill");
    }

    /** A new folder whose name begins like that. */
    static Path folder(String name) throws IOException {
        return Files.isDirectory(MEMORY) && Files.isWritable(MEMORY)
                && Files.getFileStore(MEMORY).getUsableSpace() > ENOUGH
                        ? Files.createTempDirectory(MEMORY, name)
                        : Files.createTempDirectory(name);
    }
}
