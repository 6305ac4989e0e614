package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.OwnProcess;
import icequill.cli.CommandsTest.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.io.TempDirFactory;

/** The program without a folder for temporary files, in processes of its own. */
@Tag("wide")
class TemporaryFolderAttackTest {

    /** On the disk, since a disk in memory may refuse to run the library that is put there. */
    @TempDir(factory = TempDirFactory.Standard.class)
    Path other;

    @Test
    void bookWithoutATemporaryFolder_worksFromTheUsersCacheOrItsOwn() throws Exception {
        Path shop = other.resolve("shop");
        Path cache = other.resolve("cache");
        Path missing = other.resolve("missing");

        recorded(shop);
        assertThat(
                run(cache, missing, "invoice", "issue", "late-call", "--date", "2026-05-14", "--shop", shop.toString()))
                .isZero();
        assertThat(libraries(cache)).hasSize(1);
        assertThat(missing).doesNotExist();
        assertThat(shop.resolve("book/.cache")).doesNotExist();

        Path file = Files.writeString(other.resolve("no-folder"), "x");
        assertThat(run(file, missing, "audit", "--shop", shop.toString())).isZero();
        assertThat(libraries(shop.resolve("book/.cache"))).hasSize(1);
    }

    /** A disk in memory that is full and runs no programs; where the system lets nobody mount one, this is told and passed over. */
    @Test
    void fullTemporaryFolderThatRunsNothing_isNotNeeded() throws Exception {
        Path shop = other.resolve("shop");
        Path cache = other.resolve("cache");
        Path full = Files.createDirectory(other.resolve("full"));
        recorded(shop);
        String mounting = "mount -t tmpfs -o size=64k,noexec tmpfs " + full + " && { cat /dev/zero > " + full
                + "/zeros 2>/dev/null; ! echo x > " + full + "/more; } 2>/dev/null";
        if (!isDone("unshare", "--mount", "sh", "-c", mounting)) {
            System.err.println("NOT TRIED: no full folder for temporary files could be mounted here");
            Assumptions.abort("mounting is refused here");
        }
        List<List<String>> lines = List.of(
                List.of("invoice", "issue", "late-call", "--date", "2026-05-14", "--shop", shop.toString()),
                List.of("backup", other.resolve("may.backup").toString(), "--shop", shop.toString()),
                List.of("backup", "--verify", other.resolve("may.backup").toString()));
        String all = lines.stream().map(line -> "'" + String.join("' '", process(cache, full, line)) + "'")
                .collect(Collectors.joining(" && "));

        ProcessBuilder process = quiet(cache, List.of("unshare", "--mount", "sh", "-c", mounting + " && " + all));
        assertThat(process.start().waitFor()).isZero();

        assertThat(libraries(cache)).extracting(file -> String.valueOf(file.getFileName()))
                .containsExactlyInAnyOrder("work-1.lock", System.mapLibraryName("sqlitejdbc"));
        assertThat(other.resolve(".cache")).doesNotExist();
    }

    /** What a killed one left in the cache goes; what cannot be a folder is passed over for one beside the file. */
    @Test
    void backupTried_leavesNothingAndTakesAnotherFolderWhereTheCacheIsNone() throws Exception {
        Path shop = other.resolve("shop");
        Path cache = other.resolve("cache");
        Path backup = other.resolve("disk/may.backup");
        recorded(shop);
        assertThat(Run.at(BookShop.CLOCK, "backup", backup.toString(), "--shop", shop.toString()).status()).isZero();
        Path left = Files.createDirectories(cache.resolve("icequill/work-1/book")).resolve("book.sqlite");
        Files.writeString(left, "left by a process that was killed");

        assertThat(run(cache, other, "backup", "--verify", backup.toString())).isZero();
        assertThat(cache.resolve("icequill/work-1")).doesNotExist();
        assertThat(other.resolve("disk/.cache")).doesNotExist();

        Path file = Files.writeString(other.resolve("no-folder"), "x");
        assertThat(run(file, other, "backup", "--verify", backup.toString())).isZero();
        assertThat(other.resolve("disk/.cache/work-1")).doesNotExist();
        assertThat(other.resolve("disk/.cache")).isDirectory();
    }

    private static boolean isDone(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor() == 0;
        } catch (IOException unknown) {
            return false;
        }
    }

    /** What another put there, or a stop cut short, is not loaded. */
    @Test
    void libraryInTheCacheThatIsNotOurs_isReplaced() throws Exception {
        Path shop = other.resolve("shop");
        Path cache = other.resolve("cache");
        DemoShop.in(shop);
        assertThat(run(cache, other, "customer", "list", "--shop", shop.toString())).isZero();
        Path library = libraries(cache).getFirst();
        byte[] ours = Files.readAllBytes(library);
        Files.writeString(library, "not a library");
        Path left = Files.writeString(library.resolveSibling("999999999.part"), "left by a process that was killed");

        assertThat(run(cache, other, "customer", "list", "--shop", shop.toString())).isZero();

        assertThat(library).hasBinaryContent(ours);
        assertThat(left).doesNotExist();
    }

    private static void recorded(Path shop) {
        DemoShop.in(shop);
        assertThat(Run.at(BookShop.CLOCK, "visit", "add", shop.resolve("visits/late-call.yaml").toString(), "--shop",
                shop.toString()).status()).isZero();
    }

    private static List<Path> libraries(Path cache) throws IOException {
        try (Stream<Path> files = Files.walk(cache)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    /** The user's home is where the cache is, so that no other will do. */
    private static int run(Path cache, Path temporary, String... args) throws Exception {
        return quiet(cache, process(cache, temporary, List.of(args))).start().waitFor();
    }

    private static ProcessBuilder quiet(Path cache, List<String> command) {
        ProcessBuilder process = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT);
        process.environment().put("XDG_CACHE_HOME", cache.toString());
        process.environment().remove("LOCALAPPDATA");
        return process;
    }

    private static List<String> process(Path cache, Path temporary, List<String> args) {
        return OwnProcess.java(List.of("-Djava.io.tmpdir=" + temporary, "-Duser.home=" + cache), Main.class, args);
    }
}
