package icequill.ledger.store;

import icequill.files.disk.OwnersOnly;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Forces files and folders to the disk. */
public final class Flush {

    private Flush() {
    }

    /** Writes a new file; an existing one is replaced. */
    public static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = OwnersOnly.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
        }
    }

    public static void file(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Forces the names in a folder to the disk, where the system knows how (Windows does it by itself, and refuses). */
    public static void folder(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
