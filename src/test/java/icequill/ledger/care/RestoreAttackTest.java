package icequill.ledger.care;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.disk.Folder;
import icequill.ledger.Book;
import icequill.ledger.BookChild;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.Opening;
import icequill.ledger.Tampering;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.Pdf;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Backups that somebody made to do harm, and restores that are stopped or disturbed: nothing is written outside, nothing is lost. */
@Tag("wide")
class RestoreAttackTest {

    @TempDir
    private static Path shop;

    @TempDir
    private Path other;

    @ParameterizedTest
    @CsvSource({"papers/INV-2026/../../../x.pdf", "/x.pdf", "papers/INV-2026/INV-2026-00001.exe", "tables/secret.jsonl",
            "papers/INV-2026/INV-2027-00001.pdf", "..\\x.pdf"})
    void entryOfAnotherName_isRefused(String name) throws IOException {
        Path file = ArchiveEdit.with(backup(), name, "x".getBytes(StandardCharsets.UTF_8));

        assertRefused(file, Database.SQLITE, "it holds \"" + name + "\", which no backup does");
    }

    /** The hash of the table is right: somebody reckoned it anew. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "paper | \"INV-2026-00002\" | \"../../../x\" | a paper of INV-2026 bears the number ../../../x",
            "paper | \"INVOICE\" | \"NOTHING\" | it fails its audit",
            "series | \"INVOICE\" | \"NOTHING\" | it fails its audit",
            "series | 2026 | 1 | it fails its audit",
            "paper | \"2026-05-14\" | \"someday\" | it fails its audit",
            "paper | [1, | [[1], | table paper has a row of another form",
            "paper | [1, | [1,2, | table paper has a row of another form",
            "paper | \"rates_version\" | \"no_column\" | table paper has other columns",
            "paper | \"rates_version\" | \"id) VALUES (1); --\" | table paper has other columns",
            "customer | \"Oven Group\" | null | table customer holds what the book refuses"})
    void forgedRow_isRefused(String table, String text, String by, String why) throws IOException {
        Path whole = backup();
        for (Database database : Database.values()) {
            assertRefused(ArchiveEdit.forged(whole, table, text, by), database, why);
        }
    }

    @ParameterizedTest
    @EnumSource
    void tableThatIsMissing_isSaid(Database database) throws IOException {
        Path whole = backup();

        assertRefused(ArchiveEdit.without(whole, "tables/paper_word.jsonl"), database,
                "it lacks tables/paper_word.jsonl");
        assertRefused(ArchiveEdit.replaced(whole, Archive.CONTENTS, "\"paper_word\"", "\"paper_ward\""), database,
                "its contents name other tables than a book has");
    }

    @Test
    void zipBomb_isNotUnpacked() throws IOException {
        Path file = ArchiveEdit.with(backup(), "papers/INV-2026/INV-2026-00004.pdf", new byte[70 << 20]);

        assertRefused(file, Database.SQLITE, "unpacked it would be more than 250 times as large");
    }

    @Test
    void noBackup_isSaid() throws IOException {
        assertRefused(Files.writeString(shop.resolve("a.zip"), "Dear book"), Database.SQLITE,
                "the backup cannot be used");
        assertRefused(shop.resolve("none.zip"), Database.SQLITE, "there is no such file");
    }

    @Test
    void folderOfPapersThatIsALink_isNotReplaced() throws IOException {
        Path elsewhere = Files.createDirectories(other.resolve("elsewhere"));
        BookPlace place = BookPlace.inShop(other);
        Files.createDirectories(other.resolve("papers"));
        Files.createSymbolicLink(place.papers(), elsewhere);

        assertThat(restore(backup(), place).problems()).extracting(Problem::message)
                .containsExactly("the folder of issued papers is a link, which a restore would replace");
        assertThat(place.papers()).isSymbolicLink();
    }

    /** A colleague adds a customer while the backup is looked through. */
    @ParameterizedTest
    @EnumSource
    void customerAddedDuringARestore_isNotLost(Database database) throws IOException {
        Path file = backup();
        BookPlace place = database.place(other);
        CompletableFuture<Validated<CustomerEntry>> adding = new CompletableFuture<>();
        PaperReader reader = new PaperReader() {
            private boolean begun;

            @Override
            public Validated<Read> read(String json) {
                if (!begun) {
                    begun = true;
                    Thread.ofVirtual()
                            .start(() -> adding.complete(Opening.open(place, Books.CLOCK, Books.AUTHOR).then(book -> {
                                try (book) {
                                    return book.write(transaction -> transaction.register().add(colleague()));
                                }
                            })));
                }
                return Books.READER.read(json);
            }

            @Override
            public Validated<Carried> carried(Pdf pdf) {
                return Books.READER.carried(pdf);
            }

            @Override
            public boolean prints(Pdf pdf, String text) {
                return Books.READER.prints(pdf, text);
            }
        };

        assertThat(Book.restore(file, place, reader, Books.UNHEARD).problems()).isEmpty();
        assertThat(adding.join().problems()).isEmpty();
        try (Book book = Books.open(place)) {
            assertThat(Books.read(book, reading -> reading.entries().customers())).extracting(CustomerEntry::id)
                    .contains(colleague().id()).hasSizeGreaterThan(1);
            assertThat(Books.audit(book).papers()).isEqualTo(3);
        }
    }

