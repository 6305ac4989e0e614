package icequill.files.kept;

import icequill.files.disk.Hash;
import icequill.files.disk.SafeFile;
import icequill.planner.kept.Shelf;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Keeps each text in a file of its own, by a hash of what it answers. The first line of a file is a hash of both, so that one that was
 * damaged, cut off or given another name is as good as none. Processes may use a folder at once; what cannot be read or written is not
 * kept.
 *
 * @param folder made when it is needed
 */
public record FolderShelf(Path folder) implements Shelf {

    /** A shop of hundreds of sites has fewer; one that has more begins anew, so that what is out of date does not pile up. */
    private static final int MOST = 2_000;

    @Override
    public Optional<String> text(String asked) {
        try {
            String[] sealed = Files.readString(file(asked)).split("\n", 2);
            return Stream.of(sealed).skip(1).filter(text -> seal(asked, text).equals(sealed[0])).findFirst();
        } catch (IOException none) {
            return Optional.empty();
        }
    }

    @Override
    public void put(String asked, String text) {
        clearIfFull();
        SafeFile.write(file(asked), (seal(asked, text) + "\n" + text).getBytes(StandardCharsets.UTF_8), true);
    }

    private Path file(String asked) {
        return folder.resolve(hash(asked) + ".txt");
    }

    private static String seal(String asked, String text) {
        return hash(hash(asked) + text);
    }

    private static String hash(String text) {
        return Hash.of(text.getBytes(StandardCharsets.UTF_8));
    }

    private void clearIfFull() {
        try (Stream<Path> files = Files.isDirectory(folder) ? Files.list(folder) : Stream.empty()) {
            List<Path> all = files.toList();
            if (all.size() >= MOST) {
                for (Path file : all) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException | UncheckedIOException busy) {
            // Another process clears it.
        }
    }
}
