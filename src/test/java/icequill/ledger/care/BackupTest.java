package icequill.ledger.care;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.disk.Folder;
import icequill.ledger.Book;
import icequill.ledger.BookChild;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.store.BookPlace;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Backups, and books made out of them. */
@Tag("wide")
class BackupTest {

    @TempDir
    private Path shop;

    @TempDir
    private Path other;

    @ParameterizedTest
    @CsvSource({"SQLITE, SQLITE", "POSTGRESQL, POSTGRESQL", "SQLITE, POSTGRESQL", "POSTGRESQL, SQLITE"})
    void restoredBook_isTheSameAndGoesOn(Database from, Database to) {
        Path file = shop.resolve("monday.backup");
        AuditReport before;
        List<IssuedPaper> papers;
        List<CustomerEntry> customers;
        try (Book book = Books.open(from.place(shop))) {
            Entered.all(book);
            before = filled(book);
            papers = Books.found(book, "crumb");
            customers = Books.read(book, reading -> reading.entries().customers());
            assertThat(book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow().heads())
                    .isEqualTo(before.heads());
        }
        BookPlace place = to.place(other);

        AuditReport restored = Book.restore(file, place, Books.READER, Books.UNHEARD).orElseThrow();

        assertThat(restored).isEqualTo(before);
        try (Book book = Books.open(place)) {
            assertThat(Books.audit(book)).isEqualTo(before);
            assertThat(Books.found(book, "crumb")).isEqualTo(papers);
            assertThat(Books.read(book, reading -> reading.entries().customers())).isEqualTo(customers);
            assertThat(Books.issue(book, 9).orElseThrow().number()).isEqualTo("INV-2026-00004");
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void backupWhileIssuing_isOfOneMoment(Database database) throws Exception {
        Path file = shop.resolve("busy.backup");
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            filled(book);
            CountDownLatch begun = new CountDownLatch(5);
            CompletableFuture<Void> issuing = CompletableFuture.runAsync(() -> {
                for (int i = 0; i < 40; i++) {
                    Books.issue(book, i).orElseThrow();
                    begun.countDown();
                }
            });
            begun.await();
            BackupReport report = book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
            AuditReport meanwhile = Books.audit(book);
            issuing.join();

            assertThat(meanwhile.findings()).isEmpty();
            assertThat(report.findings()).isEmpty();
            assertThat(report.papers()).isBetween(8L, 43L);
            AuditReport restored = Book.restore(file, database.place(other), Books.READER, Books.UNHEARD)
                    .orElseThrow();
            assertThat(restored.findings()).isEmpty();
            assertThat(restored.heads()).isEqualTo(report.heads());
            assertThat(restored.papers()).isEqualTo(report.papers());
        }
    }

    @ParameterizedTest
    @EnumSource
    void restore_refusesAPlaceThatHasABook(Database database) {
        Path file = shop.resolve("monday.backup");
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            filled(book);
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
        }

        Validated<AuditReport> restored = Book.restore(file, place, Books.READER, Books.UNHEARD);

        assertThat(restored.problems()).extracting(Problem::code).containsExactly(Code.ALREADY_EXISTS);
        try (Book book = Books.open(place)) {
            assertThat(Books.audit(book).papers()).isEqualTo(3);
        }
    }

    @ParameterizedTest
    @EnumSource
    void backupWithAChangedTable_isRefusedAndLeavesNothing(Database database) throws IOException {
        Path file = shop.resolve("monday.backup");
        try (Book book = Books.open(BookPlace.inShop(shop))) {
            filled(book);
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
        }
        Path changed = ArchiveEdit.replaced(file, "tables/paper.jsonl", "2026-05-14", "2026-05-15");
        BookPlace place = database.place(other);

        Validated<AuditReport> restored = Book.restore(changed, place, Books.READER, Books.UNHEARD);

        assertThat(restored.problems()).extracting(Problem::message)
                .containsExactly("the backup cannot be used: table paper is not as it was written");
        assertThat(Folder.isEmpty(place.papers())).isTrue();
        try (Book book = Books.open(place)) {
            assertThat(Books.audit(book).papers()).isZero();
        }
    }

    @Test
    void backupWithAChangedFile_isRefused() throws IOException {
        Path file = shop.resolve("monday.backup");
        try (Book book = Books.open(BookPlace.inShop(shop))) {
            filled(book);
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
        }
        Path changed = ArchiveEdit.replaced(file, "papers/INV-2026/INV-2026-00002.pdf", "PDF", "pdf");

        Validated<AuditReport> restored = Book.restore(changed, BookPlace.inShop(other), Books.READER, Books.UNHEARD);

        assertThat(restored.problems()).extracting(Problem::message).containsExactly(
                "the backup cannot be used: it fails its audit",
                "the file of INV-2026-00002 was changed after it was issued");
        assertThat(Files.exists(other.resolve("book").resolve("book.sqlite"))).isFalse();
    }

    @Test
    void cutOffBackup_isRefused() throws IOException {
        Path file = shop.resolve("monday.backup");
        try (Book book = Books.open(BookPlace.inShop(shop))) {
            filled(book);
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
        }
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));

        assertThat(Book.restore(file, BookPlace.inShop(other), Books.READER, Books.UNHEARD).problems())
                .extracting(Problem::code).containsExactly(Code.BOOK_DAMAGED);
    }

    @Test
    void missingFile_isSaidByTheBackupAndDoesNotStopIt() throws IOException {
        Path file = shop.resolve("monday.backup");
        BookPlace place = BookPlace.inShop(shop);
        try (Book book = Books.open(place)) {
            filled(book);
            Files.delete(new PaperFiles(place.papers()).place(Books.INVOICES, "INV-2026-00002"));

            assertThat(book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow().findings())
                    .extracting(Problem::message)
                    .containsExactly(
                            "the file of INV-2026-00002 is missing");
        }
        assertThat(Book.restore(file, BookPlace.inShop(other), Books.READER, Books.UNHEARD).orElseThrow().findings())
                .extracting(Problem::message).containsExactly("the file of INV-2026-00002 is missing");
    }

    @Test
    void existingFile_isNotReplaced() throws IOException {
        Path file = Files.writeString(shop.resolve("monday.backup"), "precious");
        try (Book book = Books.open(BookPlace.inShop(shop))) {
            assertThat(book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).problems())
                    .extracting(Problem::code)
                    .containsExactly(Code.ALREADY_EXISTS);
        }
        assertThat(file).hasContent("precious");
    }

    /** Somebody else's file beside it is not touched. */
    @ParameterizedTest
    @EnumSource
    void killedBackup_leavesNothingOnceTheNextIsWritten(Database database) throws Exception {
        Path file = other.resolve("monday.backup");
        Path own = Files.writeString(other.resolve(".monday.backup.mine.unfinished"), "precious");
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            filled(book);
        }
        assertThat(BookChild.start(place, "backup", file.toString(), "2").waitFor()).isEqualTo(7);
        assertThat(names(other)).hasSize(2).doesNotContain("monday.backup");

        try (Book book = Books.open(place)) {
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
        }

        assertThat(names(other)).containsExactlyInAnyOrder("monday.backup", ".monday.backup.mine.unfinished");
        assertThat(own).hasContent("precious");
        assertThat(Book.verify(file, Books.READER, Books.UNHEARD).orElseThrow().papers()).isEqualTo(3);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName())).toList();
        }
    }

    private static AuditReport filled(Book book) {
        for (int i = 1; i <= 3; i++) {
            Books.issue(book, i).orElseThrow();
        }
        return Books.audit(book);
    }
}
