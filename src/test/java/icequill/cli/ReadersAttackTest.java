package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Others on the same machine, and folders that may be read only. */
@Tag("wide")
class ReadersAttackTest {

    @TempDir
    Path other;

    @ParameterizedTest
    @EnumSource(Database.class)
    void allThatIsMade_isItsOwnersAlone(Database database) throws IOException {
        Path shop = filled(database);

        try (Stream<Path> files = Files.walk(shop)) {
            assertThat(files.filter(file -> !mode(file).matches("rwx------|rw-------"))
                    .map(file -> mode(file) + " " + shop.relativize(file))).isEmpty();
        }
    }

    /** A folder that offices share: mode 2770, as a system's keeper sets it. */
    @Test
    void papersInASharedFolder_areTheGroupsToo() throws Exception {
        Path shop = other.resolve("shop");
        BookShop book = BookShop.in(shop, Database.POSTGRESQL);
        Path papers = Files.createDirectories(shop.resolve("papers/issued"));
        assumeTrue(new ProcessBuilder("chmod", "2770", papers.toString()).start().waitFor() == 0);

        book.issue("late-call", "2026-05-14");

        assertThat(mode(papers.resolve("INV-2026"))).isEqualTo("rwxrwx---");
        assertThat(mode(papers.resolve("INV-2026/INV-2026-00001.pdf"))).isEqualTo("rw-rw----");
    }

    @Test
    void copyThatMayNotBeWrittenTo_isLookedAtAndAudited() throws Exception {
        Path shop = filled(Database.SQLITE);
        long before = Files.size(shop.resolve("book/book.sqlite"));
        try (ReadOnly copy = ReadOnly.of(shop)) {
            for (String command : List.of("find pennon", "show INV-2026-00001", "audit", "customer list",
                    "price visits/late-call.yaml", "check")) {
                Run run = Run.of((command + " --shop " + copy.folder()).split(" ", -1));

                assertThat(run.status()).as(command + run.out() + run.err()).isZero();
            }
            assertThat(Run.of("audit", "--json", "--shop", copy.folder().toString()).json().path("papers").asInt())
                    .isEqualTo(1);
            Run issued = Run.at(BookShop.CLOCK, "credit", "issue", "INV-2026-00001", "--reason", "Twice.", "--date",
                    "2026-06-01", "--shop", copy.folder().toString());
            assertThat(issued.status()).isEqualTo(3);
            assertThat(issued.err()).contains("may not be written to");
        }
        assertThat(shop.resolve("book/book.sqlite")).hasSize(before);
    }

    /** As it is copied while a process works in it, or after one was killed: the newest stands in the log alone. */
    @Test
    void copyOfABookInUse_showsItsNewestEntry() throws Exception {
        Path shop = filled(Database.SQLITE);
        Path copied = other.resolve("copied");
        try (WorkingBook working = WorkingBook.in(shop)) {
            working.write();
            assertThat(shop.resolve("book/book.sqlite-wal")).isNotEmptyFile();
            assertThat(new ProcessBuilder("cp", "-r", shop.toString(), copied.toString()).start().waitFor()).isZero();
        }
        try (ReadOnly copy = ReadOnly.of(copied)) {
            Run listed = Run.of("customer", "list", "--shop", copy.folder().toString());

            assertThat(listed.status()).as(listed.err()).isZero();
            assertThat(listed.out()).contains("Late Riser");
        }
        Files.delete(copied.resolve("book/book.sqlite-shm"));
        try (ReadOnly copy = ReadOnly.of(copied)) {
            assertThat(Run.of("customer", "list", "--shop", copy.folder().toString()).err())
                    .contains("the newest entries stand in", "a copy of the shop that may be written to");
        }
    }

    private Path filled(Database database) throws IOException {
        Path shop = other.resolve("shop");
        BookShop book = BookShop.in(shop, database);
        book.issue("late-call", "2026-05-14");
        book.json("invoice", "draft", shop.resolve("visits/ten-minute-brushing.yaml").toString());
        book.json("backup", shop.resolve("backups/monday.backup").toString());
        book.json("export", shop.resolve("exports/book.json").toString());
        book.json("export", shop.resolve("exports/papers.csv").toString());
        return shop;
    }

    private static String mode(Path file) {
        try {
            return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
        } catch (IOException gone) {
            throw new IllegalStateException(gone);
        }
    }

    /** Another connection to the book, as of a process at work. */
    private record WorkingBook(Connection connection) implements AutoCloseable {

        static WorkingBook in(Path shop) throws SQLException {
            return new WorkingBook(
                    DriverManager.getConnection("jdbc:sqlite:" + shop.resolve("book/book.sqlite")));
        }

        void write() throws SQLException {
            try (var statement = connection.createStatement()) {
                statement.executeUpdate("UPDATE customer SET name = 'Late Riser'");
            }
        }

        @Override
        public void close() throws SQLException {
            connection.close();
        }
    }

    /** A folder that may be read only: by its mode, or for the system's keeper, whom modes do not stop, by how it is mounted. */
    private record ReadOnly(Path folder, boolean isMounted) implements AutoCloseable {

        static ReadOnly of(Path folder) throws IOException {
            run("chmod", "-R", "a-w", folder.toString());
            if (!Files.isWritable(folder)) {
                return new ReadOnly(folder, false);
            }
            boolean isMounted = run("mount", "--bind", folder.toString(), folder.toString());
            assumeTrue(isMounted && run("mount", "-o", "remount,ro,bind", folder.toString()));
            return new ReadOnly(folder, true);
        }

        @Override
        public void close() throws IOException {
            if (isMounted) {
                run("umount", folder.toString());
            }
            run("chmod", "-R", "u+w", folder.toString());
        }

        private static boolean run(String... command) throws IOException {
            return new ProcessBuilder(command).redirectErrorStream(true).start().onExit().join().exitValue() == 0;
        }
    }
}
