package icequill.files.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Folders and what is in them. */
public final class Folder {

    private Folder() {
    }

    /** Makes the folder that a file is to lie in, and returns it. */
    public static Path madeFor(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IOException("no folder holds " + file);
        }
        return OwnersOnly.folder(folder);
    }

    /** Whether there is nothing in it; one that is not there is empty. */
    public static boolean isEmpty(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return true;
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.findAny().isEmpty();
        }
    }

    /** Removes a folder with all that is in it; one that is not there is gone. */
    public static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            List<Path> all;
            try (Stream<Path> files = Files.walk(folder)) {
                all = files.toList();
            }
            for (Path file : all.reversed()) {
                Files.delete(file);
            }
        }
    }
}