    @ParameterizedTest
    @EnumSource
    void killedRestore_isClearedAwayByTheNext(Database database) throws Exception {
        Path file = backup();
        BookPlace place = database.place(other);

        assertThat(BookChild.start(place, "restore", file.toString(), "2").waitFor()).isEqualTo(7);
        assertThat(restore(file, place).problems()).isEmpty();

        assertThat(leftovers()).isEmpty();
        try (Book book = Books.open(place)) {
            assertThat(Books.audit(book).findings()).isEmpty();
            assertThat(Books.issue(book, 9).orElseThrow().number()).isEqualTo("INV-2026-00004");
        }
    }

    /** Stopped when the papers were moved to their place, and the database was not. */
    @Test
    void restoreStoppedBetweenPapersAndDatabase_isSaidAndDoneAgain() throws IOException {
        Path file = backup();
        BookPlace place = BookPlace.inShop(other);
        PaperFiles files = new PaperFiles(place.papers());
        Path half = files.place(Books.INVOICES, "INV-2026-00001");
        Folder.madeFor(half);
        Files.writeString(half, "%PDF INV-2026-00001");
        Files.createFile(files.restoring());

        assertThat(Opening.open(place, Books.CLOCK, Books.AUTHOR).problems()).extracting(Problem::message)
                .containsExactly("a restore was stopped before its end, so there is no book yet");
        assertThat(restore(file, place).problems()).isEmpty();
        try (Book book = Books.open(place)) {
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void backupOfADamagedBook_saysThatItIsForRescueAndIsRefused(Database database, @TempDir Path damaged)
            throws IOException {
        BookPlace place = database.place(damaged);
        Path file = damaged.resolve("rescue.backup");
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            Books.issue(book, 1).orElseThrow();
            connections.writer().useTransaction(handle -> {
                Tampering.unguard(database, handle);
                handle.execute("UPDATE paper SET dated = 'someday', kind = 'NOTHING'");
            });

            BackupReport report = book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();

            assertThat(report.isRestorable()).isFalse();
            assertThat(report.findings()).isNotEmpty();
        }
        assertRefused(file, database, "it was written for rescue, of a book that was damaged then");
        assertThat(Book.verify(file, Books.READER, Books.UNHEARD).problems()).isNotEmpty();
    }

    @Test
    void verifiedBackup_isTriedAndLeavesNothing() throws IOException {
        Path file = backup();

        assertThat(Book.verify(file, Books.READER, Books.UNHEARD).orElseThrow().papers()).isEqualTo(3);
        assertThat(Book.verify(ArchiveEdit.forged(file, "paper", "2026-05-14", "2026-05-15"), Books.READER,
                Books.UNHEARD).problems()).isNotEmpty();
    }

    /** Made once for all. */
    private static Path backup() throws IOException {
        Path file = shop.resolve("monday.backup");
        if (!Files.exists(file)) {
            try (Book book = Books.open(BookPlace.inShop(shop))) {
                Entered.all(book);
                for (int i = 1; i <= 3; i++) {
                    Books.issue(book, i).orElseThrow();
                }
                assertThat(
                        book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow().isRestorable())
                        .isTrue();
            }
        }
        return file;
    }

    private static Validated<AuditReport> restore(Path file, BookPlace place) {
        return Book.restore(file, place, Books.READER, Books.UNHEARD);
    }

    private void assertRefused(Path file, Database database, String why) throws IOException {
        BookPlace place = database.place(other);
        List<Path> before = all();

        Validated<AuditReport> restored = restore(file, place);

        assertThat(restored.problems()).extracting(Problem::code).contains(Code.BOOK_DAMAGED);
        assertThat(restored.problems().getFirst().message()).contains(why);
        assertThat(all()).isEqualTo(before);
        try (Book book = Books.open(place)) {
            assertThat(Books.audit(book).papers()).isZero();
        }
        Folder.delete(other.resolve("book"));
        Folder.delete(other.resolve("papers"));
    }

    /** All but empty folders and the file of the lock. */
    private List<Path> all() throws IOException {
        try (Stream<Path> shops = Files.walk(shop); Stream<Path> others = Files.walk(other)) {
            return Stream.concat(shops, others).filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith("book.lock")).sorted().toList();
        }
    }

    private List<Path> leftovers() {
        try (Stream<Path> files = Files.walk(other)) {
            return files.filter(file -> file.toString().contains(".restoring")).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static CustomerEntry colleague() {
        CustomerEntry group = Entered.group();
        return new CustomerEntry("colleagues-own", group.customer(), Optional.empty(), Optional.empty());
    }
}
