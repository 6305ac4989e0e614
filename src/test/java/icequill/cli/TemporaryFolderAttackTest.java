package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program without a folder for temporary files, in processes of its own. */
class TemporaryFolderAttackTest {

    @TempDir
    Path other;

    @Test
    void bookWithoutATemporaryFolder_worksFromTheUsersCacheOrItsOwn() throws Exception {
        Path shop = other.resolve("shop");
        Path cache = other.resolve("cache");
        Path missing = other.resolve("missing");

        assertThat(run(cache, missing, "new", shop.toString(), "--demo")).isZero();
        assertThat(run(cache, missing, "visit", shop.resolve("visits/late-call.yaml").toString(), "--shop",
                shop.toString())).isZero();
        assertThat(run(cache, missing, "issue", "late-call", "--date", "2026-05-14", "--shop", shop.toString()))
                .isZero();
        assertThat(libraries(cache)).hasSize(1);
        assertThat(missing).doesNotExist();
        assertThat(shop.resolve("book/.cache")).doesNotExist();

        Path file = Files.writeString(other.resolve("no-folder"), "x");
        assertThat(run(file, missing, "audit", "--shop", shop.toString())).isZero();
        assertThat(libraries(shop.resolve("book/.cache"))).hasSize(1);
    }

    /** What another put there, or a stop cut short, is not loaded. */
    @Test
    void libraryInTheCacheThatIsNotOurs_isReplaced() throws Exception {
        Path shop = other.resolve("shop");
        Path cache = other.resolve("cache");
        assertThat(run(cache, other, "new", shop.toString(), "--demo")).isZero();
        assertThat(run(cache, other, "visit", shop.resolve("visits/late-call.yaml").toString(), "--shop",
                shop.toString())).isZero();
        Path library = libraries(cache).getFirst();
        byte[] ours = Files.readAllBytes(library);
        Files.writeString(library, "not a library");
        Path left = Files.writeString(library.resolveSibling("999999999.part"), "left by a process that was killed");

        assertThat(run(cache, other, "customer", "list", "--shop", shop.toString())).isZero();

        assertThat(library).hasBinaryContent(ours);
        assertThat(left).doesNotExist();
    }

    private static List<Path> libraries(Path cache) throws IOException {
        try (Stream<Path> files = Files.walk(cache)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    /** The user's home is where the cache is, so that no other will do. */
    private static int run(Path cache, Path temporary, String... args) throws Exception {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC", "-XX:-UsePerfData", "--enable-native-access=ALL-UNNAMED",
                        "-Djava.util.logging.config.file="
                                + Path.of("src/main/dist/lib/logging.properties").toAbsolutePath(),
                        "-Djava.io.tmpdir=" + temporary, "-Duser.home=" + cache, "-cp",
                        System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(args));
        ProcessBuilder process = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT);
        process.environment().put("XDG_CACHE_HOME", cache.toString());
        process.environment().remove("LOCALAPPDATA");
        return process.start().waitFor();
    }
}
