package icequill.ledger.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Folders for what can be made again; the system's folder for temporary files may be full, missing or closed to programs. */
public final class Caches {

    private Caches() {
    }

    /** The user's cache, by the custom of his system, then one beside a file of his. */
    public static List<Path> of(Path file) {
        Stream<Optional<Path>> users = Stream.of(variable("XDG_CACHE_HOME"), variable("LOCALAPPDATA"),
                Optional.of(Path.of(System.getProperty("user.home", ""), ".cache")));
        return Stream.concat(users.flatMap(Optional::stream).filter(Path::isAbsolute)
                .map(cache -> cache.resolve("icequill")), Stream.of(file.resolveSibling(".cache"))).toList();
    }

    private static Optional<Path> variable(String name) {
        return Optional.ofNullable(System.getenv(name)).filter(text -> !text.isBlank()).map(Path::of);
    }
}
