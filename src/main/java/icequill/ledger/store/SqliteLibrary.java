package icequill.ledger.store;

import icequill.files.disk.OwnersOnly;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * The part of SQLite that is no Java. It comes as a resource, and the system can load it only from a file. Its driver would put
 * that into the folder for temporary files, which may be full, missing or closed to programs, and leave it there when the process
 * is killed; so it lies once in a cache, by its version, and is looked at before it is trusted.
 */
final class SqliteLibrary {

    private static final String PATH = "org.sqlite.lib.path";
    private static final String NAME = "org.sqlite.lib.name";
    private static final String PART = ".part";

    private SqliteLibrary() {
    }

    /**
     * Loads it from the first cache that will do; what was loaded once is there for the whole process.
     *
     * @throws IOException naming the folders, when none will do
     */
    static synchronized void load(List<Path> caches) throws IOException {
        if (System.getProperty(PATH) != null) {
            return;
        }
        List<String> tried = new ArrayList<>();
        for (Path cache : caches) {
            Path folder = cache.resolve("sqlite-" + SQLiteJDBCLoader.getVersion());
            try {
                Path library = kept(folder);
                System.load(library.toAbsolutePath().toString());
                System.setProperty(PATH, folder.toAbsolutePath().toString());
                System.setProperty(NAME, LibraryLoaderUtil.getNativeLibName());
                return;
            } catch (IOException | UnsatisfiedLinkError unsuitable) {
                tried.add(folder + ": " + unsuitable.getMessage());
            }
        }
        throw new IOException("the library of SQLite can be loaded from no folder; tried " + String.join("; ", tried));
    }

    /** The library in a folder, written there unless it is there as it should be. */
    private static Path kept(Path folder) throws IOException {
        byte[] bytes = bytes();
        Path library = folder.resolve(LibraryLoaderUtil.getNativeLibName());
        if (!Files.isRegularFile(library) || Files.size(library) != bytes.length
                || !Arrays.equals(Files.readAllBytes(library), bytes)) {
            OwnersOnly.folder(folder);
            sweep(folder);
            Path part = folder.resolve(ProcessHandle.current().pid() + PART);
            Flush.write(part, bytes);
            Files.move(part, library, StandardCopyOption.ATOMIC_MOVE);
        }
        return library;
    }

    /** What processes left that were killed while they wrote. */
    private static void sweep(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path part : files.filter(file -> file.toString().endsWith(PART)).toList()) {
                String pid = String.valueOf(part.getFileName()).replace(PART, "");
                if (!pid.matches("[0-9]{1,18}") || ProcessHandle.of(Long.parseLong(pid)).isEmpty()) {
                    Files.deleteIfExists(part);
                }
            }
        }
    }

    private static byte[] bytes() throws IOException {
        String resource = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + LibraryLoaderUtil.getNativeLibName();
        try (InputStream stream = SQLiteJDBCLoader.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IOException("SQLite does not come for this system: " + resource);
            }
            return stream.readAllBytes();
        }
    }
}
