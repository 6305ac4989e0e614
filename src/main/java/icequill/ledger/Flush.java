package icequill.ledger;

import icequill.files.OwnersOnly;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Forces files and folders to the disk. */
final class Flush {

    private Flush() {
    }

    /** Writes a new file; an existing one is replaced. */
    static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = OwnersOnly.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
        }
    }

    static void file(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Forces the names in a folder to the disk, where the system knows how (Windows does it by itself, and refuses). */
    static void folder(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
