package icequill.ledger.care;

import icequill.files.disk.Folder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What restores put together beside a place before they move it there. Only who holds the book's lock may clear it away.
 *
 * @param place the book's database, or its folder of papers
 */
record Leftovers(Path place) {

    private static final String MARK = ".restoring-";

    static Leftovers of(Path place) {
        return new Leftovers(place.toAbsolutePath());
    }

    /** A new one for each restore. */
    static String mark() {
        return MARK + UUID.randomUUID();
    }

    static Path beside(Path place, String mark) {
        return place.resolveSibling("." + place.getFileName() + mark);
    }

    void clear() throws IOException {
        Path folder = Folder.madeFor(place);
        List<Path> left;
        try (Stream<Path> all = Files.list(folder)) {
            left = all.filter(file -> String.valueOf(file.getFileName()).startsWith("." + place.getFileName() + MARK))
                    .toList();
        }
        for (Path file : left) {
            Folder.delete(file);
        }
    }
}
