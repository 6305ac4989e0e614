package icequill.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Makes files and folders that their owner alone may read, where the system knows owners. In a folder whose group is shared on
 * purpose (it may write there, and new files get it: mode 2770), the group may read and write them too, so that several offices
 * can keep their papers in one place.
 */
public final class OwnersOnly {

    /** Set-group-id and write by the group. */
    private static final int SHARED = 02020;

    private OwnersOnly() {
    }

    /** Opens a file; one that is made by it is the owner's alone. */
    public static FileChannel open(Path file, OpenOption... options) throws IOException {
        return FileChannel.open(file, Set.of(options), attributes(file, "rw-------", "rw-rw----"));
    }

    /** Makes a file where there is none. */
    public static void create(Path file) throws IOException {
        if (Files.notExists(file)) {
            Files.createFile(file, attributes(file, "rw-------", "rw-rw----"));
        }
    }

    /** Makes a folder and those above it that are missing. */
    public static Path folder(Path folder) throws IOException {
        return Files.isDirectory(folder)
                ? folder
                : Files.createDirectories(folder, attributes(folder, "rwx------", "rwxrwx---"));
    }

    private static FileAttribute<?>[] attributes(Path made, String own, String shared) throws IOException {
        if (!made.getFileSystem().supportedFileAttributeViews().contains("unix")) {
            return new FileAttribute<?>[0];
        }
        return new FileAttribute<?>[]{
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(isShared(made) ? shared : own))};
    }

    /** By the nearest folder above that is there. */
    private static boolean isShared(Path made) throws IOException {
        Path above = made.toAbsolutePath().normalize().getParent();
        while (above != null && !Files.isDirectory(above)) {
            above = above.getParent();
        }
        return above != null && Files.getAttribute(above, "unix:mode") instanceof Integer mode
                && (mode & SHARED) == SHARED;
    }
}
