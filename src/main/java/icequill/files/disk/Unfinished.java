package icequill.files.disk;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.UUID;

/**
 * A file that is being written beside its target, and moved there when it is whole. While its writer lives it is locked; so the next
 * writer of the same target knows what a killed one left, and clears it away.
 */
public final class Unfinished implements AutoCloseable {

    private static final String ENDING = ".unfinished";

    private final Path target;
    private final Path file;
    private final FileChannel channel;

    private Unfinished(Path target, Path file, FileChannel channel) {
        this.target = target;
        this.file = file;
        this.channel = channel;
    }

    /** Begins one in the target's folder, which is there. */
    public static Unfinished of(Path target) throws IOException {
        clear(target);
        while (true) {
            Path file = target.resolveSibling(mark(target) + UUID.randomUUID() + ENDING);
            FileChannel channel = OwnersOnly.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            if (isOurs(channel) && Files.exists(file)) {
                return new Unfinished(target, file, channel);
            }
            // Somebody cleared it away before it was locked.
            channel.close();
            Files.deleteIfExists(file);
        }
    }

    /** Closing it does not close the file. */
    public OutputStream out() {
        return new BufferedOutputStream(Channels.newOutputStream(channel)) {
            @Override
            public void close() throws IOException {
                flush();
            }
        };
    }

    /** Forces it to the disk, and moves it to its target; what lies there is replaced. */
    public void finish() throws IOException {
        channel.force(true);
        Files.move(file, target, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Removes it, unless it was finished. */
    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(file);
    }

    private static String mark(Path target) {
        return "." + target.getFileName() + ".";
    }

    /** What cannot be cleared away stays; that is not what was asked for. */
    private static void clear(Path target) {
        Path folder = Objects.requireNonNull(target.toAbsolutePath().getParent(), "a file lies in a folder");
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, file -> isOf(target, file))) {
            left.forEach(Unfinished::clearIfLeft);
        } catch (IOException | DirectoryIteratorException unreadable) {
            // Nor does it need to be read in order to be written to.
        }
    }

    private static boolean isOf(Path target, Path file) {
        String name = String.valueOf(file.getFileName());
        int rest = name.length() - mark(target).length() - ENDING.length();
        return rest == UUID.randomUUID().toString().length() && name.startsWith(mark(target)) && name.endsWith(ENDING);
    }

    private static void clearIfLeft(Path file) {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            if (isLocked(channel)) {
                Files.deleteIfExists(file);
            }
        } catch (IOException unknown) {
            // Its writer was quicker, or nobody can tell whether he lives.
        }
    }

    private static boolean isOurs(FileChannel channel) {
        try {
            return isLocked(channel);
        } catch (IOException noLocks) {
            // Some file systems have none; there nobody clears anything away.
            return true;
        }
    }

    /** Held until the channel is closed, or the process ends in whichever way. */
    private static boolean isLocked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException another) {
            return false;
        }
    }
}
