package icequill.files.disk;

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
    private static final int SHARED_FOLDER = 02770;
    private static final int SHARED_FILE = 0660;
    private static final String UNIX_MODE = "unix:mode";
    private static final String OF_FILE = "rw-------";
    private static final String OF_FOLDER = "rwx------";

    private OwnersOnly() {
    }

    /** Opens a file; one that is made by it is the owner's alone. */
    public static FileChannel open(Path file, OpenOption... options) throws IOException {
        boolean isNew = Files.notExists(file);
        FileChannel channel = FileChannel.open(file, Set.of(options), own(file, OF_FILE));
        if (isNew) {
            shareAlike(file);
        }
        return channel;
    }

    /** Makes a file where there is none. */
    public static void create(Path file) throws IOException {
        if (Files.notExists(file)) {
            Files.createFile(file, own(file, OF_FILE));
            shareAlike(file);
        }
    }

    /** Makes a folder and those above it that are missing. */
    public static Path folder(Path folder) throws IOException {
        Path above = folder.toAbsolutePath().normalize().getParent();
        if (!Files.isDirectory(folder) && above != null) {
            folder(above);
            Files.createDirectories(folder, own(folder, OF_FOLDER));
            shareAlike(folder);
        }
        return folder;
    }

    private static FileAttribute<?>[] own(Path made, String mode) {
        return knowsOwners(made)
                ? new FileAttribute<?>[]{PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))}
                : new FileAttribute<?>[0];
    }

    private static boolean knowsOwners(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("unix");
    }

    /** Set after it is made, since the process may mask what a group may do. */
    private static void shareAlike(Path made) throws IOException {
        Path above = made.toAbsolutePath().normalize().getParent();
        if (knowsOwners(made) && above != null && Files.getAttribute(above, UNIX_MODE) instanceof Integer mode
                && (mode & SHARED) == SHARED) {
            Files.setAttribute(made, UNIX_MODE, Files.isDirectory(made) ? SHARED_FOLDER : SHARED_FILE);
        }
    }
}
